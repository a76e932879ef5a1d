#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "validate/tell.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// A number of a delivery as files, options and requests say it, and its limits.
struct DeliveryField {
  std::string_view key;
  const Limits& limits;
  double Delivery::*member;
  double (*inside)(double said);
  double (*said)(double inside);
  std::string_view words;  // of the reports
  std::string_view unit;

  double of(const Delivery& delivery) const { return said(delivery.*member); }
};
inline constexpr std::array<DeliveryField, 5> delivery_fields = {{
    {"club_speed_mph", limits::club_speed, &Delivery::club_speed_mps, from_mph, to_mph, "club head speed", "mph"},
    {"attack_deg", limits::attack, &Delivery::attack_rad, radians, degrees, "attack angle", "degrees"},
    {"dynamic_loft_deg", limits::dynamic_loft, &Delivery::dynamic_loft_rad, radians, degrees, "dynamic loft",
     "degrees"},
    {"path_deg", limits::path, &Delivery::path_rad, radians, degrees, "club path", "degrees"},
    {"face_deg", limits::face, &Delivery::face_rad, radians, degrees, "face angle", "degrees"},
}};

// Which of them has a key; nothing where none has.
std::optional<std::size_t> field_of_key(std::string_view key);

// What follows from them, by the name that validate gives it.
inline constexpr std::string_view spin_loft_key = "spin_loft_deg";

using SaidFields = std::array<bool, delivery_fields.size()>;

// A delivery as it was said: some numbers, on top of those of a delivery before it.
struct SaidStrike {
  Delivery delivery;
  SaidFields said{};     // the others are those of the delivery before
  SaidFields unknown{};  // what was said of them is at fault, so that nobody knows their value

  bool is_known() const;
};

// As a club golfer typically strikes the club: all that is not said.
SaidStrike usual_strike(const TypicalClub& club);
// What one or the other says.
SaidFields either(const SaidFields& one, const SaidFields& other);
// A strike on top of another, of which nothing is said yet.
SaidStrike on_top_of(const SaidStrike& before);
// Says one of its numbers; nothing where what was said is at fault.
void say(SaidStrike& strike, std::size_t field, std::optional<double> number);

// Tells of what is wrong with the numbers together, where all are known: by their keys, but of a spin loft, which
// nobody says, by no key. What is as wrong with the strike before, and was told of that, is not told again.
void check_together(const SaidStrike& strike, const SaidStrike& before, const Tell& tell);

}  // namespace yardworth
