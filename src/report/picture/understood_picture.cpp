#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "core/distance_words.hpp"
#include "course/hazard_kind.hpp"
#include "report/picture/ground_style.hpp"
#include "report/picture/hole_picture.hpp"
#include "report/picture/labels.hpp"
#include "report/picture/plan_drawing.hpp"
#include "report/text.hpp"

namespace yardworth::report {
namespace {

constexpr double hole_side = 8.0;  // of the picture that words keep free
constexpr double hole_words_width = picture_width - 2.0 * hole_side;

// Where a hazard lies along the line of play, as the file counts it.
std::string stretch_of(const Hazard& hazard, Units units) {
  double from = hazard.from_yd;
  double to = hazard.to_yd;
  if (!hazard.corners.empty()) {
    const auto [nearest, furthest] =
        std::minmax_element(hazard.corners.begin(), hazard.corners.end(),
                            [](const LinePlace& a, const LinePlace& b) { return a.along_yd < b.along_yd; });
    from = nearest->along_yd;
    to = furthest->along_yd;
  }
  return fmt::format("{} to {}", length_text(from, units), length_text(to, units));
}

std::vector<Label> labels_of_file(const Course& course, const Hole& hole, const PlanView& plan,
                                  const PlanFrame& frame) {
  std::vector<Label> labels;
  const auto column = [](Point anchor) { return anchor.x < picture_width / 2.0 ? Column::left : Column::right; };
  for (std::size_t i = 0; i < hole.hazards.size(); ++i) {
    const Hazard& hazard = hole.hazards[i];
    const Point middle = {picture_width / 2.0, (frame.top() + frame.bottom()) / 2.0};
    const auto anchor = place_of_hazard(plan, frame, static_cast<int>(i), middle);
    if (!anchor) continue;
    const std::string what(name(facts_of(hazard.kind).ground));
    const std::string beside = hazard.side ? fmt::format("{}, ", name(*hazard.side)) : "";
    labels.push_back(
        {*anchor, column(*anchor), {what, beside + stretch_of(hazard, course.units)}, static_cast<int>(i)});
  }
  for (std::size_t i = 0; i < hole.doglegs.size(); ++i) {
    const Dogleg& dogleg = hole.doglegs[i];
    const Point anchor = frame.at(plan.line[i + 1]);
    const double turn = degrees(dogleg.turn_rad);
    labels.push_back({anchor,
                      turn < 0.0 ? Column::right : Column::left,
                      {"dogleg at " + length_text(dogleg.at_yd, course.units),
                       fmt::format("{:.0f} degrees {}", std::abs(turn), turn < 0.0 ? "left" : "right")},
                      -1});
  }
  return labels;
}

std::string tees_words(const Course& course, const Hole& hole) {
  std::vector<std::string> lengths;
  for (std::size_t tee = 0; tee < course.tees.size(); ++tee) {
    lengths.push_back(fmt::format("{} {}", course.tees[tee].name, length_text(hole.length_yd[tee], course.units)));
  }
  const std::string index = hole.stroke_index ? fmt::format("; stroke index {}", *hole.stroke_index) : "";
  return fmt::format("{} {}{}", fmt::join(lengths, ", "), name(course.units), index);
}

}  // namespace

Panel understood_panel(const Course& course, const Hole& hole) {
  const PlanView plan = plan_view(hole);
  const std::string prefix = fmt::format("hole-{}", hole.number);
  double top = 18.0;
  std::string svg = text_line({hole_side, top}, hole_words_width, fmt::format("Hole {}, par {}", hole.number, hole.par),
                              {14.0, true});
  for (const std::string& line : wrap_text(tees_words(course, hole), hole_words_width, key_size)) {
    top += 14.0;
    svg += text_line({hole_side, top}, hole_words_width, line, {key_size});
  }
  top += 6.0;
  const PlanFrame frame(plan, places_to_see(plan), top);
  svg += plan_svg(plan, frame, prefix, std::nullopt);
  const LabelLayout labels =
      place_labels(labels_of_file(course, hole, plan, frame), frame.top() + 2.0, frame.bottom() - 2.0);
  svg += labels_svg(labels);
  top = frame.bottom() + 4.0;
  svg += scale_bar(frame, course.units, top);
  top += 16.0;
  svg += ground_key(grounds_of(plan.areas), prefix, top);
  if (labels.left_out > 0) {
    top += 12.0;
    svg += text_line({hole_side, top}, hole_words_width,
                     fmt::format("{} more without a label, for want of room", labels.left_out), {key_size});
  }
  return {svg, top + 14.0};
}

}  // namespace yardworth::report
