#include "yardworth/flight.hpp"

namespace yardworth {
namespace {

Turf turf_of_tilt(double tilt_deg) {
  Turf turf;
  turf.tilt_rad = radians(tilt_deg);
  return turf;
}

}  // namespace

// Turf as it was measured is firm. The softer it is, the more it gives way: by how much is found from how far a typical
// drive runs on it, docs/model.md, "Run".
Turf firm_turf() { return Turf(); }
Turf normal_turf() { return turf_of_tilt(16.8); }
Turf soft_turf() { return turf_of_tilt(18.6); }

}  // namespace yardworth
