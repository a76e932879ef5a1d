#pragma once

#include <array>
#include <cstddef>

#include "yardworth/player.hpp"

namespace yardworth {

static_assert(all_lies.front() == Lie::tee && all_lies.back() == Lie::green);

// The lies that the shots between the tee and the green are played from, in the order of Lie.
inline constexpr std::array<Lie, all_lies.size() - 2> lies_in_play = [] {
  std::array<Lie, all_lies.size() - 2> lies{};
  for (std::size_t i = 0; i < lies.size(); ++i) lies[i] = all_lies[i + 1];
  return lies;
}();

// Where such a lie stands in the list.
constexpr std::size_t index_in_play(Lie lie) {
  return static_cast<std::size_t>(lie) - static_cast<std::size_t>(lies_in_play.front());
}

static_assert([] {
  for (std::size_t i = 0; i < lies_in_play.size(); ++i) {
    if (index_in_play(lies_in_play[i]) != i) return false;
  }
  return true;
}());

}  // namespace yardworth
