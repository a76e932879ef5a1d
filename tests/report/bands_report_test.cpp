#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "report/sample_bands.hpp"
#include "report/text.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

using namespace yardworth;
using test::lines_of;
using test::sample_bands;
using test::sample_changed_bands;
using test::says;

namespace {

using Json = nlohmann::ordered_json;

std::size_t cells_of(const std::string& line) {
  return static_cast<std::size_t>(std::count(line.begin(), line.end(), ',')) + 1;
}

}  // namespace

TEST_CASE("the answer names whom the change helps most and least") {
  CHECK(
      bands_sentence(sample_bands().result) ==
      "On Heron Ferry Municipal 20 more yards of driver carry save bogey women from the middle tees most, 2.0 strokes "
      "a round, and scratch men from the middle tees least, 1.0.");
  BandsResult result = sample_bands().result;
  result.change = {-20.0, -6.0};
  for (BandOnTee& golfer : result.golfers) {
    golfer.round.replanned = golfer.round.before + golfer.round.strokes_saved();
  }
  CHECK(bands_sentence(result) ==
        "On Heron Ferry Municipal 20 fewer yards of driver carry, with 6 fewer in the irons, cost bogey women from the "
        "middle tees most, 2.0 strokes a round, and scratch men from the middle tees least, 1.0.");
  result.change = {0.0, 0.0};
  CHECK(bands_sentence(result) == "With no carry gained or lost nothing changes on Heron Ferry Municipal.");
  result = sample_bands().result;
  result.holes = 9;
  CHECK(says(bands_sentence(result), "2.0 strokes a round of 9 holes, and"));
  result.holes = 18;
  result.golfers.resize(1);
  CHECK(bands_sentence(result) ==
        "On Heron Ferry Municipal 20 more yards of driver carry save scratch men from the middle tees 1.0 strokes a "
        "round.");
}

TEST_CASE("the answer about a hazard names whom it costs most and least") {
  CHECK(
      bands_sentence(sample_changed_bands().result) ==
      "Moving the bunker right on hole 4 costs scratch men from the middle tees most, 0.25 strokes a round, and bogey "
      "men from the middle tees least, nothing to speak of.");
}

TEST_CASE("a hazard may save strokes, do both, or nothing") {
  const auto with_costs = [](double first, double second) {
    BandsResult result = sample_changed_bands().result;
    result.golfers.resize(2);
    result.golfers[0].changed[0].with.strokes.before = 5.0 + first;
    result.golfers[1].changed[0].with.strokes.before = 5.0 + second;
    return bands_sentence(result);
  };
  CHECK(with_costs(0.0, -0.25) ==
        "Moving the bunker right on hole 4 saves bogey men from the middle tees most, 0.25 strokes a round, and costs "
        "nobody anything to speak of.");
  CHECK(
      with_costs(0.5, -0.25) ==
      "Moving the bunker right on hole 4 costs scratch men from the middle tees most, 0.50 strokes a round, and saves "
      "bogey men from the middle tees most, 0.25 strokes a round.");
  CHECK(with_costs(0.001, 0.0) ==
        "Moving the bunker right on hole 4 makes no difference to speak of to anybody asked about.");
  BandsResult added = sample_changed_bands().result;
  added.changed_hazards[0].added = true;
  CHECK(says(bands_sentence(added), "A new bunker right on hole 4 costs"));
  added.changed_hazards.push_back({5, 0, true});
  CHECK(says(bands_sentence(added), "The changed hazards together cost scratch men"));
}

