#include "yardworth/options.hpp"

#include <fmt/format.h>

#include <utility>

#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "input/formats.hpp"
#include "yardworth/limits.hpp"

namespace yardworth::input {
namespace {

// "-10%": what it is a share of something.
std::optional<double> read_share(Fields& fields, const std::string& key, const Limits& percent, Findings& findings) {
  const auto value = fields.get(key, Need::optional);
  if (!value) return std::nullopt;
  const bool scalar = value->node->kind == Node::Kind::scalar;
  const ParsedNumber number = scalar ? parse_percent(value->node->text) : ParsedNumber{0.0, NumberFault::not_a_number};
  if (number.fault == NumberFault::none && number.value >= percent.low && number.value <= percent.high) {
    return number.value / 100.0;
  }
  findings.fault(*value, described(*value->node), percent_words(percent));
  return std::nullopt;
}

// Added carry in the file's units.
double read_carry(Fields& fields, const std::string& key, Units units) {
  return to_yards(fields.number(key, limits::carry_change).value_or(0.0), units);
}

// "clubs: {9-iron: +5}": every key is a club, which only a golfer's bag can know.
std::vector<OwnChange> read_clubs(Fields& fields, Units units, Findings& findings) {
  std::vector<OwnChange> clubs;
  const auto value = fields.get("clubs", Need::optional);
  if (!value) return clubs;
  if (value->node->kind != Node::Kind::map) {
    findings.fault(*value, described(*value->node), "clubs and the carry that is added to each, such as {9-iron: +5}");
    return clubs;
  }
  std::vector<std::string> names;
  for (const Entry& entry : value->node->entries) names.push_back(entry.key);
  Fields of_clubs(*value, names, findings);
  for (const std::string& club : names) {
    OwnChange own;
    own.club = club;
    own.carry_yd = read_carry(of_clubs, club, units);
    clubs.push_back(std::move(own));
  }
  return clubs;
}

Change change_from(const Value& value, Units units, Findings& findings) {
  Fields fields(value,
                {"driver", "irons", "clubs", "carry_sd", "direction_sd", "direction_mean", "poor_strike", "short_game",
                 "putting"},
                findings);
  Change change;
  change.driver_carry_yd = read_carry(fields, "driver", units);
  change.irons_carry_yd = read_carry(fields, "irons", units);
  change.clubs = read_clubs(fields, units, findings);
  const auto share = [&](const std::string& key, const Limits& percent) {
    return read_share(fields, key, percent, findings).value_or(0.0);
  };
  change.carry_sd_share = share("carry_sd", limits::spread_change);
  change.direction_sd_share = share("direction_sd", limits::spread_change);
  change.direction_mean_rad = radians(fields.number("direction_mean", limits::direction_mean_change).value_or(0.0));
  change.poor_strike = share("poor_strike", limits::poor_strike_change);
  change.short_game_share = share("short_game", limits::spread_change);
  change.putting_share = share("putting", limits::spread_change);
  return change;
}

Option option_from(const Value& value, Units units, Findings& findings) {
  Fields fields(value, {"name", "change", "tee", "doubt", "cost"}, findings);
  Option option;
  option.name = fields.words("name", Need::required).value_or("");
  option.tee = fields.words("tee");
  option.doubt = read_share(fields, "doubt", limits::option_doubt, findings);
  const auto change = fields.get("change", option.tee ? Need::optional : Need::required, "what changes, or a tee");
  if (change) option.change = change_from(*change, units, findings);
  if (change && change->node->kind == Node::Kind::map && change->node->entries.empty() && !option.tee) {
    findings.fault(*change, "nothing that changes", "such as {driver: +15, irons: +6}");
  }
  if (const auto cost = fields.get("cost", Need::required, "such as {money: 480, hours: 40}")) {
    Fields costs(*cost, {"money", "hours"}, findings);
    option.money = costs.number("money", limits::option_money).value_or(0.0);
    option.hours = costs.number("hours", limits::option_hours).value_or(0.0);
  }
  return option;
}

// Reports tell options apart by their names.
void check_names(const std::vector<Value>& values, const std::vector<Option>& options, Findings& findings) {
  for (std::size_t i = 0; i < options.size(); ++i) {
    for (std::size_t before = 0; before < i; ++before) {
      if (options[i].name.empty() || options[i].name != options[before].name) continue;
      findings.fault(values[i], quoted(options[i].name) + " again", "another name for each option");
      break;
    }
  }
}

}  // namespace

OptionsFile options_from(const Value& root, Findings& findings) {
  Fields fields(root, {"format", "units", "options"}, findings);
  OptionsFile file;
  file.units = read_units(fields);
  const auto values = fields.list("options", 1, limits::most_options, "options", Need::required);
  for (const Value& value : values) file.options.push_back(option_from(value, file.units, findings));
  check_names(values, file.options, findings);
  return file;
}

}  // namespace yardworth::input
