#include "core/cannot_finish_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/distance_words.hpp"

namespace yardworth {

namespace {

std::string words_of(const UnfinishedHole& hole, Units units) {
  if (hole.needed_carry_yd > 0.0) {
    return fmt::format("hole {} needs a carry of {}", hole.number, distance_words(hole.needed_carry_yd, units));
  }
  return fmt::format("hole {} has a place from which the shots of the plan hardly get the ball to the hole",
                     hole.number);
}

}  // namespace

std::string cannot_finish_words(const std::vector<UnfinishedHole>& holes, Units units) {
  std::string all;
  double most_strokes = 0.0;
  for (const UnfinishedHole& hole : holes) {
    all += (all.empty() ? "" : "; ") + words_of(hole, units);
    most_strokes = std::max(most_strokes, std::ceil(hole.most_strokes));
  }
  return fmt::format("cannot be finished with these clubs in {:.0f} strokes a hole: {}", most_strokes, all);
}

CannotFinish::CannotFinish(std::vector<UnfinishedHole> holes, Units units)
    : std::runtime_error(cannot_finish_words(holes, units)), holes_(std::move(holes)) {}

}  // namespace yardworth
