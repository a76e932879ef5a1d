#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/units.hpp"

namespace yardworth::input {

// Numbers of a club as a player file has them: in the file's units, degrees, a probability.
struct ClubNumbers {
  std::string club;
  double carry = 0.0;
  std::optional<double> roll, carry_sd, direction_sd, direction_mean, poor_strike;
};

// A club as one line of a player file.
std::string club_line(const ClubNumbers& numbers);

// The text of a player file without faults in which clubs have other numbers: their lines are changed where they are,
// and moved where their carry has passed another's; clubs that the file does not have are added. Everything else,
// comments too, stays. same: whether two names are one club.
std::string edit_player(const std::string& text, const std::vector<ClubNumbers>& clubs,
                        bool (*same)(std::string_view, std::string_view));

}  // namespace yardworth::input
