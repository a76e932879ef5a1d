#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "flight/aerodynamics.hpp"
#include "yardworth/flight.hpp"

namespace yardworth {

TEST_CASE("dry air against the US Standard Atmosphere") {
  // U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF), table I by geopotential altitude: metres, kelvin, kg/m3. From
  // memory to the digits shown.
  struct Row {
    double altitude_m, kelvin, density;
  };
  for (const Row& row : {Row{-1000.0, 294.65, 1.3470}, Row{0.0, 288.15, 1.2250}, Row{1000.0, 281.65, 1.1117},
                         Row{2000.0, 275.15, 1.0066}, Row{3000.0, 268.65, 0.9091}, Row{4000.0, 262.15, 0.8191},
                         Row{5000.0, 255.65, 0.7361}}) {
    CAPTURE(row.altitude_m);
    CHECK(air_density({row.kelvin - 273.15, row.altitude_m, 1013.25, 0.0}) ==
          doctest::Approx(row.density).epsilon(2e-4));
  }
  // The same, viscosity of air at 288.15 K: 1.7894e-5 kg/(m s).
  CHECK(viscosity(15.0) == doctest::Approx(1.7894e-5).epsilon(1e-4));
}

TEST_CASE("moist air is lighter, warm air too") {
  // Saturated vapour at 20 degrees Celsius: 23.39 hPa (any steam table; from memory). What it displaces of dry air is
  // 0.378 of it, the molar masses being 18.015 and 28.964.
  const double dry = air_density({20.0, 0.0, 1013.25, 0.0});
  const double moist = air_density({20.0, 0.0, 1013.25, 1.0});
  CHECK((dry - moist) / dry == doctest::Approx(0.378 * 23.39 / 1013.25).epsilon(0.005));
  // A perfect gas: density as the inverse of the temperature.
  CHECK(air_density({30.0, 0.0, 1013.25, 0.0}) * 303.15 == doctest::Approx(dry * 293.15).epsilon(1e-12));
}

TEST_CASE("wind by height") {
  // The logarithmic law: any textbook of meteorology.
  Wind wind;
  wind.speed_mps = 5.0;
  CHECK(wind_share(wind, 10.0) == doctest::Approx(1.0));
  CHECK(wind_share(wind, 0.0) == 0.0);
  CHECK(wind_share(wind, 30.0) == doctest::Approx(std::log(1001.0) / std::log(10.0 / 0.03 + 1.0)));
  wind.roughness_m = 0.0;
  CHECK(wind_share(wind, 0.5) == 1.0);
}

TEST_CASE("drag and lift against the spin ratio") {
  // Conforming balls, R&A and USGA, report on spin, 2006 (read in a quotation): for spin ratios from 0.05 to 0.2 lift
  // of 0.125 to 0.30 and drag of 0.22 to 0.32. The balls of the default set have a little less lift at the low end.
  const Aerodynamics set = naruo_2004();
  for (const double ratio : {0.05, 0.1, 0.15, 0.2}) {
    const DragAndLift both = drag_and_lift(set, ratio, 1.5e5);
    CAPTURE(ratio);
    CHECK(both.drag > 0.21);
    CHECK(both.drag < 0.32);
    CHECK(both.lift > 0.115);
    CHECK(both.lift < 0.30);
  }
  CHECK(drag_and_lift(set, 0.0, 1.5e5).lift == 0.0);
  // Beyond what was measured the last value stands.
  CHECK(drag_and_lift(set, 5.0, 1.5e5).lift == drag_and_lift(set, 1.13, 1.5e5).lift);
  // Both sets by hand: S = 0.1; the second at the Reynolds number where its wave is at its top.
  CHECK(drag_and_lift(set, 0.1, 1.5e5).drag ==
        doctest::Approx(0.2049 + 0.02148 + 0.01098 - 0.00176 + 0.0000751).epsilon(1e-12));
  const DragAndLift older = drag_and_lift(smits_smith_1994(), 0.1, 190000.0);
  CHECK(older.drag == doctest::Approx(0.24 + 0.018 + 0.06).epsilon(1e-12));
  CHECK(older.lift == doctest::Approx(0.54 * std::pow(0.1, 0.4)).epsilon(1e-12));
}

}  // namespace yardworth
