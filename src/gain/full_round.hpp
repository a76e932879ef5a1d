#pragma once

namespace yardworth {

constexpr int full_round_holes = 18;

}  // namespace yardworth
