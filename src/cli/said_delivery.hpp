#pragma once

#include <array>
#include <string>
#include <vector>

#include "yardworth/flight.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth::cli {

// How deliveries are said on the command line, by options of their own or as KEY=VALUE.

inline constexpr double usual_driver_speed_mph = 94.0;  // common practice, no source

// A number of a delivery as it is said on the command line.
struct SaidNumber {
  const char* name;  // without the dashes
  const Limits& limits;
  double Delivery::*member;
  double (*inside)(double said);
  double (*said)(double inside);
  const char* words;  // of the reports
  const char* unit;
  const char* help;
};
inline constexpr std::array<SaidNumber, 5> said_numbers = {{
    {"club-speed-mph", limits::club_speed, &Delivery::club_speed_mps, from_mph, to_mph, "club head speed", "mph",
     "Club head speed at impact; typical of the club unless given"},
    {"attack-deg", limits::attack, &Delivery::attack_rad, radians, degrees, "attack angle", "degrees",
     "Attack angle, upwards positive; typical of the club unless given"},
    {"dynamic-loft-deg", limits::dynamic_loft, &Delivery::dynamic_loft_rad, radians, degrees, "dynamic loft", "degrees",
     "Loft of the face at impact; typical of the club unless given"},
    {"path-deg", limits::path, &Delivery::path_rad, radians, degrees, "club path", "degrees",
     "Club path, in-to-out positive for a right-hander; 0 unless given"},
    {"face-deg", limits::face, &Delivery::face_rad, radians, degrees, "face angle", "degrees",
     "Face angle to the target line, open positive for a right-hander; 0 unless given"},
}};

// Says which numbers are typical of the club, where they were not said.
void assume_rest(const TypicalClub& club, const Delivery& delivery, const std::array<bool, said_numbers.size()>& said,
                 std::vector<std::string>& assumed);

// The key of KEY=VALUE: an option of the table without its dashes, or the name of a column: attack-deg or attack_deg.
std::string key_of(const std::string& said);

// Changes the delivery as KEY=VALUE says; what is wrong with it, if anything. option: what it was given to.
std::string change_delivery(const std::string& option, const std::string& said, Delivery& delivery);

// What is wrong with the numbers together, a line each; each by itself has been looked at. option: what they were given
// to as KEY=VALUE; empty where each has an option of its own.
std::string faults_of_delivery(const Delivery& delivery, const std::string& option);

}  // namespace yardworth::cli
