#pragma once

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "yardworth/diagnostics.hpp"

// So that a failed check shows the lines.
template <>
struct doctest::StringMaker<std::vector<std::string>> {
  static String convert(const std::vector<std::string>& lines) {
    std::string all;
    for (const std::string& line : lines) all += "\n  " + line;
    return all.c_str();
  }
};

namespace yardworth::samples {

// A course of nine holes that uses every key.
inline const std::string course = R"(format: yardworth/course/1
name: Test Nine
units: yards
tees:
  - {name: back, course_rating: 35.8, slope: 129}
  - {name: forward, for: women}
ground: {firmness: normal}
holes:
  - number: 1
    par: 4
    stroke_index: 11
    length: {back: 398, forward: 318}
    dogleg: [{at: 240, turn: -18}]
    fairway: [{from: 140, to: 372, left: 17, right: 15}]
    green: {depth: 30, width: 24}
    hazards:
      - {kind: bunker, side: right, from: 226, to: 244, near: 13, far: 25}
      - {kind: penalty_area, side: across, from: 338, to: 352}
      - {kind: bunker, polygon: [[-22, 380], [-12, 380], [-14, 396]]}
  - {number: 2, par: 4, stroke_index: 2, length: {back: 380, forward: 300}}
  - {number: 3, par: 4, stroke_index: 3, length: {back: 380, forward: 300}}
  - {number: 4, par: 3, stroke_index: 4, length: {back: 160, forward: 130}}
  - {number: 5, par: 4, stroke_index: 5, length: {back: 380, forward: 300}}
  - {number: 6, par: 4, stroke_index: 6, length: {back: 380, forward: 300}}
  - {number: 7, par: 4, stroke_index: 7, length: {back: 380, forward: 300}}
  - {number: 8, par: 4, stroke_index: 8, length: {back: 380, forward: 300}}
  - {number: 9, par: 4, stroke_index: 9, length: {back: 380, forward: 300}}
)";

inline const std::string player = R"(format: yardworth/player/1
label: weekend 16
handicap_index: 16.2
gender: men
units: yards
clubs:
  - {club: driver, carry: 196, roll: 18, carry_sd: 17, direction_sd: 6.1, poor_strike: 0.08}
  - {club: 5-wood, carry: 172}
  - {club: 6-iron, carry: 150}
  - {club: 7-iron, carry: 131}
)";

// The text with one passage, which must be there, replaced; `all` of its places or only the first.
inline std::string changed(std::string text, const std::string& from, const std::string& to, bool all = false) {
  auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  do {
    text.replace(at, from.size(), to);
    at = text.find(from, at + to.size());
  } while (all && at != std::string::npos);
  return text;
}

// The findings as they are printed, without the file's name, which must be "f".
inline std::vector<std::string> lines(const std::vector<Diagnostic>& findings) {
  std::vector<std::string> printed;
  for (const Diagnostic& finding : findings) {
    const std::string line = to_line(finding);
    REQUIRE(line.substr(0, 2) == "f:");
    printed.push_back(line.substr(2));
  }
  return printed;
}

// One change to a valid file, and the one line that it must give.
struct Slip {
  const char* name;
  const char* from;
  const char* to;
  const char* line;
};

}  // namespace yardworth::samples
