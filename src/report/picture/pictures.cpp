#include <fmt/format.h>

#include "report/hazard_place.hpp"
#include "report/picture/hole_picture.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth {

std::string report::small_hole_svg(const StrategyResult& result, const HoleStrategy& hole) {
  const std::string before = strokes_text(hole.before.tee_shot.strokes);
  const std::string below = hole.after ? before + " to " + strokes_text(hole.after->tee_shot.strokes) : before;
  const std::string title = fmt::format("Hole {}, par {}: {} strokes", hole.number, hole.par, below);
  return svg_file({small_hole_panel(hole, below)}, title, strategy_sentence(hole, result.units));
}

std::string report::hazards_svg(const Course& as_it_is, const ChangedCourse& changed, int number) {
  std::string where;
  for (const ChangedHazard& held : changed.hazards) {
    if (held.hole != number) continue;
    const Hole& hole = changed.course.holes[static_cast<std::size_t>(number - 1)];
    where += (where.empty() ? "" : "; ") + hazard_place_words(hole.hazards[held.hazard], changed.course.units);
  }
  return svg_file({hazards_panel(as_it_is, changed, number)}, fmt::format("{}, hole {}", as_it_is.name, number), where);
}

std::string hole_svg(const StrategyResult& result, const HoleStrategy& hole) {
  const std::string title = fmt::format("{}, hole {}: how {} plays it best", result.course, hole.number, result.player);
  return report::svg_file({report::hole_panel(result, hole)}, title, strategy_sentence(hole, result.units));
}

std::string strategy_svg(const StrategyResult& result) {
  if (result.holes.size() == 1) return hole_svg(result, result.holes.front());
  std::vector<report::Panel> panels;
  for (const HoleStrategy& hole : result.holes) panels.push_back(report::hole_panel(result, hole));
  const std::string title = fmt::format("{}: how {} plays it best", result.course, result.player);
  return report::svg_file(panels, title, "Where the tee shots finish, what they leave, and which hazards they find");
}

std::string course_svg(const Course& course) {
  std::vector<report::Panel> panels;
  for (const Hole& hole : course.holes) panels.push_back(report::understood_panel(course, hole));
  return report::svg_file(panels, course.name, "What was understood of each hole");
}

}  // namespace yardworth
