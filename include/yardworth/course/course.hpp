#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/core/plane.hpp"
#include "yardworth/core/units.hpp"
#include "yardworth/player/golfer.hpp"

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

// The corners of a hazard as the line of play tells them, before the line bends them.
std::vector<LinePlace> corners_of(const Hazard& hazard);

// A hazard along one side of the line.
Hazard hazard_beside(HazardKind kind, Side side, double from_yd, double to_yd, double near_yd, double far_yd);

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

// Standard set-up, used where a file is silent; docs/formats.md gives the sources.
std::vector<FairwayStretch> default_fairway(int par, double longest_length_yd);
GreenSize default_green();
inline constexpr double farthest_out_yd = 150.0;         // as far from the line as any ball goes
double default_near_yd(HazardKind kind);                 // a side hazard without near
double default_far_yd(HazardKind kind, double near_yd);  // a side hazard without far, > near_yd
int default_par(double longest_length_yd);

std::optional<std::size_t> tee_index(const Course& course, std::string_view name);
double total_length_yd(const Course& course, std::size_t tee);

}  // namespace yardworth
