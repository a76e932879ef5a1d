#pragma once

#include <string>
#include <vector>

#include "report/gain_parts.hpp"
#include "report/json_parts.hpp"
#include "report/text.hpp"
#include "yardworth/bands.hpp"

namespace yardworth::report {

// "bunker left": what a changed hazard is. Where it lies depends on the tee.
std::string changed_hazard_words(const BandsResult& result, const ChangedHazard& hazard);

// Which parts of the strokes saved were worked out, and whether there are fairways: holes longer than a par 3.
ComputedParts computed_parts(const BandsResult& result);
bool has_fairways(const BandOnTee& golfer);

Json tees_json(const std::vector<TeeOfBands>& tees);

// A section with net scores and points of those whom the tees are rated for.
std::string bands_scores_section(const BandsResult& result, const Page& page);

}  // namespace yardworth::report
