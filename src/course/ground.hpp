#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

#include "yardworth/course.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// What each ground does to a ball, and what firmness does to its roll. Whoever wants to know what is penalised, played
// from, rolled over or kept away from asks here.

// What a ball on a ground costs: nothing, a stroke and a drop, or a stroke and the same shot again. Rules of Golf (R&A
// and USGA, 2019 and later), Rules 17.1d and 18.2, from memory; shot/rest.hpp says how they are applied.
enum class Penalty : std::uint8_t { none, drop, stroke_and_distance };

struct GroundFacts {
  Ground ground = Ground::green;
  std::string_view name;  // as reports say it
  Penalty penalty = Penalty::none;
  std::optional<Lie> lie;      // that a ball is played from; nothing where none may be
  double roll = 0.0;           // of what a ball rolls on fairway. Common practice, no source; docs/model.md, "Roll"
  bool trouble = false;        // golfers keep away from it
  bool edge_counts = false;    // between grounds of which this is false, an edge only changes the roll a little
  bool carry_is_told = false;  // that a club now carries it is worth telling
};

inline constexpr std::size_t ground_count = static_cast<std::size_t>(Ground::rough) + 1;

// In the order of Ground, which says what counts where grounds overlap.
// clang-format off
inline constexpr std::array<GroundFacts, ground_count> ground_table = {{
    //                                                                                            edge    carry
    // ground               name             penalty                       lie           roll  trouble counts  is told
    {Ground::green,         "green",         Penalty::none,                Lie::green,    0.7, false,  true,   false},
    {Ground::out_of_bounds, "out of bounds", Penalty::stroke_and_distance, std::nullopt,  0.0, true,   true,   false},
    {Ground::penalty_area,  "penalty area",  Penalty::drop,                std::nullopt,  0.0, true,   true,   true},
    {Ground::bunker,        "bunker",        Penalty::none,                Lie::bunker,   0.0, true,   true,   true},
    {Ground::trees,         "trees",         Penalty::none,                Lie::recovery, 0.3, true,   true,   false},
    {Ground::fairway,       "fairway",       Penalty::none,                Lie::fairway,  1.0, false,  false,  false},
    {Ground::rough,         "rough",         Penalty::none,                Lie::rough,    0.4, false,  false,  false},
}};
// clang-format on

struct FirmnessFacts {
  Firmness firmness = Firmness::soft;
  std::string_view name;  // as files say it
  double roll = 0.0;      // of what a ball rolls on normal ground. Common practice, no source
};

inline constexpr std::size_t firmness_count = static_cast<std::size_t>(Firmness::firm) + 1;

inline constexpr std::array<FirmnessFacts, firmness_count> firmness_table = {
    {{Firmness::soft, "soft", 0.6}, {Firmness::normal, "normal", 1.0}, {Firmness::firm, "firm", 1.35}}};

constexpr const GroundFacts& facts_of(Ground ground) { return ground_table[static_cast<std::size_t>(ground)]; }
constexpr const FirmnessFacts& facts_of(Firmness firmness) {
  return firmness_table[static_cast<std::size_t>(firmness)];
}

constexpr Penalty penalty_on(Ground ground) { return facts_of(ground).penalty; }
constexpr bool is_penalised(Ground ground) { return penalty_on(ground) != Penalty::none; }
constexpr bool is_playable(Ground ground) { return facts_of(ground).lie.has_value(); }
// The lie that a ball at rest on a ground that is playable is played from.
constexpr Lie lie_on(Ground ground) { return *facts_of(ground).lie; }
// Roll on a ground over roll on a normal fairway.
constexpr double roll_factor(Ground ground, Firmness firmness) {
  return facts_of(ground).roll * facts_of(firmness).roll;
}

// What a table that is complete, and says nothing against itself, fulfils. A row that is missing, doubled or out of
// order has another ground than its place.
constexpr bool is_consistent(const GroundFacts& facts) {
  const bool kept_away_from = facts.trouble || facts.penalty == Penalty::none;
  return !facts.name.empty() && facts.lie.has_value() == (facts.penalty == Penalty::none) && facts.roll >= 0.0 &&
         facts.roll <= 1.0 && kept_away_from && (facts.edge_counts || !facts.trouble);
}
static_assert([] {
  for (std::size_t i = 0; i < ground_count; ++i) {
    if (ground_table[i].ground != static_cast<Ground>(i) || !is_consistent(ground_table[i])) return false;
  }
  return true;
}());
static_assert([] {
  for (std::size_t i = 0; i < firmness_count; ++i) {
    if (firmness_table[i].firmness != static_cast<Firmness>(i) || firmness_table[i].name.empty()) return false;
  }
  return true;
}());
// The whole course is rough where nothing else covers it.
static_assert(is_playable(Ground::rough) && roll_factor(Ground::fairway, Firmness::normal) == 1.0);

}  // namespace yardworth
