#include "yardworth/flight.hpp"

namespace yardworth {
namespace {

Turf turf_of_tilt(std::string_view name, double tilt_deg) {
  Turf turf;
  turf.name = name;
  turf.tilt_rad = radians(tilt_deg);
  return turf;
}

}  // namespace

// Turf as it was measured is firm. The softer it is, the more it gives way: by how much is found from how far a typical
// drive runs on it, docs/model.md, "Run".
Turf firm_turf() { return Turf(); }
Turf normal_turf() { return turf_of_tilt("normal", 16.8); }
Turf soft_turf() { return turf_of_tilt("soft", 18.6); }

}  // namespace yardworth