TEST_CASE("text: bands, tees that suit, what it rests on") {
  BandsReport report = sample_bands();
  CHECK_FALSE(says(bands_text(report), "More"));
  report.asking = {"--tee NAME --gender men", "--hole N", "--plan best", "--format json"};
  const std::string text = bands_text(report);
  for (const char* words :
       {"Men", "Women", "scratch", "bogey", "25% -> 38%", "What it rests on", "Own shots are played", "Cautions",
        "supposes that every score", "Habit plan", "--hole N tells who finds", "--format json has everything"}) {
    CAPTURE(words);
    CHECK(says(text, words));
  }
  // One tee: nothing to choose from. Two tables of clubs are few enough to be shown.
  CHECK_FALSE(says(text, "Which tees suit whom"));
  CHECK(says(text, "Approach shots by club"));
  for (const std::string& line : lines_of(text)) CHECK(display_width(line) <= report_width);

  BandsReport two_tees = report;
  two_tees.result.tees.push_back({"forward", 5210.0, {}, Gender::women});
  two_tees.result.golfers.clear();
  two_tees.result.suiting.clear();
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (const std::size_t tee : {std::size_t{0}, std::size_t{1}}) {
      two_tees.result.golfers.push_back(test::sample_golfer(Band::bogey, gender, 90.0, 1.0));
      two_tees.result.golfers.back().tee = tee;
    }
    two_tees.result.suiting.push_back({Band::bogey, gender, 200.0, {5200.0, 5400.0, false}, 1, 1});
  }
  const std::string choice = bands_text(two_tees);
  CHECK(says(choice, "Which tees suit whom"));
  CHECK(says(choice, "5200-5400"));
  CHECK_FALSE(says(choice, "Approach shots by club"));
  CHECK(says(choice, "--tee NAME --gender men"));
}

TEST_CASE("text: net scores and points of those whom the tees are rated for") {
  BandsReport report = sample_bands();
  const std::string text = bands_text(report);
  const std::string section = text.substr(text.find("Net scores and points"));
  for (const char* words : {"scratch men", "bogey men", "18", "72.0 -> 71.0", "30.0 -> 32.0", "good and bad days"}) {
    CAPTURE(words);
    CHECK(says(section, words));
  }
  CHECK_FALSE(says(section, "scratch women"));
  // Where nobody has any, what is wanting is said.
  report.result.golfers.erase(report.result.golfers.begin(), report.result.golfers.begin() + 2);
  report.result.suiting.erase(report.result.suiting.begin(), report.result.suiting.begin() + 2);
  CHECK(says(bands_text(report), "they need tees that are rated for the player's gender"));
}

TEST_CASE("text: however much there is to tell apart, a table fits a terminal") {
  BandsReport report = sample_bands();
  report.result.change = {20.0, 6.0};
  report.result.policy = PolicyChoice::best;
  report.result.replanning_computed = true;
  report.result.tees[0].name = "a very long name of tees indeed";
  for (BandOnTee& golfer : report.result.golfers) {
    golfer.band = Band::from_21;
    golfer.round = test::of_carries(101.25, 98.75, 97.5, 96.25);
    golfer.before.approach = {{"gap wedge", 1.0}};
    golfer.after.approach = {{"sand wedge", 1.0}};
  }
  const std::string text = bands_text(report);
  for (const char* words : {"tee shot", "irons", "new plan", "gap wedge", "2.50", "Best plan"}) {
    CAPTURE(words);
    CHECK(says(text, words));
  }
  for (const std::string& line : lines_of(text)) CHECK(display_width(line) <= report_width);
}

TEST_CASE("text: the hazards of a hole, and those nobody reaches apart") {
  BandsReport report = sample_bands();
  report.hole = 4;
  for (BandOnTee& golfer : report.result.golfers) {
    const HazardView bunker{3, Ground::bunker, HazardSide::left, 373.0, 393.0, false};
    golfer.holes[0].before.hazards.push_back({bunker, 0.0, 0.0, 0.0});
    golfer.holes[0].after.hazards.push_back({bunker, 0.0, 0.0, 0.0});
  }
  const std::string text = bands_text(report);
  CHECK(says(text, "Hole 4, tee shots: men, middle tees"));
  CHECK(says(text, "2. bunker right at 209-229"));
  CHECK(says(text, "Out of everyone's reach: 4. bunker left at 373-393."));
  for (const std::string& line : lines_of(text)) CHECK(display_width(line) <= report_width);
}

