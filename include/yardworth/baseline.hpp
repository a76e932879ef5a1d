#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "yardworth/player.hpp"

namespace yardworth {

// One column of a baseline: expected strokes to hole out at rising distances.
struct BaselineColumn {
  std::vector<double> distance;  // rising; yards, or feet for the green
  std::vector<double> strokes;   // as published: need not be monotone
};

// A baseline as a file says it. Every column but the green is in yards.
struct BaselineTable {
  std::string name;
  std::string source;
  Band band = Band::tour;
  Gender gender = Gender::men;
  BaselineColumn tee, fairway, rough, bunker, recovery;
  BaselineColumn green;  // feet, putts
};

// The columns of a table in the order of all_lies.
inline constexpr std::array<BaselineColumn BaselineTable::*, all_lies.size()> all_columns = {
    &BaselineTable::tee,    &BaselineTable::fairway,  &BaselineTable::rough,
    &BaselineTable::bunker, &BaselineTable::recovery, &BaselineTable::green};

// Expected strokes to hole out by lie and distance, for one band. Between the points of the table it is interpolated
// monotonically (Fritsch and Carlson, "Monotone Piecewise Cubic Interpolation", SIAM J. Numer. Anal. 17, 1980, as in
// Boost.Math pchip) after pooling adjacent violators, so that further away is never worth less; beyond the table it
// goes on along a straight line. Defined from 0 to 700 yards; beyond that the last value plus the last slope.
class Baseline {
 public:
  explicit Baseline(const BaselineTable& table);

  // Expected strokes from distance_yd (>= 0) on a lie. On the green too the argument is in yards.
  double strokes(Lie lie, double distance_yd) const {
    const auto& column = columns_[static_cast<std::size_t>(lie)];
    const double at = distance_yd * column.points_per_yard;
    // A signed index: going to and from an unsigned one takes several times as long.
    const auto index = static_cast<std::int64_t>(std::min(at, column.last));
    const double* below = column.values.data() + index;
    return below[0] + (at - static_cast<double>(index)) * (below[1] - below[0]);
  }
  double putts(double distance_ft) const { return strokes(Lie::green, distance_ft / feet_per_yard); }

  // The same with strokes added by lie and distance (yards). Nothing is worth less than one stroke, nor less than what
  // is nearer.
  Baseline with_added(const std::function<double(Lie, double distance_yd)>& strokes) const;

  const std::string& name() const { return name_; }
  const std::string& source() const { return source_; }

 private:
  struct Column {
    double points_per_yard = 1.0;
    std::vector<double> values;  // at equal steps, finely enough that straight lines between them serve
    double last = 0.0;           // index of the last value but one
  };
  std::string name_;
  std::string source_;
  std::vector<Column> columns_;  // by Lie
};

}  // namespace yardworth
