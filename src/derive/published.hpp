#pragma once

#include <limits>
#include <string>
#include <vector>

namespace yardworth {

// Of figures from courses or equipment that are not known well enough to say how far off would be wrong.
inline constexpr double no_limit = std::numeric_limits<double>::infinity();

// One published fact beside what the golfers and tables compiled in come to.
struct PublishedCheck {
  std::string topic;
  std::string fact;
  std::string source;
  double published = 0.0;
  double computed = 0.0;
  double allowed = 0.0;  // largest difference; no_limit: shown beside, and cannot fail
  int decimals = 2;      // how it is told
  bool fitted = false;   // the fit was given it: shown, but no test of anything

  double difference() const { return computed - published; }
  bool has_limit() const { return allowed != no_limit; }
  bool holds() const { return difference() <= allowed + 1e-9 && difference() >= -allowed - 1e-9; }
};

// Every fact checked, by topic. `twenties` sets of twenty simulated rounds for each score; published_twenties are those
// of the record, more only make the last digit surer, none leave those facts out.
inline constexpr int published_twenties = 200;
std::vector<PublishedCheck> check_published(int twenties);

// docs/validation.md.
std::string write_validation(const std::vector<PublishedCheck>& checks);

}  // namespace yardworth
