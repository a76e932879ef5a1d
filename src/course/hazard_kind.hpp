#pragma once

#include <array>
#include <cstddef>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "course/ground.hpp"

namespace yardworth {

// As far out as any ball goes: a hazard beside the line that ends where the hole does.
inline constexpr double to_the_end_of_the_hole = std::numeric_limits<double>::infinity();

// What a file may leave out of a kind of hazard, and what it is called: common practice, no source.
struct HazardKindFacts {
  std::string_view name;    // as in files: "penalty_area"
  std::string_view plural;  // as said of more than one
  Ground ground = Ground::rough;
  double near_yd = 0.0;   // of one beside the line, from the line to its near edge
  double width_yd = 0.0;  // and from there to its far edge
};

// A row for each kind. There is no default: a kind that has no row, or two, does not compile (-Werror=switch).
constexpr HazardKindFacts facts_of(HazardKind kind) {
  switch (kind) {
    case HazardKind::bunker:
      return {"bunker", "bunkers", Ground::bunker, 16.0, 12.0};
    case HazardKind::penalty_area:
      return {"penalty_area", "penalty areas", Ground::penalty_area, 25.0, to_the_end_of_the_hole};
    case HazardKind::out_of_bounds:
      return {"out_of_bounds", "out of bounds", Ground::out_of_bounds, 40.0, to_the_end_of_the_hole};
    case HazardKind::trees:
      return {"trees", "trees", Ground::trees, 28.0, to_the_end_of_the_hole};
  }
  return {};
}

inline constexpr std::size_t hazard_kind_count = [] {
  std::size_t count = 0;
  while (!facts_of(static_cast<HazardKind>(count)).name.empty()) ++count;
  return count;
}();

// In the order of HazardKind.
inline constexpr std::array<HazardKind, hazard_kind_count> all_hazard_kinds = [] {
  std::array<HazardKind, hazard_kind_count> all{};
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = static_cast<HazardKind>(i);
  return all;
}();

static_assert([] {
  for (const HazardKind kind : all_hazard_kinds) {
    const HazardKindFacts facts = facts_of(kind);
    if (facts.ground == Ground::rough || facts.plural.empty() || facts.near_yd <= 0.0 || facts.width_yd <= 0.0) {
      return false;
    }
  }
  return true;
}());

// What a file or an option may call a hazard.
std::vector<std::string> hazard_kind_names();

}  // namespace yardworth
