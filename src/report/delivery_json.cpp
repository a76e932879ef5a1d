#include "report/delivery_parts.hpp"
#include "report/json_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Json;
using report::text;
using report::yards_of;

Json numbers_json(const std::vector<report::DeliveryNumber>& numbers, const DeliveryFlight& flown) {
  Json json = Json::object();
  for (const report::DeliveryNumber& number : numbers) json[std::string(number.key)] = number.of(flown);
  return json;
}

Json flown_json(const DeliveryFlight& flown) {
  return {{"strike", numbers_json(report::delivery_numbers(), flown)},
          {"flight", numbers_json(report::flight_numbers(), flown)}};
}

Json losses_json(const Losses& losses) {
  Json json = Json::array();
  for (const Loss& loss : losses.losses) {
    json.push_back({{"of", report::key_of(loss.of)},
                    {"own_deg", degrees(loss.own_rad)},
                    {"best_deg", degrees(loss.best_rad)},
                    {"alone_yd", yards_of(loss.alone_m)},
                    {"in_turn_yd", yards_of(loss.in_turn_m)}});
  }
  return json;
}

Json range_json(const Limits& limits) { return {{"low", degrees(limits.low)}, {"high", degrees(limits.high)}}; }

Json limits_json(const Attainable& limits) {
  return {{"attack_deg", range_json(limits.attack)},
          {"dynamic_loft_deg", range_json(limits.dynamic_loft)},
          {"path_deg", range_json(limits.path)},
          {"face_deg", range_json(limits.face)}};
}

Json conditions_json(const FlightConditions& conditions) {
  return {{"temperature_c", conditions.air.temperature_c}, {"altitude_m", conditions.air.altitude_m},
          {"pressure_hpa", conditions.air.pressure_hpa},   {"humidity_share", conditions.air.humidity},
          {"wind_mps", conditions.wind.speed_mps},         {"wind_from_deg", degrees(conditions.wind.from_rad)},
          {"firmness", text(conditions.turf.name)},        {"drag_and_lift", text(conditions.aerodynamics.source)}};
}

Json new_head_json(const NewHeadGain& gain) {
  return {{"from_restitution", older_restitution},          {"to_restitution", NewHead().restitution.at_rest},
          {"restitution_yd", yards_of(gain.restitution_m)}, {"loft_yd", yards_of(gain.loft_m)},
          {"together_yd", yards_of(gain.together_m)},       {"dynamic_loft_deg", degrees(gain.dynamic_loft_rad)}};
}

Json board_json(const std::vector<std::vector<BoardCell>>& board) {
  Json json = Json::array();
  for (const auto& row : board) {
    for (const BoardCell& cell : row) {
      json.push_back({{"club_speed_mph", to_mph(cell.club_speed_mps)},
                      {"attack_deg", degrees(cell.attack_rad)},
                      {"dynamic_loft_deg", degrees(cell.dynamic_loft_rad)},
                      {"carry_yd", yards_of(cell.carry_m)},
                      {"total_yd", yards_of(cell.total_m)}});
    }
  }
  return json;
}

}  // namespace

std::string delivery_json(const DeliveryReport& report) {
  const DeliveryResult& result = report.result;
  Json json = {{"format", "yardworth/delivery/1"}, {"club", text(result.club.name)}};
  json.update(flown_json(result.own));
  json["after"] = result.after ? flown_json(*result.after) : Json(nullptr);
  json["losses"] = losses_json(result.losses);
  json["without_side_wind"] = {{"headwind_mps", headwind_mps(result.conditions.wind)},
                               {"own_carry_yd", yards_of(result.losses.own.flight.carry_m)},
                               {"best_carry_yd", yards_of(result.losses.best.flight.carry_m)}};
  json["together_yd"] = yards_of(result.losses.together_m);
  json["attainable"] = flown_json(result.best);
  json["limits"] = limits_json(result.limits);
  json["new_head"] = result.new_head ? new_head_json(*result.new_head) : Json(nullptr);
  if (!result.board.empty()) json["board"] = board_json(result.board);
  json["conditions"] = conditions_json(result.conditions);
  json["notes"] = report.opening;
  json["cautions"] = report::delivery_cautions();
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
