#include <doctest/doctest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "report/gain_parts.hpp"
#include "report/sample_gain.hpp"
#include "report/text.hpp"
#include "support/words.hpp"
#include "yardworth/units.hpp"

using namespace yardworth;
using test::lines_of;
using test::sample_gain;
using test::says;

namespace {

using Json = nlohmann::ordered_json;

std::vector<std::string> keys_of(const Json& json) {
  std::vector<std::string> keys;
  for (const auto& item : json.items()) keys.push_back(item.key());
  return keys;
}

// Names that would break each of the formats if they were written as they are.
GainReport nasty_gain() {
  GainReport report = sample_gain();
  report.result.course = "\x1b]0;owned\x07 <script>alert(1)</script>";
  report.result.player = "=HYPERLINK(\"x\"),\nsecond line";
  report.result.tee = "\xff\xfe";
  report.result.best->holes[0].before.club = "@driver";
  report.result.best->holes[0].before.next_club = "5\"iron";
  report.result.best->holes[0].before.next_shares = {{"5\"iron", 0.5}, {"\x1b[31m", 0.25}, {"\xff", 0.25}};
  report.result.baseline_name = "a\x1b[2Jname";
  report.opening = {"\x9b opened \x1b[1m"};
  return report;
}

GainReport with_curve() {
  GainReport report = sample_gain();
  report.curve = {{{0.0, 0.0}, test::of_carries(92.5, 92.5, 92.5, 92.5)},
                  {{20.0, 6.0}, test::of_carries(92.5, 91.25, 90.9375, 90.75)}};
  return report;
}

}  // namespace

TEST_CASE("JSON of a gain keeps its contract") {
  const Json json = Json::parse(gain_json(sample_gain()));
  CHECK(json["format"] == "yardworth/gain/1");
  CHECK(json["course"] == "Heron Ferry Municipal");
  CHECK(json["tee"] == "middle");
  CHECK(json["player"] == "weekend 16");
  CHECK(json["band"] == "13-20");
  CHECK(json["method"] == "play");
  CHECK(json["plan"] == "both");
  CHECK(json["change"] == Json{{"driver_carry_yd", 20.0},
                               {"irons_carry_yd", 6.0},
                               {"clubs", Json::array()},
                               {"carry_sd_share", 0.0},
                               {"direction_sd_share", 0.0},
                               {"direction_mean_deg", 0.0},
                               {"poor_strike_probability", 0.0},
                               {"short_game_share", 0.0},
                               {"putting_share", 0.0},
                               {"reference_iron", "7-iron"}});
  CHECK(json["round"] == Json{{"strokes_before", 92.5},
                              {"strokes_after", 90.75},
                              {"strokes_saved", 1.75},
                              {"from_tee", 1.25},
                              {"from_irons", 0.3125},
                              {"from_replanning", 0.1875},
                              {"steps", json["round"]["steps"]}});
  CHECK(json["round"]["steps"] == Json{{{"step", "driver carry"}, {"strokes_after", 91.25}, {"strokes_saved", 1.25}},
                                       {{"step", "irons carry"}, {"strokes_after", 90.9375}, {"strokes_saved", 0.3125}},
                                       {{"step", "replanning"}, {"strokes_after", 90.75}, {"strokes_saved", 0.1875}}});
  CHECK(json["replanning_computed"] == true);
  CHECK(json["baseline"] == Json{{"name", "anchored 16.2 men"}, {"source", "published yardage ratings"}});
  CHECK(json["notes"] == Json{"The player's own shots are played until the ball lies within 50 yards of the hole; from "
                              "there the baseline counts."});
  CHECK(json["cautions"] == Json{"Course ratings and handicaps are for the authorised golf association; nothing here "
                                 "stands in for them."});
  CHECK(json["habit"]["round"]["strokes_before"] == 94.0);
  CHECK(json["habit"]["holes"].size() == 2);
  CHECK_FALSE(json.contains("curve"));
}

