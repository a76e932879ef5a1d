#include <algorithm>
#include <map>

#include "bag/borrowed.hpp"
#include "bag/estimate.hpp"
#include "bag/fitted_bag.hpp"
#include "bag/log_doubts.hpp"
#include "bag/shots_by_club.hpp"
#include "player/skill.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

void check(const BagRequest& request) {
  if (!request.golfer) return;
  const std::vector<Diagnostic> findings = validate(*request.golfer);
  if (has_fault(findings)) throw InvalidRequest(findings);
}

double middle_carry(const std::vector<const Shot*>& shots) {
  std::vector<double> carries;
  carries.reserve(shots.size());
  for (const Shot* shot : shots) carries.push_back(shot->carry_yd);
  return median(std::move(carries));
}

void add_gaps(std::vector<ClubMeasure>& clubs) {
  for (std::size_t i = 0; i + 1 < clubs.size(); ++i) {
    clubs[i].gap_yd = difference(clubs[i].carry_yd, clubs[i + 1].carry_yd);
  }
}

void note_few(const FittedClub& fitted, const std::optional<TypicalOfClub>& typical, BagResult& result) {
  const ClubMeasure& measure = fitted.measure;
  if (fitted.all_the_same) {
    result.notes.push_back({BagNote::Kind::all_the_same, measure.club, measure.shots, 0.0});
  }
  if (measure.shots >= fewest_own_shots) return;
  const auto kind = typical ? BagNote::Kind::borrowed : BagNote::Kind::too_few_shots;
  result.notes.push_back({kind, measure.club, measure.shots, measure.borrowed_share});
  if (typical && !typical->carry_yd) {
    result.notes.push_back({BagNote::Kind::no_typical_carry, measure.club, measure.shots, 0.0});
  }
}

}  // namespace

Player golfer_of_index(double handicap_index, Gender gender) {
  Player golfer = standard_player(skill_of(handicap_index, gender), gender);
  golfer.label = "typical golfer";
  golfer.handicap_index = handicap_index;
  golfer.band = band_of(handicap_index);
  return golfer;
}

FittedBag fit_bag(const ShotLog& log, const BagRequest& request) {
  check(request);
  FittedBag bag;
  BagResult& result = bag.result;
  result.file = log.file;
  result.units = log.units;
  result.shots = log.shots.size();
  result.skipped_rows = log.skipped_rows;
  result.sessions = log.sessions;
  if (request.golfer) result.handicap_index = request.golfer->handicap_index;
  bag.shots = shots_by_club(log);
  bag.solid.resize(bag.shots.size());
  const std::vector<std::vector<const Shot*>>& by_club = bag.shots;
  std::vector<double> middles;
  for (const auto& shots : by_club) middles.push_back(shots.empty() ? 0.0 : middle_carry(shots));
  const double longest_yd = middles.empty() ? 0.0 : *std::max_element(middles.begin(), middles.end());
  for (std::size_t i = 0; i < by_club.size(); ++i) {
    if (by_club[i].empty()) continue;
    std::optional<TypicalOfClub> typical;
    if (request.golfer) typical = typical_of_club(*request.golfer, log.clubs[i], middles[i], longest_yd);
    FittedClub fitted = fit_club(log.clubs[i], by_club[i], typical);
    note_few(fitted, typical, result);
    bag.solid[i] = std::move(fitted.solid);
    result.clubs.push_back(std::move(fitted.measure));
    result.outliers.insert(result.outliers.end(), fitted.outliers.begin(), fitted.outliers.end());
  }
  std::stable_sort(result.clubs.begin(), result.clubs.end(),
                   [](const ClubMeasure& a, const ClubMeasure& b) { return a.carry_yd.value > b.carry_yd.value; });
  std::sort(result.outliers.begin(), result.outliers.end(),
            [](const OutlyingShot& a, const OutlyingShot& b) { return a.line < b.line; });
  add_gaps(result.clubs);
  add_doubts(log, request, result);
  return bag;
}

BagResult measure_bag(const ShotLog& log, const BagRequest& request) { return fit_bag(log, request).result; }

}  // namespace yardworth
