#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "yardworth/baseline/baseline.hpp"
#include "yardworth/course/course.hpp"
#include "yardworth/gain/hole_play.hpp"
#include "yardworth/player/golfer.hpp"

namespace yardworth {

// table: one tee shot, then the band's baseline where it finished. play: the player's own shots until the short game.
enum class Method { table, play };
// habit: what most club golfers do. best: the plan with the fewest expected strokes. both: best, with habit beside it.
enum class PlanChoice { habit, best, both };

std::string_view name(Method method);
std::string_view name(PlanChoice plan);

// The change that is asked about, in yards of carry; a loss is negative.
struct DistanceChange {
  double driver_carry_yd = 0.0;
  double irons_carry_yd = 0.0;  // of the reference iron; the other clubs in proportion to their carry
};

// Expected strokes under the four states of the question, and their differences.
struct FourValues {
  double before = 0.0;         // V0: clubs and plan before
  double driver_longer = 0.0;  // V1: driver longer, plan before
  double all_longer = 0.0;     // V2: driver and irons longer, plan before
  double replanned = 0.0;      // V3: the same clubs, planned afresh

  double from_tee() const { return before - driver_longer; }
  double from_irons() const { return driver_longer - all_longer; }
  double from_replanning() const { return all_longer - replanned; }
  double strokes_saved() const { return before - replanned; }
};

// What is played after the tee shot, with its probability: a club of the bag, "short game" (inside
// short_game_radius_yd of the hole), "putter", or the tee club again after a ball out of bounds.
using ClubShares = std::map<std::string, double>;

// The tee shot of a hole and what it leaves.
struct TeeShotResult {
  std::string club;
  double left_yd = 0.0;     // expected distance to the hole after it
  std::string next_club;    // the likeliest next club
  ClubShares next_shares;   // sums to 1
  double fairway = 0.0;     // probability that it rests on fairway or green
  double penalty = 0.0;     // probability of a penalty stroke
  double left_sd_yd = 0.0;  // standard deviation of the distance left
};

struct HoleGain {
  int number = 0;
  int par = 0;
  double length_yd = 0.0;
  FourValues strokes;
  TeeShotResult before;
  TeeShotResult after;
  double next_club_changed = 0.0;  // probability that the same strike is followed by another club
  std::string plan_change;         // why the plan changed, in a golfer's words; empty where it did not
  // Of the answer's plan with method play, where the request asks for it: the variance of the strokes of one play
  // before the change, and how the hole is played.
  double strokes_variance = 0.0;
  std::optional<HolePlay> play_before = std::nullopt;
  std::optional<HolePlay> play_after = std::nullopt;
};

struct PlanGain {
  FourValues round;
  std::vector<HoleGain> holes;
};

struct GainRequest {
  std::size_t tee = 0;
  DistanceChange change;
  Method method = Method::play;
  PlanChoice plan = PlanChoice::both;
  int threads = 0;              // 0: as many as there are cores; the result does not depend on it
  bool describe_play = false;   // with method play: how each hole is played, before and after
  bool spread_of_score = true;  // with method play: HoleGain::strokes_variance; with describe_play it comes anyway
};

struct GainResult {
  std::string course;
  std::string tee;
  std::string player;
  Band band = Band::from_13_to_20;
  Units units = Units::yards;  // the course's: how text speaks
  Method method = Method::play;
  PlanChoice plan = PlanChoice::both;
  DistanceChange change;
  std::optional<std::string> reference_iron;  // the club that irons_carry_yd is about
  std::optional<PlanGain> habit;              // where it was asked for
  std::optional<PlanGain> best;               // likewise; with both, this is the answer and habit stands beside it
  bool replanning_computed = false;           // otherwise from_replanning is 0 because nobody looked
  std::string baseline_name;
  std::string baseline_source;
  std::vector<std::string> notes;  // what the numbers rest on, each a sentence
  std::vector<std::string> cautions;

  const PlanGain& answer() const { return best ? *best : *habit; }
};

// What the change is worth to this player on this course. Throws std::invalid_argument when the change makes a carry
// zero or negative, and CannotFinish (strategy/plan.hpp) when a hole cannot be finished with these clubs.
GainResult compute_gain(const Course& course, const Player& player, const Baseline& baseline,
                        const GainRequest& request);

// Strokes saved a round against added driver carry, 0 to limit in steps; the irons grow in the request's proportion.
struct CurvePoint {
  DistanceChange change;
  FourValues round;
};
std::vector<CurvePoint> compute_curve(const Course& course, const Player& player, const Baseline& baseline,
                                      const GainRequest& request, double limit_yd, double step_yd);

}  // namespace yardworth
