#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/options.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Ways to spend the same money and hours, side by side: docs/model.md, "Options side by side".

struct WeighRequest {
  std::optional<std::size_t> tee;  // index into Course::tees; nothing: default_tee
  std::vector<Option> options;     // 1 to limits::most_options, each by another name
  PolicyChoice policy = PolicyChoice::habit;
  std::optional<double> stroke_worth;  // to the player, in the money of the options
  bool sensitivity = false;
  int threads = 0;  // 0: as many as there are cores; the result does not depend on it
};

// Every interval is of this level.
inline constexpr double weigh_level = 0.9;

// Strokes saved a round, and what they are in 9 cases of 10.
struct StrokesSaved {
  double value = 0.0;  // as gain says it of the change
  double low = 0.0;
  double high = 0.0;
};

// What else would save as many strokes, one at a time; nothing where no practice is as much.
struct Equivalents {
  std::optional<double> driver_carry_yd;  // added
  std::optional<double> direction_share;  // narrower spread of direction of every club, as a share of it
  std::optional<double> putting_share;    // narrower spreads of putts
};

struct WeighedOption {
  Option option;
  double doubt = 0.0;  // of the option, or assumed_doubt
  StrokesSaved saved;
  // Nothing where no strokes are saved.
  std::optional<double> money_per_stroke, hours_per_stroke;
  // Rounds until the strokes saved are worth the money; nothing where nobody says what a stroke is worth, either.
  std::optional<double> break_even_rounds;
  // That it saves the most strokes of all from the same tees; nothing from others.
  std::optional<double> best_probability;
  Equivalents equivalents;
};

// What one unit of something is worth to this player on this course: strokes saved a round. A unit is a yard of carry,
// 1% of a spread, one poor strike in 100.
struct Sensitivity {
  ChangeStep step = ChangeStep::driver_carry;
  double before = 0.0;
  double after = 0.0;  // of the golfer after the option that saves most
};

struct WeighResult {
  std::string course, tee, player;
  Band band = Band::from_13_to_20;
  Units units = Units::yards;  // the course's
  std::string baseline_name, baseline_source;
  PolicyChoice policy = PolicyChoice::habit;
  int holes = 0;
  double strokes_before = 0.0;
  std::optional<double> stroke_worth;
  std::vector<WeighedOption> options;  // as asked
  std::size_t most = 0;  // the one that saves most from the same tees, or, where there is none, from others
  std::vector<Sensitivity> sensitivity;  // the largest before first; empty: was not asked for
  std::vector<Note> notes;
  std::vector<Caution> cautions;
};

// Throws InvalidRequest where course, player or request have faults, and CannotFinish like compute_gain.
WeighResult compute_weigh(const Course& course, const Player& player, const Baseline& baseline,
                          const WeighRequest& request);

}  // namespace yardworth
