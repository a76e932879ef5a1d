#include "report/basis_words.hpp"
#include "report/hole_words.hpp"
#include "report/json_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::all_caution_words;
using report::Json;
using report::opening_and_notes;
using report::text;

Json option_json(const TeeOption& option, Units units) {
  return {{"club", option.club},
          {"carry_yd", option.carry_yd},
          {"aim",
           {{"right_yd", option.aim.right_yd},
            {"along_yd", option.aim.along_yd},
            {"at_green", option.aim.at_green()},
            {"words", report::aim_words(option.aim, units)}}},
          {"strokes", option.strokes},
          {"costs", option.costs}};
}

Json next_json(const NextShot& next) {
  Json json = {{"finish", text(name(next.finish))},
               {"third", next.third.empty() ? Json(nullptr) : Json(next.third)},
               {"probability", next.probability},
               {"left_yd", next.left_yd}};
  json["clubs"] = report::shares_json(next.clubs);
  return json;
}

Json plan_json(const TeePlay& policy, Units units) {
  Json json = {{"strokes", policy.tee_shot.strokes}, {"tee_shot", option_json(policy.tee_shot, units)}};
  json["alternatives"] = Json::array();
  for (const TeeOption& option : policy.alternatives) json["alternatives"].push_back(option_json(option, units));
  json["next_shot"] = Json::array();
  for (const NextShot& next : policy.next) json["next_shot"].push_back(next_json(next));
  return json;
}

Json hazard_json(const HazardChance& chance, Units units) {
  Json json = {{"kind", text(name(chance.hazard.ground))},
               {"side", text(name(chance.hazard.side))},
               {"from_yd", chance.hazard.from_yd},
               {"to_yd", chance.hazard.to_yd},
               {"words", report::hazard_words(chance.hazard, units)},
               {"probability", {{"before", chance.before}}}};
  if (chance.after) json["probability"]["after"] = *chance.after;
  return json;
}

Json proof_json(const OptimalityProof& proof) {
  return {
      {"largest_residual", proof.largest_residual}, {"states", proof.states}, {"baseline_bound", proof.baseline_bound}};
}

Json hole_json(const HoleStrategy& hole, Units units) {
  Json json = {{"number", hole.number}, {"par", hole.par}, {"length_yd", hole.length_yd}};
  json["before"] = plan_json(hole.before, units);
  if (hole.after) json["after"] = plan_json(*hole.after, units);
  if (hole.after) json["plan_change"] = report::policy_change_words(hole.policy_change, units);
  json["hazards"] = Json::array();
  for (const HazardChance& chance : hole.hazards) json["hazards"].push_back(hazard_json(chance, units));
  if (hole.proof_before) json["proof"]["before"] = proof_json(*hole.proof_before);
  if (hole.proof_after) json["proof"]["after"] = proof_json(*hole.proof_after);
  return json;
}

}  // namespace

std::string strategy_json(const StrategyReport& report) {
  const StrategyResult& result = report.result;
  Json json = {{"format", "yardworth/strategy/1"},
               {"course", result.course},
               {"tee", result.tee},
               {"player", result.player},
               {"band", text(name(result.band))}};
  if (result.change) {
    json["change"] = report::change_json(*result.change);
  }
  json["holes"] = Json::array();
  for (const HoleStrategy& hole : result.holes) json["holes"].push_back(hole_json(hole, result.units));
  json["baseline"] = {{"name", result.baseline_name}, {"source", result.baseline_source}};
  json["notes"] = opening_and_notes(report.opening, result.notes, result.units);
  json["cautions"] = all_caution_words(result.cautions);
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
