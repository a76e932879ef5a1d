#pragma once

#include "validate/tell.hpp"
#include "yardworth/baseline.hpp"

namespace yardworth {

// A column of a table by its key in a file.
struct ColumnKey {
  const char* key;
  BaselineColumn BaselineTable::*column;
  const Limits& distance;
};
inline constexpr ColumnKey column_keys[] = {
    {"tee", &BaselineTable::tee, limits::baseline_distance},
    {"fairway", &BaselineTable::fairway, limits::baseline_distance},
    {"rough", &BaselineTable::rough, limits::baseline_distance},
    {"bunker", &BaselineTable::bunker, limits::baseline_distance},
    {"recovery", &BaselineTable::recovery, limits::baseline_distance},
    {"green", &BaselineTable::green, limits::putt_distance},
};

// last: the distance of the row before.
void check_distance_rises(double distance, double last, const Tell& tell);

}  // namespace yardworth
