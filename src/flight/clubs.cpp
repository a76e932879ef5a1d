#include <algorithm>

#include "yardworth/flight.hpp"

namespace yardworth {
namespace {

// Solid heads lose some restitution with speed; the spring of a driver's face makes up for it. Woods and hybrids lie
// between. docs/model.md, "Clubs".
constexpr Restitution spring{0.83, 0.0};
constexpr Restitution wood{0.85, 0.0009};
constexpr Restitution hybrid{0.867, 0.0019};
constexpr Restitution solid{0.885, 0.0028};

TypicalClub club(std::string_view name, double mass_kg, const Restitution& restitution, double speed_share,
                 double attack_deg, double dynamic_loft_deg) {
  TypicalClub typical;
  typical.name = name;
  typical.head.mass_kg = mass_kg;
  typical.head.restitution = restitution;
  typical.speed_share = speed_share;
  typical.attack_rad = radians(attack_deg);
  typical.dynamic_loft_rad = radians(dynamic_loft_deg);
  typical.teed = name == "driver";
  return typical;
}

Limits around(double middle_rad, double below_deg, double above_deg) {
  return {middle_rad - radians(below_deg), middle_rad + radians(above_deg), "radians"};
}

}  // namespace

std::vector<TypicalClub> typical_clubs() {
  return {club("driver", 0.204, spring, 1.0, -1.0, 14.0),        club("3-wood", 0.215, wood, 0.95, -2.5, 14.0),
          club("5-wood", 0.220, wood, 0.92, -3.0, 15.5),         club("4-hybrid", 0.235, hybrid, 0.88, -3.3, 17.0),
          club("4-iron", 0.247, solid, 0.86, -3.5, 17.5),        club("5-iron", 0.254, solid, 0.84, -3.7, 19.5),
          club("6-iron", 0.261, solid, 0.82, -4.0, 22.0),        club("7-iron", 0.268, solid, 0.80, -4.3, 25.0),
          club("8-iron", 0.275, solid, 0.78, -4.5, 28.5),        club("9-iron", 0.282, solid, 0.76, -4.7, 32.0),
          club("pitching wedge", 0.289, solid, 0.74, -5.0, 36.0)};
}

std::optional<TypicalClub> typical_club(std::string_view name) {
  const std::vector<TypicalClub> clubs = typical_clubs();
  const auto found =
      std::find_if(clubs.begin(), clubs.end(), [name](const TypicalClub& typical) { return typical.name == name; });
  return found == clubs.end() ? std::nullopt : std::optional(*found);
}

Delivery typical_delivery(const TypicalClub& club, double driver_speed_mps) {
  return {club.speed_share * driver_speed_mps, club.attack_rad, club.dynamic_loft_rad, 0.0, 0.0};
}

Attainable attainable(const TypicalClub& club) {
  Attainable limits;
  limits.attack = club.teed ? Limits{radians(-3.0), radians(3.0), "radians"} : around(club.attack_rad, 1.5, 1.5);
  limits.dynamic_loft =
      club.teed ? Limits{radians(9.0), radians(24.0), "radians"} : around(club.dynamic_loft_rad, 3.0, 3.0);
  limits.path = {radians(-4.0), radians(4.0), "radians"};
  limits.face = limits.path;
  return limits;
}

}  // namespace yardworth
