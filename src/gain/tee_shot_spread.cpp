#include "gain/tee_shot_spread.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <span>

#include "core/contours.hpp"
#include "core/telling.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

using numerics::finish_kernel_reach;
using numerics::finish_nodes_in_width;
using numerics::finish_tolerance_yd;

struct Finish {
  Point at;
  double weight = 0.0;
};

// Along the shot and to its right, each divided by the width of the kernel, so that one square grid does for both.
struct ShotFrame {
  Point tee;
  Point forward;
  double right_width_yd = 1.0;
  double forward_width_yd = 1.0;

  Point in_widths(Point p) const {
    const Point off = p - tee;
    return {(off.x * forward.y - off.y * forward.x) / right_width_yd,
            (off.x * forward.x + off.y * forward.y) / forward_width_yd};
  }
  Point in_yards(Point widths) const {
    const Point right = {forward.y, -forward.x};
    return tee + (widths.x * right_width_yd) * right + (widths.y * forward_width_yd) * forward;
  }
};

std::vector<Finish> finishes_of(const HoleModel& model, const Swing& swing, double heading_rad) {
  std::vector<Finish> finishes;
  for_each_tee_flight(model, swing, heading_rad, 1, [&](Point direction, double carry, double weight) {
    finishes.push_back({stopped_at(model.map(), model.tee(), direction, carry, carry * swing.roll_share), weight});
  });
  return finishes;
}

// The value that the share of the weight lies at or below.
double weighted_quantile(std::vector<std::pair<double, double>> values, double share) {
  std::sort(values.begin(), values.end());
  double below = 0.0;
  for (const auto& [value, weight] : values) {
    below += weight;
    if (below >= share) return value;
  }
  return values.back().first;
}

// Of values and their weights, which sum to 1: the lesser of the standard deviation and what the middle half of a
// normal distribution would say, times the sixth root of how few there are.
double kernel_width(const std::vector<std::pair<double, double>>& values) {
  double mean = 0.0;
  double square = 0.0;
  double weights = 0.0;
  for (const auto& [value, weight] : values) {
    mean += weight * value;
    square += weight * value * value;
    weights += weight * weight;
  }
  const double sd = std::sqrt(std::max(0.0, square - mean * mean));
  const double middle_half = (weighted_quantile(values, 0.75) - weighted_quantile(values, 0.25)) / 1.349;
  const double spread = middle_half > 0.0 ? std::min(sd, middle_half) : sd;
  return std::max(numerics::least_finish_width_yd, spread * std::pow(weights, 1.0 / 6.0));
}

ShotFrame frame_of(const HoleModel& model, const std::vector<Finish>& finishes, double heading_rad) {
  ShotFrame frame{model.tee(), along_heading(heading_rad), 1.0, 1.0};
  std::vector<std::pair<double, double>> right;
  std::vector<std::pair<double, double>> forward;
  for (const Finish& finish : finishes) {
    const Point yards = frame.in_widths(finish.at);
    right.emplace_back(yards.x, finish.weight);
    forward.emplace_back(yards.y, finish.weight);
  }
  frame.right_width_yd = kernel_width(right);
  frame.forward_width_yd = kernel_width(forward);
  return frame;
}

// Wide enough for the kernel around every place.
GridField grid_around(const std::vector<Finish>& places) {
  Point low = places.front().at;
  Point high = low;
  for (const Finish& place : places) {
    low = {std::min(low.x, place.at.x), std::min(low.y, place.at.y)};
    high = {std::max(high.x, place.at.x), std::max(high.y, place.at.y)};
  }
  GridField field;
  field.step = 1.0 / finish_nodes_in_width;
  const double rim = finish_kernel_reach + 2.0 * field.step;
  field.origin = low - Point{rim, rim};
  field.columns = static_cast<std::size_t>((high.x - low.x + 2.0 * rim) / field.step) + 2;
  field.rows = static_cast<std::size_t>((high.y - low.y + 2.0 * rim) / field.step) + 2;
  field.values.assign(field.columns * field.rows, 0.0);
  return field;
}

