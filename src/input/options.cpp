#include "yardworth/options.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "flight/delivery_fields.hpp"
#include "input/formats.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/shot_log.hpp"

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

Change change_from(Fields& fields, Units units, Findings& findings) {
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

// "from_delivery: {attack_deg: -3}"
std::map<std::string, double> read_strike(Fields& fields, const std::string& key, Findings& findings) {
  std::map<std::string, double> said;
  const auto value = fields.get(key, Need::optional);
  if (!value) return said;
  std::vector<std::string> keys;
  for (const DeliveryField& field : delivery_fields) keys.emplace_back(field.key);
  Fields of_strike(*value, keys, findings);
  for (const DeliveryField& field : delivery_fields) {
    const std::string of_field(field.key);
    if (const auto number = of_strike.number(of_field, field.limits)) said[of_field] = *number;
  }
  if (of_strike.is_map() && value->node->entries.empty()) {
    findings.fault(*value, "nothing of a strike", "such as {attack_deg: -3}");
  }
  return said;
}

std::vector<std::string> read_names(Fields& fields, const std::string& key, std::size_t least, Findings& findings) {
  std::vector<std::string> names;
  for (const Value& value : fields.list(key, least, 2, "names")) {
    if (auto name = read_words(value, findings)) names.push_back(std::move(*name));
  }
  return names;
}

constexpr const char* ways_to_say[] = {"after", "from_log", "from_delivery"};

// What does not go together of a change that has a source.
void check_source(const ChangeSource& source, Fields& fields, const Value& value, Findings& findings) {
  const bool of_strikes = fields.has("from_delivery");
  std::vector<std::string> ways;
  for (const char* way : ways_to_say) {
    if (fields.has(way)) ways.emplace_back(way);
  }
  if (ways.size() > 1) findings.fault(value, ways[0] + " and " + ways[1], "one of them: each says all that changes");
  for (const Entry& entry : value.node->entries) {
    const std::string& key = entry.key;
    const bool beside = key == "to" || key == "sessions" || key == "bad_rows" || (of_strikes && key == "irons");
    if (beside || std::find(std::begin(ways_to_say), std::end(ways_to_say), key) != std::end(ways_to_say)) continue;
    findings.fault(value, quoted(key) + " beside " + ways[0], "one of them: " + ways[0] + " says what changes");
  }
  if (of_strikes && !fields.has("to"))
    findings.fault(value, "no to", "what is different afterwards, to: {attack_deg: 2}");
  if (!of_strikes && fields.has("to"))
    findings.fault(value, "to without from_delivery", "how the driver is struck now");
  if (!fields.has("from_log")) return;
  if (source.logs.size() == 1 && source.sessions.empty()) {
    findings.fault(value, "one log", "two logs, before and after, or two sessions: of it");
  }
  if (source.logs.size() == 2 && !source.sessions.empty()) {
    findings.fault(value, "two logs and sessions", "sessions of one log, or two logs");
  }
}

std::optional<BadRows> bad_rows_named(std::string_view word) {
  if (word == "refused") return BadRows::refused;
  if (word == "skipped") return BadRows::skipped;
  return std::nullopt;
}

std::optional<ChangeSource> source_from(Fields& fields, const Value& value, Findings& findings) {
  ChangeSource source;
  source.after = fields.words("after").value_or("");
  source.logs = read_names(fields, "from_log", 1, findings);
  source.sessions = read_names(fields, "sessions", 2, findings);
  source.skip_bad_rows = fields.choice<BadRows>("bad_rows", {"refused", "skipped"}, bad_rows_named) == BadRows::skipped;
  source.from = read_strike(fields, "from_delivery", findings);
  source.to = read_strike(fields, "to", findings);
  const bool any =
      std::any_of(std::begin(ways_to_say), std::end(ways_to_say), [&](auto* way) { return fields.has(way); });
  if (!any) {
    for (const char* key : {"to", "sessions", "bad_rows"}) {
      if (fields.has(key)) findings.fault(value, quoted(key) + " alone", "what it is about: from_log or from_delivery");
    }
    return std::nullopt;
  }
  source.irons = fields.number("irons", limits::carry_change);
  source.place = findings.about(value);
  check_source(source, fields, value, findings);
  return source;
}

void read_change(const Value& value, Units units, Option& option, Findings& findings) {
  Fields fields(value,
                {"driver", "irons", "clubs", "carry_sd", "direction_sd", "direction_mean", "poor_strike", "short_game",
                 "putting", "after", "from_log", "sessions", "bad_rows", "from_delivery", "to"},
                findings);
  if (!fields.is_map()) return;
  option.source = source_from(fields, value, findings);
  if (!option.source) option.change = change_from(fields, units, findings);
  if (value.node->entries.empty() && !option.tee) {
    findings.fault(value, "nothing that changes", "such as {driver: +15, irons: +6}");
  }
  if (option.source && !option.source->logs.empty() && option.doubt) {
    findings.fault(value, "from_log and a doubt", "no doubt: the shots themselves say how sure they are");
  }
}

Option option_from(const Value& value, Units units, Findings& findings) {
  Fields fields(value, {"name", "change", "tee", "doubt", "cost"}, findings);
  Option option;
  option.name = fields.words("name", Need::required).value_or("");
  option.tee = fields.words("tee");
  option.doubt = read_share(fields, "doubt", limits::option_doubt, findings);
  const auto change = fields.get("change", option.tee ? Need::optional : Need::required, "what changes, or a tee");
  if (change) read_change(*change, units, option, findings);
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
