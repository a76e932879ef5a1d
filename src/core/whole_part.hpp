#pragma once

#include <cstddef>
#include <cstdint>

namespace yardworth {

// The whole part of a number from 0 on, as an index. By way of a signed number: that is one instruction, straight to an
// unsigned one it is half a dozen, and places are looked up by the million.
inline std::size_t whole_part(double number) { return static_cast<std::size_t>(static_cast<std::int64_t>(number)); }

}  // namespace yardworth