TEST_CASE("text: what a changed hazard does stands alone") {
  const std::string text = bands_text(sample_changed_bands());
  CHECK(says(text, "Hole 4, the bunker right moved: men"));
  CHECK(says(text, "209-229"));
  CHECK(says(text, "0.25"));
  CHECK_FALSE(says(text, "greens in"));
  CHECK(says(text, "other carry"));
  BandsReport as_they_are = sample_changed_bands();
  as_they_are.result.change = {};
  CHECK_FALSE(says(bands_text(as_they_are), "other carry"));
  for (const std::string& line : lines_of(text)) CHECK(display_width(line) <= report_width);
}

TEST_CASE("text: who cannot finish is told why") {
  BandsReport report = sample_bands();
  report.result.golfers[1].cannot_finish = {{6, 150.0}, {9, 0.0}};
  const std::string why =
      "cannot be finished with these clubs in 30 strokes a hole: hole 6 needs a carry of 150 yards; hole 9 has a "
      "place from which the shots of the plan hardly get the ball to the hole";
  CHECK(says(test::words_of(bands_text(report)), "- bogey men, middle tees: " + why));
  CHECK(Json::parse(bands_json(report))["golfers"][1]["cannot_finish"] == why);
  CHECK(says(bands_csv(report), why));
  report.result.units = Units::metres;
  CHECK(says(test::words_of(bands_text(report)), "hole 6 needs a carry of 137 metres"));
}

TEST_CASE("JSON of bands keeps its contract") {
  const Json json = Json::parse(bands_json(sample_bands()));
  CHECK(json["format"] == "yardworth/bands/1");
  CHECK(json["change"] == Json{{"driver_carry_yd", 20.0}, {"irons_carry_yd", 0.0}});
  CHECK(json["plan"] == "habit");
  CHECK(json["tees"][0] == Json{{"name", "middle"}, {"length_yd", 6013.0}, {"slope", 124.0}, {"rated_for", "men"}});
  REQUIRE(json["golfers"].size() == 4);
  const Json& golfer = json["golfers"][1];
  CHECK(golfer["band"] == "bogey");
  CHECK(golfer["gender"] == "men");
  CHECK(golfer["tee"] == "middle");
  CHECK(golfer["round"]["strokes_saved"] == 1.5);
  CHECK(golfer["handicap_index_change"] == -1.5);
  CHECK(golfer["green_in_regulation_share"] == Json{{"before", 0.25}, {"after", 0.375}});
  CHECK(golfer["approach_share"]["before"] == Json{{"driver", 0.5}, {"7-iron", 0.5}});
  CHECK(golfer["clubs_apart_from_scratch"] == 1.5);
  const Json& hazard = golfer["holes"][0]["hazards"][0];
  CHECK(hazard["number"] == 2);
  CHECK(hazard["found_probability"] == Json{{"before", 0.125}, {"after", 0.0625}});
  CHECK(hazard["reached_probability"] == Json{{"before", 0.5}, {"after", 0.75}});
  CHECK(hazard["cleared_probability"] == Json{{"before", 0.25}, {"after", 0.5}});
  CHECK(json["golfers"][3]["handicap_index_change"].is_null());
  CHECK(json["suiting_tees"][0]["recommended_length_yd"] == Json{6200.0, 6400.0});
  CHECK(json["suiting_tees"][0]["tee_by_length"].is_null());
  CHECK_FALSE(json.contains("changed_hazards"));

  const Json changed = Json::parse(bands_json(sample_changed_bands()));
  CHECK(changed["changed_hazards"][0] == Json{{"hole", 4}, {"number", 2}, {"added", false}});
  CHECK(changed["golfers"][0]["changed_holes"][0]["with"]["strokes_before"] == 5.25);
  CHECK(changed["golfers"][0]["changed_holes"][0]["without"]["strokes_before"] == 5.0);
}

TEST_CASE("JSON of bands has null for what was not computed, and for fairways where there are none") {
  BandsReport report = sample_bands();
  for (BandHole& hole : report.result.golfers[0].holes) hole.par = 3;
  report.result.golfers[1].holes[0].par = 4;
  report.result.replanning_computed = false;
  const Json json = Json::parse(bands_json(report));
  CHECK(json["golfers"][0]["fairway_share"] == Json{{"before", nullptr}, {"after", nullptr}});
  CHECK(json["golfers"][1]["fairway_share"]["before"].is_number());
  CHECK(json["golfers"][0]["round"]["from_irons"].is_number());
  CHECK(json["golfers"][0]["round"]["from_replanning"].is_null());
  CHECK(json["golfers"][0]["holes"][0]["from_replanning"].is_null());
}

