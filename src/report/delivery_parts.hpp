#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "yardworth/flight.hpp"

namespace yardworth::report {

// What the reports of a delivery say alike.

// One number of a delivery or of its flight, in the units that its key names.
struct DeliveryNumber {
  std::string_view key;    // for programs
  std::string_view words;  // for people
  int decimals = 1;
  double (*value)(const DeliveryFlight& flown) = nullptr;

  // Nothing to the left is nothing, not minus nothing.
  double of(const DeliveryFlight& flown) const { return value(flown) + 0.0; }
};
std::vector<DeliveryNumber> delivery_numbers();  // how the head meets the ball
std::vector<DeliveryNumber> flight_numbers();    // what the ball then does

double yards_of(double metres);

// "attack_deg" and "attack angle".
std::string key_of(DeliveryAngle angle);
std::string_view words_of(DeliveryAngle angle);

// Whether the wind has a part from the side that shows in a report. What is given away is then told without it.
bool has_side_wind(const DeliveryResult& result);

std::vector<std::string> delivery_basis(const DeliveryResult& result);
std::vector<std::string> delivery_cautions();

}  // namespace yardworth::report
