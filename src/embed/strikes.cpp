#include "embed/strikes.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace yardworth::embed {
namespace {

std::optional<TypicalClub> read_club(const Members& options) {
  std::vector<std::string> names;
  for (const TypicalClub& club : typical_clubs()) names.emplace_back(club.name);
  return options.choice<TypicalClub>("club", names, typical_club);
}

void read_conditions(const Members& options, FlightConditions& conditions) {
  const auto number = [&](const char* name, const Limits& limits, double& target) {
    target = options.number(name, limits).value_or(target);
  };
  number("temperature_c", limits::temperature, conditions.air.temperature_c);
  number("altitude_m", limits::altitude, conditions.air.altitude_m);
  number("pressure_hpa", limits::pressure, conditions.air.pressure_hpa);
  number("wind_mps", limits::wind, conditions.wind.speed_mps);
  if (const auto from_deg = options.number("wind_from_deg", limits::wind_from)) {
    conditions.wind.from_rad = radians(*from_deg);
  }
  const auto turf_named = [](std::string_view word) -> std::optional<Turf> {
    for (const Turf& turf : {soft_turf(), normal_turf(), firm_turf()}) {
      if (turf.name == word) return turf;
    }
    return std::nullopt;
  };
  const auto turf = options.choice<Turf>("firmness", {"soft", "normal", "firm"}, turf_named);
  if (turf) conditions.turf = *turf;
}

// Rows or columns of a board, where they are said.
void read_lines(const Members& table, const DeliveryField& field, std::vector<double>& lines, const Tell& tell) {
  const std::string key(field.key);
  if (!table.has(key)) return;
  const std::vector<Json> said = table.list(key, "numbers");
  const auto most = static_cast<std::size_t>(limits::most_board_lines);
  if (table.find(key)->is_array() && !check_count(said.size(), 1, most, "numbers", key, tell)) return;
  lines.clear();
  for (const Json& number : said) {
    if (!number.is_number()) {
      tell(key, described(number), "a number " + bounds(field.limits));
    } else if (check_number(number.get<double>(), field.limits, key, tell)) {
      lines.push_back(field.inside(number.get<double>()));
    }
  }
}

// The board that is asked for: the usual one by true, or by its speeds and attack angles.
void read_table(const Members& options, DeliveryRequest& request, const Tell& tell) {
  const Json* said = options.find("table");
  if (said == nullptr || (said->is_boolean() && !said->get<bool>())) return;
  ask_for_usual_board(request);
  if (said->is_boolean()) return;
  const Tell of_table = below(tell, "table");
  const DeliveryField& speed = delivery_fields[0];
  const DeliveryField& attack = delivery_fields[1];
  const Members table(*said, {std::string(speed.key), std::string(attack.key)}, of_table);
  read_lines(table, speed, request.board_speeds_mps, of_table);
  read_lines(table, attack, request.board_attacks_rad, of_table);
}

}  // namespace

std::vector<std::string> delivery_keys() {
  std::vector<std::string> keys;
  for (const DeliveryField& field : delivery_fields) keys.emplace_back(field.key);
  return keys;
}

SaidStrike read_strike(const Members& members, const SaidStrike& before, const Tell& tell) {
  SaidStrike strike = on_top_of(before);
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    const DeliveryField& field = delivery_fields[i];
    const std::string key(field.key);
    if (members.has(key)) say(strike, i, members.number(key, field.limits));
  }
  check_together(strike, before, tell);
  return strike;
}

SaidStrike read_strike(const Json& object, const SaidStrike& before, const Tell& tell) {
  const std::vector<std::string> keys = delivery_keys();
  const Members members(object, keys, tell);
  SaidStrike start = before;
  const auto is_known = [&](const auto& item) { return std::find(keys.begin(), keys.end(), item.key()) != keys.end(); };
  const auto items = object.items();
  // A misspelt member may have been any of them.
  if (object.is_object() && !std::all_of(items.begin(), items.end(), is_known)) start.unknown.fill(true);
  return read_strike(members, start, tell);
}

std::vector<std::string> delivery_options() {
  std::vector<std::string> names = delivery_keys();
  for (const char* name : {"club", "to", "temperature_c", "altitude_m", "pressure_hpa", "wind_mps", "wind_from_deg",
                           "firmness", "table", "pictures"}) {
    names.emplace_back(name);
  }
  return names;
}

SaidFields read_delivery(const Members& options, DeliveryRequest& request, const Tell& tell) {
  request.club = read_club(options).value_or(*typical_club("driver"));
  const SaidStrike usual = usual_strike(request.club);
  const SaidStrike strike = read_strike(options, usual, tell);
  request.delivery = strike.delivery;
  if (options.has("to")) request.after = read_strike(*options.find("to"), strike, below(tell, "to")).delivery;
  read_conditions(options, request.conditions);
  read_table(options, request, tell);
  return strike.said;
}

}  // namespace yardworth::embed
