#include "gain/tees_looked_at.hpp"

#include <numeric>

#include "gain/tee_guideline.hpp"

namespace yardworth {

std::vector<std::size_t> tees_or_all(const Course& course, const std::vector<std::size_t>& wanted) {
  if (!wanted.empty()) return wanted;
  std::vector<std::size_t> tees(course.tees.size());
  std::iota(tees.begin(), tees.end(), std::size_t{0});
  return tees;
}

std::vector<TeeOfBands> describe_tees(const Course& course, const std::vector<std::size_t>& tees) {
  std::vector<TeeOfBands> described;
  for (const std::size_t tee : tees) {
    const Tee& is = course.tees[tee];
    described.push_back({is.name, total_length_yd(course, tee), is.slope, is.rated_for.value_or(Gender::men)});
  }
  return described;
}

std::optional<std::size_t> tee_by_length(const RecommendedLength& recommended, const std::vector<TeeOfBands>& tees) {
  if (tees.size() < 2) return std::nullopt;
  std::vector<double> lengths;
  for (const TeeOfBands& tee : tees) lengths.push_back(tee.length_yd);
  return tee_by_length(recommended, lengths);
}

std::optional<std::size_t> tee_by_clubs(const std::vector<std::optional<double>>& clubs_apart) {
  if (clubs_apart.size() < 2) return std::nullopt;
  std::optional<std::size_t> suits;
  for (std::size_t i = 0; i < clubs_apart.size(); ++i) {
    if (clubs_apart[i] && (!suits || *clubs_apart[i] < *clubs_apart[*suits])) suits = i;
  }
  return suits;
}

}  // namespace yardworth