TEST_CASE("how long it takes until a saving shows: in JSON unrounded, in words for a golfer") {
  GainReport report = sample_gain();
  report.result.best->holes[0].strokes_variance = 9.0;
  report.result.best->holes[0].before.left_sd_yd = 24.0;
  const Json show = Json::parse(gain_json(report))["rounds_to_show"];
  CHECK(keys_of(show) == std::vector<std::string>{"score_sd", "rounds_for_scores", "left_sd_yd", "left_change_yd",
                                                  "rounds_for_left", "holes_longer_than_par_3"});
  CHECK(show["score_sd"] == 3.0);
  // 2 (1.9600 + 0.8416)^2 x 9 / 1.75^2 = 46.13; of 24 yards for 19 fewer 25.05.
  CHECK(show["rounds_for_scores"].get<double>() == doctest::Approx(46.13).epsilon(0.001));
  CHECK(show["rounds_for_left"].get<double>() == doctest::Approx(25.05).epsilon(0.001));
  const std::string text = gain_text(report);
  CHECK(says(text, "How long until it shows"));
  CHECK(says(text, "vary by 3.0 strokes"));
  CHECK(says(text, "47 rounds"));
  CHECK(says(text, "26 rounds"));
  // Twice the spread takes four times the rounds: more than anyone plays.
  report.result.best->holes[0].strokes_variance = 36.0;
  const std::string long_after = test::words_of(gain_text(report));
  CHECK(says(long_after,
             "Scores alone will not show 1.75 strokes a round: it would take 185 rounds before the change and as many "
             "after it, more than a keen golfer plays in two seasons. What the tee shot leaves to the hole shows "
             "sooner: 19 yards less on average, seen after 26 rounds"));
  CHECK_FALSE(says(long_after, "likely to be seen"));
  report.result.best->holes[0].before.left_sd_yd = 48.0;
  CHECK(says(test::words_of(gain_text(report)),
             "What the tee shot leaves to the hole will not show it either: 19 yards less on average, which takes 101 "
             "rounds"));
  report.result.best->round = test::of_carries(92.5, 92.5, 92.5, 92.5);
  CHECK(Json::parse(gain_json(report))["rounds_to_show"]["rounds_for_scores"].is_null());
  CHECK(says(gain_text(report), "nothing to see in the scores"));
  report.result.method = Method::table;
  CHECK_FALSE(Json::parse(gain_json(report)).contains("rounds_to_show"));
  CHECK_FALSE(says(gain_text(report), "How long until it shows"));
}

TEST_CASE("the holes in JSON make the round: strokes, their spread, and that of what tee shots leave") {
  GainReport report = sample_gain();
  PolicyGain& best = *report.result.best;
  best.holes.push_back(best.holes[0]);
  best.holes[0].strokes_variance = 1.75;
  best.holes[1].strokes_variance = 0.5;
  best.holes[2].strokes_variance = 1.25;
  best.holes[0].before.left_sd_yd = 24.0;
  best.holes[2].before.left_sd_yd = 32.0;
  best.holes[2].after.left_sd_yd = 30.0;
  const Json json = Json::parse(gain_json(report));
  double variance = 0.0;
  double left_variance = 0.0;
  int longer_holes = 0;
  for (const Json& hole : json["holes"]) {
    variance += hole["strokes_variance"].get<double>();
    if (hole["par"] == 3) continue;
    ++longer_holes;
    left_variance += std::pow(hole["left_sd_yd"]["before"].get<double>(), 2);
  }
  const Json& show = json["rounds_to_show"];
  CHECK(show["score_sd"] == doctest::Approx(std::sqrt(variance)).epsilon(1e-12));
  CHECK(show["left_sd_yd"] == doctest::Approx(std::sqrt(left_variance) / longer_holes).epsilon(1e-12));
  CHECK(show["holes_longer_than_par_3"] == longer_holes);
  CHECK(json["holes"][2]["left_sd_yd"]["after"] == 30.0);
  // The holes under the habit have no spread: nobody looked.
  CHECK_FALSE(json["habit"]["holes"][0].contains("strokes_variance"));
}

