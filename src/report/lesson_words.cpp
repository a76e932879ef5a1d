#include "report/lesson_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/distance_words.hpp"
#include "core/telling.hpp"
#include "report/gain_parts.hpp"
#include "report/text.hpp"

namespace yardworth::report {
namespace {

double sign_of(const PolicyGain& answer) { return answer.round.strokes_saved() < 0.0 ? -1.0 : 1.0; }

std::string next_shot(const TeeShotResult& shot) { return shot.next_club == "lay-up" ? "a lay-up" : shot.next_club; }

std::string instead_of(const std::string& before, const std::string& after) {
  return before == after ? after + ", as before" : after + " instead of " + before;
}

}  // namespace

std::vector<const HoleGain*> telling_holes(const PolicyGain& answer) {
  const double sign = sign_of(answer);
  std::vector<const HoleGain*> holes;
  for (const HoleGain& hole : answer.holes) {
    if (sign * hole.strokes.strokes_saved() > 0.0) holes.push_back(&hole);
  }
  std::stable_sort(holes.begin(), holes.end(), [sign](const HoleGain* a, const HoleGain* b) {
    return sign * a->strokes.strokes_saved() > sign * b->strokes.strokes_saved();
  });
  if (holes.size() > telling::most_holes_drawn_large) holes.resize(telling::most_holes_drawn_large);
  return holes;
}

std::string telling_holes_heading(const PolicyGain& answer) {
  const char* what = sign_of(answer) < 0.0 ? "lost" : "gained";
  constexpr const char* numbers[] = {"no", "one", "two", "three"};
  const std::size_t holes = telling_holes(answer).size();
  if (holes == 1) return fmt::format("The hole where most is {}", what);
  return fmt::format("The {} holes where most is {}", numbers[holes], what);
}

std::string leaves_sentence(const HoleStrategy& hole, Units units) {
  const DrawnTeeShot& before = hole.drawing->before;
  if (!hole.after || !hole.drawing->after) return "";
  const DrawnTeeShot& after = *hole.drawing->after;
  if (hole.before.tee_shot.aim.at_green() && hole.after->tee_shot.aim.at_green()) {
    return fmt::format("The tee shot finishes on the green {} of the time.",
                       instead_of(percent(on_green(hole.before)), percent(on_green(*hole.after))));
  }
  return fmt::format(
      "The tee shot leaves {}; then typically {}.",
      instead_of(distance_words(before.result.left_yd, units), distance_words(after.result.left_yd, units)),
      instead_of(next_shot(before.result), next_shot(after.result)));
}

std::string saved_on_hole(const HoleGain& hole) {
  const double saved = hole.strokes.strokes_saved();
  const std::string strokes = strokes_text(std::abs(saved));
  if (strokes == strokes_text(0.0)) return "as before";
  return (saved > 0.0 ? "saves " : "costs ") + strokes;
}

}  // namespace yardworth::report
