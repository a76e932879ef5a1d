#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/change.hpp"
#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/player.hpp"
#include "yardworth/score.hpp"
#include "yardworth/tee_view.hpp"

namespace yardworth {

// table: one tee shot, then the band's baseline where it finished. play: the player's own shots until the short game.
enum class Method { table, play };
// habit: what most club golfers do. best: the policy with the fewest expected strokes. both: best, with habit beside
// it.
enum class PolicyChoice { habit, best, both };

std::string_view name(Method method);
std::string_view name(PolicyChoice policy);

// Whether a step of a change counts. The tee shot that the table method knows says nothing of irons, the short game and
// putting: what comes from them is 0 by construction.
bool is_counted(Method method, ChangeStep step);

// What is played after the tee shot, with its probability: a club of the bag, "short game" (inside
// short_game_radius_yd of the hole), "putter", or the tee club again after a ball out of bounds.
using ClubShares = std::map<std::string, double>;

// Probabilities by how short the next shot is: a lay-up, which is any stroke that is not played at the green (or the
// tee shot again, after a ball out of bounds); the clubs of the bag played at the green, longest first; the short game;
// the putter. Sums to 1. A stroke is played at the green where its total there comes within 12% of the distance left.
using BagPlaces = std::vector<double>;

// The tee shot of a hole and what it leaves.
struct TeeShotResult {
  std::string club;
  double left_yd = 0.0;     // expected distance to the hole after it
  std::string next_club;    // the typical one: the middle of next_places; also "lay-up"
  ClubShares next_shares;   // sums to 1
  double fairway = 0.0;     // probability that it rests on fairway or green
  double penalty = 0.0;     // probability of a penalty stroke
  double left_sd_yd = 0.0;  // standard deviation of the distance left
  BagPlaces next_places = {};
};

// How a hole is played under a policy, beyond its expected strokes. Everything is an expectation, worked out as a
// sum; nothing is drawn. docs/model.md, "How a hole is played".

// A hazard as the tee shots of a policy meet it: probabilities.
struct HazardMet {
  HazardView hazard;
  double found = 0.0;
  double reached = 0.0;  // found, or finishes level with where it begins, or beyond; at least found + cleared
  double cleared = 0.0;  // finishes beyond its end
};

struct HolePlay {
  double green_in_regulation = 0.0;  // the ball is on the green after at most par - 2 strokes
  // The club of the approach: the first stroke after the tee shot that is played at the green from beyond the short
  // game. Sums to the probability that there is one; empty on par 3s.
  std::map<std::string, double> approach;
  std::vector<HazardMet> hazards;  // in the order in which the ball meets them
};

struct HoleGain {
  int number = 0;
  int par = 0;
  double length_yd = 0.0;
  StepValues strokes;
  TeeShotResult before;
  TeeShotResult after;
  double next_club_changed = 0.0;  // probability that the same strike is followed by another club
  PolicyChange policy_change;
  // By how many clubs the shot after the tee shot is shorter on average; nothing on par 3s.
  std::optional<double> clubs_shorter = std::nullopt;
  // With method play, where the request asks for it: how often the hole takes how many strokes, whose mean is that of
  // `strokes`, and the variance of one play before the change.
  std::optional<ScoreDistribution> scores_before = std::nullopt;
  std::optional<ScoreDistribution> scores_after = std::nullopt;
  std::optional<double> strokes_variance = std::nullopt;
  // Of the answer's policy with method play, where the request asks for it: how the hole is played.
  std::optional<HolePlay> play_before = std::nullopt;
  std::optional<HolePlay> play_after = std::nullopt;
};

// By how many clubs the shots after the tee shots are shorter on average, and the typical second shot of the par 4s:
// the middle one of all of them (BagPlaces). docs/model.md, "Second shots". Nothing, and no word, without such holes.
struct SecondShotChange {
  std::optional<double> clubs_shorter;  // on all holes longer than a par 3
  std::optional<double> par_4, par_5;   // the second: par 5 and longer
  std::string typical_before, typical_after;
};

struct PolicyGain {
  StepValues round;
  std::vector<HoleGain> holes;
  SecondShotChange second_shot = {};
  std::optional<PolicyScores> scores = std::nullopt;  // where the holes have theirs
};

struct GainRequest {
  std::optional<std::size_t> tee;  // index into Course::tees; nothing: default_tee
  Change change;
  Method method = Method::play;
  PolicyChoice policy = PolicyChoice::both;
  int threads = 0;                         // 0: as many as there are cores; the result does not depend on it
  bool describe_play = false;              // with method play: how each hole is played, before and after
  bool spread_of_score = true;             // with method play: how often a hole and the round take how many strokes
  std::vector<int> holes = {};             // their numbers, and the round is made of these; empty: all
  std::optional<int> mark = std::nullopt;  // a score to break, limits::mark
};

// A fact that numbers rest on. Reports have the sentence.
struct Note {
  enum class Kind {
    own_shots_then_baseline,       // the player's shots until radius_yd from the hole, the baseline from there
    tee_shot_then_baseline,        // one tee shot, the baseline from there
    typical_spreads,               // what the player's file does not give is typical of the Handicap Index
    no_driver_to_change,           // the change of the driver moves no club
    no_irons_to_change,            // the change of the irons moves no club
    step_without_effect,           // another step of the change moves nothing of the player: step
    golfers_invented,              // the golfer of a band stands for nobody
    band_shots_then_baseline,      // as own_shots_then_baseline, with the baseline of the band
    slope_only_for_whom_it_rates,  // a tee's slope says nothing of those it is not rated for
    misses_to_one_side,            // the best policy aims off for what clubs miss on average, the habit does not
    members_have_standard_bags,    // a member has the skill of the index and a standard bag
    members_taken_together,        // who is alike was worked out together
  };
  Kind kind = Kind::own_shots_then_baseline;
  double radius_yd = 0.0;                      // only where the kind speaks of it
  std::vector<SideMiss> misses{};              // likewise
  ChangeStep step = ChangeStep::driver_carry;  // likewise
};

// What a reader is to bear in mind, and whose decision it is.
struct Caution {
  enum class Kind {
    swing_changes_load_the_body,     // a coach, a medical professional
    ratings_are_the_associations,    // course ratings and handicaps
    index_change_supposes_the_mean,  // the change of Handicap Index: the authorised golf association
    many_strokes,                    // the dearest hole takes more strokes than a golfer plays
  };
  Kind kind = Kind::swing_changes_load_the_body;
  double strokes = 0.0;  // only where the kind speaks of them
};

// Where the strokes saved lie, as far as a change was measured: the middle of as many of them as there were draws of
// what it may be, re-solved each. docs/model.md, "Strokes saved and how sure".
struct SavedInterval {
  double level = 0.0;
  double low = 0.0;
  double high = 0.0;
  int draws = 0;
  PolicyChoice policy = PolicyChoice::habit;  // habit or best: under which they were solved
};

struct GainResult {
  std::string course;
  std::string tee;
  std::string player;
  Band band = Band::from_13_to_20;
  Units units = Units::yards;  // the course's: how text speaks
  Method method = Method::play;
  PolicyChoice policy = PolicyChoice::both;
  Change change;
  std::optional<std::string> reference_iron;  // the club that irons_carry_yd is about
  std::optional<PolicyGain> habit;            // where it was asked for
  std::optional<PolicyGain> best;             // likewise; with both, this is the answer and habit stands beside it
  std::optional<SavedInterval> interval = std::nullopt;  // where the change was measured and draws were asked for
  bool replanning_computed = false;                      // otherwise from_replanning is 0 because nobody looked
  std::string baseline_name;
  std::string baseline_source;
  // The mark that the answer is told by: that of the request, or the ten (of 9 holes, the five) nearest to the mean
  // score before; nothing of a round of other holes.
  std::optional<int> mark;
  // What scores are turned into points and handicaps by; nothing where something is wanting for it.
  std::optional<HandicapTerms> handicap;
  std::vector<HandicapNeed> handicap_needs;
  std::vector<Note> notes;  // what the numbers rest on
  std::vector<Caution> cautions;