TEST_CASE("JSON of a hole keeps its contract, clubs in the order of the bag") {
  const Json hole = Json::parse(gain_json(sample_gain()))["holes"][0];
  CHECK(keys_of(hole) == std::vector<std::string>{"number", "par", "length_yd", "strokes_before", "strokes_after",
                                                  "strokes_saved", "from_tee", "from_irons", "from_replanning", "steps",
                                                  "tee_club", "left_yd", "left_sd_yd", "clubs_shorter", "next_club",
                                                  "fairway_probability", "penalty_probability", "plan_change"});
  CHECK(hole["strokes_saved"] == 0.5);
  CHECK(hole["tee_club"] == Json{{"before", "driver"}, {"after", "3-wood"}});
  CHECK(hole["left_yd"] == Json{{"before", 182.0}, {"after", 163.0}});
  CHECK(hole["clubs_shorter"] == 1.25);
  CHECK(hole["next_club"]["before"] == "5-iron");
  CHECK(hole["next_club"]["after"] == "7-iron");
  CHECK(hole["next_club"]["changed_probability"] == 0.875);
  CHECK(keys_of(hole["next_club"]["share_before"]) == std::vector<std::string>{"4-hybrid", "5-iron", "putter"});
  CHECK(hole["next_club"]["share_after"]["7-iron"] == 0.75);
  CHECK(hole["fairway_probability"] == Json{{"before", 0.5}, {"after", 0.625}});
  CHECK(hole["plan_change"] == "driver would now reach the penalty area right at 226-244, so 3-wood");
}

TEST_CASE("JSON of one plan has no second one, and numbers are not rounded") {
  GainReport report = sample_gain();
  report.result.best.reset();
  report.result.habit->round.before = 94.0 + 1.0 / 3.0;
  const Json json = Json::parse(gain_json(report));
  CHECK_FALSE(json.contains("habit"));
  CHECK(json["round"]["strokes_before"].get<double>() == 94.0 + 1.0 / 3.0);
}

TEST_CASE("JSON holds the curve that was asked for") {
  const Json curve = Json::parse(gain_json(with_curve()))["curve"];
  REQUIRE(curve.size() == 2);
  CHECK(curve[1]["driver_carry_yd"] == 20.0);
  CHECK(curve[1]["irons_carry_yd"] == 6.0);
  CHECK(curve[1]["strokes_saved"] == 1.75);
}

TEST_CASE("a curve names the hazards that come into reach, in JSON and in text") {
  GainReport report = with_curve();
  report.curve[1].into_reach = {{7, {2, Ground::bunker, HazardSide::left, 208.0, 228.0, false}}};
  const Json curve = Json::parse(gain_json(report))["curve"];
  CHECK(curve[0]["into_reach"].empty());
  REQUIRE(curve[1]["into_reach"].size() == 1);
  const Json& reached = curve[1]["into_reach"][0];
  CHECK(keys_of(reached) == std::vector<std::string>{"hole", "number", "words", "from_yd", "to_yd"});
  CHECK(reached["hole"] == 7);
  CHECK(reached["number"] == 3);
  CHECK(reached["words"] == "bunker left at 208-228");
  CHECK(says(gain_text(report),
             "Hazards that come into reach of one tee shot in ten:\n- at 20: hole 7, bunker left at 208-228\n"));
  CHECK_FALSE(says(gain_text(with_curve()), "come into reach"));
}

TEST_CASE("JSON carries any name and has only printable ASCII in it") {
  const std::string text = gain_json(nasty_gain());
  for (const char c : text) CHECK((c == '\n' || (c >= ' ' && c < '\x7f')));
  const Json json = Json::parse(text);
  CHECK(json["course"] == "\x1b]0;owned\x07 <script>alert(1)</script>");
  CHECK(json["player"] == "=HYPERLINK(\"x\"),\nsecond line");
  CHECK(json["tee"] == "\ufffd\ufffd");
}

TEST_CASE("JSON of a gain has null for what was not computed") {
  GainReport report = with_curve();
  CHECK(Json::parse(gain_json(report))["habit"]["round"]["from_replanning"].is_null());
  report.result.replanning_computed = false;
  const Json looked_no_further = Json::parse(gain_json(report));
  for (const Json& strokes :
       {looked_no_further["round"], looked_no_further["holes"][0], looked_no_further["curve"][1]}) {
    CHECK(strokes["from_irons"].is_number());
    CHECK(strokes["from_replanning"].is_null());
  }
  report.result.method = Method::table;
  CHECK(Json::parse(gain_json(report))["round"]["from_irons"].is_null());
}

namespace {

// How often marks of a round are broken, and nothing else of note.
PolicyScores sample_scores(double before, double after) {
  PolicyScores scores;
  scores.before.gross = {88, {0.25, 0.5, 0.25}};
  scores.after.gross = {87, {0.25, 0.5, 0.25}};
  scores.before.breaks = {{90, before}};
  scores.after.breaks = {{90, after}};
  scores.before.holes = scores.after.holes = {0.5, 6.25, 8.0, 3.25};
  return scores;
}

std::string text_with_scores(double before, double after) {
  GainReport report = sample_gain();
  report.result.mark = 90;
  report.result.best->scores = sample_scores(before, after);
  return gain_text(report);
}

}  // namespace

