#include "shot/stroke_counts.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>

#include "core/numerics.hpp"

namespace yardworth {

double mean_of(const StrokeCounts& counts) {
  double sum = 0.0;
  for (std::size_t strokes = 0; strokes < counts.size(); ++strokes) {
    sum += static_cast<double>(strokes) * counts[strokes];
  }
  return sum;
}

double variance_of(const StrokeCounts& counts) {
  const double mean = mean_of(counts);
  double sum = 0.0;
  for (std::size_t strokes = 0; strokes < counts.size(); ++strokes) {
    const double off = static_cast<double>(strokes) - mean;
    sum += off * off * counts[strokes];
  }
  return sum;
}

void put_rest_last(StrokeCounts& counts) {
  counts.back() += std::max(0.0, 1.0 - std::accumulate(counts.begin(), counts.end(), 0.0));
}

void add_around(StrokeCounts& counts, double strokes, double weight) {
  const double whole = std::floor(strokes);
  const auto at = static_cast<std::size_t>(whole);
  if (counts.size() < at + 2) counts.resize(at + 2, 0.0);
  counts[at] += weight * (1.0 - (strokes - whole));
  counts[at + 1] += weight * (strokes - whole);
}

namespace {

// Moves a share of all one stroke up.
void move_up(StrokeCounts& counts, double share) {
  counts.push_back(0.0);
  for (std::size_t i = counts.size() - 1; i > 0; --i) counts[i] += share * (counts[i - 1] - counts[i]);
  counts[0] -= share * counts[0];
}

// Moves a share of all above the least number one stroke down.
void move_down(StrokeCounts& counts, std::size_t least, double share) {
  for (std::size_t i = least + 1; i < counts.size(); ++i) {
    const double moved = share * counts[i];
    counts[i] -= moved;
    counts[i - 1] += moved;
  }
}

}  // namespace

StrokeCounts with_mean(StrokeCounts counts, double mean) {
  const auto least = static_cast<std::size_t>(
      std::find_if(counts.begin(), counts.end(), [](double share) { return share > 0.0; }) - counts.begin());
  if (least == counts.size()) return counts;
  for (double wanted = mean - mean_of(counts); wanted > 0.0; wanted -= 1.0) move_up(counts, std::min(1.0, wanted));
  for (std::size_t times = least; times < counts.size(); ++times) {
    const double wanted = mean_of(counts) - mean;
    const double movable = std::accumulate(counts.begin(), counts.end(), 0.0) - counts[least];
    if (wanted <= 0.0 || movable <= 0.0) break;
    move_down(counts, least, std::min(1.0, wanted / movable));
    if (wanted < movable) break;
  }
  return counts;
}

StrokeCounts convolve(const StrokeCounts& a, const StrokeCounts& b) {
  if (a.empty() || b.empty()) return {};
  StrokeCounts sum(a.size() + b.size() - 1, 0.0);
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) sum[i + j] += a[i] * b[j];
  }
  return sum;
}

}  // namespace yardworth
