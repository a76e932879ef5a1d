#include "shot/finish_strokes.hpp"

#include <algorithm>

#include "shot/putting.hpp"
#include "shot/short_game.hpp"

namespace yardworth {

namespace {

// The golfer's own counts with the baseline's mean; where that is below the least that the golfer can take, the two
// whole numbers around it.
StrokeCounts with_mean_of_baseline(const StrokeCounts& own, double mean) {
  const auto least = std::find_if(own.begin(), own.end(), [](double share) { return share > 0.0; }) - own.begin();
  if (mean >= static_cast<double>(least)) return with_mean(own, mean);
  StrokeCounts around;
  add_around(around, mean, 1.0);
  return around;
}

}  // namespace

FinishStrokes::FinishStrokes(const Skill& skill, const Baseline& baseline) {
  const Putting putting(skill.putting);
  const ShortGame short_game(skill.short_game, putting);
  const std::vector<StrokeCounts> putts = putting.counts();
  const std::vector<double>& feet = putting.distances_ft();
  for (int place = 0; place < finish_places; ++place) {
    const auto [lie, distance] = place_of_finish(place);
    if (lie == Lie::green) {
      const auto at = std::lower_bound(feet.begin(), feet.end(), distance) - feet.begin();
      counts_.push_back(with_mean_of_baseline(putts[static_cast<std::size_t>(at)], baseline.putts(distance)));
    } else {
      counts_.push_back(with_mean_of_baseline(short_game.counts(lie, distance), baseline.strokes(lie, distance)));
    }
  }
}

}  // namespace yardworth
