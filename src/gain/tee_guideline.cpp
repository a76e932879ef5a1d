#include "gain/tee_guideline.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/full_round.hpp"

namespace yardworth {

namespace {

struct GuidelineRow {
  double driver_yd;
  double low_yd;
  double high_yd;
};

// USGA / PGA of America tee guideline, as quoted.
constexpr std::array<GuidelineRow, 8> guideline = {{{100.0, 2100.0, 2300.0},
                                                    {125.0, 2800.0, 3000.0},
                                                    {150.0, 3500.0, 3700.0},
                                                    {175.0, 4400.0, 4600.0},
                                                    {200.0, 5200.0, 5400.0},
                                                    {225.0, 5800.0, 6000.0},
                                                    {250.0, 6200.0, 6400.0},
                                                    {275.0, 6700.0, 6900.0}}};

}  // namespace

RecommendedLength recommended_length(double driver_distance_yd, std::size_t holes) {
  const double driver = std::clamp(driver_distance_yd, guideline.front().driver_yd, guideline.back().driver_yd);
  std::size_t upper = 1;
  while (upper + 1 < guideline.size() && driver > guideline[upper].driver_yd) ++upper;
  const GuidelineRow& a = guideline[upper - 1];
  const GuidelineRow& b = guideline[upper];
  const double share = (driver - a.driver_yd) / (b.driver_yd - a.driver_yd);
  const double rounds = static_cast<double>(holes) / full_round_holes;
  return {rounds * std::lerp(a.low_yd, b.low_yd, share), rounds * std::lerp(a.high_yd, b.high_yd, share),
          driver != driver_distance_yd};
}

std::size_t tee_by_length(const RecommendedLength& recommended, const std::vector<double>& total_length_yd) {
  const auto misfit = [&](double length) {
    const double outside = std::max({0.0, recommended.low_yd - length, length - recommended.high_yd});
    return std::pair(outside, std::abs(length - 0.5 * (recommended.low_yd + recommended.high_yd)));
  };
  const auto best = std::min_element(total_length_yd.begin(), total_length_yd.end(),
                                     [&](double a, double b) { return misfit(a) < misfit(b); });
  return static_cast<std::size_t>(best - total_length_yd.begin());
}

}  // namespace yardworth
