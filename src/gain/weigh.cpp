#include "yardworth/weigh.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "core/numerics.hpp"
#include "gain/golfers.hpp"
#include "gain/option_doubt.hpp"
#include "gain/option_odds.hpp"
#include "gain/request_rules.hpp"
#include "gain/saved_draws.hpp"
#include "gain/what_was_asked.hpp"

namespace yardworth {

namespace {

// What the strokes of a round depend on, whatever is asked about them.
struct WeighedRound {
  const Course& course;
  const Player& player;
  const Baseline& baseline;
  const WeighRequest& request;

  GainRequest asking(const Change& change, std::optional<std::size_t> from_tee) const {
    GainRequest asked;
    asked.tee = from_tee;
    asked.change = change;
    asked.policy = request.policy;
    asked.threads = request.threads;
    asked.spread_of_score = false;
    return asked;
  }
  GainResult gain(const Change& change, std::optional<std::size_t> from_tee) const {
    return compute_gain(course, player, baseline, asking(change, from_tee));
  }
  std::optional<std::size_t> tee_of(const Option& option) const {
    return option.tee ? tee_index(course, *option.tee) : request.tee;
  }
  // Of an option that was measured: what each of its draws saves, from its tees.
  std::vector<double> saved_by_draws(const Option& option) const {
    GainRequest asked = asking(option.change, tee_of(option));
    if (asked.policy == PolicyChoice::both) asked.policy = PolicyChoice::best;
    return compute_saved_draws(course, player, baseline, asked, option.draws);
  }
  double saved(const Change& change) const { return gain(change, request.tee).answer().round.strokes_saved(); }
};

// What an option saves with so many standard deviations more or less of its change. From the same tees it is what gain
// says, to the last digit.
double saved_by(const WeighedRound& round, const Option& option, double doubt, double deviations, double before) {
  const Change change = changed_by(option.change, doubt, deviations);
  if (!option.tee) return round.saved(change);
  return before - round.gain(change, round.tee_of(option)).answer().round.replanned;
}

Response response_of(const WeighedRound& round, const Option& option, double doubt, double before) {
  Response response{};
  response.fill(saved_by(round, option, doubt, 0.0, before));
  for (std::size_t i = 0; i < odds_nodes.size(); ++i) {
    if (doubt > 0.0 && odds_nodes[i] != 0.0) response[i] = saved_by(round, option, doubt, odds_nodes[i], before);
  }
  return response;
}

// How much of something saves how many strokes, from none on.
struct Worth {
  std::vector<double> amount, saved;
};

template <std::size_t Count>
Worth worth_of(const WeighedRound& round, const std::array<double, Count>& amounts, double Change::*part) {
  Worth worth{{0.0}, {0.0}};
  for (const double amount : amounts) {
    Change change;
    change.*part = amount;
    worth.amount.push_back(amount);
    worth.saved.push_back(round.saved(change));
  }
  return worth;
}

// How much of it saves so many strokes, by straight lines; nothing where none of it does.
std::optional<double> amount_for(const Worth& worth, double strokes) {
  if (strokes <= 0.0) return std::nullopt;
  for (std::size_t i = 1; i < worth.saved.size(); ++i) {
    if (worth.saved[i] < strokes) continue;
    const double part = (strokes - worth.saved[i - 1]) / (worth.saved[i] - worth.saved[i - 1]);
    return worth.amount[i - 1] + part * (worth.amount[i] - worth.amount[i - 1]);
  }
  return std::nullopt;
}

void add_equivalents(const WeighedRound& round, std::vector<WeighedOption>& options) {
  const Worth driver = worth_of(round, numerics::equivalent_carries_yd, &Change::driver_carry_yd);
  const Worth direction = worth_of(round, numerics::equivalent_shares, &Change::direction_sd_share);
  const Worth putting = worth_of(round, numerics::equivalent_shares, &Change::putting_share);
  for (WeighedOption& option : options) {
    const double saved = option.saved.value;
    option.equivalents.driver_carry_yd = amount_for(driver, saved);
    option.equivalents.direction_share = amount_for(direction, saved);
    option.equivalents.putting_share = amount_for(putting, saved);
    for (auto* share : {&option.equivalents.direction_share, &option.equivalents.putting_share}) {
      if (*share) **share = -**share;
    }
  }
}

// A unit of something, for the better. What it is worth is taken from a step of so many up and one down.
struct Unit {
  ChangeStep step;
  double Change::*part;
  double size;
  double step_units;
};

constexpr std::array<Unit, 7> units_of_everything = {
    Unit{ChangeStep::driver_carry, &Change::driver_carry_yd, 1.0, 5.0},
    Unit{ChangeStep::irons_carry, &Change::irons_carry_yd, 1.0, 3.0},
    Unit{ChangeStep::carry_spread, &Change::carry_sd_share, -0.01, 10.0},
    Unit{ChangeStep::direction_spread, &Change::direction_sd_share, -0.01, 10.0},
    Unit{ChangeStep::poor_strikes, &Change::poor_strike, -0.01, 2.0},
    Unit{ChangeStep::short_game, &Change::short_game_share, -0.01, 10.0},
    Unit{ChangeStep::putting, &Change::putting_share, -0.01, 10.0},
};

double worth_of_unit(const WeighedRound& round, const Unit& unit) {
  const auto saved = [&](double units) {
    Change change;
    change.*unit.part = units * unit.size;
    return round.saved(change);
  };
  return (saved(unit.step_units) - saved(-unit.step_units)) / (2.0 * unit.step_units);
}

std::vector<Sensitivity> sensitivities(const WeighedRound& before, const WeighedRound& after) {
  std::vector<Sensitivity> all;
  for (const Unit& unit : units_of_everything) {
    all.push_back({unit.step, worth_of_unit(before, unit), worth_of_unit(after, unit)});
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Sensitivity& a, const Sensitivity& b) { return a.before > b.before; });
  return all;
}

// What an option saves, and in cases that are equally likely, the least first.
struct Saved {
  StrokesSaved saved;
  std::vector<double> cases;
};

Saved saved_as_doubted(const WeighedRound& round, const Option& option, double doubt, double before) {
  const Response response = response_of(round, option, doubt, before);
  std::vector<double> cases = equally_likely(response);
  constexpr double tail = (1.0 - weigh_level) / 2.0;
  return {{response[odds_nodes.size() / 2], quantile(cases, tail), quantile(cases, 1.0 - tail)}, std::move(cases)};
}

// From other tees the course saves what it does beside the change.
Saved saved_as_measured(const WeighedRound& round, const Option& option, double before) {
  const StepValues strokes = round.gain(option.change, round.tee_of(option)).answer().round;
  std::vector<double> cases = round.saved_by_draws(option);
  if (option.tee) {
    for (double& saved : cases) saved += before - strokes.before;
  }
  const double value = option.tee ? before - strokes.replanned : strokes.strokes_saved();
  const SavedInterval interval = interval_of(cases, weigh_level, round.request.policy);
  std::sort(cases.begin(), cases.end());
  return {{value, interval.low, interval.high}, std::move(cases)};
}

WeighedOption weighed(const Option& option, double doubt, const StrokesSaved& saved,
                      const std::optional<double>& stroke_worth) {
  WeighedOption result;
  result.option = option;
  result.doubt = doubt;
  result.saved = saved;
  if (result.saved.value <= 0.0) return result;
  result.money_per_stroke = option.money / result.saved.value;
  result.hours_per_stroke = option.hours / result.saved.value;
  if (stroke_worth) result.break_even_rounds = *result.money_per_stroke / *stroke_worth;
  return result;
}

// Strokes saved by a shorter course are no better golf: options from the same tees come first.
bool saves_more(const WeighedOption& option, const WeighedOption& than) {
  if (option.option.tee.has_value() != than.option.tee.has_value()) return !option.option.tee;
  return option.saved.value > than.saved.value;
}

// Each option by itself, and how likely it is to be the best of all.
void weigh_options(const WeighedRound& round, WeighResult& result) {
  std::vector<std::vector<double>> cases;
  std::vector<std::size_t> compared;
  for (const Option& option : round.request.options) {
    const double doubt = doubt_of(option);
    Saved of_option = option.draws.empty() ? saved_as_doubted(round, option, doubt, result.strokes_before)
                                           : saved_as_measured(round, option, result.strokes_before);
    result.options.push_back(weighed(option, doubt, of_option.saved, result.stroke_worth));
    const std::size_t last = result.options.size() - 1;
    if (saves_more(result.options[last], result.options[result.most])) result.most = last;
    if (option.tee) continue;
    cases.push_back(std::move(of_option.cases));
    compared.push_back(last);
  }
  const std::vector<double> best = best_probabilities(cases);
  for (std::size_t i = 0; i < best.size(); ++i) result.options[compared[i]].best_probability = best[i];
}

}  // namespace

WeighResult compute_weigh(const Course& course, const Player& player, const Baseline& baseline,
                          const WeighRequest& request) {
  require_valid(course, player, request);
  const WeighedRound round{course, player, baseline, request};
  WeighResult result;
  say_what_was_asked(result, course, tee_of(course, player, request.tee), player, baseline);
  result.policy = request.policy;
  result.stroke_worth = request.stroke_worth;
  result.holes = static_cast<int>(course.holes.size());
  const GainResult unchanged = round.gain({}, request.tee);
  result.strokes_before = unchanged.answer().round.before;
  result.notes = unchanged.notes;
  result.cautions = unchanged.cautions;
  weigh_options(round, result);
  add_equivalents(round, result.options);
  if (request.sensitivity) {
    const Golfers golfers = golfers_of(player, baseline, result.options[result.most].option.change);
    result.sensitivity = sensitivities(round, {course, golfers.after(), golfers.finish_after_all(baseline), request});
  }
  return result;
}

}  // namespace yardworth
