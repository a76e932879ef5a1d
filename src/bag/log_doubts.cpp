#include "bag/log_doubts.hpp"

#include <algorithm>
#include <cmath>

#include "bag/mixture.hpp"
#include "input/units_doubt.hpp"
#include "player/skill.hpp"
#include "yardworth/flight.hpp"

namespace yardworth {
namespace {

// Ball speed over club head speed of whole strikes: between these whatever the club (common practice, no source; the
// rules hold a driver to about 1.5).
constexpr Limits believable_smash{0.7, 1.6};
// Carries may be metres called yards where they are this near to being as many metres as the ball flies yards.
constexpr double near_metres = 0.03;
constexpr std::size_t enough_flights = 5;
constexpr std::size_t most_flights = 60;  // flown to tell by

// Carry over that of a flight from the same ball speed, launch and spin, the middle of some shots; nothing where too
// few have all of that.
std::optional<double> carry_of_flown(const ShotLog& log) {
  std::vector<const Shot*> launched;
  for (const Shot& shot : log.shots) {
    if (shot.ball_speed_mps && shot.launch_rad && shot.spin_radps && shot.carry_yd > 0.0) launched.push_back(&shot);
  }
  if (launched.size() < enough_flights) return std::nullopt;
  const std::size_t stride = (launched.size() + most_flights - 1) / most_flights;
  std::vector<double> ratios;
  for (std::size_t i = 0; i < launched.size(); i += stride) {
    const Shot& shot = *launched[i];
    Launch launch;
    launch.ball_speed_mps = *shot.ball_speed_mps;
    launch.launch_rad = *shot.launch_rad;
    launch.spin_radps = *shot.spin_radps;
    if (has_fault(validate(launch))) continue;
    const double flown_yd = to_yards(fly(launch, FlightConditions{}).carry_m, Units::metres);
    if (flown_yd > limits::carry.low) ratios.push_back(shot.carry_yd / flown_yd);
  }
  return ratios.size() < enough_flights ? std::nullopt : std::optional(median(std::move(ratios)));
}

void doubt_units(const ShotLog& log, BagResult& result) {
  const auto flown = carry_of_flown(log);
  if (flown && log.units == Units::yards && std::abs(*flown / metres_per_yard - 1.0) < near_metres) {
    result.notes.push_back({BagNote::Kind::like_metres, "", 0, *flown});
  }
  std::vector<double> smash;
  for (const Shot& shot : log.shots) {
    if (shot.club_speed_mps && shot.ball_speed_mps) smash.push_back(*shot.ball_speed_mps / *shot.club_speed_mps);
  }
  if (smash.empty()) return;
  const double middle = median(std::move(smash));
  if (middle < believable_smash.low || middle > believable_smash.high) {
    result.notes.push_back({BagNote::Kind::odd_smash, "", 0, middle});
  }
}

// The golfer with the carries that were measured.
void doubt_golfer(const Player& golfer, BagResult& result) {
  Player measured = golfer;
  measured.units = result.units;
  measured.clubs.clear();
  for (const ClubMeasure& measure : result.clubs) {
    Club club;
    const ClubName parsed = parse_club_name(measure.club);
    club.name = measure.club;
    club.kind = parsed.kind;
    club.number = parsed.number;
    club.carry_yd = measure.carry_yd.value;
    measured.clubs.push_back(club);
  }
  if (input::doubt_about_units(measured)) result.notes.push_back({BagNote::Kind::unlike_golfer, "", 0, 0.0});
}

}  // namespace

void add_doubts(const ShotLog& log, const BagRequest& request, BagResult& result) {
  doubt_units(log, result);
  if (request.golfer) doubt_golfer(*request.golfer, result);
  for (const ClubMeasure& measure : result.clubs) {
    if (parse_club_name(measure.club).kind == ClubKind::other) {
      result.notes.push_back({BagNote::Kind::unknown_club, measure.club, measure.shots, 0.0});
    }
    if (!request.golfer || !request.golfer_has_file) continue;
    const auto& clubs = request.golfer->clubs;
    const bool in_bag = std::any_of(clubs.begin(), clubs.end(), [&](const Club& club) {
      return plain_name(club.name) == plain_name(measure.club);
    });
    if (!in_bag) result.notes.push_back({BagNote::Kind::not_in_bag, measure.club, measure.shots, 0.0});
  }
}

}  // namespace yardworth