TEST_CASE("text of a gain says how often the mark is broken, in rounds of 100") {
  CHECK(says(text_with_scores(0.29, 0.414), "\nBreaks 90 in 41 rounds of 100 instead of 29.\n"));
  CHECK(says(text_with_scores(0.29, 0.2949), "\nBreaks 90 in 29 rounds of 100.\n"));
  CHECK(says(text_with_scores(0.001, 0.01), "\nBreaks 90 in 1 round of 100 instead of under 1.\n"));
  CHECK(says(text_with_scores(0.001, 0.001), "\nBreaks 90 in under 1 round of 100.\n"));
  CHECK(says(text_with_scores(0.99, 0.999), "\nBreaks 90 in more than 99 rounds of 100 instead of 99.\n"));
  CHECK_FALSE(says(gain_text(sample_gain()), "Breaks 90"));
}

TEST_CASE("a gain says of clubs that miss to one side which plan allows for it") {
  GainReport report = sample_gain();
  CHECK_FALSE(says(gain_text(report), "on average: the best plan"));
  report.result.notes.push_back({Note::Kind::misses_to_one_side, 0.0, {{"driver", radians(8.0)}}});
  const std::string words =
      "The driver misses 8 degrees to the right on average: the best plan aims off for it, the habit does not.";
  CHECK(says(test::words_of(gain_text(report)), words));
  CHECK(says(nlohmann::json::parse(gain_json(report))["notes"].dump(), words));
}

TEST_CASE("a gain says what is wanting for points and handicaps") {
  GainReport report = sample_gain();
  report.result.mark = 90;
  report.result.best->scores = sample_scores(0.25, 0.5);
  report.result.handicap_needs = {HandicapNeed::slope, HandicapNeed::stroke_indexes};
  const std::string text = gain_text(report);
  CHECK(says(text, "What is scored in a round"));
  CHECK(says(text, "25% -> 50%"));
  CHECK_FALSE(says(text, "Stableford points"));
  CHECK(says(text, "they need a slope of these tees"));
  const auto json = nlohmann::json::parse(gain_json(report));
  CHECK(json["scores"]["after"]["breaks"][0]["probability"] == 0.5);
  CHECK(json["scores"]["handicap_index_change"].is_null());
  CHECK_FALSE(json.contains("handicap"));
  CHECK(says(json["notes"].dump(), "a slope of these tees"));
}

TEST_CASE("the answer says how many clubs shorter second shots are, and what the typical one becomes") {
  GainReport report = sample_gain();
  const auto sentence = [&](const SecondShotChange& change) {
    report.result.best->second_shot = change;
    return report::second_shot_sentence(report.result);
  };
  CHECK(sentence({1.25, 1.25, {}, "5-iron", "7-iron"}) ==
        "Second shots are 1.2 clubs shorter on par 4s; the typical one of a par 4: 7-iron instead of 5-iron.");
  CHECK(
      sentence({0.9, 1.0, 0.2, "lay-up", "lay-up"}) ==
      "Second shots are 1.0 club shorter on par 4s and 0.2 on par 5s; the typical one of a par 4: lay-up, as before.");
  CHECK(
      sentence({-0.5, -0.6, 0.0, "7-iron", "6-iron"}) ==
      "Second shots are 0.6 clubs longer on par 4s and as long as before on par 5s; the typical one of a par 4: 6-iron "
      "instead of 7-iron.");
  CHECK(sentence({0.5, {}, 0.5, "", ""}) == "Second shots are 0.5 clubs shorter on par 5s.");
  CHECK(sentence({}).empty());
  report.result.change = {0.0, 0.0};
  CHECK(sentence({1.25, 1.25, {}, "5-iron", "7-iron"}).empty());
}

TEST_CASE("the answer says what control there is to spare, where it was asked for") {
  GainReport report = sample_gain();
  CHECK(report::control_sentence(report).empty());
  report.control_asked = true;
  CHECK(says(gain_text(report), "Under the habit plan nothing is saved that a loss of control could cost."));
  report.control = ControlToSpare{radians(1.5), 0.0625};
  CHECK(report::control_sentence(report) ==
        "Under the habit plan all of it is lost where every club spreads 1.5 degrees more in direction, or is struck "
        "poorly 6.2 times more in 100.");
  const Json json = Json::parse(gain_json(report));
  CHECK(json["control_to_spare"]["direction_sd_deg"] == doctest::Approx(1.5));
  CHECK(json["control_to_spare"]["poor_strike_probability"] == 0.0625);
}

