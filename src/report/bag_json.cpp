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

Json change_json(const ClubChange& change, Units units) {
  return {{"club", text(change.club)},
          {"shots_before", change.before.shots},
          {"shots_after", change.after.shots},
          {"carry_yd", estimate_json(change.carry_yd)},
          {"at_equal_club_speed", change.at_equal_club_speed_yd.has_value()},
          {"at_equal_club_speed_yd", estimate_json(change.at_equal_club_speed_yd)},
          {"club_speed_mph", estimate_json(change.club_speed_mps, to_mph(1.0))},
          {"poor_strike_change_probability", estimate_json(change.poor_strike)},
          {"carry_sd_ratio", estimate_json(change.carry_sd_ratio)},
          {"direction_sd_ratio", estimate_json(change.direction_sd_ratio)},
          {"verdict", report::verdict_words(change.verdict)},
          {"more_shots", change.more_shots ? Json(*change.more_shots) : Json(nullptr)},
          {"words", change_sentence(change, units)}};
}

void put_clubs(const BagResult& result, const char* key, Json& json) {
  json[key] = Json::array();
  for (const ClubMeasure& club : result.clubs) json[key].push_back(club_json(club));
}

Json outlier_json(const OutlyingShot& shot, const BagResult& result) {
  return {{"log", text(result.file)},
          {"line", shot.line},
          {"club", text(shot.club)},
          {"carry_yd", shot.carry_yd},
          {"direction_deg", shot.direction_rad ? Json(degrees(*shot.direction_rad)) : Json(nullptr)},
          {"why", report::why_words(shot, result.units)}};
}

void put_comparison(const BagComparison& comparison, Units units, Json& json) {
  json["compared"] = {{"before", text(comparison.before)},
                      {"after", text(comparison.after)},
                      {"only_before", comparison.only_before},
                      {"only_after", comparison.only_after}};
  put_clubs(comparison.measured_before, "clubs_before", json);
  const BagResult& before = comparison.measured_before;
  for (const OutlyingShot& shot : before.outliers) json["outliers"].push_back(outlier_json(shot, before));
  for (const ClubChange& change : comparison.changes) json["changes"].push_back(change_json(change, units));
  for (const std::string& note : report::comparison_notes(comparison)) json["notes"].push_back(note);
}

}  // namespace

std::string bag_json(const BagReport& report) {
  const BagResult& result = report.result;
  Json json = {{"format", "yardworth/bag/1"}, {"level", bag_level},
               {"shots", result.shots},       {"skipped_rows", result.skipped_rows},
               {"sessions", result.sessions}, {"handicap_index", report::or_null(result.handicap_index)}};
  put_clubs(result, "clubs", json);
  json["outliers"] = Json::array();
  for (const OutlyingShot& shot : result.outliers) json["outliers"].push_back(outlier_json(shot, result));
  json["notes"] = report.opening;
  json["changes"] = Json::array();
  if (report.comparison) put_comparison(*report.comparison, result.units, json);
  for (const std::string& note : report::bag_notes(result)) json["notes"].push_back(note);
  json["cautions"] = report::bag_cautions();
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
