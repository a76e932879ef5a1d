#include "report/gain_basis.hpp"

#include <fmt/format.h>

#include "core/distance_words.hpp"
#include "report/basis_words.hpp"
#include "report/change_words.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::report {
namespace {

// How the method works is said by the notes of the result.
std::string method_words(Method method) {
  if (method == Method::play) return "Method play.";
  return "Method table knows nothing of the player's irons: what comes from them is 0 by construction.";
}

std::string plan_words(PolicyChoice policy) {
  const std::string habit =
      "the longest sensible club off the tee of a par 4 or 5 down the middle, then the club that fits the distance "
      "left at the middle of the green";
  const std::string best = "for every place the ball can lie, the club and aim with the fewest expected strokes";
  switch (policy) {
    case PolicyChoice::habit:
      return "Habit plan: " + habit + ".";
    case PolicyChoice::best:
      return "Best plan: " + best + ".";
    case PolicyChoice::both:
      return "Best plan, which is the answer: " + best + ". Habit plan, beside it: " + habit + ".";
  }
  return "";
}

std::string irons_words(const GainResult& result) {
  const std::string amount = plain_number(from_yards(result.change.irons_carry_yd, result.units));
  return fmt::format("Irons: {} {} of carry for the {}, every other club below the driver in proportion to its carry.",
                     amount, unit_after(amount, result.units), *result.reference_iron);
}

}  // namespace

std::vector<std::string> gain_basis(const GainResult& result) {
  std::vector<std::string> words = {method_words(result.method), plan_words(result.policy)};
  if (!result.replanning_computed) {
    words.emplace_back("What playing the course differently would save was not computed, and counts as 0.");
  }
  if (result.reference_iron && result.change.irons_carry_yd != 0.0) words.push_back(irons_words(result));
  for (const std::string& of_step : wider_change_words(result)) words.push_back(of_step);
  words.push_back(escape_control(fmt::format("Band {}. Baseline: {}; source: {}", name(result.band),
                                             result.baseline_name, result.baseline_source)));
  for (const Note& note : result.notes) words.push_back(escape_control(note_words(note, result.units)));
  return words;
}

}  // namespace yardworth::report
