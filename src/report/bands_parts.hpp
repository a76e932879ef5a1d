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

// "Hole 4, the bunker left moved".
std::string changed_hazard_title(const BandsResult& result, const ChangedHazard& hazard);

// Whom was asked about, in the order of the golfers.
std::vector<Gender> genders_of(const BandsResult& result);
bool carry_changes(const DistanceChange& change);
// How the tee shots meet a hazard, which lies behind some tees; where its hole is changed.
const HazardMet* hazard_met(const HolePlay& play, std::size_t hazard);
const ChangedHole* changed_hole(const BandOnTee& golfer, int number);

// How the course is played; what the two ways to say which tees suit are.
std::string bands_plan_words(const BandsReport& report);
std::string suiting_words(const BandsResult& result);
// The name of tees as tables have it.
std::string shown_tee(const std::string& tee);

// Which parts of the strokes saved were worked out, and whether there are fairways: holes longer than a par 3.
ComputedParts computed_parts(const BandsResult& result);
bool has_fairways(const BandOnTee& golfer);

Json tees_json(const std::vector<TeeOfBands>& tees);

// A section with net scores and points of those whom the tees are rated for.
std::string bands_scores_section(const BandsResult& result, const Page& page);

}  // namespace yardworth::report
