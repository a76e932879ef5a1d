// A program that knows only the installed headers and library. Given the strokes that the command says are saved, it
// checks that the library says the same.
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "yardworth/gain.hpp"
#include "yardworth/read.hpp"
#include "yardworth/scenario.hpp"

int main(int argc, char** argv) {
  using namespace yardworth;
  const auto course = read_course(scenario_course_yaml(), std::string(scenario_course_file));
  const auto player = read_player(scenario_player_yaml(), std::string(scenario_player_file));
  if (!course.ok() || !player.ok()) return 1;
  GainRequest request;
  request.change = {.driver_carry_yd = 20.0, .irons_carry_yd = 6.0};
  const GainResult result = compute_gain(*course.value, *player.value, request);
  const double saved = result.answer().round.strokes_saved();
  std::printf("%s saves %.2f strokes\n", result.player.c_str(), saved);
  if (argc < 2) return saved > 0.0 ? 0 : 1;
  return std::abs(saved - std::atof(argv[1])) < 1e-12 ? 0 : 1;
}
