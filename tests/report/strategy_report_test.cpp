#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "report/text.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using test::says;

using Json = nlohmann::ordered_json;

constexpr Aim down_the_middle{0.0, 215.0, AimMark::middle, AimSide::straight, 0.0};
constexpr Aim left_of_middle{-12.0, 215.0, AimMark::middle, AimSide::left, 12.0};
constexpr Aim left_edge{-15.0, 215.0, AimMark::fairway_edge, AimSide::left, 0.0};

TeeOption option(const std::string& club, const Aim& aim, double strokes, double costs) {
  return {club, 200.0, aim, strokes, costs};
}

StrategyReport sample_strategy() {
  TeePlay before;
  before.tee_shot = option("5-wood", down_the_middle, 4.75, 0.0);
  before.alternatives = {option("driver", left_edge, 4.875, 0.125)};
  before.next = {{Ground::fairway, "", 0.75, 160.0, {{"6-iron", 0.75}, {"7-iron", 0.25}}},
                 {Ground::fairway, "short", 0.25, 180.0, {{"5-iron", 1.0}}},
                 {Ground::out_of_bounds, "", 0.25, 380.0, {{"5-wood", 1.0}}}};
  TeePlay after = before;
  after.tee_shot = option("driver", left_of_middle, 4.5, 0.0);
  HoleStrategy hole{7, 4, 380.0, before, after, {}, {}, {}, {}, ""};
  hole.policy_change.kind = PolicyChange::Kind::other_club;
  hole.policy_change.club_kept = "5-wood";
  hole.policy_change.club = "driver";
  hole.policy_change.carry_now_on = {{2, Ground::penalty_area, HazardSide::across, 190.0, 214.0, false}, 214.0};
  hole.hazards = {{{0, Ground::bunker, HazardSide::right, 226.0, 244.0, false}, 0.125, 0.25},
                  {{1, Ground::trees, HazardSide::left, 300.0, 320.0, false}, 0.001, 0.002}};
  StrategyResult result;
  result.course = "Heron Ferry Municipal";
  result.tee = "middle";
  result.player = "weekend 16";
  result.change = Change{20.0, 6.0};
  result.holes = {hole};
  result.baseline_name = "anchored";
  result.baseline_source = "published";
  result.cautions = {{Caution::Kind::ratings_are_the_associations}};
  return {result, {"Assumed: middle tees."}};
}

}  // namespace

TEST_CASE("a strategy says of clubs that miss to one side which plan allows for it") {
  StrategyReport report = sample_strategy();
  report.result.notes.push_back({Note::Kind::misses_to_one_side, 0.0, {{"", radians(-3.0)}}});
  const std::string words =
      "Every club misses 3 degrees to the left on average: the best plan aims off for it, the habit does not.";
  CHECK(says(test::words_of(strategy_text(report)), words));
  CHECK(says(strategy_json(report), words));
}

TEST_CASE("the advice for a hole in one sentence") {
  HoleStrategy hole = sample_strategy().result.holes.front();
  CHECK(strategy_sentence(hole, Units::yards) ==
        "Driver 12 yards left of the middle instead of 5-wood down the middle: 4.75 strokes become 4.50; the carry "
        "over the penalty area at 214 is now on with driver.");
  hole.policy_change = {};
  hole.after->tee_shot = option("5-wood", down_the_middle, 4.5, 0.0);
  CHECK(strategy_sentence(hole, Units::yards) == "5-wood down the middle, as before: 4.75 strokes become 4.50.");
  hole.after.reset();
  CHECK(strategy_sentence(hole, Units::yards) == "5-wood down the middle: 4.75 strokes.");
}

TEST_CASE("text of a strategy: the advice, then the tables") {
  const std::string text = strategy_text(sample_strategy());
  CHECK(text.rfind("Assumed: middle tees.\n\nThe best plan of weekend 16", 0) == 0);
  CHECK(says(text, "\nHole 7, par 4, 380 yards\nDriver 12 yards left"));
  CHECK(says(text, "before  5-wood down the middle"));
  CHECK(says(text, "or driver at the left edge of the fairway     4.88  +0.12"));
  CHECK(says(text, "75%         160  6-iron 75%, 7-iron 25%"));
  CHECK(says(text, "  short third"));
  CHECK(says(text, "out of bounds, again"));
  CHECK(says(text, "bunker right at 226-244     12%    25%"));
  CHECK_FALSE(says(text, "trees left"));
  CHECK_FALSE(says(text, "Proof"));
  CHECK(says(text, "- Course ratings and handicaps are for the authorised golf association"));
  CHECK(says(strategy_text(sample_strategy(), true), "\x1b[1mDriver 12 yards"));
}

TEST_CASE("text of several holes begins with all of them at a glance") {
  StrategyReport report = sample_strategy();
  report.result.holes.push_back(report.result.holes.front());
  report.result.holes.back().number = 8;
  const std::string text = strategy_text(report);
  CHECK(says(text, "takes 9.5"));
  CHECK(says(text, "   8    4    380  driver 12 yards left of the middle     4.50    4.75\n"));
}

TEST_CASE("text tells the proof where there is one") {
  StrategyReport report = sample_strategy();
  report.result.holes.front().proof_before = OptimalityProof{2.5e-9, 812, 0.0041};
  CHECK(
      says(strategy_text(report), "Proof: nothing played from any of 812 places beats the plan by more than 2.5e-09"));
  const Json hole = Json::parse(strategy_json(report))["holes"][0];
  CHECK(hole["proof"]["before"] == Json{{"largest_residual", 2.5e-9}, {"states", 812}, {"baseline_bound", 0.0041}});
}

