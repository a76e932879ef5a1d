#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "report/gain_parts.hpp"

namespace yardworth::report {

// What JSON of several commands says alike.

using Json = nlohmann::ordered_json;

inline Json text(std::string_view view) { return std::string(view); }

inline Json or_null(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }

inline Json null_unless(bool computed, double value) { return computed ? Json(value) : Json(nullptr); }

inline void put_strokes(Json& json, const StepValues& values, ComputedParts computed) {
  json["strokes_before"] = values.before;
  json["strokes_after"] = values.replanned;
  json["strokes_saved"] = values.strokes_saved();
  json["from_tee"] = values.from_tee();
  json["from_irons"] = null_unless(computed.irons, values.from_irons());
  json["from_replanning"] = null_unless(computed.replanning, values.from_replanning());
}

inline Json strokes_json(const StepValues& values, ComputedParts computed) {
  Json json;
  put_strokes(json, values, computed);
  return json;
}

// What each step saves, the last of them what planning afresh saves.
inline Json steps_json(const StepValues& values, ComputedParts computed) {
  Json json = Json::array();
  const auto add = [&](std::string_view step, double strokes, double saved) {
    json.push_back({{"step", text(step)}, {"strokes_after", strokes}, {"strokes_saved", saved}});
  };
  for (const StepValue& value : values.steps) add(name(value.step), value.strokes, values.from(value.step));
  if (computed.replanning) add("replanning", values.replanned, values.from_replanning());
  return json;
}

inline Json own_change_json(const OwnChange& own) {
  return {{"club", own.club},
          {"carry_yd", own.carry_yd},
          {"roll_yd", own.roll_yd},
          {"carry_sd_share", own.carry_sd_share},
          {"direction_sd_share", own.direction_sd_share},
          {"direction_mean_deg", degrees(own.direction_mean_rad)},
          {"poor_strike_probability", own.poor_strike}};
}

// What was asked: carries and, of the rest, what is added or, of a share, by how much of itself it changes.
inline Json change_json(const Change& change) {
  Json json = {{"driver_carry_yd", change.driver_carry_yd},
               {"irons_carry_yd", change.irons_carry_yd},
               {"clubs", Json::array()},
               {"carry_sd_share", change.carry_sd_share},
               {"direction_sd_share", change.direction_sd_share},
               {"direction_mean_deg", degrees(change.direction_mean_rad)},
               {"poor_strike_probability", change.poor_strike},
               {"short_game_share", change.short_game_share},
               {"putting_share", change.putting_share}};
  for (const OwnChange& own : change.clubs) json["clubs"].push_back(own_change_json(own));
  return json;
}

template <class T>
Json before_after_json(const T& before, const T& after) {
  return {{"before", before}, {"after", after}};
}

inline Json shares_json(const ClubShares& shares) {
  Json json = Json::object();
  for (const std::string& club : in_bag_order(shares)) json[club] = shares.at(club);
  return json;
}

}  // namespace yardworth::report
