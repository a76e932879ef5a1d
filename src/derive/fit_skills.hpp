#pragma once

#include <functional>
#include <string>
#include <vector>

#include "player/skill.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Golfers as parameters, fitted to published measurements. docs/bands.md gives for each parameter the fact that pins
// it.

struct FittedSkills {
  std::vector<SkillRow> men, women;
};

// The cells of the tour table that the fit uses, yards; all others are left for checking.
struct FittedCells {
  std::vector<double> tee = {140.0, 200.0, 280.0, 320.0, 400.0, 460.0};
  std::vector<double> fairway = {120.0, 180.0, 240.0, 320.0, 400.0, 480.0};
  std::vector<double> rough = {120.0, 180.0, 240.0, 320.0, 400.0, 480.0};
  std::vector<double> bunker = {140.0, 260.0, 420.0};
  std::vector<double> recovery = {100.0, 240.0, 400.0};
  std::vector<double> short_game = {20.0, 40.0};  // fairway, rough and bunker
};

// Fits everything; `tell` is given a line for each stage. Takes minutes.
FittedSkills fit_skills(const std::function<void(const std::string&)>& tell);

// Rows as the text of src/player/skill_rows_*.inc.
std::string write_skill_rows(const std::vector<SkillRow>& rows);

}  // namespace yardworth
