#include <algorithm>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <limits>

#include "bag/equal_speed.hpp"
#include "bag/estimate.hpp"
#include "bag/fitted_bag.hpp"
#include "yardworth/bag.hpp"

namespace yardworth {
namespace {

constexpr double in_tail = 0.5 * (1.0 - bag_level);

// A club in a log: its place among the log's clubs and its numbers.
struct Place {
  std::size_t club = 0;
  const ClubMeasure* measure = nullptr;
};

std::optional<Place> place_of(const FittedBag& bag, const ShotLog& log, const std::string& club) {
  for (std::size_t i = 0; i < log.clubs.size(); ++i) {
    if (plain_name(log.clubs[i]) != plain_name(club)) continue;
    for (const ClubMeasure& measure : bag.result.clubs) {
      if (measure.club == log.clubs[i]) return Place{i, &measure};
    }
  }
  return std::nullopt;
}

WeighedShots weighed(const FittedBag& bag, const Place& place) {
  const ClubMeasure& measure = *place.measure;
  double factor = 1.0;
  if (measure.carry_sd_yd && measure.solid_shots > 0.0 && std::isfinite(measure.carry_yd.standard_error)) {
    const double error_share = measure.carry_yd.standard_error / measure.carry_sd_yd->value;
    factor = std::max(1.0, error_share * error_share * measure.solid_shots);
  }
  return {bag.shots[place.club], bag.solid[place.club], factor};
}

// Both ends of a difference from those of its parts (R. G. Newcombe 1998, method 10).
Estimate share_change(const Estimate& before, const Estimate& after) {
  const double value = after.value - before.value;
  const double down = std::hypot(after.value - after.low, before.high - before.value);
  const double up = std::hypot(after.high - after.value, before.value - before.low);
  return {value, value - down, value + up, std::hypot(before.standard_error, after.standard_error),
          std::min(before.freedom, after.freedom)};
}

// Of two spreads that are known by chi-squared: by the F distribution.
std::optional<Estimate> spread_ratio(const std::optional<Estimate>& before, const std::optional<Estimate>& after) {
  if (!before || !after || before->value <= 0.0 || before->freedom <= 0.0 || after->freedom <= 0.0) return std::nullopt;
  const double ratio = after->value / before->value;
  const boost::math::fisher_f_distribution<double> squares(after->freedom, before->freedom);
  return Estimate{ratio, ratio / std::sqrt(boost::math::quantile(boost::math::complement(squares, in_tail))),
                  ratio / std::sqrt(boost::math::quantile(squares, in_tail)),
                  std::hypot(before->standard_error, after->standard_error), std::min(before->freedom, after->freedom)};
}

// Of two spreads whose logarithms have standard errors.
std::optional<Estimate> log_ratio(const std::optional<Estimate>& before, const std::optional<Estimate>& after) {
  if (!before || !after || before->value <= 0.0 || before->freedom <= 0.0 || after->freedom <= 0.0) return std::nullopt;
  Estimate a = *before;
  Estimate b = *after;
  a.value = std::log(a.value);
  b.value = std::log(b.value);
  Estimate ratio = difference(b, a);
  for (double* number : {&ratio.value, &ratio.low, &ratio.high}) *number = std::exp(*number);
  return ratio;
}

// Whether an estimate that many more shots each would leave as it is would then be told from nothing.
bool shows_with(const Estimate& estimate, double shots, std::size_t more) {
  const double added = static_cast<double>(more);
  const boost::math::students_t_distribution<double> student(estimate.freedom + 2.0 * added);
  const double reach = boost::math::quantile(boost::math::complement(student, in_tail));
  return std::abs(estimate.value) > reach * estimate.standard_error * std::sqrt(shots / (shots + added));
}

std::optional<std::size_t> more_shots(const ClubChange& change) {
  const Estimate& estimate = change.answer();
  if (estimate.freedom <= 0.0 || !std::isfinite(estimate.standard_error)) return std::nullopt;
  // As many of each as know as much together: the harmonic mean.
  const double shots =
      2.0 / (1.0 / static_cast<double>(change.before.shots) + 1.0 / static_cast<double>(change.after.shots));
  if (!shows_with(estimate, shots, most_more_shots)) return std::nullopt;
  std::size_t least = 0, enough = most_more_shots;
  while (enough - least > 1) {
    const std::size_t middle = (least + enough) / 2;
    (shows_with(estimate, shots, middle) ? enough : least) = middle;
  }
  return enough;
}

void judge(ClubChange& change) {
  if (std::min(change.before.shots, change.after.shots) < fewest_own_shots) {
    change.verdict = ClubChange::Verdict::too_few_shots;
    return;
  }
  const Estimate& answer = change.answer();
  if (answer.low > 0.0 || answer.high < 0.0) {
    change.verdict = ClubChange::Verdict::real;
    return;
  }
  change.verdict = ClubChange::Verdict::cannot_tell;
  change.more_shots = more_shots(change);
}

ClubChange change_of(const FittedBag& before, const Place& from, const FittedBag& after, const Place& to) {
  ClubChange change;
  change.before = *from.measure;
  change.after = *to.measure;
  change.club = change.after.club;
  change.carry_yd = difference(change.after.carry_yd, change.before.carry_yd);
  const bool few = std::min(change.before.shots, change.after.shots) < fewest_own_shots;
  if (few) {
    // What was borrowed is the same before and after: it says nothing of a change.
    change.carry_yd = normal_estimate(change.carry_yd.value, 0.0, 0.0);
    judge(change);
    return change;
  }
  change.at_equal_club_speed_yd = change_at_equal_speed(weighed(before, from), weighed(after, to));
  if (change.before.club_speed_mps && change.after.club_speed_mps) {
    change.club_speed_mps = difference(*change.after.club_speed_mps, *change.before.club_speed_mps);
  }
  if (change.before.poor_strike && change.after.poor_strike) {
    change.poor_strike = share_change(*change.before.poor_strike, *change.after.poor_strike);
  }
  change.carry_sd_ratio = spread_ratio(change.before.carry_sd_yd, change.after.carry_sd_yd);
  change.direction_sd_ratio = log_ratio(change.before.direction_sd_rad, change.after.direction_sd_rad);
  judge(change);
  return change;
}

std::string log_name(const ShotLog& log) {
  if (log.sessions.size() == 1 && !log.sessions.front().empty()) return log.sessions.front();
  return log.file.substr(log.file.find_last_of('/') + 1);
}

}  // namespace

BagComparison compare_bags(const ShotLog& before, const ShotLog& after, const BagRequest& request) {
  const FittedBag first = fit_bag(before, request);
  const FittedBag second = fit_bag(after, request);
  BagComparison comparison{log_name(before), log_name(after), first.result, second.result, {}, {}, {}};
  if (comparison.before == comparison.after) {
    comparison.before = before.file;
    comparison.after = after.file;
  }
  // Told in one unit, that of the second log.
  comparison.measured_before.units = second.result.units;
  for (const ClubMeasure& measure : second.result.clubs) {
    const auto from = place_of(first, before, measure.club);
    const auto to = place_of(second, after, measure.club);
    if (from && to) {
      comparison.changes.push_back(change_of(first, *from, second, *to));
    } else {
      comparison.only_after.push_back(measure.club);
    }
  }
  for (const ClubMeasure& measure : first.result.clubs) {
    if (!place_of(second, after, measure.club)) comparison.only_before.push_back(measure.club);
  }
  return comparison;
}

BagComparison compare_clubs(const ShotLog& before, const ShotLog& after, const BagRequest& request) {
  const FittedBag first = fit_bag(before, request);
  const FittedBag second = fit_bag(after, request);
  BagComparison comparison{"", "", first.result, second.result, {}, {}, {}};
  if (first.result.clubs.empty() || second.result.clubs.empty()) return comparison;
  comparison.before = first.result.clubs.front().club;
  comparison.after = second.result.clubs.front().club;
  const auto from = place_of(first, before, comparison.before);
  const auto to = place_of(second, after, comparison.after);
  comparison.changes.push_back(change_of(first, *from, second, *to));
  comparison.changes.back().club = comparison.after + " against " + comparison.before;
  return comparison;
}

}  // namespace yardworth
