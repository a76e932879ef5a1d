#pragma once

#include "yardworth/flight.hpp"

namespace yardworth {

// fly without looking for faults: for searches, whose deliveries have none.
Flight flown(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions);
Flight flown(const Launch& launch, const FlightConditions& conditions);

}  // namespace yardworth
