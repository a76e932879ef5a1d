#include "gain/rounds_to_show.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "core/telling.hpp"

namespace yardworth {

std::optional<double> rounds_per_side(double difference, double sd) {
  using telling::test_level;
  using telling::test_power;
  if (difference == 0.0) return std::nullopt;
  const boost::math::normal standard;
  const double z =
      boost::math::quantile(standard, 1.0 - test_level / 2.0) + boost::math::quantile(standard, test_power);
  return std::max(1.0, 2.0 * z * z * sd * sd / (difference * difference));
}

std::optional<RoundsToShow> rounds_to_show(const GainResult& result) {
  if (result.method != Method::play) return std::nullopt;
  RoundsToShow show;
  double score_variance = 0.0;
  double left_variance = 0.0;
  for (const HoleGain& hole : result.answer().holes) {
    score_variance += hole.strokes_variance.value_or(0.0);
    if (hole.par <= 3) continue;
    ++show.holes;
    left_variance += hole.before.left_sd_yd * hole.before.left_sd_yd;
    show.left_change_yd += hole.after.left_yd - hole.before.left_yd;
  }
  show.score_sd = std::sqrt(score_variance);
  show.rounds_for_scores = rounds_per_side(result.answer().round.strokes_saved(), show.score_sd);
  if (show.holes == 0) return show;
  show.left_sd_yd = std::sqrt(left_variance) / show.holes;
  show.left_change_yd /= show.holes;
  show.rounds_for_left = rounds_per_side(show.left_change_yd, show.left_sd_yd);
  return show;
}

}  // namespace yardworth
