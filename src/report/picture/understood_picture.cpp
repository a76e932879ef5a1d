#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/distance_words.hpp"
#include "core/plane.hpp"
#include "course/hazard_kind.hpp"
#include "report/hazard_place.hpp"
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
  const HazardPlace place = place_of(hazard);
  return fmt::format("{} to {}", length_text(place.from_yd, units), length_text(place.to_yd, units));
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

// What is drawn over the plan view of a hole.
using DrawOver = std::function<std::string(const PlanFrame&)>;

// framed_by: the plan view that says the frame, the same one or with hazards elsewhere.
Panel panel_of(const Course& course, const Hole& hole, const PlanView& plan, const PlanView& framed_by,
               const DrawOver& draw_over) {
  const std::string prefix = fmt::format("hole-{}", hole.number);
  double top = 18.0;
  std::string svg = text_line({hole_side, top}, hole_words_width, fmt::format("Hole {}, par {}", hole.number, hole.par),
                              {14.0, true});
  for (const std::string& line : wrap_text(tees_words(course, hole), hole_words_width, key_size)) {
    top += 14.0;
    svg += text_line({hole_side, top}, hole_words_width, line, {key_size});
  }
  top += 6.0;
  const PlanFrame frame(framed_by, places_to_see(framed_by), top);
  svg += plan_svg(plan, frame, prefix, std::nullopt);
  const LabelLayout labels =
      place_labels(labels_of_file(course, hole, plan, frame), frame.top() + 2.0, frame.bottom() - 2.0);
  svg += labels_svg(labels) + draw_over(frame);
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

const PlanArea* area_of_hazard(const PlanView& plan, std::size_t hazard) {
  const auto area = std::find_if(plan.areas.begin(), plan.areas.end(),
                                 [&](const PlanArea& here) { return here.hazard == static_cast<int>(hazard); });
  return area == plan.areas.end() ? nullptr : &*area;
}

// "0.12,-1.10": how far in the picture a length of one lies, in a direction of the plan view.
std::string pixels_of_length(const PlanFrame& frame, Point direction, Units units) {
  const Point pixels = to_yards(1.0, units) * (frame.at(direction) - frame.at(Point{}));
  return fmt::format("{:.4f},{:.4f}", pixels.x, pixels.y);
}

// A ring with an arrow each way, wide enough for a finger; what lies inside stays to be seen.
std::string grip_svg(Point at) {
  return fmt::format(
      "<circle cx=\"{0}\" cy=\"{1}\" r=\"22\" fill=\"none\" pointer-events=\"all\"/>\n"
      "<circle cx=\"{0}\" cy=\"{1}\" r=\"15\" fill=\"none\" stroke=\"#fff\" stroke-width=\"4\"/>\n"
      "<circle cx=\"{0}\" cy=\"{1}\" r=\"15\" fill=\"none\" stroke=\"#1b2a49\" stroke-width=\"1.6\"/>\n"
      "<path d=\"M{0},{1}m0,-22l4,6h-8Zm0,44l4,-6h-8ZM{0},{1}m-22,0l6,4v-8Zm44,0l-6,4v-8Z\" fill=\"#1b2a49\" "
      "stroke=\"#fff\" stroke-width=\"0.8\"/>\n",
      px(at.x), px(at.y));
}

// A hazard in hand: where it was, where it is, and what it is moved by. data-along and data-right say how far in the
// picture one of the course's units lies along the hole and to its right, where the hazard is.
std::string held_svg(const Course& course, const Hole& hole, const PlanView& was, const PlanView& plan,
                     const PlanFrame& frame, std::size_t index) {
  const PlanArea* area = area_of_hazard(plan, index);
  if (area == nullptr) return "";
  const PlanArea* before = area_of_hazard(was, index);
  std::string svg;
  if (before != nullptr) {
    svg = fmt::format("<path d=\"{}\" fill=\"none\" stroke=\"#1b2a49\" stroke-dasharray=\"4 3\"/>\n",
                      path_of({frame.at(before->outline)}));
  }
  const HazardPlace place = place_of(hole.hazards[index]);
  const LineOfPlay line(hole.length_yd.front(), hole.doglegs);
  const double heading = line.heading_at((place.from_yd + place.to_yd) / 2.0);
  svg += fmt::format("<g data-held=\"{0}\" data-hazard=\"{0}\" data-along=\"{1}\" data-right=\"{2}\">\n", index + 1,
                     pixels_of_length(frame, along_heading(heading), course.units),
                     pixels_of_length(frame, along_heading(heading + pi / 2.0), course.units));
  const Polygon outline = frame.at(area->outline);
  svg += fmt::format("<path d=\"{}\" fill=\"none\" pointer-events=\"all\" stroke=\"#1b2a49\" stroke-width=\"2.2\"/>\n",
                     path_of({outline}));
  const Point middle = {picture_width / 2.0, (frame.top() + frame.bottom()) / 2.0};
  if (const auto at = place_of_hazard(plan, frame, static_cast<int>(index), middle)) svg += grip_svg(*at);
  return svg + "</g>\n";
}

}  // namespace

Panel understood_panel(const Course& course, const Hole& hole) {
  const PlanView plan = plan_view(hole);
  return panel_of(course, hole, plan, plan, [](const PlanFrame&) { return std::string(); });
}

Panel hazards_panel(const Course& as_it_is, const ChangedCourse& changed, int number) {
  const PlanView was = plan_view(as_it_is.holes[static_cast<std::size_t>(number - 1)]);
  const Hole& hole = changed.course.holes[static_cast<std::size_t>(number - 1)];
  const PlanView plan = plan_view(hole);
  const auto draw_over = [&](const PlanFrame& frame) {
    std::string svg = fmt::format("<g clip-path=\"url(#hole-{}-frame)\">\n", number);
    for (auto area = plan.areas.rbegin(); area != plan.areas.rend(); ++area) {
      if (area->hazard < 0) continue;
      svg += fmt::format("<path d=\"{}\" fill=\"none\" pointer-events=\"all\" data-hazard=\"{}\"/>\n",
                         path_of({frame.at(area->outline)}), area->hazard + 1);
    }
    for (const ChangedHazard& held : changed.hazards) {
      if (held.hole == number) svg += held_svg(changed.course, hole, was, plan, frame, held.hazard);
    }
    return svg + "</g>\n";
  };
  return panel_of(changed.course, hole, plan, was, draw_over);
}

}  // namespace yardworth::report
