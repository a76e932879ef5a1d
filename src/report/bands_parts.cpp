#include "report/bands_parts.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/hole_words.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::report {

std::vector<Gender> genders_of(const BandsResult& result) {
  std::vector<Gender> genders;
  for (const BandOnTee& golfer : result.golfers) {
    if (std::find(genders.begin(), genders.end(), golfer.gender) == genders.end()) genders.push_back(golfer.gender);
  }
  return genders;
}

bool carry_changes(const DistanceChange& change) {
  return change.driver_carry_yd != 0.0 || change.irons_carry_yd != 0.0;
}

const HazardMet* hazard_met(const HolePlay& play, std::size_t hazard) {
  const auto found = std::find_if(play.hazards.begin(), play.hazards.end(), [&](const HazardMet& here) {
    return here.hazard.hazard == static_cast<int>(hazard);
  });
  return found == play.hazards.end() ? nullptr : &*found;
}

const ChangedHole* changed_hole(const BandOnTee& golfer, int number) {
  const auto hole = std::find_if(golfer.changed.begin(), golfer.changed.end(),
                                 [number](const ChangedHole& here) { return here.with.number == number; });
  return hole == golfer.changed.end() ? nullptr : &*hole;
}

std::string changed_hazard_title(const BandsResult& result, const ChangedHazard& hazard) {
  const std::string words = changed_hazard_words(result, hazard);
  return hazard.added ? fmt::format("Hole {}, a new {}", hazard.hole, words)
                      : fmt::format("Hole {}, the {} moved", hazard.hole, words);
}

std::string bands_plan_words(const BandsReport& report) {
  if (report.result.policy == PolicyChoice::habit) {
    const std::string& best = report.asking.best;
    return "Habit plan: the longest sensible club off the tee of a par 4 or 5 down the middle, then the club that fits "
           "the distance left at the middle of the green. What playing the course differently would save or avoid is "
           "not in it" +
           (best.empty() ? "." : "; " + best + " looks for that.");
  }
  return "Best plan: for every place the ball can lie, the club and aim with the fewest expected strokes.";
}

std::string shown_tee(const std::string& tee) { return shorten(escape_control(tee), 12); }

std::string suiting_words(const BandsResult& result) {
  std::string lengths;
  for (const TeeOfBands& tee : result.tees) {
    lengths += fmt::format("{}{} {}", lengths.empty() ? "" : ", ", shown_tee(tee.name),
                           length_text(tee.length_yd, result.units));
  }
  return fmt::format(
      "By length: the total length recommended for the length of the drive (USGA / PGA of America tee guideline); here "
      "{}. By clubs: the second shots of the par 4s are nearest to those of scratch golfers of the same gender from "
      "the "
      "{} tees.",
      lengths, shown_tee(result.longest_tee));
}

ComputedParts computed_parts(const BandsResult& result) { return {true, result.replanning_computed}; }

bool has_fairways(const BandOnTee& golfer) {
  return std::any_of(golfer.holes.begin(), golfer.holes.end(), [](const BandHole& hole) { return hole.par > 3; });
}

std::string changed_hazard_words(const BandsResult& result, const ChangedHazard& hazard) {
  for (const BandOnTee& golfer : result.golfers) {
    for (const ChangedHole& hole : golfer.changed) {
      if (hole.with.number != hazard.hole) continue;
      for (const HazardMet& met : hole.with.before.hazards) {
        if (met.hazard.hazard == static_cast<int>(hazard.hazard)) return hazard_without_distance(met.hazard);
      }
    }
  }
  return "hazard";
}

}  // namespace yardworth::report
