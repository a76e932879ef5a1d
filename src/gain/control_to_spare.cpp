#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>
#include <functional>
#include <optional>

#include "core/numerics.hpp"
#include "gain/golfers.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

namespace {

// How much of a loss of control takes a saving back: strokes(loss) rises from below zero. Nothing where it does not up
// to the largest.
std::optional<double> least_that_costs(const std::function<double(double)>& strokes, double at_none, double first,
                                       double largest) {
  double low = 0.0;
  double at_low = at_none;
  double high = std::min(first, largest);
  double at_high = strokes(high);
  while (at_high < 0.0) {
    if (high >= largest) return std::nullopt;
    low = high;
    at_low = at_high;
    high = std::min(2.0 * high, largest);
    at_high = strokes(high);
  }
  const boost::math::tools::eps_tolerance<double> close(numerics::control_bits);
  std::uintmax_t most = numerics::most_root_evaluations;
  const auto bracket = boost::math::tools::toms748_solve(strokes, low, high, at_low, at_high, close, most);
  return 0.5 * (bracket.first + bracket.second);
}

}  // namespace

std::optional<ControlToSpare> compute_control_to_spare(const Course& course, const Player& player,
                                                       const Baseline& baseline, const GainRequest& request) {
  GainRequest habit = request;
  habit.method = Method::play;
  habit.policy = PolicyChoice::habit;
  habit.describe_play = habit.spread_of_score = false;
  habit.change = {};
  const auto round_of = [&](const Player& golfer, const Baseline& finish) {
    return compute_gain(course, golfer, finish, habit).answer().round.before;
  };
  const Golfers golfers = golfers_of(player, baseline, request.change);
  const Baseline& finish_after = golfers.finish_after_all(baseline);
  // A golfer so wild that some hole has no end has lost it all.
  const auto round_of_wilder = [&](const Player& golfer) {
    try {
      return round_of(golfer, finish_after);
    } catch (const CannotFinish&) {
      return numerics::most_strokes_of_hole;
    }
  };
  const double before = round_of(player, baseline);
  const Player& longer = golfers.after();
  const double at_none = round_of(longer, finish_after) - before;
  if (at_none >= 0.0) return std::nullopt;
  double widest_rad = 0.0;
  double poorest = 0.0;
  for (const Club& club : longer.clubs) {
    widest_rad = std::max(widest_rad, club.direction_sd_rad);
    poorest = std::max(poorest, club.poor_strike);
  }
  const auto wider = [&](double more_rad) {
    Player golfer = longer;
    for (Club& club : golfer.clubs) club.direction_sd_rad += more_rad;
    return round_of_wilder(golfer) - before;
  };
  const auto poorer = [&](double more) {
    Player golfer = longer;
    for (Club& club : golfer.clubs) club.poor_strike += more;
    return round_of_wilder(golfer) - before;
  };
  constexpr double within = 1.0 - numerics::rounding_share;
  return ControlToSpare{least_that_costs(wider, at_none, numerics::first_control_rad,
                                         within * radians(limits::direction_sd.high) - widest_rad),
                        least_that_costs(poorer, at_none, numerics::first_control_poor_strike,
                                         within * limits::poor_strike.high - poorest)};
}

}  // namespace yardworth
