#include "report/hazard_place.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/distance_words.hpp"
#include "course/hazard_kind.hpp"
#include "course/set_up.hpp"
#include "report/text.hpp"

namespace yardworth::report {
namespace {

std::string beside_words(double near_yd, double far_yd, const char* side, Units units) {
  const std::string near = length_text(near_yd, units);
  if (far_yd >= farthest_out_yd) return fmt::format("{} or more {} of its line", near, side);
  return fmt::format("{} to {} {} of its line", near, length_text(far_yd, units), side);
}

std::string across_words(const Hazard& hazard, const HazardPlace& place, Units units) {
  if (hazard.side == Side::across) return "all across it";
  if (place.left_yd >= 0.0) return beside_words(place.left_yd, place.right_yd, "right", units);
  if (place.right_yd <= 0.0) return beside_words(-place.right_yd, -place.left_yd, "left", units);
  return fmt::format("{} left to {} right of its line", length_text(-place.left_yd, units),
                     length_text(place.right_yd, units));
}

}  // namespace

HazardPlace place_of(const Hazard& hazard) {
  const std::vector<LinePlace> corners = corners_of(hazard);
  HazardPlace place{corners.front().along_yd, corners.front().along_yd, corners.front().right_yd,
                    corners.front().right_yd};
  for (const LinePlace& corner : corners) {
    place.from_yd = std::min(place.from_yd, corner.along_yd);
    place.to_yd = std::max(place.to_yd, corner.along_yd);
    place.left_yd = std::min(place.left_yd, corner.right_yd);
    place.right_yd = std::max(place.right_yd, corner.right_yd);
  }
  return place;
}

std::string hazard_place_words(const Hazard& hazard, Units units) {
  const HazardPlace place = place_of(hazard);
  return fmt::format("{}, {} to {} {} along the hole, {}", name(facts_of(hazard.kind).ground),
                     length_text(place.from_yd, units), length_text(place.to_yd, units), name(units),
                     across_words(hazard, place, units));
}

}  // namespace yardworth::report
