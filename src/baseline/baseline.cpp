#include "yardworth/baseline.hpp"

// pchip of Boost 1.74 asks for ::isnan, which only the C header gives.
#include <math.h>

#include <algorithm>
#include <boost/math/interpolators/pchip.hpp>
#include <cmath>
#include <functional>
#include <stdexcept>
#include <utility>

namespace yardworth {

namespace {

constexpr double longest_distance_yd = 700.0;

// Pool adjacent violators: the nearest rising values in the sense of least squares.
std::vector<double> make_rising(const std::vector<double>& values) {
  struct Block {
    double sum;
    std::size_t count;
    double mean() const { return sum / static_cast<double>(count); }
  };
  std::vector<Block> blocks;
  for (const double value : values) {
    blocks.push_back({value, 1});
    while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() > blocks.back().mean()) {
      const Block last = blocks.back();
      blocks.pop_back();
      blocks.back().sum += last.sum;
      blocks.back().count += last.count;
    }
  }
  std::vector<double> rising;
  for (const Block& block : blocks) rising.insert(rising.end(), block.count, block.mean());
  return rising;
}

double line_through(double x0, double y0, double x1, double y1, double x) {
  return y0 + (x - x0) * (y1 - y0) / (x1 - x0);
}

// The column's values at 0, step, 2 step, ... as far as `end`.
std::vector<double> tabulate(const BaselineColumn& column, double step, double end) {
  const std::size_t points = column.distance.size();
  if (points < 2 || points != column.strokes.size()) {
    throw std::invalid_argument("a baseline column needs at least two distances, each with its strokes");
  }
  const std::vector<double>& x = column.distance;
  const std::vector<double> y = make_rising(column.strokes);
  const auto inside = [&]() -> std::function<double(double)> {
    if (points >= 4) {
      auto curve =
          boost::math::interpolators::pchip<std::vector<double>>(std::vector<double>(x), std::vector<double>(y));
      return [curve](double at) { return curve(at); };
    }
    return [&x, &y](double at) {
      const auto upper = std::max<std::ptrdiff_t>(1, std::upper_bound(x.begin(), x.end() - 1, at) - x.begin());
      const auto i = static_cast<std::size_t>(upper);
      return line_through(x[i - 1], y[i - 1], x[i], y[i], at);
    };
  }();
  std::vector<double> values;
  double floor = 1.0;  // no ball is holed in less than one stroke, and further away is never worth less
  for (double at = 0.0; at <= end + step; at += step) {
    double value = 0.0;
    if (at <= x.front()) {
      value = line_through(x[0], y[0], x[1], y[1], at);
    } else if (at >= x.back()) {
      value = line_through(x[points - 2], y[points - 2], x[points - 1], y[points - 1], at);
    } else {
      value = inside(at);
    }
    floor = std::max(floor, value);
    values.push_back(floor);
  }
  return values;
}

}  // namespace

Baseline::Baseline(const BaselineTable& table) : name_(table.name), source_(table.source) {
  const auto column = [](double points_per_yard, std::vector<double> values) {
    const auto last = static_cast<double>(values.size() - 2);
    return Column{points_per_yard, std::move(values), last};
  };
  const auto in_yards = [&](const BaselineColumn& published) {
    return column(1.0, tabulate(published, 1.0, longest_distance_yd));
  };
  columns_.resize(all_lies.size());
  columns_[static_cast<std::size_t>(Lie::tee)] = in_yards(table.tee);
  columns_[static_cast<std::size_t>(Lie::fairway)] = in_yards(table.fairway);
  columns_[static_cast<std::size_t>(Lie::rough)] = in_yards(table.rough);
  columns_[static_cast<std::size_t>(Lie::bunker)] = in_yards(table.bunker);
  columns_[static_cast<std::size_t>(Lie::recovery)] = in_yards(table.recovery);
  // Four points a foot: the chance to hole out changes fast within the last few feet.
  columns_[static_cast<std::size_t>(Lie::green)] = column(4.0 * feet_per_yard, tabulate(table.green, 0.25, 300.0));
}

Baseline Baseline::with_added(const std::function<double(Lie, double)>& strokes) const {
  Baseline other = *this;
  for (const Lie lie : all_lies) {
    Column& column = other.columns_[static_cast<std::size_t>(lie)];
    double floor = 1.0;
    for (std::size_t i = 0; i < column.values.size(); ++i) {
      const double added = strokes(lie, static_cast<double>(i) / column.points_per_yard);
      floor = std::max(floor, column.values[i] + added);
      column.values[i] = floor;
    }
  }
  return other;
}

}  // namespace yardworth
