#include <fmt/format.h>

#include <algorithm>

#include "core/message_text.hpp"
#include "gain/option_doubt.hpp"
#include "gain/option_odds.hpp"
#include "gain/request_rules.hpp"
#include "validate/tell.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"

namespace yardworth {

namespace {

// What the readers of files cannot know: tees and names beside one another.
void check_option(const Course& course, const std::vector<Option>& options, std::size_t i, const Tell& tell) {
  const Option& option = options[i];
  const auto same = [&](const Option& other) { return other.name == option.name; };
  if (option.name.empty()) tell("name", "an empty text", "a name");
  if (std::find_if(options.begin(), options.begin() + static_cast<std::ptrdiff_t>(i), same) !=
      options.begin() + static_cast<std::ptrdiff_t>(i)) {
    tell("name", quoted(option.name) + " again", "another name for each option");
  }
  if (option.tee && !tee_index(course, *option.tee)) {
    std::vector<std::string> names;
    for (const Tee& tee : course.tees) names.push_back(tee.name);
    tell("tee", quoted(*option.tee), fmt::format("a tee of {}: {}", course.name, fmt::join(names, ", ")));
  }
  if (is_nothing(option.change) && !option.tee) tell("change", "nothing that changes", "a change, or other tees");
  if (option.doubt) check_number(100.0 * *option.doubt, limits::option_doubt, "doubt", tell);
  check_number(option.money, limits::option_money, "money", tell);
  check_number(option.hours, limits::option_hours, "hours", tell);
}

// The faults of what gain would be asked, for the change as it is said and for the most and the least of it.
std::vector<Diagnostic> faults_of_changes(const Course& course, const Player& player, const Option& option) {
  for (const double deviations : {0.0, odds_nodes.back(), odds_nodes.front()}) {
    GainRequest gain;
    gain.change = changed_by(option.change, std::clamp(doubt_of(option), 0.0, 1.0), deviations);
    try {
      require_valid(course, player, gain);
    } catch (const InvalidRequest& invalid) {
      return invalid.findings();
    }
  }
  return {};
}

}  // namespace

void require_valid(const Course& course, const Player& player, const WeighRequest& request) {
  GainRequest round;
  round.tee = request.tee;
  round.threads = request.threads;
  require_valid(course, player, round);
  std::vector<Diagnostic> faults;
  const Tell tell = tell_into(faults, "request");
  check_count(request.options.size(), 1, limits::most_options, "options", "options", tell);
  if (request.stroke_worth) check_number(*request.stroke_worth, limits::stroke_worth, "stroke_worth", tell);
  for (std::size_t i = 0; i < request.options.size(); ++i) {
    check_option(course, request.options, i, below(tell, "options", i));
    for (Diagnostic fault : faults_of_changes(course, player, request.options[i])) {
      fault.path = fmt::format("options[{}].{}", i, fault.path);
      faults.push_back(std::move(fault));
    }
  }
  if (!faults.empty()) throw InvalidRequest(faults);
}

}  // namespace yardworth
