#pragma once

#include <string>

#include "yardworth/bands.hpp"

namespace yardworth::report {

// "bunker left": what a changed hazard is. Where it lies depends on the tee.
std::string changed_hazard_words(const BandsResult& result, const ChangedHazard& hazard);

}  // namespace yardworth::report
