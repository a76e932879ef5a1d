#include "gain/option_odds.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <numeric>

#include "core/numerics.hpp"

namespace yardworth {

namespace {

// The share of the cases below a number, those that are equal to it counted by half.
double share_below(const std::vector<double>& cases, double number) {
  const auto [first, last] = std::equal_range(cases.begin(), cases.end(), number);
  const auto below = static_cast<double>(first - cases.begin());
  const auto equal = static_cast<double>(last - first);
  return (below + 0.5 * equal) / static_cast<double>(cases.size());
}

}  // namespace

double worth_at(const Response& response, double deviations) {
  std::size_t above = 1;
  while (above + 1 < odds_nodes.size() && deviations > odds_nodes[above]) ++above;
  const double part = (deviations - odds_nodes[above - 1]) / (odds_nodes[above] - odds_nodes[above - 1]);
  return response[above - 1] + part * (response[above] - response[above - 1]);
}

std::vector<double> equally_likely(const Response& response) {
  const boost::math::normal_distribution<double> normal;
  std::vector<double> cases;
  for (int i = 0; i < numerics::option_cases; ++i) {
    const double deviations = boost::math::quantile(normal, (i + 0.5) / numerics::option_cases);
    cases.push_back(worth_at(response, deviations));
  }
  std::sort(cases.begin(), cases.end());
  return cases;
}

double quantile(const std::vector<double>& equally_likely, double share) {
  const double place = share * static_cast<double>(equally_likely.size()) - 0.5;
  const double last = static_cast<double>(equally_likely.size() - 1);
  const auto below = static_cast<std::size_t>(std::clamp(std::floor(place), 0.0, last));
  const std::size_t above = std::min(below + 1, equally_likely.size() - 1);
  const double part = std::clamp(place - static_cast<double>(below), 0.0, 1.0);
  return equally_likely[below] + part * (equally_likely[above] - equally_likely[below]);
}

std::vector<double> best_probabilities(const std::vector<std::vector<double>>& equally_likely) {
  std::vector<double> best(equally_likely.size(), 0.0);
  for (std::size_t i = 0; i < equally_likely.size(); ++i) {
    for (const double saved : equally_likely[i]) {
      double all_others_less = 1.0;
      for (std::size_t j = 0; j < equally_likely.size(); ++j) {
        if (j != i) all_others_less *= share_below(equally_likely[j], saved);
      }
      best[i] += all_others_less / static_cast<double>(equally_likely[i].size());
    }
  }
  // Options that save exactly the same share what is left of their ties.
  const double sum = std::accumulate(best.begin(), best.end(), 0.0);
  for (double& probability : best) probability /= sum;
  return best;
}

}  // namespace yardworth