  const PolicyGain& answer() const { return best ? *best : *habit; }
};

// What the change is worth to this player on this course. Throws InvalidRequest when course, player or request have
// faults, and CannotFinish when a hole cannot be finished with these clubs. Without a baseline: default_baseline.
GainResult compute_gain(const Course& course, const Player& player, const GainRequest& request);
GainResult compute_gain(const Course& course, const Player& player, const Baseline& baseline,
                        const GainRequest& request);

struct HazardInReach {
  int hole = 0;  // its number
  HazardView hazard;
};
struct CurvePoint {
  DistanceChange change;
  StepValues round;
  // With method play: what comes into reach here, in the order of the holes. Of the tee shots that the answer plays at
  // this carry telling::within_reach or more reach it (HazardMet), and at no carry before did as many.
  std::vector<HazardInReach> into_reach = {};
};
// Strokes saved a round against added driver carry, 0 to limit in steps; the irons grow in the request's proportion.
// Throws like compute_gain.
std::vector<CurvePoint> compute_curve(const Course& course, const Player& player, const Baseline& baseline,
                                      const GainRequest& request, double limit_yd, double step_yd);

// How much less control of every club, with the clubs after the change, costs what the change saves: a wider spread of
// direction alone, or more poor strikes alone. Under the habit, since the best policy would choose other shots for a
// wilder golfer and lose less. Nothing where within the limits of files it does not cost so much.
struct ControlToSpare {
  std::optional<double> direction_sd_rad;  // added to the spread of every club
  std::optional<double> poor_strike;       // added to the probability of every club
};

// Nothing where the change saves no strokes under the habit. Takes several times as long as a gain under it.
// Throws like compute_gain.
std::optional<ControlToSpare> compute_control_to_spare(const Course& course, const Player& player,
                                                       const Baseline& baseline, const GainRequest& request);

// How many rounds it takes until a change shows. docs/model.md, "How many rounds until it shows".
struct RoundsToShow {
  double score_sd = 0.0;                    // of a round's score, before the change
  std::optional<double> rounds_for_scores;  // before, and as many after; nothing where no strokes are saved
  // The same for what the tee shots of the holes longer than a par 3 leave, which shows sooner.
  double left_sd_yd = 0.0;      // of a round's mean distance left, before the change
  double left_change_yd = 0.0;  // of the mean distance left; negative: shorter
  std::optional<double> rounds_for_left;
  int holes = 0;  // of a round that are longer than a par 3; 0: there is nothing to measure
};

// Method play only: with method table the strokes of a round have no spread, and there is no answer.
std::optional<RoundsToShow> rounds_to_show(const GainResult& result);

}  // namespace yardworth
