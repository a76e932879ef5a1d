#include "gain/what_was_asked.hpp"

#include <algorithm>
#include <utility>

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

std::vector<Caution> common_cautions() {
  return {{Caution::Kind::swing_changes_load_the_body}, {Caution::Kind::ratings_are_the_associations}};
}

void add_caution_of_many_strokes(double strokes, std::vector<Caution>& cautions) {
  if (strokes > numerics::strokes_with_caution) cautions.push_back({Caution::Kind::many_strokes, strokes});
}

void add_note_of_misses(const Player& player, std::vector<Note>& notes) {
  std::vector<SideMiss> misses = side_misses(player);
  if (!misses.empty()) notes.push_back({Note::Kind::misses_to_one_side, 0.0, std::move(misses)});
}

}  // namespace yardworth
