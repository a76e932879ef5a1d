#include "yardworth/course.hpp"

#include <algorithm>
#include <array>

#include "course/ground.hpp"
#include "course/hazard_kind.hpp"
#include "course/set_up.hpp"

namespace yardworth {
namespace {

constexpr std::array<std::string_view, 3> side_names = {"left", "right", "across"};

// Standard set-up where a file is silent: common practice, no source, unless docs/formats.md names one.
constexpr double fairway_half_width_yd = 16.0;
constexpr double fairway_begins_yd = 110.0;
constexpr double fairway_begins_share = 0.35;  // of a short hole's length
constexpr double apron_yd = 15.0;              // from the end of the fairway to the front of the green
constexpr double least_width_yd = 12.0;        // of a hazard beside the line
constexpr GreenSize standard_green{30.0, 26.0};

}  // namespace

std::string_view name(Ground ground) { return facts_of(ground).name; }
std::string_view name(Firmness firmness) { return facts_of(firmness).name; }
std::string_view name(HazardKind kind) { return facts_of(kind).name; }
std::string_view name(Side side) { return side_names[static_cast<std::size_t>(side)]; }

std::optional<Firmness> firmness_named(std::string_view text) {
  for (const FirmnessFacts& facts : firmness_table) {
    if (facts.name == text) return facts.firmness;
  }
  return std::nullopt;
}

std::vector<std::string> hazard_kind_names() {
  std::vector<std::string> names;
  for (const HazardKind kind : all_hazard_kinds) names.emplace_back(name(kind));
  return names;
}

std::optional<HazardKind> hazard_kind_named(std::string_view text) {
  for (const HazardKind kind : all_hazard_kinds) {
    if (name(kind) == text) return kind;
  }
  return std::nullopt;
}

std::optional<Side> side_named(std::string_view text) {
  const auto* const found = std::find(side_names.begin(), side_names.end(), text);
  if (found == side_names.end()) return std::nullopt;
  return static_cast<Side>(found - side_names.begin());
}

std::vector<LinePlace> corners_of(const Hazard& hazard) {
  if (!hazard.corners.empty()) return hazard.corners;
  double left = -hazard.far_yd;
  double right = hazard.far_yd;
  if (hazard.side == Side::left) right = -hazard.near_yd;
  if (hazard.side == Side::right) left = hazard.near_yd;
  return {{left, hazard.from_yd}, {left, hazard.to_yd}, {right, hazard.to_yd}, {right, hazard.from_yd}};
}

Hazard hazard_beside(HazardKind kind, Side side, double from_yd, double to_yd, double near_yd, double far_yd) {
  Hazard hazard;
  hazard.kind = kind;
  hazard.side = side;
  hazard.from_yd = from_yd;
  hazard.to_yd = to_yd;
  hazard.near_yd = near_yd;
  hazard.far_yd = far_yd;
  return hazard;
}

std::vector<FairwayStretch> default_fairway(int par, double longest_length_yd) {
  if (par <= 3) return {};
  const double from = std::min(fairway_begins_yd, fairway_begins_share * longest_length_yd);
  const double to = longest_length_yd - standard_green.depth_yd / 2.0 - apron_yd;
  if (to <= from) return {};
  return {{from, to, fairway_half_width_yd, fairway_half_width_yd}};
}

GreenSize default_green() { return standard_green; }

double default_near_yd(HazardKind kind) { return facts_of(kind).near_yd; }

double default_far_yd(HazardKind kind, double near_yd) {
  return std::max(near_yd + least_width_yd, std::min(near_yd + facts_of(kind).width_yd, farthest_out_yd));
}

int default_par(double longest_length_yd) {
  // Men's guideline of the Rules of Handicapping (World Handicap System), appendix F, from memory: par 3 to 260 yards,
  // par 4 240 to 490, par 5 450 to 710, par 6 from 670. The limits here are the middles of the overlaps.
  if (longest_length_yd <= 250.0) return 3;
  if (longest_length_yd <= 470.0) return 4;
  return longest_length_yd <= 690.0 ? 5 : 6;
}

std::vector<std::string> tee_names(const Course& course) {
  std::vector<std::string> names;
  for (const Tee& tee : course.tees) names.push_back(tee.name);
  return names;
}

std::optional<std::size_t> tee_index(const Course& course, std::string_view name) {
  const auto found =
      std::find_if(course.tees.begin(), course.tees.end(), [&](const Tee& tee) { return tee.name == name; });
  if (found == course.tees.end()) return std::nullopt;
  return static_cast<std::size_t>(found - course.tees.begin());
}

double total_length_yd(const Course& course, std::size_t tee) {
  double total = 0.0;
  for (const Hole& hole : course.holes) total += hole.length_yd.at(tee);
  return total;
}

}  // namespace yardworth
