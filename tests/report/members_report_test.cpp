#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "report/text.hpp"
#include "support/step_values.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

using namespace yardworth;
using test::lines_of;
using test::says;

namespace {

using Json = nlohmann::ordered_json;

MemberOnTee sample_on_tee(double before, double saved, bool rated) {
  MemberOnTee on_tee;
  on_tee.round = test::of_carries(before, before - saved, before - saved, before - saved);
  on_tee.second_shot_before = "5-iron";
  on_tee.second_shot_after = "7-iron";
  on_tee.clubs_apart = 1.5;
  on_tee.clubs_longer = -1.25;
  if (rated) on_tee.scores = MemberScores{18, before - 18.0, before - saved - 18.0, 31.0, 31.0 + saved, -saved};
  return on_tee;
}

MemberResult sample_member(const std::string& label, Gender gender, double saved) {
  MemberResult member;
  member.member = {label, 16.4, gender, 192.0};
  member.driver_distance_yd = 213.0;
  member.recommended = {5200.0, 5400.0, false};
  member.by_length = 1;
  member.by_clubs = gender == Gender::men ? 0 : 1;
  member.usual_tee = *member.by_clubs;
  member.from_tees = {sample_on_tee(90.0, saved, gender == Gender::men),
                      sample_on_tee(86.0, saved, gender == Gender::women)};
  return member;
}

MembersReport sample_members() {
  MembersResult result;
  result.course = "Heron Ferry Municipal";
  result.tees = {{"middle", 6013.0, 124.0, Gender::men}, {"forward", 5210.0, 121.0, Gender::women}};
  result.longest_tee = "back";
  result.change = {20.0, 0.0};
  result.holes = 18;
  result.members = {sample_member("weekend 16 man", Gender::men, 1.0), sample_member("a woman", Gender::women, 2.0),
                    sample_member("third", Gender::men, 1.5)};
  result.golfers_worked_out = 3;
  result.notes = {{Note::Kind::members_have_standard_bags}, {Note::Kind::members_taken_together}};
  result.cautions = {{Caution::Kind::swing_changes_load_the_body}, {Caution::Kind::ratings_are_the_associations}};
  return {result, {}};
}

}  // namespace

TEST_CASE("the answer about members says what they gain, who most and least, and which tees suit how many") {
  MembersReport report = sample_members();
  CHECK(members_sentence(report.result) ==
        "On Heron Ferry Municipal 20 more yards of driver carry save 3 members 1.5 strokes a round on average, a woman "
        "most, 2.0, and weekend 16 man least, 1.0; by the clubs of their second shots the middle tees suit 2 of them, "
        "the forward tees 1.");
  report.result.members.resize(1);
  CHECK(members_sentence(report.result) ==
        "On Heron Ferry Municipal 20 more yards of driver carry save weekend 16 man 1.0 strokes a round; by the clubs "
        "of the second shots the middle tees suit.");
  report.result.change = {0.0, 0.0};
  CHECK(says(members_sentence(report.result), "With no carry gained or lost nothing changes"));
}

TEST_CASE("text about members: one table, what it rests on, the cautions") {
  const std::string text = members_text(sample_members());
  for (const char* words :
       {"weekend 16 man", "16.4", "middle", "90.0", "1.00", "72.0 -> 71.0", "31.0 -> 32.0", "tees by", "forward",
        "What it rests on", "a standard bag", "worked out together", "Cautions", "qualified", "golf association"}) {
    CAPTURE(words);
    CHECK(says(text, words));
  }
  for (const std::size_t width : {std::size_t{60}, std::size_t{80}, std::size_t{100}}) {
    for (const std::string& line : lines_of(members_text(sample_members(), false, width))) {
      CHECK(display_width(line) <= width);
    }
  }
}

TEST_CASE("labels of members are data, whatever they hold") {
  MembersReport report = sample_members();
  report.result.members[0].member.label = "=cmd()\x1b[2J,\"\n\xff" + std::string(900, 'x');
  const std::string text = members_text(report);
  CHECK_FALSE(says(text, "\x1b[2J"));
  for (const std::string& line : lines_of(text)) CHECK(display_width(line) <= report_width);
  const std::string csv = members_csv(report);
  CHECK(says(csv, "\"'=cmd()"));
  CHECK_FALSE(says(csv, "\x1b"));
  CHECK(lines_of(csv).size() == 7);
  const Json json = Json::parse(members_json(report));
  CHECK(json["members"].size() == 3);
}

TEST_CASE("csv and JSON of members have every tee, and nothing where tees are not rated") {
  MembersReport report = sample_members();
  const Json json = Json::parse(members_json(report));
  CHECK(json["format"] == "yardworth/members/1");
  const Json& man = json["members"][0];
  CHECK(man["from_tees"][0]["scores"]["stableford_mean"]["after"] == 32.0);
  CHECK_FALSE(man["from_tees"][1].contains("scores"));
  CHECK(man["tee_by_length"] == "forward");
  report.result.members[0].from_tees[0].cannot_finish = {{1, 120.0}};
  CHECK(says(Json::parse(members_json(report))["members"][0]["from_tees"][0]["cannot_finish"], "needs a carry"));
  CHECK(says(members_text(report), "needs a carry of 120 yards"));
  const auto lines = lines_of(members_csv(report));
  const auto commas = [](const std::string& line) { return std::count(line.begin(), line.end(), ','); };
  CHECK(commas(lines[2]) == commas(lines[0]));
}
