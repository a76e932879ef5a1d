#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/geometry.hpp"
#include "yardworth/player.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

enum class Firmness { soft, normal, firm };
enum class HazardKind { bunker, penalty_area, out_of_bounds, trees };
enum class Side { left, right, across };

std::string_view name(Firmness firmness);
std::string_view name(HazardKind kind);  // as in files: "penalty_area"
std::string_view name(Side side);
std::optional<Firmness> firmness_named(std::string_view text);
std::optional<HazardKind> hazard_kind_named(std::string_view text);
std::optional<Side> side_named(std::string_view text);

// What the ground is at a point. Where areas overlap the first of this order that covers the point counts: a bunker
// inside a fairway is a bunker, and a green inside a penalty area is a green.
enum class Ground : std::uint8_t { green, out_of_bounds, penalty_area, bunker, trees, fairway, rough };
std::string_view name(Ground ground);

struct Tee {
  std::string name;
  std::optional<double> course_rating;
  std::optional<double> slope;      // 55 to 155
  std::optional<Gender> rated_for;  // nothing: rated for men, as most files mean
};

// A stretch of fairway, said along the line from the longest tee; left and right are half widths, >= 0.
struct FairwayStretch {
  double from_yd = 0.0;
  double to_yd = 0.0;
  double left_yd = 0.0;
  double right_yd = 0.0;
};

struct GreenSize {
  double depth_yd = 0.0;  // along the line
  double width_yd = 0.0;
};

// A hazard as the file says it: along the line, or as corners in the line's terms (right of the line, along it).
struct Hazard {
  HazardKind kind = HazardKind::bunker;
  std::optional<Side> side;  // with from and to; for corners: nothing
  double from_yd = 0.0;
  double to_yd = 0.0;
  double near_yd = 0.0;  // from the line outwards
  double far_yd = 0.0;
  std::vector<LinePlace> corners;  // not empty: the hazard is this polygon
};

struct Hole {
  int number = 0;
  int par = 4;  // 3 to 6
  std::optional<int> stroke_index;
  std::vector<double> length_yd;  // by tee, in the course's order; the first is the longest
  std::vector<Dogleg> doglegs;
  std::vector<FairwayStretch> fairway;  // may be empty on a par 3
  GreenSize green;
  std::vector<Hazard> hazards;
};

// All defaults are filled in.
struct Course {
  std::string name;
  Units units = Units::yards;
  std::vector<Tee> tees;  // longest first
  Firmness firmness = Firmness::normal;
  std::vector<Hole> holes;  // by number: 9 or 18
};

std::vector<std::string> tee_names(const Course& course);
std::optional<std::size_t> tee_index(const Course& course, std::string_view name);
double total_length_yd(const Course& course, std::size_t tee);

}  // namespace yardworth
