#include <cmath>

#include "report/bag_parts.hpp"
#include "report/json_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Json;
using report::text;

// An end that nobody knows is null.
Json finite_json(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

Json estimate_json(const std::optional<Estimate>& estimate, double factor = 1.0) {
  if (!estimate) return {{"value", nullptr}, {"low", nullptr}, {"high", nullptr}};
  return {{"value", finite_json(factor * estimate->value)},
          {"low", finite_json(factor * estimate->low)},
          {"high", finite_json(factor * estimate->high)}};
}

Json club_json(const ClubMeasure& club) {
  Json json = {{"club", text(club.club)}, {"shots", club.shots}};
  for (const report::BagNumber& number : report::bag_numbers()) {
    const std::string key = std::string(number.key) + (number.length ? "_yd" : "");
    json[key] = estimate_json(number.of(club), number.factor);
  }
  json["log_likelihood"] = club.log_likelihood;
  json["carry_borrowed_share"] = club.carry_borrowed_share;
  json["borrowed_share"] = club.borrowed_share;
  return json;
}

Json outlier_json(const OutlyingShot& shot, Units units) {
  return {{"line", shot.line},
          {"club", text(shot.club)},
          {"carry_yd", shot.carry_yd},
          {"direction_deg", shot.direction_rad ? Json(degrees(*shot.direction_rad)) : Json(nullptr)},
          {"why", report::why_words(shot, units)}};
}

}  // namespace

std::string bag_json(const BagReport& report) {
  const BagResult& result = report.result;
  Json json = {{"format", "yardworth/bag/1"}, {"level", bag_level},
               {"shots", result.shots},       {"skipped_rows", result.skipped_rows},
               {"sessions", result.sessions}, {"handicap_index", report::or_null(result.handicap_index)}};
  json["clubs"] = Json::array();
  for (const ClubMeasure& club : result.clubs) json["clubs"].push_back(club_json(club));
  json["outliers"] = Json::array();
  for (const OutlyingShot& shot : result.outliers) json["outliers"].push_back(outlier_json(shot, result.units));
  json["notes"] = report.opening;
  for (const std::string& note : report::bag_notes(result)) json["notes"].push_back(note);
  json["cautions"] = report::bag_cautions();
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
