#include "report/weigh_parts.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/basis_words.hpp"
#include "report/text.hpp"

namespace yardworth::report {

namespace {

bool is_carry(ChangeStep step) { return step == ChangeStep::driver_carry || step == ChangeStep::irons_carry; }

std::string doubt_words(const WeighResult& result) {
  const bool assumed = std::any_of(result.options.begin(), result.options.end(), [](const WeighedOption& weighed) {
    return weighed.doubt > 0.0 && !weighed.option.doubt;
  });
  std::string words =
      "The intervals hold in 9 cases of 10 and are about how much an option changes, all parts of its change together; "
      "no option's luck depends on another's.";
  const bool measured = std::any_of(result.options.begin(), result.options.end(),
                                    [](const WeighedOption& weighed) { return !weighed.option.draws.empty(); });
  if (measured) words += " Of an option that was measured they are about what its shots leave open.";
  if (!assumed) return words;
  return words + fmt::format(
                     " An option whose file says no doubt is taken to change {:.0f}% less to {:.0f}% more than it "
                     "says, which is our assumption.",
                     100.0 * assumed_doubt, 100.0 * assumed_doubt);
}

}  // namespace

std::string unit_words(ChangeStep step, Units units) {
  const std::string_view yard = units == Units::yards ? "yard" : "metre";
  switch (step) {
    case ChangeStep::driver_carry:
      return fmt::format("1 {} more driver carry", yard);
    case ChangeStep::irons_carry:
      return fmt::format("1 {} more iron carry", yard);
    case ChangeStep::carry_spread:
      return "1% less spread of carry";
    case ChangeStep::direction_spread:
      return "1% less spread of direction";
    case ChangeStep::poor_strikes:
      return "1 poor strike fewer in 100";
    case ChangeStep::short_game:
      return "1% less spread near the green";
    case ChangeStep::putting:
      return "1% less spread of putts";
    case ChangeStep::club_carry:
    case ChangeStep::mean_direction:
      break;
  }
  return std::string(name(step));
}

double per_unit(ChangeStep step, double strokes, Units units) {
  return is_carry(step) ? strokes * to_yards(1.0, units) : strokes;
}

std::vector<std::string> weigh_basis(const WeighResult& result) {
  std::vector<std::string> words = all_note_words(result.notes, result.units);
  words.push_back(doubt_words(result));
  const bool other_tees = std::any_of(result.options.begin(), result.options.end(),
                                      [](const WeighedOption& weighed) { return weighed.option.tee.has_value(); });
  if (other_tees) {
    words.push_back(
        "From other tees the course is shorter or longer, and rated for it: the strokes that saves are no better golf, "
        "and such an option is not held against the others.");
  }
  if (!result.sensitivity.empty()) {
    words.push_back(
        "What a unit is worth is taken from a step up and a step down: 5 yards of driver carry, 3 of iron "
        "carry, 10% of a spread, 2 poor strikes in 100.");
  }
  words.push_back(fmt::format("Baseline: {}; {}.", result.baseline_name, result.baseline_source));
  return words;
}

std::vector<std::string> weigh_cautions(const WeighResult& result) {
  std::vector<std::string> words = all_caution_words(result.cautions);
  words.push_back("A new club or ball has to conform to the Equipment Rules.");
  return words;
}

}  // namespace yardworth::report
