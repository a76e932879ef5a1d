#include "input/derived_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <mutex>
#include <stdexcept>
#include <utility>

#include "yardworth/read.hpp"

namespace yardworth {

namespace {

// The bands that an index lies between, best first; scratch and bogey are golfers of course rating, and bogey lies
// between two others.
constexpr std::array<Band, 6> by_index = {Band::tour,         Band::scratch,       Band::below_6,
                                          Band::from_6_to_12, Band::from_13_to_20, Band::from_21};
constexpr double last_index = 36.0;

void mix_into(BaselineColumn& column, const BaselineColumn& other, double share) {
  for (std::size_t i = 0; i < column.strokes.size(); ++i) {
    column.strokes[i] = std::lerp(column.strokes[i], other.strokes.at(i), share);
  }
}

}  // namespace

// Read when it is first asked for: a page asks for the same one again and again, a club for those of every member.
BaselineTable derived_table(Band band, Gender gender) {
  static std::mutex reading_one;
  static std::map<std::pair<Band, Gender>, BaselineTable> known;
  const std::lock_guard lock(reading_one);
  const auto found = known.find({band, gender});
  if (found != known.end()) return found->second;
  const Reading<BaselineTable> reading = read_baseline(derived_table_yaml(band, gender), "built-in baseline");
  if (!reading.ok()) throw std::logic_error("a built-in baseline cannot be read");
  return known.emplace(std::pair(band, gender), *reading.value).first->second;
}

BaselineTable derived_table(double handicap_index, Gender gender) {
  std::size_t upper = 1;
  while (upper + 1 < by_index.size() && handicap_index > typical_handicap_index(by_index[upper], gender)) ++upper;
  const double low = typical_handicap_index(by_index[upper - 1], gender);
  const double high = typical_handicap_index(by_index[upper], gender);
  const double index = std::clamp(handicap_index, low, last_index);
  BaselineTable table = derived_table(by_index[upper - 1], gender);
  const BaselineTable other = derived_table(by_index[upper], gender);
  for (const auto column : all_columns) {
    mix_into(table.*column, other.*column, (index - low) / (high - low));
  }
  table.band = band_of(handicap_index);
  table.name = fmt::format("{}, Handicap Index {}{:.1f}", name(gender), handicap_index < 0.0 ? "+" : "",
                           std::abs(handicap_index));
  return table;
}

Baseline default_baseline(const Player& player) {
  return Baseline(player.handicap_index ? derived_table(*player.handicap_index, player.gender)
                                        : derived_table(player.band, player.gender));
}

}  // namespace yardworth
