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

inline void put_strokes(Json& json, const FourValues& values, ComputedParts computed) {
  json["strokes_before"] = values.before;
  json["strokes_after"] = values.replanned;
  json["strokes_saved"] = values.strokes_saved();
  json["from_tee"] = values.from_tee();
  json["from_irons"] = null_unless(computed.irons, values.from_irons());
  json["from_replanning"] = null_unless(computed.replanning, values.from_replanning());
}

inline Json strokes_json(const FourValues& values, ComputedParts computed) {
  Json json;
  put_strokes(json, values, computed);
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