TEST_CASE("CSV of bands: one row for each band and tee, all of the same width") {
  const std::vector<std::string> rows = lines_of(bands_csv(sample_bands()));
  REQUIRE(rows.size() == 5);
  CHECK(rows[0].rfind("band,gender,tee,course,plan,cannot_finish,length_yd,strokes_before", 0) == 0);
  CHECK(says(rows[0], ",approach_driver_before_share,"));
  CHECK(says(rows[0], ",approach_8_iron_after_share"));
  for (const std::string& row : rows) CHECK(cells_of(row) == cells_of(rows[0]));
  CHECK(rows[2].rfind("bogey,men,middle,Heron Ferry Municipal,habit,,6013,91,89.5,1.5,1.5,0,,", 0) == 0);
  BandsReport report = sample_bands();
  report.result.golfers[1].cannot_finish = {{6, 150.0}};
  CHECK(cells_of(lines_of(bands_csv(report))[2]) == cells_of(rows[0]));
}

TEST_CASE("CSV of hazards: those of the hole, or both ways where they are changed") {
  BandsReport report = sample_bands();
  report.hole = 4;
  const std::vector<std::string> rows = lines_of(bands_hazards_csv(report));
  REQUIRE(rows.size() == 5);
  for (const std::string& row : rows) CHECK(cells_of(row) == cells_of(rows[0]));
  CHECK(says(rows[1], "scratch,men,middle"));
  CHECK(says(rows[1], ",4,as they are,2,bunker right at 209-229,209,229,0.125,0.0625,0.5,0.75,0.25,0.5,"));
  const std::vector<std::string> changed = lines_of(bands_hazards_csv(sample_changed_bands()));
  REQUIRE(changed.size() == 9);
  CHECK(says(changed[1], "as they are"));
  CHECK(says(changed[2], "changed"));
  CHECK(says(changed[2], "5.25"));
}

TEST_CASE("CSV: what was not computed is empty, and no band is a date") {
  BandsReport report = sample_bands();
  report.result.golfers[0].band = Band::from_6_to_12;
  report.result.golfers[0].before.approach.clear();
  report.result.golfers[0].holes[0].par = 3;
  const std::vector<std::string> rows = lines_of(bands_csv(report));
  CHECK(rows[1].rfind(
            "6 to 12,men,middle,Heron Ferry Municipal,habit,,6013,72,71,1,1,0,,-1,0.25,0.375,,,0.75,1,6-iron,8-iron,"
            "1.5,-1.25,18,72,71,30,32,,,,0,0,1",
            0) == 0);
  report.result.replanning_computed = true;
  report.result.units = Units::metres;
  CHECK(says(lines_of(bands_csv(report))[0], ",length_m,"));
  CHECK(says(lines_of(bands_csv(report))[2], "habit,,5498.2872,91,89.5,1.5,1.5,0,0,"));
  report.hole = 4;
  report.result.golfers[0].cannot_finish = {{6, 150.0}};
  const std::vector<std::string> hazards = lines_of(bands_hazards_csv(report));
  REQUIRE(hazards.size() == 5);
  CHECK(says(hazards[1], "hole 6 needs a carry of 137 metres"));
  CHECK(cells_of(hazards[1]) == cells_of(hazards[0]));
}

TEST_CASE("names from files are safe in every format") {
  BandsReport report = sample_bands();
  report.result.course = "\x1b]0;owned\x07";
  report.result.tees[0].name = "=\x1b[31m\xff";
  report.opening = {"\x9b opened"};
  for (const std::string& text : {bands_text(report), bands_json(report), bands_csv(report)}) {
    CHECK_FALSE(says(text, "\x1b"));
    CHECK_FALSE(says(text, "\xff"));
  }
  CHECK(says(bands_csv(report), "'="));
  CHECK(says(bands_text(sample_bands(), true), "\x1b[1m"));
}
