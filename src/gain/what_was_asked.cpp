#include "gain/what_was_asked.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/numerics.hpp"
#include "yardworth/read.hpp"

namespace yardworth {

std::size_t tee_of(const Course& course, const Player& player, std::optional<std::size_t> asked) {
  return asked ? *asked : default_tee(course, player.gender);
}

std::vector<const Hole*> holes_wanted(const Course& course, const std::vector<int>& numbers) {
  std::vector<const Hole*> holes;
  for (const Hole& hole : course.holes) {
    const bool wanted = numbers.empty() || std::find(numbers.begin(), numbers.end(), hole.number) != numbers.end();
    if (wanted) holes.push_back(&hole);
  }
  return holes;
}

std::vector<std::string> common_cautions() {
  return {
      "Swing changes and speed work load the back, the wrists and the elbows: make them with a qualified coach, and "
      "ask a medical professional about any pain.",
      "Course ratings and handicaps are for the authorised golf association; nothing here stands in for them."};
}

void add_caution_of_many_strokes(double strokes, std::vector<std::string>& cautions) {
  if (strokes <= numerics::strokes_with_caution) return;
  cautions.push_back(fmt::format(
      "A hole here takes {:.0f} strokes. Beyond {:.0f} no golfer plays on: look at the carries and spreads of "
      "the player, and at the hazards of the hole, before any number is used.",
      strokes, numerics::strokes_with_caution));
}

}  // namespace yardworth
