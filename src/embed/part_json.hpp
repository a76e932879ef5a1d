#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <stdexcept>

#include "gain/round_gain.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/strategy.hpp"

// What a hole adds to a round as JSON and back, with nothing lost: numbers are written so that they are read back to
// the same bits. Names are those of the members; only this library reads it.

namespace nlohmann {

template <class T>
struct adl_serializer<std::optional<T>> {
  template <class Json>
  static void to_json(Json& json, const std::optional<T>& value) {
    if (value) {
      json = *value;
    } else {
      json = nullptr;
    }
  }
  template <class Json>
  static void from_json(const Json& json, std::optional<T>& value) {
    value = json.is_null() ? std::nullopt : std::optional<T>(json.template get<T>());
  }
};

}  // namespace nlohmann

namespace yardworth {

// Enumerations by their place, up to the last one that there is; anything else is refused.
template <class Enumeration>
Enumeration enumerator_at(const nlohmann::json& json, Enumeration last) {
  const int place = json.get<int>();
  if (place < 0 || place > static_cast<int>(last)) {
    throw std::out_of_range("an enumerator that there is not");
  }
  return static_cast<Enumeration>(place);
}

inline void to_json(nlohmann::json& json, Ground value) { json = static_cast<int>(value); }
inline void from_json(const nlohmann::json& json, Ground& value) { value = enumerator_at(json, Ground::rough); }
inline void to_json(nlohmann::json& json, HazardSide value) { json = static_cast<int>(value); }
inline void from_json(const nlohmann::json& json, HazardSide& value) {
  value = enumerator_at(json, HazardSide::behind_the_green);
}
inline void to_json(nlohmann::json& json, AimMark value) { json = static_cast<int>(value); }
inline void from_json(const nlohmann::json& json, AimMark& value) { value = enumerator_at(json, AimMark::bunker); }
inline void to_json(nlohmann::json& json, AimSide value) { json = static_cast<int>(value); }
inline void from_json(const nlohmann::json& json, AimSide& value) { value = enumerator_at(json, AimSide::right); }
inline void to_json(nlohmann::json& json, ChangeStep value) { json = static_cast<int>(value); }
inline void from_json(const nlohmann::json& json, ChangeStep& value) {
  value = enumerator_at(json, all_change_steps.back());
}
inline void to_json(nlohmann::json& json, PolicyChange::Kind value) { json = static_cast<int>(value); }
inline void from_json(const nlohmann::json& json, PolicyChange::Kind& value) {
  value = enumerator_at(json, PolicyChange::Kind::other_club);
}

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(StepValue, step, strokes)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(StepValues, before, steps, replanned)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(TeeShotResult, club, left_yd, next_club, next_shares, fairway, penalty, left_sd_yd,
                                   next_places)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HazardView, hazard, ground, side, from_yd, to_yd, all_along)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(CarryNowOn, hazard, far_side_yd)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PolicyChange, kind, club_kept, club, shorter, aim_moves_yd, left_yd, at_green,
                                   on_green, carry_now_on, avoided, comes_into_reach)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HazardMet, hazard, found, reached, cleared)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HolePlay, green_in_regulation, approach, hazards)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(ScoreDistribution, lowest, probability)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HoleGain, number, par, length_yd, strokes, before, after, next_club_changed,
                                   policy_change, clubs_shorter, scores_before, scores_after, strokes_variance,
                                   play_before, play_after)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HoleGains, habit, best)

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Aim, right_yd, along_yd, mark, side, beside_yd)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(TeeOption, club, carry_yd, aim, strokes, costs)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(NextShot, finish, third, probability, left_yd, clubs)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(TeePlay, tee_shot, alternatives, next)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HazardChance, hazard, before, after)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(OptimalityProof, largest_residual, states, baseline_bound)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Point, x, y)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PlanArea, ground, hazard, outline)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PlanView, line, tees, areas)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(FinishRegion, share, outlines)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(DrawnTeeShot, aim, regions, result, hazards)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HoleDrawing, plan, tee, before, after)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(HoleStrategy, number, par, length_yd, before, after, hazards, policy_change,
                                   proof_before, proof_after, graph, drawing)

}  // namespace yardworth
