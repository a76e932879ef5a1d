#pragma once

#include <array>
#include <stdexcept>
#include <string>

#include "input/derived_table.hpp"
#include "yardworth/read.hpp"

namespace yardworth::test {

// Files of the source tree, named from its root. A fault in one of them is a fault of the tests.

inline std::string text_of(const std::string& file) {
  const Reading<std::string> text = read_text(std::string(YARDWORTH_SOURCE_DIR) + "/" + file);
  if (!text.ok()) throw std::runtime_error(to_line(text.findings.front()));
  return *text.value;
}

inline Course scenario_course() {
  const std::string file = "courses/heron-ferry/course.yaml";
  const Reading<Course> course = read_course(text_of(file), file);
  if (!course.ok()) throw std::runtime_error(to_line(course.findings.front()));
  return *course.value;
}

inline constexpr std::array<const char*, 8> scenario_members = {
    "scratch-man", "8-man", "weekend-16-man", "24-man", "senior-20-man", "12-woman", "28-woman", "junior"};
inline constexpr std::size_t middle_tee = 1;

inline Player scenario_member(const std::string& member) {
  const std::string file = "courses/heron-ferry/members/" + member + ".yaml";
  const Reading<Player> player = read_player(text_of(file), file);
  if (!player.ok()) throw std::runtime_error(to_line(player.findings.front()));
  return *player.value;
}

// The baseline that the command takes for a player.
inline Baseline baseline_of(const Player& player) {
  return Baseline(player.handicap_index ? derived_table(*player.handicap_index, player.gender)
                                        : derived_table(player.band, player.gender));
}

}  // namespace yardworth::test
