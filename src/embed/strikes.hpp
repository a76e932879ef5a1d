#pragma once

#include <string>
#include <vector>

#include "embed/members.hpp"
#include "flight/delivery_fields.hpp"

namespace yardworth::embed {

// How strikes are said in a request: by the keys of a delivery, which are those of its answer.

std::vector<std::string> delivery_keys();

// The strike before with what the members say of it; tell has every fault of that.
SaidStrike read_strike(const Members& members, const SaidStrike& before, const Tell& tell);
SaidStrike read_strike(const Json& object, const SaidStrike& before, const Tell& tell);

// The options of a delivery, and its request; what is said of the strike.
std::vector<std::string> delivery_options();
SaidFields read_delivery(const Members& options, DeliveryRequest& request, const Tell& tell);

}  // namespace yardworth::embed
