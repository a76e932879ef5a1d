// A course and a player through the engine: where both are read, the strokes of one short hole, before and after, as
// the habit has it, are numbers that can be. The input is a course's file, a line "%", and a player's file.

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>

#include "input/derived_table.hpp"
#include "promise.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/read.hpp"

namespace yardworth::fuzz {
namespace {

// What is longer or wilder takes too long under the sanitizers for the fuzzer to learn anything.
constexpr double longest_hole_yd = 210.0;
constexpr double shortest_longest_carry_yd = 90.0;
constexpr std::size_t most_clubs = 4;
constexpr std::size_t most_hazards = 6;

// The first hole that is short enough, alone; false where there is none.
bool cut_short(Course& course) {
  const auto is_short = [](const Hole& hole) {
    return hole.length_yd.front() <= longest_hole_yd && hole.hazards.size() <= most_hazards;
  };
  const auto found = std::find_if(course.holes.begin(), course.holes.end(), is_short);
  if (found == course.holes.end()) return false;
  course.holes = {*found};
  return true;
}

bool cut_short(Player& player) {
  if (player.clubs.size() > most_clubs) player.clubs.resize(most_clubs);
  return std::any_of(player.clubs.begin(), player.clubs.end(),
                     [](const Club& club) { return club.carry_yd >= shortest_longest_carry_yd; });
}

void look_at(const PolicyGain& gain) {
  for (const HoleGain& hole : gain.holes) {
    const StepValues& strokes = hole.strokes;
    for (const double value :
         {strokes.before, strokes.after_step(ChangeStep::driver_carry), strokes.followed(), strokes.replanned}) {
      promise(std::isfinite(value) && value >= 1.0, "a hole takes at least one stroke, and a number of them");
    }
    promise(hole.before.penalty >= 0.0 && hole.before.penalty <= 1.0 + 1e-9, "a probability is one");
  }
}

void compute(std::string_view text) {
  constexpr std::string_view between = "\n%\n";
  const std::size_t cut = text.find(between);
  if (cut == std::string_view::npos) return;
  Reading<Course> course = read_course(text.substr(0, cut + 1), "course");
  if (!course.ok() || !cut_short(*course.value)) return;
  Reading<Player> player = read_player(text.substr(cut + between.size()), "player");
  if (!player.ok() || !cut_short(*player.value)) return;
  const BaselineTable table = derived_table(player.value->band, player.value->gender);
  GainRequest request;
  request.change = {20.0, 6.0};
  request.policy = PolicyChoice::habit;
  request.threads = 1;
  try {
    const GainResult result = compute_gain(*course.value, *player.value, Baseline(table), request);
    promise(result.habit.has_value(), "the habit was asked for");
    look_at(*result.habit);
  } catch (const CannotFinish&) {
    // A fair answer: these clubs never finish the hole.
  } catch (const InvalidRequest&) {
    // Likewise: this change is none for these clubs.
  }
}

}  // namespace
}  // namespace yardworth::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  yardworth::fuzz::compute({reinterpret_cast<const char*>(data), size});
  return 0;
}
