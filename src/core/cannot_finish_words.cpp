#include "core/cannot_finish_words.hpp"

#include <fmt/format.h>

#include <utility>

#include "core/distance_words.hpp"
#include "core/numerics.hpp"

namespace yardworth {

namespace {

std::string words_of(const UnfinishedHole& hole, Units units) {
  if (hole.needed_carry_yd > 0.0) {
    return fmt::format("hole {} needs a carry of {}", hole.number, distance_words(hole.needed_carry_yd, units));
  }
  return fmt::format("hole {} has a place from which the shots of the plan do not get the ball to the hole",
                     hole.number);
}

}  // namespace

std::string cannot_finish_words(const std::vector<UnfinishedHole>& holes, Units units) {
  std::string all;
  for (const UnfinishedHole& hole : holes) all += (all.empty() ? "" : "; ") + words_of(hole, units);
  return fmt::format("cannot be finished with these clubs in {:.0f} strokes a hole: {}", numerics::most_strokes_of_hole,
                     all);
}

CannotFinish::CannotFinish(std::vector<UnfinishedHole> holes, Units units)
    : std::runtime_error(cannot_finish_words(holes, units)), holes_(std::move(holes)) {}

}  // namespace yardworth
