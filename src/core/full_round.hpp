#pragma once

namespace yardworth {

// A round and half of one (Rules of Golf, rule 5.1, from memory: 18 holes or fewer; 9 is common practice, no source).
constexpr int full_round_holes = 18;
constexpr int half_round_holes = full_round_holes / 2;

}  // namespace yardworth
