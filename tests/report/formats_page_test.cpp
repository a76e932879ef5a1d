#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/embed.hpp"
#include "yardworth/report.hpp"
#include "yardworth/scenario.hpp"

// docs/formats.md names every key of JSON and every column of CSV that the program writes, and none besides.

namespace yardworth {
namespace {

using Json = nlohmann::ordered_json;
using Names = std::set<std::string>;

// ---- The page

// The rows of the first table below a heading that begins so: their first cells.
std::vector<std::string> first_cells(const std::string& heading) {
  const std::vector<std::string> lines = test::lines_of(test::text_of("docs/formats.md"));
  const auto is_heading = [&](const std::string& line) { return line.starts_with(heading); };
  auto line = std::find_if(lines.begin(), lines.end(), is_heading);
  REQUIRE_MESSAGE(line != lines.end(), heading);
  line = std::find_if(line, lines.end(), [](const std::string& row) { return row.starts_with("|"); });
  std::vector<std::string> cells;
  for (; line != lines.end() && line->starts_with("|"); ++line) cells.push_back(line->substr(0, line->find(" | ")));
  return cells;
}

// Every text between backticks in those cells, in their order.
std::vector<std::string> names_below(const std::string& heading) {
  std::vector<std::string> names;
  const std::regex name("`([^`]+)`");
  for (const std::string& cell : first_cells(heading)) {
    for (std::sregex_iterator match(cell.begin(), cell.end(), name), end; match != end; ++match) {
      names.push_back((*match)[1].str());
    }
  }
  return names;
}

// "a.{b,c}.d" as a.b.d and a.c.d.
std::vector<std::string> expanded(const std::string& name) {
  const std::size_t open = name.find('{');
  if (open == std::string::npos) return {name};
  const std::size_t close = name.find('}', open);
  std::vector<std::string> names;
  std::istringstream choices(name.substr(open + 1, close - open - 1));
  for (std::string choice; std::getline(choices, choice, ',');) {
    for (const std::string& rest : expanded(name.substr(close + 1))) {
      names.push_back(fmt::format("{}{}{}", name.substr(0, open), choice, rest));
    }
  }
  return names;
}

Names keys_on_the_page(const std::string& format) {
  const std::vector<std::string> lines = test::lines_of(test::text_of("docs/formats.md"));
  const auto heading = std::find_if(lines.begin(), lines.end(), [&](const std::string& line) {
    return line.starts_with("## ") && test::says(line, "`" + format + "`");
  });
  REQUIRE_MESSAGE(heading != lines.end(), format);
  Names keys;
  for (const std::string& name : names_below(*heading)) {
    for (const std::string& key : expanded(name)) CHECK_MESSAGE(keys.insert(key).second, key);
  }
  return keys;
}

// ---- The program

// Where clubs are the keys.
bool has_clubs_for_keys(const std::string& path) {
  for (const char* end : {"share_before", "share_after", "approach_share.before", "approach_share.after", ".clubs"}) {
    if (path.ends_with(end)) return true;
  }
  return false;
}

void collect(const Json& json, const std::string& path, Names& paths) {
  if (json.is_object() && !json.empty()) {
    for (const auto& item : json.items()) {
      const std::string key = has_clubs_for_keys(path) ? "CLUB" : item.key();
      collect(item.value(), path.empty() ? key : fmt::format("{}.{}", path, key), paths);
    }
  } else if (json.is_array()) {
    for (const Json& entry : json) collect(entry, path + "[]", paths);
  } else if (!json.is_object()) {
    paths.insert(path);
  }
}

// What is written twice is told once: "habit.round" as "round". as_above: beginnings with what stands for them.
Names keys_of(const std::vector<std::string>& reports, const std::map<std::string, std::string>& as_above) {
  Names keys;
  for (const std::string& report : reports) collect(Json::parse(report), "", keys);
  Names told;
  for (std::string key : keys) {
    for (const auto& [beginning, instead] : as_above) {
      if (!key.starts_with(beginning)) continue;
      const std::string above = instead + key.substr(beginning.size());
      CHECK_MESSAGE(keys.count(above) == 1, key);
      key = beginning.substr(0, beginning.find_last_not_of('.') + 1);
      break;
    }
    told.insert(key);
  }
  return told;
}

void check_keys(const std::string& format, const std::vector<std::string>& reports,
                const std::map<std::string, std::string>& as_above = {}) {
  CAPTURE(format);
  const Names program = keys_of(reports, as_above);
  const Names page = keys_on_the_page(format);
  for (const std::string& key : program) CHECK_MESSAGE(page.count(key) == 1, "not on the page: ", key);
  for (const std::string& key : page) CHECK_MESSAGE(program.count(key) == 1, "not written: ", key);
}

std::vector<std::string> headings_of(const std::string& csv) {
  std::vector<std::string> headings;
  std::istringstream line(csv.substr(0, csv.find("\r\n")));
  for (std::string heading; std::getline(line, heading, ',');) headings.push_back(heading);
  return headings;
}

// Columns of clubs once, for all of them.
std::vector<std::string> without_clubs(const std::vector<std::string>& headings) {
  std::vector<std::string> columns;
  const std::regex approach("approach_.*_(before|after)_share");
  for (const std::string& heading : headings) {
    std::string column = std::regex_replace(heading, approach, "approach_CLUB_$1_share");
    if (std::find(columns.begin(), columns.end(), column) == columns.end()) columns.push_back(column);
  }
  return columns;
}

std::string in_metres(std::string heading) {
  return heading.ends_with("_yd") ? heading.replace(heading.size() - 2, 2, "m") : heading;
}

void check_columns(const std::string& command, const std::string& csv, Units units = Units::yards) {
  CAPTURE(command);
  std::vector<std::string> page = names_below("### `" + command + " --format csv`");
  if (units == Units::metres) std::transform(page.begin(), page.end(), page.begin(), in_metres);
  CHECK(without_clubs(headings_of(csv)) == page);
}

// ---- Reports that have everything a report can have

GainReport whole_gain(Units units, Method method = Method::play) {
  const Player player = test::scenario_member("weekend-16-man");
  GainRequest request;
  request.change = {20.0, 6.0};
  request.change.clubs = {{"7-iron", 2.0}};
  request.method = method;
  GainReport report{compute_gain(test::water_and_bunker(units), player, request), {}, {"Assumed: nothing."}};
  report.result.interval = SavedInterval{0.9, 0.5, 1.5, 200, PolicyChoice::habit};
  report.control_asked = true;
  report.control = ControlToSpare{0.02, 0.05};
  const HazardView bunker{0, Ground::bunker, HazardSide::right, 200.0, 230.0, false};
  report.curve = {{{20.0, 6.0}, report.result.answer().round, {{2, bunker}}}};
  return report;
}

// With all that points and handicaps need.
GainReport gain_of_rated_round() {
  GainRequest request;
  request.tee = test::middle_tee;
  request.policy = PolicyChoice::habit;
  return {compute_gain(test::scenario_course(), test::scenario_member("weekend-16-man"), request), {}, {}};
}

StrategyReport whole_strategy(Units units) {
  StrategyRequest request;
  request.change = Change{20.0, 6.0};
  request.change->clubs = {{"7-iron", 2.0}};
  request.prove = true;
  return {compute_strategy(test::water_and_bunker(units), test::scenario_member("weekend-16-man"), request),
          {"Assumed: nothing."}};
}

BandsReport whole_bands(Units units) {
  const Course course = test::water_and_bunker(units);
  BandsRequest request;
  request.bands = {Band::scratch, Band::from_6_to_12};
  request.genders = {Gender::men};
  ChangedCourse changed{course, {{2, 0, false}}};
  changed.course.holes[1].hazards[0].to_yd = 240.0;
  request.changed_course = changed;
  BandsReport report{compute_bands(course, request), 2, {"Assumed: nothing."}, {}};
  report.result.golfers.push_back(report.result.golfers.back());
  report.result.golfers.back().cannot_finish = {{1, 120.0}};
  return report;
}

// With all that points and handicaps need.
BandsReport bands_of_rated_round() {
  BandsRequest request;
  request.bands = {Band::scratch};
  request.genders = {Gender::men};
  request.tees = {test::middle_tee};
  return {compute_bands(test::scenario_course(), request), {}, {}, {}};
}

MembersReport whole_members(Units units) {
  const Member member{"weekend 16", 16.4, Gender::men, 192.0};
  MembersReport report{compute_members(test::water_and_bunker(units), {{member}, {}}), {"Assumed: nothing."}};
  report.result.members.push_back(report.result.members.front());
  report.result.members.front().from_tees.front().scores = MemberScores{};
  report.result.members.back().from_tees.front().cannot_finish = {{1, 120.0}};
  return report;
}

DeliveryReport whole_delivery() {
  DeliveryRequest request;
  request.club = *typical_club("driver");
  request.delivery = typical_delivery(request.club, from_mph(94.0));
  request.after = request.delivery;
  request.board_speeds_mps = {from_mph(94.0)};
  request.board_attacks_rad = {0.0};
  return {compute_delivery(request), {"Assumed: nothing."}};
}

// A log with an outlier, all columns that are measured, and clubs below another, one of which it has alone.
ShotLog whole_log(Units units, const char* own, int carried) {
  std::string text = units == Units::yards ? "club,carry_yd,total_yd,offline_yd,club_speed_mph,ball_speed_mph\n"
                                           : "club,carry_m,total_m,offline_m,club_speed_mps,ball_speed_mps\n";
  for (const char* club : {"driver", "7-iron", own}) {
    for (const int carry : {196, 204, 199, 210, 188, 201, 380}) {
      text += fmt::format("{},{},{},{},{},62\n", club, carry + carried, carry, carry - 195, 44 + carry % 3);
    }
  }
  return *read_shot_log(text, "log.csv").value;
}

BagReport whole_bag(Units units) {
  BagReport report;
  report.comparison = compare_bags(whole_log(units, "5-wood", 0), whole_log(units, "8-iron", 1));
  report.result = report.comparison->measured_after;
  report.opening = {"Assumed: nothing."};
  return report;
}

WeighReport whole_weigh() {
  WeighReport report;
  WeighedOption option;
  option.option = {"lessons", Change{15.0, 6.0}, "forward", 0.5, 480.0, 40.0};
  option.option.change.clubs = {{"7-iron", 2.0}};
  report.result.options = {option};
  report.result.sensitivity = {{ChangeStep::driver_carry, 0.05, 0.04}};
  report.opening = {"Assumed: nothing."};
  return report;
}

}  // namespace

TEST_CASE("docs/formats.md has the keys of every JSON") {
  check_keys("yardworth/gain/1", {gain_json(whole_gain(Units::yards)), gain_json(gain_of_rated_round())},
             {{"habit.", ""}});
  check_keys("yardworth/strategy/1", {strategy_json(whole_strategy(Units::yards))});
  check_keys("yardworth/bands/1", {bands_json(whole_bands(Units::yards)), bands_json(bands_of_rated_round())},
             {{"golfers[].changed_holes[].with.", "golfers[].holes[]."},
              {"golfers[].changed_holes[].without.", "golfers[].holes[]."}});
  check_keys("yardworth/members/1", {members_json(whole_members(Units::yards))});
  check_keys("yardworth/delivery/1", {delivery_json(whole_delivery())}, {{"after.", ""}, {"attainable.", ""}});
  check_keys("yardworth/bag/1", {bag_json(whole_bag(Units::yards))}, {{"clubs_before[].", "clubs[]."}});
  check_keys("yardworth/weigh/1", {weigh_json(whole_weigh())});
  const Json request = {{"command", "check"},
                        {"course", scenario_course_yaml()},
                        {"player", scenario_player_yaml()},
                        {"baseline", test::text_of("src/baseline/derived/men-bogey.yaml")}};
  check_keys("yardworth/check/1", {Json::parse(answer(request.dump()))["answer"].dump()});
}

TEST_CASE("docs/formats.md has the columns of every CSV, in their order") {
  for (const Units units : {Units::yards, Units::metres}) {
    check_columns("gain", gain_csv(whole_gain(units)), units);
    check_columns("gain --to N", gain_curve_csv(whole_gain(units)), units);
    check_columns("strategy", strategy_csv(whole_strategy(units)), units);
    check_columns("bands", bands_csv(whole_bands(units)), units);
    check_columns("bands --members FILE", members_csv(whole_members(units)), units);
    check_columns("bag", bag_csv(whole_bag(units)), units);
    check_columns("bag BEFORE AFTER", bag_changes_csv(whole_bag(units)), units);
    check_columns("bands --hole N", bands_hazards_csv(whole_bands(units)), units);
  }
  check_columns("weigh", weigh_csv(whole_weigh()));
  check_columns("delivery", delivery_csv(whole_delivery()));
  check_columns("delivery --table", delivery_board_csv(whole_delivery()));
}

}  // namespace yardworth
