#include <fmt/format.h>

#include <cmath>
#include <string>

#include "core/distance_words.hpp"
#include "report/change_words.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::shown_name;
using report::Subject;

struct Part {
  double strokes = 0.0;  // in the direction of the whole: what it saves of a saving, what it costs of a cost
  std::string from;
};

std::vector<Part> parts_of(const GainResult& result) {
  const StepValues& round = result.answer().round;
  const double sign = round.strokes_saved() < 0.0 ? -1.0 : 1.0;
  std::vector<Part> parts;
  for (const ChangeStep step : steps_asked(result.change)) {
    if (is_counted(result.method, step)) {
      parts.push_back({sign * round.from(step), report::step_source(result.change, step)});
    }
  }
  if (result.replanning_computed) {
    parts.push_back({sign * round.from_replanning(), "playing the course differently"});
  }
  return parts;
}

// The number as it is written, in units of its last place, so that sums of written numbers are exact.
long as_written(double strokes, int decimals) {
  return std::lround(std::stod(fixed(strokes, decimals)) * std::pow(10.0, decimals));
}

// ": 1.2 from the longer tee shot, 0.3 from the longer irons"; nothing where there is nothing to tell apart.
std::string breakdown(const GainResult& result, int decimals) {
  const std::vector<Part> parts = parts_of(result);
  if (parts.size() < 2) return "";
  std::string text;
  long sum = 0;
  for (const Part& part : parts) {
    text += fmt::format("{}{} from {}", text.empty() ? ": " : ", ", fixed(part.strokes, decimals), part.from);
    sum += as_written(part.strokes, decimals);
  }
  const double saved = std::abs(result.answer().round.strokes_saved());
  return sum == as_written(saved, decimals) ? text : text + " (each rounded)";
}

std::string strokes_words(double strokes, int decimals) {
  if (strokes < 0.005) return "less than 0.01 strokes";
  const std::string number = fixed(strokes, decimals);
  return number == "1.0" ? "about 1 stroke" : "about " + number + " strokes";
}

std::string place_words(const GainResult& result) {
  return fmt::format("on {} from the {} tees", shown_name(result.course), shown_name(result.tee));
}

// A round is 18 holes unless said otherwise.
std::string round_words(const GainResult& result) {
  const std::size_t holes = result.answer().holes.size();
  return holes == 9 ? "a round of 9 holes" : "a round";
}

std::string left_out(const GainResult& result) {
  std::string steps;
  for (const ChangeStep step : steps_asked(result.change)) {
    if (is_counted(result.method, step)) continue;
    const bool irons = step == ChangeStep::irons_carry || step == ChangeStep::club_carry;
    const std::string what =
        irons ? "the irons" : std::string(step == ChangeStep::putting ? "" : "the ") + std::string(name(step));
    if (steps.find(what) == std::string::npos) steps += (steps.empty() ? "" : ", ") + what;
  }
  return steps.empty() ? "" : "; the table method does not count " + steps;
}

}  // namespace

std::string gain_sentence(const GainResult& result) {
  const std::string player = shown_name(result.player);
  const std::string place = place_words(result);
  if (is_nothing(result.change)) {
    return fmt::format("With no carry gained or lost nothing changes for {} {}.", player, place);
  }
  const Subject subject = report::change_subject(result.change, result.units);
  const double saved = result.answer().round.strokes_saved();
  const std::string s = subject.singular ? "s" : "";
  if (saved == 0.0) {
    return fmt::format("{} change{} nothing for {} {}{}.", subject.text, s, player, place, left_out(result));
  }
  // Small answers would all be 0.0 or 0.1 in tenths.
  const int decimals = std::abs(saved) < 0.095 ? 2 : 1;
  return fmt::format("{} {}{} {} {} {} {}{}{}.", subject.text, saved > 0.0 ? "save" : "cost", s, player,
                     strokes_words(std::abs(saved), decimals), round_words(result), place, breakdown(result, decimals),
                     left_out(result));
}

}  // namespace yardworth
