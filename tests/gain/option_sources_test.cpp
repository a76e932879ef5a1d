#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <string>

#include "gain/measured_change.hpp"
#include "gain/player_change.hpp"
#include "gain/saved_draws.hpp"
#include "gain/strike_change.hpp"
#include "support/courses.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/options.hpp"
#include "yardworth/read.hpp"
#include "yardworth/shot_log.hpp"
#include "yardworth/weigh.hpp"

namespace yardworth {
namespace {

const Player& the_weekend_golfer() {
  static const Player player = test::scenario_member("weekend-16-man");
  return player;
}

using TextsByName = std::map<std::string, std::string>;

// As a program hands files in: nothing but what it has.
TextOfFile texts_of(const TextsByName& files) {
  return [&files](const std::string& name, std::size_t /*most_bytes*/) -> Reading<std::string> {
    const auto file = files.find(name);
    if (file != files.end()) return {file->second, {}};
    return {std::nullopt, {file_fault(name, "no such file", "a file")}};
  };
}

struct WorkedOut {
  OptionsFile file;
  std::string findings;  // a line each
};

WorkedOut worked_out(const std::string& options, const TextsByName& files, int draws = default_draws) {
  Reading<OptionsFile> read = read_options("format: yardworth/options/1\noptions:\n" + options, "f.yaml");
  WorkedOut result;
  for (const Diagnostic& finding : read.findings) result.findings += to_line(finding) + '\n';
  if (!read.ok()) return result;
  result.file = std::move(*read.value);
  for (const Diagnostic& finding : work_out_changes(result.file, the_weekend_golfer(), texts_of(files), draws)) {
    result.findings += to_line(finding) + '\n';
  }
  return result;
}

std::string text_of_bay(const std::string& name) {
  const std::string path = std::string(YARDWORTH_SOURCE_DIR) + "/courses/heron-ferry/bay/" + name;
  return *read_text(path, largest_log_bytes).value;
}

}  // namespace

TEST_CASE("an option of two logs is the change and the interval that gain has of them") {
  const TextsByName files = {{"b.csv", text_of_bay("weekend-16-before.csv")},
                             {"a.csv", text_of_bay("weekend-16-after.csv")}};
  const int wanted = test::sanitized ? 20 : 60;
  const WorkedOut all =
      worked_out("  - {name: lessons, change: {from_log: [b.csv, a.csv]}, cost: {money: 480}}\n", files, wanted);
  REQUIRE(all.file.options.size() == 1);
  const auto log = [&](const char* name) { return *read_shot_log(files.at(name), name, BadRows::refused).value; };
  const MeasuredChange measured =
      measured_change(compare_bags(log("b.csv"), log("a.csv"), {the_weekend_golfer(), true}), the_weekend_golfer());
  const Course course = test::water_and_bunker(Units::yards);
  const Baseline baseline = test::baseline_of(the_weekend_golfer());
  GainRequest gain;
  gain.change = estimated_change(measured, the_weekend_golfer());
  gain.policy = PolicyChoice::habit;
  const double saved = compute_gain(course, the_weekend_golfer(), baseline, gain).answer().round.strokes_saved();
  const std::vector<Change> drawn = drawn_changes(measured, the_weekend_golfer(), wanted, 1);
  WeighRequest request;
  request.options = all.file.options;
  CHECK(request.options.front().draws.size() == drawn.size());
  const std::vector<double> draws = compute_saved_draws(course, the_weekend_golfer(), baseline, gain, drawn);
  const SavedInterval interval = interval_of(draws, weigh_level, PolicyChoice::habit);
  const WeighedOption weighed = compute_weigh(course, the_weekend_golfer(), baseline, request).options.front();
  CHECK(weighed.saved.value == saved);
  CHECK(weighed.saved.low == interval.low);
  CHECK(weighed.saved.high == interval.high);
  CHECK(weighed.saved.low < weighed.saved.value);
  CHECK(weighed.saved.value < weighed.saved.high);
  CHECK(*weighed.best_probability == doctest::Approx(1.0));
}

TEST_CASE("an option of strikes or of a second player is the change that they make") {
  const WorkedOut struck = worked_out(
      "  - {name: loft, change: {from_delivery: {dynamic_loft_deg: 18}, to: {dynamic_loft_deg: 14}, irons: +4}, cost: "
      "{money: 1}}\n",
      {});
  CAPTURE(struck.findings);
  REQUIRE(struck.file.options.size() == 1);
  Delivery before = own_driver_strike(the_weekend_golfer()).delivery;
  before.dynamic_loft_rad = radians(18.0);
  Delivery after = before;
  after.dynamic_loft_rad = radians(14.0);
  const Change& change = struck.file.options[0].change;
  CHECK(change.driver_carry_yd == doctest::Approx(change_of_strike(before, after).driver_carry_yd()));
  CHECK(std::abs(change.driver_carry_yd) > 1.0);
  CHECK(change.irons_carry_yd == doctest::Approx(4.0));

  const std::string other =
      "format: yardworth/player/1\nlabel: other\nhandicap_index: 16\ngender: men\nclubs:\n"
      "  - {club: driver, carry: 200}\n";
  const WorkedOut refused =
      worked_out("  - {name: other, change: {after: other.yaml}, cost: {money: 1}}\n", {{"other.yaml", other}});
  CHECK(refused.findings.find("other.yaml") != std::string::npos);  // not the same clubs
  const std::string path = std::string(YARDWORTH_SOURCE_DIR) + "/courses/heron-ferry/members/weekend-16-man.yaml";
  const std::string same = *read_text(path).value;
  const WorkedOut nothing =
      worked_out("  - {name: same, change: {after: me.yaml}, cost: {money: 1}}\n", {{"me.yaml", same}});
  CHECK(nothing.findings.empty());
  CHECK(is_nothing(nothing.file.options[0].change));
}

TEST_CASE("what is wrong with where a change comes from is told by place, all at once") {
  const WorkedOut read = worked_out(
      "  - {name: a, change: {from_log: [b.csv], driver: +5}, doubt: 10%, cost: {money: 1}}\n"
      "  - {name: b, change: {after: me.yaml, from_delivery: {attack_deg: 1}}, cost: {money: 1}}\n"
      "  - {name: c, change: {to: {attack_deg: 200}}, cost: {money: 1}}\n"
      "  - {name: d, change: {from_log: [b.csv, a.csv, c.csv], sessions: [x]}, cost: {money: 1}}\n"
      "  - {name: e, change: {from_log: [b.csv, a.csv], bad_rows: perhaps}, cost: {money: 1}}\n",
      {});
  CAPTURE(read.findings);
  for (const char* part : {"one log", "\"driver\" beside from_log", "a doubt", "after and from_delivery", "no to",
                           "options[2].change.to.attack_deg", "options[3].change.from_log",
                           "options[3].change.sessions", "options[4].change.bad_rows"}) {
    CHECK(read.findings.find(part) != std::string::npos);
  }
  const WorkedOut files = worked_out(
      "  - {name: a, change: {from_log: [missing.csv, bad.csv]}, cost: {money: 1}}\n"
      "  - {name: b, change: {from_log: [good.csv], sessions: [may, june]}, cost: {money: 1}}\n"
      "  - {name: c, change: {from_delivery: {dynamic_loft_deg: 5, attack_deg: 8}, to: {attack_deg: 9}}, cost: {money: "
      "1}}\n",
      {{"bad.csv", "club,carry_yd\ndriver,far\n"}, {"good.csv", "club,session,carry_yd\ndriver,may,200\n"}});
  CAPTURE(files.findings);
  for (const char* part : {"missing.csv: fault: found no such file", "bad.csv:2", "options[1].change.sessions",
                           "options[2].change.from_delivery"}) {
    CHECK(files.findings.find(part) != std::string::npos);
  }
}

}  // namespace yardworth
