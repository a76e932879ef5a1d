#pragma once

#include <string>
#include <vector>

#include "flight/delivery_fields.hpp"

namespace yardworth::cli {

// How deliveries are said on the command line, by options of their own or as KEY=VALUE.

// The option of a number, without its dashes: "attack-deg".
std::string option_of(const DeliveryField& field);

// The key of KEY=VALUE: an option without its dashes, or the name of a column: attack-deg or attack_deg.
std::string key_of(const std::string& said);

// The strike before it with what is said as KEY=VALUE; complaints has every fault of that. option: what it was given
// to.
SaidStrike read_strike(const std::string& option, const std::vector<std::string>& all, const SaidStrike& before,
                       std::string& complaints);

// What is wrong with the numbers together, a line each. option: what they were given to as KEY=VALUE; empty where each
// has an option of its own.
std::string faults_together(const SaidStrike& strike, const SaidStrike& before, const std::string& option);

}  // namespace yardworth::cli