TEST_CASE("CSV of a gain: a row for each hole, then the round") {
  const auto lines = lines_of(gain_csv(sample_gain()));
  REQUIRE(lines.size() == 4);
  CHECK(lines[0] ==
        "hole,par,length_yd,strokes_before,strokes_after,strokes_saved,from_tee,from_irons,from_replanning,"
        "tee_club_before,tee_club_after,left_before_yd,left_after_yd,clubs_shorter,next_club_before,"
        "next_club_after,next_club_changed_probability,fairway_before_probability,"
        "fairway_after_probability,penalty_before_probability,penalty_after_probability,"
        "birdie_or_better_before_probability,par_before_probability,bogey_before_probability,"
        "double_or_worse_before_probability,birdie_or_better_after_probability,par_after_probability,"
        "bogey_after_probability,double_or_worse_after_probability,mark,breaks_before_probability,"
        "breaks_after_probability,stableford_before,stableford_after,handicap_index_change,course,tee,player,method,"
        "plan,from_club_carry,from_carry_spread,from_direction_spread,from_mean_direction,from_poor_strikes,"
        "from_short_game,from_putting\r");
  CHECK(lines[1] ==
        "1,4,376,5.25,4.75,0.5,0.25,0.125,0.125,driver,3-wood,182,163,1.25,5-iron,7-iron,0.875,0.5,0.625,0.125,"
        "0.0625,,,,,,,,,,,,,,,Heron Ferry Municipal,middle,weekend 16,play,best,0,0,0,0,0,0,0\r");
  CHECK(lines[3] ==
        "round,7,518,92.5,90.75,1.75,1.25,0.3125,0.1875,,,,,1.25,,,,,,,,,,,,,,,,,,,,,,Heron Ferry "
        "Municipal,middle,weekend 16,play,"
        "best,0,0,0,0,0,0,0\r");
}

TEST_CASE("CSV of a gain: lengths in the course's units, and nothing that was not computed") {
  GainReport report = with_curve();
  report.result.units = Units::metres;
  const auto metres = lines_of(gain_csv(report));
  CHECK(says(metres[0], "hole,par,length_m,"));
  CHECK(says(metres[0], ",left_before_m,left_after_m,"));
  CHECK(metres[2].rfind("2,3,129.8448,3.5,", 0) == 0);
  CHECK(lines_of(gain_curve_csv(report))[2].rfind("18.288,5.4864,92.5,", 0) == 0);
  report.result.replanning_computed = false;
  CHECK(says(lines_of(gain_csv(report))[1], ",0.5,0.25,0.125,,driver,"));
  report.result.method = Method::table;
  CHECK(says(lines_of(gain_csv(report))[1], ",0.5,0.25,,,driver,"));
  CHECK(says(lines_of(gain_curve_csv(report))[2], ",1.75,1.25,,,Heron"));
}

TEST_CASE("CSV of nasty names keeps one row a line and no formula") {
  const std::string csv = gain_csv(nasty_gain());
  CHECK(lines_of(csv).size() == 4);
  CHECK(csv.find('\x1b') == std::string::npos);
  CHECK(says(csv, ",\"'=HYPERLINK(\"\"x\"\"),\\x0Asecond line\","));
  CHECK(says(csv, ",'@driver,"));
  CHECK(says(csv, ",\"5\"\"iron\","));
  CHECK(says(csv, ",\\xFF\\xFE,"));
}

TEST_CASE("CSV of the curve") {
  const auto lines = lines_of(gain_curve_csv(with_curve()));
  REQUIRE(lines.size() == 3);
  CHECK(says(lines[0], "driver_carry_yd,irons_carry_yd,strokes_before,"));
  CHECK(says(lines[2], "20,6,92.5,90.75,1.75,1.25,0.3125,0.1875,"));
}

TEST_CASE("text begins with what was assumed, then the answer") {
  GainReport report = sample_gain();
  report.opening = {"The built-in course."};
  const std::string text = gain_text(report);
  CHECK(text.rfind("The built-in course.\n\n20 more yards of driver carry", 0) == 0);
  CHECK(gain_text(sample_gain()).rfind("20 more yards", 0) == 0);
}

