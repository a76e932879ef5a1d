#include "flight/aerodynamics.hpp"

#include <algorithm>
#include <cmath>

namespace yardworth {
namespace {

double polynomial(const std::array<double, 5>& coefficients, double x) {
  double sum = 0.0;
  for (auto at = coefficients.rbegin(); at != coefficients.rend(); ++at) sum = sum * x + *at;
  return sum;
}

}  // namespace

Aerodynamics naruo_2004() {
  Aerodynamics set;
  set.source =
      "T. Naruo, T. Mizota and H. Shimozono, Trans. JSME B 70:2371, 2004, read in a quotation; loss of spin: A. J. "
      "Smits "
      "and D. R. Smith, Science and Golf II, 1994, read in a quotation";
  set.drag = {0.2049, 0.2148, 1.098, -1.760, 0.7510};
  set.lift = {0.0616, 1.250, -1.644, 1.006, -0.2158};
  set.least_spin_ratio = 0.03;
  set.most_spin_ratio = 1.13;
  set.spin_decay = 2.0e-5;
  return set;
}

Aerodynamics smits_smith_1994() {
  Aerodynamics set;
  set.source = "A. J. Smits and D. R. Smith, Science and Golf II, 1994, read in a quotation";
  set.drag = {0.24, 0.18, 0.0, 0.0, 0.0};
  set.drag_wave = 0.06;
  set.wave_from = 90000.0;
  set.wave_length = 200000.0;
  set.lift_factor = 0.54;
  set.lift_power = 0.4;
  set.least_spin_ratio = 0.08;
  set.most_spin_ratio = 0.2;
  set.spin_decay = 2.0e-5;
  return set;
}

DragAndLift drag_and_lift(const Aerodynamics& set, double spin_ratio, double reynolds) {
  const double ratio = std::clamp(spin_ratio, set.least_spin_ratio, set.most_spin_ratio);
  DragAndLift both{polynomial(set.drag, ratio), polynomial(set.lift, ratio)};
  if (set.drag_wave != 0.0) both.drag += set.drag_wave * std::sin(pi * (reynolds - set.wave_from) / set.wave_length);
  if (set.lift_factor != 0.0) both.lift += set.lift_factor * std::pow(ratio, set.lift_power);
  if (spin_ratio < set.least_spin_ratio) both.lift *= spin_ratio / set.least_spin_ratio;
  return both;
}

double viscosity(double temperature_c) {
  const double kelvin = temperature_c + 273.15;
  return 1.458e-6 * kelvin * std::sqrt(kelvin) / (kelvin + 110.4);
}

}  // namespace yardworth
