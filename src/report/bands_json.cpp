#include "core/cannot_finish_words.hpp"
#include "report/bands_parts.hpp"
#include "report/basis_words.hpp"
#include "report/hole_words.hpp"
#include "report/json_parts.hpp"
#include "report/score_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::all_caution_words;
using report::before_after_json;
using report::computed_parts;
using report::ComputedParts;
using report::Json;
using report::null_unless;
using report::opening_and_notes;
using report::or_null;
using report::put_strokes;
using report::shares_json;
using report::strokes_json;
using report::text;

Json hazard_json(const HazardMet& before, const HazardMet& after, Units units) {
  return {{"number", before.hazard.hazard + 1},
          {"words", report::hazard_words(before.hazard, units)},
          {"from_yd", before.hazard.from_yd},
          {"to_yd", before.hazard.to_yd},
          {"found_probability", before_after_json(before.found, after.found)},
          {"reached_probability", before_after_json(before.reached, after.reached)},
          {"cleared_probability", before_after_json(before.cleared, after.cleared)}};
}

Json hole_json(const BandHole& hole, ComputedParts computed, Units units) {
  Json json = {{"number", hole.number}, {"par", hole.par}, {"length_yd", hole.length_yd}};
  put_strokes(json, hole.strokes, computed);
  json["green_in_regulation_probability"] =
      before_after_json(hole.before.green_in_regulation, hole.after.green_in_regulation);
  json["approach_share"] = before_after_json(shares_json(hole.before.approach), shares_json(hole.after.approach));
  json["hazards"] = Json::array();
  for (std::size_t i = 0; i < hole.before.hazards.size(); ++i) {
    json["hazards"].push_back(hazard_json(hole.before.hazards[i], hole.after.hazards[i], units));
  }
  return json;
}

// Everything about the golfer's rounds.
void put_rounds(Json& json, const BandsResult& result, const BandOnTee& golfer) {
  const ComputedParts computed = computed_parts(result);
  json["round"] = strokes_json(golfer.round, computed);
  json["handicap_index_change"] = or_null(golfer.index_change);
  const RoundPlay& before = golfer.before;
  const RoundPlay& after = golfer.after;
  json["green_in_regulation_share"] = before_after_json(before.green_in_regulation, after.green_in_regulation);
  const bool has_fairways = report::has_fairways(golfer);
  json["fairway_share"] =
      before_after_json(null_unless(has_fairways, before.fairway), null_unless(has_fairways, after.fairway));
  json["tee_shot_penalty_strokes"] = before_after_json(before.penalty, after.penalty);
  json["approach_share"] = before_after_json(shares_json(before.approach), shares_json(after.approach));
  json["typical_second_shot"] = before_after_json(before.typical_second_shot, after.typical_second_shot);
  json["clubs_apart_from_scratch"] = or_null(golfer.clubs_apart);
  json["clubs_longer_than_scratch"] = or_null(golfer.clubs_longer);
  if (golfer.scores) json["scores"] = report::scores_json(*golfer.scores, golfer.handicap);
  if (golfer.handicap) json["handicap"] = report::terms_json(*golfer.handicap);
  json["holes"] = Json::array();
  for (const BandHole& hole : golfer.holes) json["holes"].push_back(hole_json(hole, computed, result.units));
}

Json golfer_json(const BandsResult& result, const BandOnTee& golfer) {
  Json json = {
      {"band", text(name(golfer.band))}, {"gender", text(name(golfer.gender))}, {"tee", result.tees[golfer.tee].name}};
  if (!golfer.cannot_finish.empty()) {
    json["cannot_finish"] = cannot_finish_words(golfer.cannot_finish, result.units);
    return json;
  }
  if (result.rounds) put_rounds(json, result, golfer);
  if (result.changed_hazards.empty()) return json;
  const ComputedParts computed = computed_parts(result);
  json["changed_holes"] = Json::array();
  for (const ChangedHole& hole : golfer.changed) {
    json["changed_holes"].push_back({{"without", hole_json(hole.without, computed, result.units)},
                                     {"with", hole_json(hole.with, computed, result.units)}});
  }
  return json;
}

Json suiting_json(const BandsResult& result) {
  const auto tee_name = [&](const std::optional<std::size_t>& tee) {
    return tee ? Json(result.tees[*tee].name) : Json(nullptr);
  };
  Json json = Json::array();
  for (const SuitingTee& suits : result.suiting) {
    json.push_back({{"band", text(name(suits.band))},
                    {"gender", text(name(suits.gender))},
                    {"driver_distance_yd", suits.driver_distance_yd},
                    {"recommended_length_yd", {suits.recommended.low_yd, suits.recommended.high_yd}},
                    {"beyond_guideline", suits.recommended.beyond_table},
                    {"tee_by_length", tee_name(suits.by_length)},
                    {"tee_by_clubs", tee_name(suits.by_clubs)}});
  }
  return json;
}

Json changed_hazards_json(const BandsResult& result) {
  Json json = Json::array();
  for (const ChangedHazard& hazard : result.changed_hazards) {
    json.push_back({{"hole", hazard.hole}, {"number", hazard.hazard + 1}, {"added", hazard.added}});
  }
  return json;
}

}  // namespace

namespace report {

Json tees_json(const std::vector<TeeOfBands>& tees) {
  Json json = Json::array();
  for (const TeeOfBands& tee : tees) {
    json.push_back({{"name", tee.name},
                    {"length_yd", tee.length_yd},
                    {"slope", or_null(tee.slope)},
                    {"rated_for", text(name(tee.rated_for))}});
  }
  return json;
}

}  // namespace report

std::string bands_json(const BandsReport& report) {
  const BandsResult& result = report.result;
  Json json = {{"format", "yardworth/bands/1"},
               {"course", result.course},
               {"change",
                {{"driver_carry_yd", result.change.driver_carry_yd}, {"irons_carry_yd", result.change.irons_carry_yd}}},
               {"plan", text(name(result.policy))},
               {"replanning_computed", result.replanning_computed},
               {"tees", report::tees_json(result.tees)},
               {"longest_tee", result.longest_tee}};
  if (!result.changed_hazards.empty()) json["changed_hazards"] = changed_hazards_json(result);
  json["golfers"] = Json::array();
  for (const BandOnTee& golfer : result.golfers) json["golfers"].push_back(golfer_json(result, golfer));
  if (result.rounds) json["suiting_tees"] = suiting_json(result);
  json["notes"] = opening_and_notes(report.opening, result.notes, result.units);
  json["cautions"] = all_caution_words(result.cautions);
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
