#pragma once

#include <vector>

#include "yardworth/flight.hpp"

namespace yardworth {

// Throws InvalidRequest with the faults, where there are any.
void refuse_faults(const std::vector<Diagnostic>& findings);
void refuse_faults(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions);

}  // namespace yardworth
