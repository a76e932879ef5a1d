#pragma once

#include "yardworth/bag.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {

// Adds what a log may have got wrong as notes: units, names.
void add_doubts(const ShotLog& log, const BagRequest& request, BagResult& result);

}  // namespace yardworth
