#pragma once

#include <string>

#include "yardworth/gain/bands.hpp"

namespace yardworth::report {

// "a new bunker left", "the bunker left moved"; as a golfer tells it.
std::string changed_words(const BandsResult& result, const ChangedHazard& hazard);

}  // namespace yardworth::report
