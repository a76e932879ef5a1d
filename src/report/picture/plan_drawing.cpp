#include "report/picture/plan_drawing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/contours.hpp"
#include "core/plane.hpp"
#include "report/picture/ground_style.hpp"
#include "report/picture/labels.hpp"

namespace yardworth::report {
namespace {

constexpr double most_height = 500.0;    // of a plan view, pixels
constexpr double most_scale = 2.2;       // pixels of a yard
constexpr double rim = 14.0;             // pixels around what is shown
constexpr double beside_line_yd = 60.0;  // hazards further from the line of play than this may be cut off
constexpr double middle_width = picture_width - 2.0 * label_column + 30.0;

Point turned(Point p, Point up) { return {p.x * up.y - p.y * up.x, p.x * up.x + p.y * up.y}; }

std::string area_svg(const PlanArea& area, const PlanFrame& frame, const std::string& prefix) {
  return fmt::format("<path d=\"{}\" {}/>\n", path_of({frame.at(area.outline)}),
                     ground_attributes(area.ground, prefix));
}

std::string tee_svg(Point at, bool in_use) {
  return fmt::format("<rect x=\"{}\" y=\"{}\" width=\"7\" height=\"5\" fill=\"{}\" stroke=\"#1f2420\"/>\n",
                     px(at.x - 3.5), px(at.y - 2.5), in_use ? "#1f2420" : "#fff");
}

std::string flag_svg(Point hole) {
  return fmt::format(
      "<path d=\"M{}v-13l8,3.2l-8,3.2\" fill=\"#fff\" stroke=\"#1f2420\" stroke-linejoin=\"round\"/>"
      "<circle cx=\"{}\" cy=\"{}\" r=\"1.6\"/>\n",
      px(hole), px(hole.x), px(hole.y));
}

Point middle_of(const Polygon& outline) {
  Point middle;
  for (const Point p : outline) middle = middle + (1.0 / static_cast<double>(outline.size())) * p;
  return middle;
}

// Whether a mark in its middle is near every part of it.
bool is_small(const Polygon& outline) {
  constexpr double small = 25.0;
  return std::all_of(outline.begin(), outline.end(),
                     [&](Point p) { return distance_yd(p, middle_of(outline)) <= small; });
}

// Of the places inside that the frame shows between two verticals the one nearest to another; to a few pixels.
std::optional<Point> nearest_inside(const Polygon& outline, const PlanFrame& frame, Point near, double left,
                                    double right) {
  constexpr double step = 5.0;
  std::optional<Point> nearest;
  for (double y = frame.top() + step; y < frame.bottom(); y += step) {
    for (double x = left + step; x < right; x += step) {
      const Point p = {x, y};
      const bool nearer = !nearest || distance_yd(p, near) < distance_yd(*nearest, near);
      if (nearer && inside_outlines({outline}, p)) nearest = p;
    }
  }
  return nearest;
}

}  // namespace

PlanFrame::PlanFrame(const PlanView& plan, const std::vector<Point>& seen, double top)
    : up_(along_heading(heading_rad(plan.line.front(), plan.line.back()))), top_(top) {
  constexpr double infinity = std::numeric_limits<double>::infinity();
  Point low = {infinity, infinity};
  Point high = {-infinity, -infinity};
  for (const Point p : seen) {
    const Point q = turned(p, up_);
    low = {std::min(low.x, q.x), std::min(low.y, q.y)};
    high = {std::max(high.x, q.x), std::max(high.y, q.y)};
  }
  scale_ = std::min({most_scale, middle_width / std::max(1.0, high.x - low.x),
                     (most_height - 2.0 * rim) / std::max(1.0, high.y - low.y)});
  bottom_ = top_ + scale_ * (high.y - low.y) + 2.0 * rim;
  shift_ = {picture_width / 2.0 - scale_ * (low.x + high.x) / 2.0, top_ + rim + scale_ * high.y};
}

Point PlanFrame::at(Point yards) const {
  const Point q = turned(yards, up_);
  return {shift_.x + scale_ * q.x, shift_.y - scale_ * q.y};
}
std::vector<Point> PlanFrame::at(const std::vector<Point>& yards) const {
  std::vector<Point> pixels;
  for (const Point p : yards) pixels.push_back(at(p));
  return pixels;
}
std::vector<Polygon> PlanFrame::at(const std::vector<Polygon>& yards) const {
  std::vector<Polygon> pixels;
  for (const Polygon& polygon : yards) pixels.push_back(at(polygon));
  return pixels;
}

std::vector<Point> places_to_see(const PlanView& plan) {
  std::vector<Point> seen = plan.line;
  seen.insert(seen.end(), plan.tees.begin(), plan.tees.end());
  for (const PlanArea& area : plan.areas) {
    for (const Point p : area.outline) {
      double nearest = std::numeric_limits<double>::infinity();
      for (std::size_t i = 0; i + 1 < plan.line.size(); ++i) {
        nearest = std::min(nearest, distance_to_edge_yd({plan.line[i], plan.line[i + 1]}, p));
      }
      if (area.hazard < 0 || nearest <= beside_line_yd) seen.push_back(p);
    }
  }
  return seen;
}

std::string plan_svg(const PlanView& plan, const PlanFrame& frame, const std::string& prefix,
                     std::optional<std::size_t> tee) {
  std::string svg = fmt::format(
      "<defs>\n{}<clipPath id=\"{}-frame\"><rect x=\"0\" y=\"{}\" width=\"{}\" height=\"{}\"/></clipPath>\n</defs>\n"
      "<g clip-path=\"url(#{}-frame)\">\n<rect x=\"0\" y=\"{}\" width=\"{}\" height=\"{}\" {}/>\n",
      ground_patterns(prefix), prefix, px(frame.top()), px(picture_width), px(frame.bottom() - frame.top()), prefix,
      px(frame.top()), px(picture_width), px(frame.bottom() - frame.top()), ground_attributes(Ground::rough, prefix));
  // The first counts, so it is drawn last.
  for (auto area = plan.areas.rbegin(); area != plan.areas.rend(); ++area) svg += area_svg(*area, frame, prefix);
  svg +=
      fmt::format("<path d=\"{}\" fill=\"none\" stroke=\"#5a6353\" stroke-width=\"0.8\" stroke-dasharray=\"1.5 3\"/>\n",
                  open_path(frame.at(plan.line)));
  for (std::size_t i = 0; i < plan.tees.size(); ++i) svg += tee_svg(frame.at(plan.tees[i]), tee == i);
  return svg + flag_svg(frame.at(plan.line.back())) + "</g>\n";
}

std::optional<Point> place_of_hazard(const PlanView& plan, const PlanFrame& frame, int hazard, Point near) {
  for (const PlanArea& area : plan.areas) {
    if (area.hazard != hazard) continue;
    const Polygon outline = frame.at(area.outline);
    const Point middle = middle_of(outline);
    if (is_small(outline) && frame.shows(middle) && inside_outlines({outline}, middle)) return middle;
    // Words cover the sides: a place between them is better.
    const auto between = nearest_inside(outline, frame, near, label_column, picture_width - label_column);
    const auto anywhere = between ? between : nearest_inside(outline, frame, near, 0.0, picture_width);
    if (anywhere) return anywhere;
    const auto corner = std::find_if(outline.begin(), outline.end(), [&](Point p) { return frame.shows(p); });
    if (corner != outline.end()) return *corner;
  }
  return std::nullopt;
}

std::string scale_bar(const PlanFrame& frame, Units units, double top) {
  constexpr double left = 8.0;
  const double length = frame.pixels_per_yard() * to_yards(50.0, units);
  return fmt::format("<path d=\"M{},{}v4h{}v-4\" fill=\"none\" stroke=\"#1f2420\"/>\n", px(left), px(top + 3.0),
                     px(length)) +
         text_line({left + length + 6.0, top + 9.5}, picture_width, fmt::format("50 {}", name(units)), {key_size});
}

}  // namespace yardworth::report
