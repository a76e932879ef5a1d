#include "core/plane.hpp"

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/register/point.hpp>
#include <boost/geometry/geometries/ring.hpp>
#include <boost/geometry/geometries/segment.hpp>
#include <cmath>
#include <limits>

#include "yardworth/units.hpp"

BOOST_GEOMETRY_REGISTER_POINT_2D(yardworth::Point, double, boost::geometry::cs::cartesian, x, y)

namespace yardworth {

namespace bg = boost::geometry;

namespace {

using Ring = bg::model::ring<Point, true, true>;

Ring to_ring(const Polygon& polygon) {
  Ring ring(polygon.begin(), polygon.end());
  bg::correct(ring);
  return ring;
}

}  // namespace

double distance_yd(Point a, Point b) {
  const Point off = a - b;
  return std::sqrt(off.x * off.x + off.y * off.y);
}

Point along_heading(double heading_rad) { return {std::sin(heading_rad), std::cos(heading_rad)}; }

// Sine and cosine of an eighth of the angle by the first terms of their series, which are right to the last digit up to
// 0.8, an eighth of a whole turn; doubled three times. Nothing in the loop depends on the angle or on the one before,
// so that several are worked out at once.
Directions turned_right(Point direction, std::array<double, directions_at_a_time> right_rad) {
  for (double& right : right_rad) {
    if (std::abs(right) > 2.0 * pi) right = std::remainder(right, 2.0 * pi);
  }
  Directions turned;
  for (std::size_t i = 0; i < directions_at_a_time; ++i) {
    const double part = 0.125 * right_rad[i];
    const double u = part * part;
    double cosine = 1.0 - u * (1.0 / 240.0);
    for (const double divisor : {182.0, 132.0, 90.0, 56.0, 30.0, 12.0, 2.0})
      cosine = 1.0 - u * (1.0 / divisor) * cosine;
    double sine = 1.0 - u * (1.0 / 210.0);
    for (const double divisor : {156.0, 110.0, 72.0, 42.0, 20.0, 6.0}) sine = 1.0 - u * (1.0 / divisor) * sine;
    sine *= part;
    for (int doubled = 0; doubled < 3; ++doubled) {
      const double twice = 2.0 * sine * cosine;
      cosine = 1.0 - 2.0 * sine * sine;
      sine = twice;
    }
    turned.x[i] = direction.x * cosine + direction.y * sine;
    turned.y[i] = direction.y * cosine - direction.x * sine;
  }
  return turned;
}

double heading_rad(Point from, Point to) { return std::atan2(to.x - from.x, to.y - from.y); }

bool is_simple(const Polygon& polygon) {
  if (polygon.size() < 3) return false;
  return bg::is_valid(to_ring(polygon));
}

double area_sq_yd(const Polygon& polygon) { return bg::area(to_ring(polygon)); }

bool covers(const Polygon& polygon, Point p) { return bg::covered_by(p, to_ring(polygon)); }

double distance_to_edge_yd(const Polygon& polygon, Point p) {
  double nearest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const bg::model::segment<Point> edge(polygon[i], polygon[(i + 1) % polygon.size()]);
    nearest = std::min(nearest, bg::distance(p, edge));
  }
  return nearest;
}

LineOfPlay::LineOfPlay(double length_yd, const std::vector<Dogleg>& doglegs) : length_yd_(length_yd) {
  legs_.push_back({0.0, {0.0, 0.0}, 0.0, along_heading(0.0)});
  for (const Dogleg& dogleg : doglegs) {
    const Leg& last = legs_.back();
    const Point corner = last.start + (dogleg.at_yd - last.from_yd) * last.forward;
    const double heading = last.heading_rad + dogleg.turn_rad;
    legs_.push_back({dogleg.at_yd, corner, heading, along_heading(heading)});
  }
}

std::size_t LineOfPlay::leg_of(double along_yd) const {
  std::size_t leg = legs_.size() - 1;
  while (leg > 0 && along_yd < legs_[leg].from_yd) --leg;
  return leg;
}

double LineOfPlay::heading_at(double along_yd) const { return legs_[leg_of(along_yd)].heading_rad; }