// Each weight shared among the four nodes around it.
void put_down(GridField& field, const std::vector<Finish>& places) {
  for (const Finish& place : places) {
    const Point at = (1.0 / field.step) * (place.at - field.origin);
    const auto column = static_cast<std::size_t>(at.x);
    const auto row = static_cast<std::size_t>(at.y);
    const double right = at.x - static_cast<double>(column);
    const double up = at.y - static_cast<double>(row);
    field.node(column, row) += place.weight * (1.0 - right) * (1.0 - up);
    field.node(column + 1, row) += place.weight * right * (1.0 - up);
    field.node(column, row + 1) += place.weight * (1.0 - right) * up;
    field.node(column + 1, row + 1) += place.weight * right * up;
  }
}

// Every stride-th value of so many from `first` on becomes the sum of those around it, weighed by the kernel.
void smooth(std::vector<double>& values, std::size_t first, std::size_t stride, std::size_t count,
            const std::vector<double>& kernel) {
  const std::size_t reach = kernel.size() - 1;
  std::vector<double> before(count);
  for (std::size_t i = 0; i < count; ++i) before[i] = values[first + i * stride];
  for (std::size_t i = 0; i < count; ++i) {
    double sum = kernel[0] * before[i];
    for (std::size_t off = 1; off <= reach; ++off) {
      if (i >= off) sum += kernel[off] * before[i - off];
      if (i + off < count) sum += kernel[off] * before[i + off];
    }
    values[first + i * stride] = sum;
  }
}

GridField density_of(const std::vector<Finish>& places) {
  GridField field = grid_around(places);
  put_down(field, places);
  std::vector<double> kernel;
  const auto reach = static_cast<std::size_t>(finish_kernel_reach * finish_nodes_in_width);
  for (std::size_t off = 0; off <= reach; ++off) {
    const double widths = static_cast<double>(off) * field.step;
    kernel.push_back(std::exp(-0.5 * widths * widths));
  }
  for (std::size_t row = 0; row < field.rows; ++row) {
    smooth(field.values, row * field.columns, 1, field.columns, kernel);
  }
  for (std::size_t column = 0; column < field.columns; ++column) {
    smooth(field.values, column, field.columns, field.rows, kernel);
  }
  return field;
}

}  // namespace

std::vector<FinishRegion> finish_regions(const HoleModel& model, const Action& tee_shot,
                                         const std::vector<double>& shares) {
  const Swing swing = model.swing_of(Lie::tee, tee_shot);
  const double heading = HoleModel::struck_heading_of(swing, tee_shot);
  std::vector<Finish> finishes = finishes_of(model, swing, heading);
  const ShotFrame frame = frame_of(model, finishes, heading);
  for (Finish& finish : finishes) finish.at = frame.in_widths(finish.at);
  const GridField density = density_of(finishes);
  std::vector<std::pair<double, double>> at_finishes;
  for (const Finish& finish : finishes) at_finishes.emplace_back(density.at(finish.at), finish.weight);
  std::vector<FinishRegion> regions;
  for (const double share : shares) {
    FinishRegion region{share, {}};
    for (const Polygon& outline : contours_at(density, weighted_quantile(at_finishes, 1.0 - share))) {
      Polygon on_plan;
      for (const Point p : outline) on_plan.push_back(frame.in_yards(p));
      region.outlines.push_back(simplified(on_plan, finish_tolerance_yd));
    }
    regions.push_back(std::move(region));
  }
  return regions;
}

Point aimed_at(const HoleModel& model, const Action& tee_shot) {
  const Swing swing = model.swing_of(Lie::tee, tee_shot);
  const double to_hole = distance_yd(model.tee(), model.pin());
  const bool at_green =
      swing.total_yd(roll_factor(Ground::green, model.map().firmness())) >= to_hole - telling::near_green_yd;
  const double total = at_green ? to_hole : swing.total_yd(roll_factor(Ground::fairway, model.map().firmness()));
  return model.tee() + total * along_heading(HoleModel::aimed_heading_of(swing, tee_shot));
}

}  // namespace yardworth