TEST_CASE("text has the sections in their order") {
  GainReport report = with_curve();
  const std::string text = gain_text(report);
  std::size_t last = 0;
  for (const char* title : {"\nThe round\n", "\nThe holes, best plan\n", "\nWhere the plan changed\n",
                            "\nWhat is played after the tee shot", "\nStrokes saved a round against added carry\n",
                            "\nWhat it rests on\n", "\nCautions\n"}) {
    const std::size_t at = text.find(title);
    CAPTURE(title);
    REQUIRE(at != std::string::npos);
    CHECK(at > last);
    last = at;
  }
}

TEST_CASE("text shows both plans side by side, and the holes of the answer") {
  const std::string text = gain_text(sample_gain());
  CHECK(says(text, "best plan     92.50    90.75   1.75      1.25      0.31        0.19\n"));
  CHECK(says(text, "habit plan    94.00    92.50   1.50      1.12      0.38           -\n"));
  CHECK(says(text, "driver -> 3-wood"));
  CHECK(says(text, "182 -> 163"));
  CHECK(says(text, "5-iron -> 7-iron"));
  CHECK(says(text, "- hole 1: driver would now reach the penalty area right at 226-244, so 3-wood\n"));
  CHECK(says(text, "- The player's own shots are played until the ball lies within 50 yards of the hole"));
  CHECK(says(text, "- Course ratings and handicaps are for the authorised golf association"));
}

TEST_CASE("text sums the second shots of the holes longer than a par 3") {
  const std::string text = gain_text(sample_gain());
  CHECK(says(text, "on the one hole longer than a par 3"));
  CHECK(says(text,
             "                            percentage\n"
             "second shot  before  after      points\n"
             "4-hybrid        25%     0%         -25\n"
             "5-iron          50%    25%         -25\n"
             "7-iron           0%    75%         +75\n"
             "putter          25%     0%         -25\n"));
  CHECK(says(text, "Of these tee shots 50% -> 62% finish on the fairway and 12% -> 6% cost a penalty stroke."));
}

TEST_CASE("text says what was not computed") {
  GainReport report = sample_gain();
  CHECK_FALSE(says(gain_text(report), "was not computed"));
  report.result.replanning_computed = false;
  CHECK(says(gain_text(report), "What playing the course differently would save was not computed"));
  report.result.method = Method::table;
  CHECK(says(gain_text(report), "is 0 by construction"));
}

TEST_CASE("text of a course in metres is in metres") {
  GainReport report = sample_gain();
  report.result.units = Units::metres;
  const std::string text = gain_text(report);
  CHECK(says(text, "166 -> 149"));
  CHECK(says(text, " 344 "));
}

TEST_CASE("text keeps within its width, also with the longest names of clubs") {
  GainReport report = sample_gain();
  HoleGain& hole = report.result.best->holes[0];
  hole.number = 18;
  hole.before.club = "driver";
  hole.after.club = "driver";
  hole.before.next_club = "50-degree wedge";
  hole.before.next_shares = {{"50-degree wedge", 0.41}, {"pitching wedge", 0.59}};
  hole.after.next_club = "short game";
  hole.after.next_shares = {{"short game", 1.0}};
  report.opening = {std::string(40, 'a') + " " + std::string(40, 'b') + " " + std::string(40, 'c')};
  for (const std::size_t columns : {std::size_t{60}, std::size_t{80}, std::size_t{100}}) {
    for (const std::string& line : lines_of(gain_text(report, false, columns))) {
      CAPTURE(line);
      CHECK(display_width(line) <= columns);
    }
  }
}

TEST_CASE("text shows control characters and is bold only where that is wanted") {
  const std::string plain = gain_text(nasty_gain());
  CHECK(plain.find('\x1b') == std::string::npos);
  CHECK(plain.find('\x9b') == std::string::npos);
  CHECK(says(plain, "\\x1B]0;owned\\x07 <script>"));
  CHECK(says(plain, "a\\x1B[2Jname"));
  CHECK(says(plain, "\\xFF\\xFE tees"));
  const std::string bold = gain_text(sample_gain(), true);
  CHECK(bold.rfind("\x1b[1m20 more", 0) == 0);
  CHECK(says(bold, "\x1b[0m\nSecond shots are"));
}
