// A program that knows only the installed headers and library.
#include <cstdio>

#include "input/derived_table.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/read.hpp"
#include "yardworth/scenario.hpp"

int main() {
  using namespace yardworth;
  const auto course = read_course(scenario_course_yaml(), std::string(scenario_course_file));
  const auto player = read_player(scenario_player_yaml(), std::string(scenario_player_file));
  if (!course.ok() || !player.ok()) return 1;
  const Baseline baseline(derived_table(player.value->band, player.value->gender));
  GainRequest request;
  request.change = {.driver_carry_yd = 20.0, .irons_carry_yd = 6.0};
  request.policy = PolicyChoice::habit;
  const GainResult result = compute_gain(*course.value, *player.value, baseline, request);
  const double saved = result.answer().round.strokes_saved();
  std::printf("%s saves %.2f strokes\n", result.player.c_str(), saved);
  return saved > 0.0 ? 0 : 1;
}
