#include "report/basis_words.hpp"
#include "report/hole_words.hpp"
#include "report/json_parts.hpp"
#include "report/score_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::all_caution_words;
using report::before_after_json;
using report::change_json;
using report::computed_parts;
using report::ComputedParts;
using report::distribution_json;
using report::Json;
using report::opening_and_notes;
using report::or_null;
using report::put_strokes;
using report::scores_json;
using report::shares_json;
using report::steps_json;
using report::strokes_json;
using report::terms_json;
using report::text;

Json next_club_json(const HoleGain& hole) {
  Json json = before_after_json(hole.before.next_club, hole.after.next_club);
  json["changed_probability"] = hole.next_club_changed;
  json["share_before"] = shares_json(hole.before.next_shares);
  json["share_after"] = shares_json(hole.after.next_shares);
  return json;
}

Json second_shot_json(const SecondShotChange& change) {
  const auto word = [](const std::string& club) { return club.empty() ? Json(nullptr) : Json(club); };
  return {{"clubs_shorter", or_null(change.clubs_shorter)},
          {"par_4", or_null(change.par_4)},
          {"par_5", or_null(change.par_5)},
          {"typical_before", word(change.typical_before)},
          {"typical_after", word(change.typical_after)}};
}

Json control_json(const std::optional<ControlToSpare>& control) {
  if (!control) return nullptr;
  Json json = {{"direction_sd_deg", nullptr}, {"poor_strike_probability", or_null(control->poor_strike)}};
  if (control->direction_sd_rad) json["direction_sd_deg"] = degrees(*control->direction_sd_rad);
  return json;
}

Json hole_json(const HoleGain& hole, ComputedParts computed, Units units) {
  Json json = {{"number", hole.number}, {"par", hole.par}, {"length_yd", hole.length_yd}};
  put_strokes(json, hole.strokes, computed);
  json["steps"] = steps_json(hole.strokes, computed);
  json["tee_club"] = before_after_json(hole.before.club, hole.after.club);
  json["left_yd"] = before_after_json(hole.before.left_yd, hole.after.left_yd);
  json["left_sd_yd"] = before_after_json(hole.before.left_sd_yd, hole.after.left_sd_yd);
  json["clubs_shorter"] = or_null(hole.clubs_shorter);
  json["next_club"] = next_club_json(hole);
  json["fairway_probability"] = before_after_json(hole.before.fairway, hole.after.fairway);
  json["penalty_probability"] = before_after_json(hole.before.penalty, hole.after.penalty);
  if (hole.scores_before && hole.scores_after) {
    json["scores"] = before_after_json(distribution_json(*hole.scores_before), distribution_json(*hole.scores_after));
  }
  if (hole.strokes_variance) json["strokes_variance"] = *hole.strokes_variance;
  json["plan_change"] = report::policy_change_words(hole.policy_change, units);
  return json;
}

Json holes_json(const PolicyGain& policy, ComputedParts computed, Units units) {
  Json json = Json::array();
  for (const HoleGain& hole : policy.holes) json.push_back(hole_json(hole, computed, units));
  return json;
}

Json carry_json(const DistanceChange& change) {
  return {{"driver_carry_yd", change.driver_carry_yd}, {"irons_carry_yd", change.irons_carry_yd}};
}

Json into_reach_json(const std::vector<HazardInReach>& reached, Units units) {
  Json json = Json::array();
  for (const HazardInReach& one : reached) {
    json.push_back({{"hole", one.hole},
                    {"number", one.hazard.hazard + 1},
                    {"words", report::hazard_words(one.hazard, units)},
                    {"from_yd", one.hazard.from_yd},
                    {"to_yd", one.hazard.to_yd}});
  }
  return json;
}

Json curve_json(const std::vector<CurvePoint>& curve, ComputedParts computed, Units units) {
  Json json = Json::array();
  for (const CurvePoint& point : curve) {
    Json entry = carry_json(point.change);
    put_strokes(entry, point.round, computed);
    entry["into_reach"] = into_reach_json(point.into_reach, units);
    json.push_back(std::move(entry));
  }
  return json;
}

Json head_json(const GainResult& result) {
  Json json = {{"format", "yardworth/gain/1"},
               {"course", result.course},
               {"tee", result.tee},
               {"player", result.player},
               {"band", text(name(result.band))},
               {"method", text(name(result.method))},
               {"plan", text(name(result.policy))},
               {"change", change_json(result.change)}};
  if (result.reference_iron) json["change"]["reference_iron"] = *result.reference_iron;
  return json;
}

Json interval_json(const SavedInterval& interval) {
  return {{"level", interval.level},
          {"low", interval.low},
          {"high", interval.high},
          {"draws", interval.draws},
          {"plan", text(name(interval.policy))}};
}

Json rounds_json(const RoundsToShow& show) {
  Json json = {{"score_sd", show.score_sd}, {"rounds_for_scores", or_null(show.rounds_for_scores)}};
  if (show.holes == 0) return json;
  json["left_sd_yd"] = show.left_sd_yd;
  json["left_change_yd"] = show.left_change_yd;
  json["rounds_for_left"] = or_null(show.rounds_for_left);
  json["holes_longer_than_par_3"] = show.holes;
  return json;
}

// What whole scores are of the answer, and what is wanting for points and handicaps.
void put_scores(Json& json, const GainResult& result) {
  if (!result.answer().scores) return;
  json["mark"] = result.mark ? Json(*result.mark) : Json(nullptr);
  json["scores"] = scores_json(*result.answer().scores, result.handicap);
  if (result.handicap) json["handicap"] = terms_json(*result.handicap);
}

std::vector<std::string> all_notes(const GainReport& gain) {
  std::vector<std::string> notes = opening_and_notes(gain.opening, gain.result.notes, gain.result.units);
  const std::string needs = report::handicap_needs_words(gain.result.handicap_needs);
  if (!needs.empty()) notes.push_back(needs);
  return notes;
}

}  // namespace

std::string gain_json(const GainReport& report) {
  const GainResult& result = report.result;
  Json json = head_json(result);
  json["replanning_computed"] = result.replanning_computed;
  const ComputedParts computed = computed_parts(result);
  json["round"] = strokes_json(result.answer().round, computed);
  json["round"]["steps"] = steps_json(result.answer().round, computed);
  if (result.interval) json["interval"] = interval_json(*result.interval);
  json["second_shot"] = second_shot_json(result.answer().second_shot);
  json["holes"] = holes_json(result.answer(), computed, result.units);
  if (result.best && result.habit) {
    const ComputedParts of_habit{computed.irons, false};
    Json round = strokes_json(result.habit->round, of_habit);
    round["steps"] = steps_json(result.habit->round, of_habit);
    json["habit"] = {{"round", round},
                     {"second_shot", second_shot_json(result.habit->second_shot)},
                     {"holes", holes_json(*result.habit, of_habit, result.units)}};
    if (result.habit->scores) json["habit"]["scores"] = scores_json(*result.habit->scores, result.handicap);
  }
  put_scores(json, result);
  if (const auto show = rounds_to_show(result)) json["rounds_to_show"] = rounds_json(*show);
  if (report.control_asked) json["control_to_spare"] = control_json(report.control);
  if (!report.curve.empty()) json["curve"] = curve_json(report.curve, computed, result.units);
  json["baseline"] = {{"name", result.baseline_name}, {"source", result.baseline_source}};
  json["notes"] = all_notes(report);
  json["cautions"] = all_caution_words(result.cautions);
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
