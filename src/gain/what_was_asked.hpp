#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

std::vector<std::string> common_cautions();

// What every result of these questions says of what was asked.
template <class Result>
void say_what_was_asked(Result& result, const Course& course, std::size_t tee, const Player& player,
                        const Baseline& baseline) {
  result.course = course.name;
  result.tee = course.tees[tee].name;
  result.player = player.label;
  result.band = player.band;
  result.units = course.units;
  result.baseline_name = baseline.name();
  result.baseline_source = baseline.source();
  result.cautions = common_cautions();
}

}  // namespace yardworth