Point LineOfPlay::to_plane(LinePlace place) const {
  const std::size_t leg = leg_of(place.along_yd);
  // How much of a leg the mitre of a corner takes away at this offset: positive on the inner side only.
  const auto cut_by = [&](std::size_t corner) {
    const double turn = legs_[corner].heading_rad - legs_[corner - 1].heading_rad;
    return std::max(0.0, place.right_yd * std::tan(turn / 2.0));
  };
  double along = place.along_yd;
  if (leg > 0) along = std::max(along, legs_[leg].from_yd + cut_by(leg));
  if (leg + 1 < legs_.size()) along = std::min(along, legs_[leg + 1].from_yd - cut_by(leg + 1));
  const Point forward = legs_[leg].forward;
  const Point right = {forward.y, -forward.x};
  return legs_[leg].start + (along - legs_[leg].from_yd) * forward + place.right_yd * right;
}

LinePlace LineOfPlay::nearest(Point p) const {
  LinePlace best;
  double best_distance = std::numeric_limits<double>::infinity();
  for (std::size_t leg = 0; leg < legs_.size(); ++leg) {
    const bool last = leg + 1 == legs_.size();
    const Point forward = legs_[leg].forward;
    const Point offset = p - legs_[leg].start;
    double along = legs_[leg].from_yd + offset.x * forward.x + offset.y * forward.y;
    if (leg > 0) along = std::max(along, legs_[leg].from_yd);
    if (!last) along = std::min(along, legs_[leg + 1].from_yd);
    const Point foot = legs_[leg].start + (along - legs_[leg].from_yd) * forward;
    const double distance = distance_yd(p, foot);
    if (distance < best_distance) {
      best_distance = distance;
      const double side = offset.x * forward.y - offset.y * forward.x;
      best = {side >= 0.0 ? distance : -distance, along};
    }
  }
  return best;
}

std::optional<Point> LineOfPlay::furthest_at(Point p, double distance_yd) const {
  for (std::size_t leg = legs_.size(); leg-- > 0;) {
    const double length = (leg + 1 < legs_.size() ? legs_[leg + 1].from_yd : length_yd_) - legs_[leg].from_yd;
    const Point forward = legs_[leg].forward;
    const Point offset = p - legs_[leg].start;
    const double foot = offset.x * forward.x + offset.y * forward.y;
    const double aside = offset.x * forward.y - offset.y * forward.x;
    const double reach = distance_yd * distance_yd - aside * aside;
    if (reach < 0.0) continue;
    const double along = foot + std::sqrt(reach);
    if (along >= 0.0 && along <= length) return legs_[leg].start + along * forward;
  }
  return std::nullopt;
}

Polygon LineOfPlay::bend(const std::vector<LinePlace>& corners) const {
  Polygon polygon;
  const auto add = [&](Point p) {
    if (polygon.empty() || distance_yd(polygon.back(), p) > 1e-9) polygon.push_back(p);
  };
  const auto mitre = [&](std::size_t corner, double right_yd) {
    const double half_turn = (legs_[corner].heading_rad - legs_[corner - 1].heading_rad) / 2.0;
    const Point forward = along_heading(legs_[corner].heading_rad - half_turn);
    return legs_[corner].start + (right_yd / std::cos(half_turn)) * Point{forward.y, -forward.x};
  };
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const LinePlace a = corners[i];
    const LinePlace b = corners[(i + 1) % corners.size()];
    add(to_plane(a));
    const auto pass = [&](std::size_t corner) {
      const double share = (legs_[corner].from_yd - a.along_yd) / (b.along_yd - a.along_yd);
      if (share > 0.0 && share < 1.0) add(mitre(corner, a.right_yd + share * (b.right_yd - a.right_yd)));
    };
    if (b.along_yd > a.along_yd) {
      for (std::size_t corner = 1; corner < legs_.size(); ++corner) pass(corner);
    } else if (b.along_yd < a.along_yd) {
      for (std::size_t corner = legs_.size() - 1; corner > 0; --corner) pass(corner);
    }
  }
  while (polygon.size() > 1 && distance_yd(polygon.front(), polygon.back()) < 1e-9) polygon.pop_back();
  return polygon;
}

Polygon LineOfPlay::strip(double from_yd, double to_yd, double left_offset_yd, double right_offset_yd) const {
  return bend(
      {{left_offset_yd, from_yd}, {left_offset_yd, to_yd}, {right_offset_yd, to_yd}, {right_offset_yd, from_yd}});
}

}  // namespace yardworth
