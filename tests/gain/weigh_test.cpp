#include "yardworth/weigh.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

const Player& weekend_player() {
  static const Player player = test::scenario_member("weekend-16-man");
  return player;
}

Course short_course() { return test::water_and_bunker(Units::yards); }

GainRequest gain_request(const Change& change, PolicyChoice policy = PolicyChoice::habit) {
  GainRequest request;
  request.change = change;
  request.policy = policy;
  return request;
}

double saved_by_gain(const Change& change, PolicyChoice policy = PolicyChoice::habit) {
  return compute_gain(short_course(), weekend_player(), test::baseline_of(weekend_player()),
                      gain_request(change, policy))
      .answer()
      .round.strokes_saved();
}

WeighResult weigh(const WeighRequest& request) {
  return compute_weigh(short_course(), weekend_player(), test::baseline_of(weekend_player()), request);
}

Option lessons() { return {"lessons", Change{15.0, 6.0}, std::nullopt, 0.6, 480.0, 40.0}; }

Option putting_practice() {
  Option option{"putting", {}, std::nullopt, std::nullopt, 60.0, 30.0};
  option.change.putting_share = -0.1;
  return option;
}

std::vector<std::string> faults_of(const WeighRequest& request) {
  try {
    weigh(request);
  } catch (const InvalidRequest& invalid) {
    std::vector<std::string> lines;
    for (const Diagnostic& fault : invalid.findings()) lines.push_back(to_line(fault));
    return lines;
  }
  return {};
}

}  // namespace

TEST_CASE("weigh says of a change what gain says, to the last digit, under either plan") {
  for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::both}) {
    WeighRequest request;
    request.options = {lessons(), putting_practice()};
    request.policy = policy;
    request.options[0].doubt = request.options[1].doubt = 0.0;
    const WeighResult result = weigh(request);
    CHECK(result.options[0].saved.value == saved_by_gain(lessons().change, policy));
    CHECK(result.options[1].saved.value == saved_by_gain(putting_practice().change, policy));
    CHECK(result.options[0].saved.low == result.options[0].saved.value);
    CHECK(result.options[0].saved.high == result.options[0].saved.value);
  }
}

TEST_CASE("what an option costs is over what it saves, and its interval is that of its change") {
  WeighRequest request;
  request.options = {lessons(), putting_practice()};
  request.stroke_worth = 20.0;
  const WeighResult result = weigh(request);
  const WeighedOption& most = result.options[result.most];
  CHECK(most.option.name == "lessons");
  CHECK(*most.money_per_stroke == doctest::Approx(480.0 / most.saved.value).epsilon(1e-12));
  CHECK(*most.hours_per_stroke == doctest::Approx(40.0 / most.saved.value).epsilon(1e-12));
  CHECK(*most.break_even_rounds == doctest::Approx(24.0 / most.saved.value).epsilon(1e-12));
  // +15 with a doubt of 60% is +6 to +24: what gain says there, but for what lies between the nodes, where straight
  // lines stand for what jumps where a hazard comes into reach: here a sixth of what is saved.
  constexpr double between_nodes = 0.02;
  CHECK(std::abs(most.saved.low - saved_by_gain({6.0, 2.4})) < between_nodes);
  CHECK(std::abs(most.saved.high - saved_by_gain({24.0, 9.6})) < between_nodes);
  CHECK(result.options[1].doubt == assumed_doubt);
  CHECK(*result.options[0].best_probability + *result.options[1].best_probability == doctest::Approx(1.0));
}

TEST_CASE("a shorter course is told, and not held against practice") {
  WeighRequest request;
  request.options = {{"other tees", {}, short_course().tees.front().name, std::nullopt, 0.0, 0.0}, putting_practice()};
  const WeighResult result = weigh(request);
  CHECK(result.most == 1);
  CHECK(result.options[0].saved.low == result.options[0].saved.high);
  CHECK_FALSE(result.options[0].best_probability);
  CHECK(*result.options[1].best_probability == 1.0);
}

TEST_CASE("what else would save as much does save as much") {
  WeighRequest request;
  request.options = {putting_practice()};
  const Equivalents equal = weigh(request).options[0].equivalents;
  const double saved = saved_by_gain(putting_practice().change);
  // Looked up along straight lines.
  constexpr double near = 0.02;
  REQUIRE(equal.driver_carry_yd);
  CHECK(std::abs(saved_by_gain({*equal.driver_carry_yd, 0.0}) - saved) < near);
  REQUIRE(equal.putting_share);
  CHECK(*equal.putting_share == doctest::Approx(0.1).epsilon(1e-9));
}

TEST_CASE("what a yard is worth is the difference of two gains") {
  WeighRequest request;
  request.options = {lessons()};
  request.sensitivity = true;
  const WeighResult result = weigh(request);
  REQUIRE(result.sensitivity.size() == 7);
  for (std::size_t i = 1; i < result.sensitivity.size(); ++i) {
    CHECK(result.sensitivity[i - 1].before >= result.sensitivity[i].before);
  }
  for (const Sensitivity& one : result.sensitivity) {
    if (one.step != ChangeStep::driver_carry) continue;
    CHECK(one.before == (saved_by_gain({5.0, 0.0}) - saved_by_gain({-5.0, 0.0})) / 10.0);
  }
}

TEST_CASE("every fault of every option is told at once") {
  WeighRequest request;
  request.options = {lessons(), lessons(), {"nothing", {}, std::nullopt, 2.0, -1.0, 0.0}};
  request.options[1].tee = "championship";
  request.stroke_worth = 0.0;
  const std::vector<std::string> faults = faults_of(request);
  std::string all;
  for (const std::string& fault : faults) all += fault + '\n';
  CAPTURE(all);
  for (const char* part : {"stroke_worth", "options[1].name", "options[1].tee", "options[2].change", "options[2].doubt",
                           "options[2].money"}) {
    CHECK(all.find(part) != std::string::npos);
  }
}

TEST_CASE("an options file is read, and its faults are told with their places") {
  const auto read = read_options(
      "format: yardworth/options/1\nunits: metres\noptions:\n"
      "  - {name: a, change: {driver: +10, clubs: {9-iron: -2}, putting: -10%}, doubt: 60%, cost: {money: 5, hours: "
      "1}}\n"
      "  - {name: b, tee: forward, cost: {hours: 3}}\n",
      "f");
  REQUIRE(read.ok());
  const Option& first = read.value->options[0];
  CHECK(first.change.driver_carry_yd == doctest::Approx(to_yards(10.0, Units::metres)));
  CHECK(first.change.clubs[0].club == "9-iron");
  CHECK(first.change.putting_share == doctest::Approx(-0.1));
  CHECK(*first.doubt == doctest::Approx(0.6));
  CHECK(*read.value->options[1].tee == "forward");
  const auto wrong = read_options(
      "format: yardworth/options/1\noptions:\n"
      "  - {name: a, change: {drivr: 10, putting: -0.1}, doubt: much, cost: {money: x}}\n"
      "  - {name: a, change: {driver: 400}}\n",
      "f");
  CHECK_FALSE(wrong.ok());
  std::string all;
  for (const Diagnostic& finding : wrong.findings) all += to_line(finding) + '\n';
  CAPTURE(all);
  for (const char* part :
       {"drivr", "putting", "doubt", "money", "options[1].change.driver", "options[1].cost", "\"a\" again"}) {
    CHECK(all.find(part) != std::string::npos);
  }
}

}  // namespace yardworth
