#include "derive/root.hpp"

#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>

namespace yardworth {

double root_of(const std::function<double(double)>& rising, double low, double high) {
  const double at_low = rising(low);
  if (at_low >= 0.0) return low;
  const double at_high = rising(high);
  if (at_high <= 0.0) return high;
  boost::math::tools::eps_tolerance<double> digits(8);
  std::uintmax_t most = 30;
  const auto bracket = boost::math::tools::toms748_solve(rising, low, high, at_low, at_high, digits, most);
  return 0.5 * (bracket.first + bracket.second);
}

}  // namespace yardworth
