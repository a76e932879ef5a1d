#include "input/units_doubt.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>
#include <vector>

#include "baseline/published.hpp"

namespace yardworth::input {
namespace {

// A yard called a metre changes what a length makes of a Course Rating by 2.5 strokes or so. Obstacles move a rating
// away from its length by less than this (common practice, no source).
constexpr double most_by_obstacles = 3.0;  // strokes
// Every club of a golfer outside these times what is typical of the Handicap Index, and so many clubs to tell by
// (common practice, no source).
constexpr double hardly_so_short = 0.7;
constexpr double hardly_so_long = 1.3;
constexpr std::size_t enough_clubs = 5;

Units other_than(Units units) { return units == Units::yards ? Units::metres : Units::yards; }

// What the lengths of a file are multiplied by when it has called them by the other unit.
double in_other_units(Units units) { return units == Units::yards ? 1.0 / metres_per_yard : metres_per_yard; }

std::string the_other_units(Units units) {
  const std::string_view other = name(other_than(units));
  return fmt::format("units: {}, if they are {}", other, other);
}

// By how many strokes of 18 holes a Course Rating lies above that of a course without obstacles of this length (USGA
// Course Rating System, the yardage rating of the scratch golfer).
double above_length(double course_rating, double length_yd, std::size_t holes, Gender gender) {
  constexpr double full_round = 18.0;
  const double rounds = static_cast<double>(holes) / full_round;
  return course_rating / rounds - yardage_rating(Band::scratch, gender).strokes(length_yd / rounds);
}

struct Range {
  double least = std::numeric_limits<double>::infinity();
  double most = -std::numeric_limits<double>::infinity();

  void add(double value) {
    least = std::min(least, value);
    most = std::max(most, value);
  }
};

// Of all rated tees, with their lengths times a factor.
Range above_lengths(const Course& course, double factor) {
  Range range;
  for (std::size_t tee = 0; tee < course.tees.size(); ++tee) {
    const Tee& rated = course.tees[tee];
    if (!rated.course_rating) continue;
    const double length_yd = factor * total_length_yd(course, tee);
    range.add(
        above_length(*rated.course_rating, length_yd, course.holes.size(), rated.rated_for.value_or(Gender::men)));
  }
  return range;
}

// A club of a standard bag by its name: what it carries in such hands.
std::optional<double> typical_carry_yd(const Player& standard, const Club& club) {
  const auto same = std::find_if(standard.clubs.begin(), standard.clubs.end(), [&](const Club& typical) {
    const bool by_number = club.kind == typical.kind && club.number == typical.number;
    return club.kind == ClubKind::wedge ? club.name == typical.name : by_number;
  });
  return same == standard.clubs.end() ? std::nullopt : std::optional<double>(same->carry_yd);
}

}  // namespace

std::optional<UnitsDoubt> doubt_about_units(const Course& course) {
  const Range said = above_lengths(course, 1.0);
  if (said.least > said.most) return std::nullopt;  // no tee is rated
  const Range other = above_lengths(course, in_other_units(course.units));
  const bool other_fits = other.least > -most_by_obstacles && other.most < most_by_obstacles;
  const bool too_high = said.least >= most_by_obstacles && course.units == Units::yards;
  const bool too_low = said.most <= -most_by_obstacles && course.units == Units::metres;
  if (!other_fits || (!too_high && !too_low)) return std::nullopt;
  return UnitsDoubt{fmt::format("Course Ratings {:.1f} strokes or more {} those of such lengths in {}",
                                too_high ? said.least : -said.most, too_high ? "above" : "below", name(course.units)),
                    the_other_units(course.units)};
}

std::optional<UnitsDoubt> doubt_about_units(const Player& player) {
  const Player standard = standard_player(player.skill, player.gender);
  Range times_typical;
  std::size_t told = 0;
  for (const Club& club : player.clubs) {
    const auto typical_yd = typical_carry_yd(standard, club);
    if (!typical_yd) continue;
    times_typical.add(club.carry_yd / *typical_yd);
    ++told;
  }
  const bool too_short = times_typical.most <= hardly_so_short && player.units == Units::yards;
  const bool too_long = times_typical.least >= hardly_so_long && player.units == Units::metres;
  if (told < enough_clubs || (!too_short && !too_long)) return std::nullopt;
  return UnitsDoubt{
      fmt::format("carries in {} of which every one is {} {:.2f} times that of such golfers", name(player.units),
                  too_short ? "at most" : "at least", too_short ? times_typical.most : times_typical.least),
      the_other_units(player.units)};
}

}  // namespace yardworth::input
