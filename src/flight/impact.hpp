#pragma once

#include "yardworth/flight.hpp"

namespace yardworth {

// The ball as it leaves the face of a free rigid head that it meets in its middle. No rule is checked.
Launch impact(const Delivery& delivery, const ClubHead& head, const Ball& ball, const Grip& grip);

}  // namespace yardworth
