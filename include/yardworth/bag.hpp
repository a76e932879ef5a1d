#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "yardworth/player.hpp"
#include "yardworth/shot_log.hpp"
#include "yardworth/units.hpp"

// What shots that were measured say of a golfer: docs/model.md, "What shots say". Statistics alone: no course, no play.

namespace yardworth {

// Every interval is of this level.
inline constexpr double bag_level = 0.9;
// A club of fewer shots says too little by itself: it is borrowed for.
inline constexpr std::size_t fewest_own_shots = 5;

// A number and the interval that it lies in. An end is infinite where so few shots say nothing of it.
struct Estimate {
  double value = 0.0;
  double low = 0.0;
  double high = 0.0;
  double standard_error = 0.0;  // of value, or of its logarithm where it is a spread
  double freedom = 0.0;         // degrees of freedom of the standard error
};

// Of one club. What the log has no column for is missing.
struct ClubMeasure {
  std::string club;
  std::size_t shots = 0;
  Estimate carry_yd;                           // typical: the mean of solid strikes
  std::optional<Estimate> carry_sd_yd;         // of solid strikes
  std::optional<Estimate> poor_strike;         // probability
  std::optional<Estimate> direction_mean_rad;  // right positive
  std::optional<Estimate> direction_sd_rad;    // of solid strikes
  std::optional<Estimate> total_yd;            // of solid strikes
  std::optional<Estimate> smash_factor;        // of solid strikes
  std::optional<Estimate> club_speed_mps;      // of solid strikes
  std::optional<Estimate> gap_yd;              // of carry, to the next club down
  double solid_shots = 0.0;                    // as many as are likely to be solid
  double log_likelihood = 0.0;                 // of the shots, in yards and radians; 0 where nothing was fitted
  // Borrowed from what is typical of the golfer: of the carry, and of spreads and poor strikes. 0 where the shots stand
  // for themselves.
  double carry_borrowed_share = 0.0;
  double borrowed_share = 0.0;
};

// A shot that is hardly a strike of the club, solid or poor. It is counted among the shots, and hardly weighs.
struct OutlyingShot {
  enum class Why { longer, shorter, wider };  // than strikes of the club go; off its line
  int line = 0;
  std::string club;
  double carry_yd = 0.0;
  std::optional<double> direction_rad;
  Why why = Why::longer;
};

// What is worth saying of a log beside its numbers.
struct BagNote {
  enum class Kind {
    too_few_shots,     // of a club, and nothing to borrow from
    borrowed,          // of a club
    no_typical_carry,  // of a club that the standard bag does not have: its carry is not borrowed
    all_the_same,      // carries of a club: its spread is not to be believed
    unknown_club,      // a name that tells no kind of club
    not_in_bag,        // a club that the golfer's file does not have
    like_metres,       // carries so short that they may be metres called yards: ratio
    unlike_golfer,     // carries so short or long for the golfer that their unit may be another
    odd_smash,         // ball speed over club head speed that no strike has: ratio
  };
  Kind kind = Kind::borrowed;
  std::string club;
  std::size_t shots = 0;
  double ratio = 0.0;
};

struct BagRequest {
  // Whom clubs of few shots are borrowed from: a player's file, or the typical golfer of a Handicap Index.
  std::optional<Player> golfer;
  bool golfer_has_file = false;
};

struct BagResult {
  std::string file;
  Units units = Units::yards;
  std::size_t shots = 0;
  std::size_t skipped_rows = 0;
  std::vector<std::string> sessions;
  std::optional<double> handicap_index;  // of the golfer that was borrowed from
  std::vector<ClubMeasure> clubs;        // longest carry first
  std::vector<OutlyingShot> outliers;    // in the order of the log
  std::vector<BagNote> notes;
};

// The clubs of a log. Throws InvalidRequest where the golfer has faults.
BagResult measure_bag(const ShotLog& log, const BagRequest& request = {});

// What changed of one club.
struct ClubChange {
  std::string club;
  ClubMeasure before, after;
  Estimate carry_yd;  // of typical carry: after less before, as all changes; a loss is negative
  // The same at equal club head speed, where both logs have it and their speeds lie near enough: what is gained by
  // striking better, not harder.
  std::optional<Estimate> at_equal_club_speed_yd;
  std::optional<Estimate> club_speed_mps;
  std::optional<Estimate> poor_strike;                         // of the probability
  std::optional<Estimate> carry_sd_ratio, direction_sd_ratio;  // after over before
  enum class Verdict { real, cannot_tell, too_few_shots };
  Verdict verdict = Verdict::cannot_tell;
  // Of each, before and after, until it would be called real if it is what it seems; nothing where it is real already,
  // seems to be nothing, or would take more than most_more_shots.
  std::optional<std::size_t> more_shots;

  // What the verdict is about: at equal club head speed where that is known.
  const Estimate& answer() const { return at_equal_club_speed_yd ? *at_equal_club_speed_yd : carry_yd; }
};
inline constexpr std::size_t most_more_shots = 500;

struct BagComparison {
  std::string before, after;  // their names: files, sessions or clubs
  BagResult measured_before, measured_after;
  std::vector<ClubChange> changes;                   // longest carry first, as after
  std::vector<std::string> only_before, only_after;  // clubs
};

// What changed from one log to another, club by club. Throws InvalidRequest where the golfer has faults.
BagComparison compare_bags(const ShotLog& before, const ShotLog& after, const BagRequest& request = {});
// Two clubs, or two heads, hit in turn: each log has the shots of one of them.
BagComparison compare_clubs(const ShotLog& before, const ShotLog& after, const BagRequest& request = {});

// The text of a player file with the clubs that were measured, or every fault that it would have. Spreads and poor
// strikes are drawn to what is typical of the golfer, which counts for ten shots however many were measured, and a mean
// direction is left out where its interval has 0 in it (docs/model.md, "Few shots"). existing: a player
// file whose other keys, clubs and comments are kept; else the golfer's label, index, band and gender head a new one.
// Clubs that have no spread, since their shots are too few, are left out. file: how findings name it.
Reading<std::string> write_measured_player(const BagResult& result, const Player& golfer,
                                           const std::optional<std::string>& existing, const std::string& file);

// The typical golfer of a Handicap Index, to borrow from.
Player golfer_of_index(double handicap_index, Gender gender);

}  // namespace yardworth
