#pragma once

#include <optional>
#include <string>
#include <vector>

#include "yardworth/gain.hpp"
#include "yardworth/plan_view.hpp"
#include "yardworth/tee_view.hpp"

namespace yardworth {

// How a hole is best played, before and after a change: the tee shot and what else could be played, the next shot, and
// the hazards. Expectations are sums; nothing is drawn.

// A tee shot and what it comes to with the best play behind it.
struct TeeOption {
  std::string club;
  double carry_yd = 0.0;  // mean carry that it is played to
  Aim aim;
  double strokes = 0.0;  // expected for the whole hole
  double costs = 0.0;    // strokes behind the policy's own tee shot
};

// What follows the tee shots that finish on one ground: the ground they lie on, or that cost the penalty. A ball that
// is dropped is played from there, one out of bounds (or with no place to drop, which counts as that) from the tee
// again. `third` is empty for all of them together; "short", "middle" and "long" are thirds of them by the distance
// left, told where they are not followed by the same club.
struct NextShot {
  Ground finish = Ground::fairway;
  std::string third;
  double probability = 0.0;
  double left_yd = 0.0;  // mean distance to the hole that the next shot is played from
  ClubShares clubs;      // sums to 1
};

struct TeePlay {
  TeeOption tee_shot;
  std::vector<TeeOption> alternatives;  // cheapest first; none where the request asks for none
  std::vector<NextShot> next;
};

// The chance that the tee shot of the policy finds a hazard.
struct HazardChance {
  HazardView hazard;
  double before = 0.0;
  std::optional<double> after;
};

// The proof that a policy is the best: by how much any action at any of the states beats the policy's own by one step.
struct OptimalityProof {
  double largest_residual = 0.0;  // strokes
  int states = 0;
  double baseline_bound = 0.0;  // strokes of the hole that may rest on the baseline outside the short game
};

// Where a share of the tee shots finishes, in the fewest square yards that hold it: a place is inside where an odd
// number of the outlines hold it. A ball that costs a penalty counts where it came to that ground.
struct FinishRegion {
  double share = 0.0;
  std::vector<Polygon> outlines;  // in the plan view
};

// The tee shot of a policy as a picture shows it.
struct DrawnTeeShot {
  Point aim;                          // where a straight, solid ball finishes
  std::vector<FinishRegion> regions;  // half of them, and nine in ten
  TeeShotResult result;
  std::vector<HazardMet> hazards;
};

// What a picture of a hole is made of.
struct HoleDrawing {
  PlanView plan;
  Point tee;  // the one in use
  DrawnTeeShot before;
  std::optional<DrawnTeeShot> after;
};

struct HoleStrategy {
  int number = 0;
  int par = 0;
  double length_yd = 0.0;
  TeePlay before;
  std::optional<TeePlay> after;  // where a change was asked about
  std::vector<HazardChance> hazards;
  PolicyChange policy_change;
  std::optional<OptimalityProof> proof_before, proof_after;
  std::string graph;  // as policy_graph_dot writes the policy, after the change if there is one
  std::optional<HoleDrawing> drawing = std::nullopt;  // where the request asks for it
};

struct StrategyRequest {
  std::optional<std::size_t> tee;  // index into Course::tees; nothing: default_tee
  std::optional<Change> change;    // nothing: the player as he or she is
  std::vector<int> holes;          // their numbers; empty: all
  int threads = 0;                 // 0: as many as there are cores; the result does not depend on it
  bool prove = false;              // search completely, and measure the largest residual
  bool graph = false;
  bool drawing = false;
  bool alternatives = true;  // most of the time goes into what else could be played from the tee
};

struct StrategyResult {
  std::string course;
  std::string tee;
  std::string player;
  Band band = Band::from_13_to_20;
  Units units = Units::yards;  // the course's: how text speaks
  std::optional<Change> change;
  std::vector<HoleStrategy> holes;
  std::string baseline_name;
  std::string baseline_source;
  std::vector<Note> notes;
  std::vector<Caution> cautions;
};

// Throws InvalidRequest when course, player or request have faults, and CannotFinish when a hole cannot be finished
// with these clubs. Without a baseline: default_baseline.
StrategyResult compute_strategy(const Course& course, const Player& player, const StrategyRequest& request);
StrategyResult compute_strategy(const Course& course, const Player& player, const Baseline& baseline,
                                const StrategyRequest& request);

}  // namespace yardworth