TEST_CASE("JSON of a strategy") {
  const Json json = Json::parse(strategy_json(sample_strategy()));
  CHECK(json["format"] == "yardworth/strategy/1");
  CHECK(json["change"]["driver_carry_yd"] == 20.0);
  const Json& hole = json["holes"][0];
  CHECK(hole["number"] == 7);
  CHECK(hole["before"]["strokes"] == 4.75);
  CHECK(hole["after"]["tee_shot"]["club"] == "driver");
  CHECK(hole["before"]["alternatives"][0]["costs"] == 0.125);
  CHECK(hole["before"]["alternatives"][0]["aim"]["right_yd"] == -15.0);
  CHECK(hole["before"]["next_shot"][0]["third"].is_null());
  CHECK(hole["before"]["next_shot"][1]["third"] == "short");
  CHECK(hole["hazards"][0]["probability"] == Json{{"before", 0.125}, {"after", 0.25}});
  CHECK(hole["hazards"][1]["kind"] == "trees");
  CHECK_FALSE(hole.contains("proof"));

  StrategyReport alone = sample_strategy();
  alone.result.change.reset();
  alone.result.holes.front().after.reset();
  const Json before_only = Json::parse(strategy_json(alone));
  CHECK_FALSE(before_only.contains("change"));
  CHECK_FALSE(before_only["holes"][0].contains("after"));
  CHECK_FALSE(before_only["holes"][0].contains("plan_change"));
}

TEST_CASE("CSV of a strategy has a row for each hole and option") {
  std::istringstream stream(strategy_csv(sample_strategy()));
  std::vector<std::string> lines;
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  REQUIRE(lines.size() == 5);
  CHECK(lines[0] ==
        "hole,par,length_yd,when,option,tee_club,aim_words,aim_right_yd,carry_yd,strokes,costs,course,tee,player\r");
  CHECK(lines[1] == "7,4,380,before,0,5-wood,down the middle,0,200,4.75,0,Heron Ferry Municipal,middle,weekend 16\r");
  CHECK(lines[4].rfind("7,4,380,after,1,driver,", 0) == 0);
}

TEST_CASE("names from files are harmless in every format") {
  StrategyReport report = sample_strategy();
  report.result.player = "\x1b]0;owned\x07";
  report.result.holes.front().before.tee_shot.club = "=cmd\x9b\n";
  report.result.holes.front().before.next.front().clubs = {{"\x1b[2J", 1.0}};
  for (const std::string& written : {strategy_text(report), strategy_csv(report), strategy_json(report)}) {
    CHECK(written.find('\x1b') == std::string::npos);
    CHECK(written.find('\x9b') == std::string::npos);
  }
  CHECK(says(strategy_csv(report), ",'=cmd\\x9B\\x0A,"));
}

TEST_CASE("text of a strategy keeps within its width") {
  StrategyReport report = sample_strategy();
  TeePlay& policy = *report.result.holes.front().after;
  policy.tee_shot.club = std::string(60, 'c');
  policy.next.front().clubs = {{"50-degree wedge", 0.4}, {"54-degree wedge", 0.35}, {"pitching wedge", 0.25}};
  for (const std::size_t columns : {std::size_t{60}, std::size_t{80}, std::size_t{100}}) {
    std::istringstream stream(strategy_text(report, false, columns));
    for (std::string line; std::getline(stream, line);) {
      CAPTURE(line);
      CHECK(display_width(line) <= columns);
    }
  }
}

TEST_CASE("the aims of a hole are told from one line") {
  constexpr Aim beside_line{20.0, 215.0, AimMark::line_of_play, AimSide::right, 20.0};
  HoleStrategy hole = sample_strategy().result.holes.front();
  hole.policy_change = {};
  hole.before.tee_shot = option("5-wood", {-3.0, 190.0, AimMark::middle, AimSide::left, 3.0}, 4.75, 0.0);
  hole.after->tee_shot = option("driver", beside_line, 4.5, 0.0);
  CHECK(strategy_sentence(hole, Units::yards) ==
        "Driver 20 yards right of the line of play instead of 5-wood 3 yards left of the line of play: 4.75 strokes "
        "become 4.50.");
  hole.before.tee_shot.aim = down_the_middle;
  CHECK(says(strategy_sentence(hole, Units::yards), "instead of 5-wood down the line of play:"));
  StrategyReport report = sample_strategy();
  report.result.holes = {hole};
  CHECK(says(strategy_text(report), "or driver 15 yards left of the line of play"));
  CHECK_FALSE(says(strategy_text(report), "of the fairway     "));
  // Marks of the fairway stand beside each other, but not distances from two of them.
  hole = sample_strategy().result.holes.front();
  hole.policy_change = {};
  hole.before.tee_shot.aim = left_edge;
  CHECK(says(strategy_sentence(hole, Units::yards),
             "Driver 12 yards left of the line of play instead of 5-wood 15 yards left of the line of play"));
  hole.after->tee_shot.aim = down_the_middle;
  CHECK(says(strategy_sentence(hole, Units::yards),
             "Driver down the middle instead of 5-wood at the left edge of the fairway"));
}

}  // namespace yardworth
