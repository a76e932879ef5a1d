#include "gain/bag_places.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace yardworth {

double places_apart(const BagPlaces& a, const BagPlaces& b) {
  double ahead = 0.0;
  double apart = 0.0;
  for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i) {
    ahead += a[i] - b[i];
    apart += std::abs(ahead);
  }
  return apart;
}

double mean_place(const BagPlaces& places) {
  double sum = 0.0;
  for (std::size_t i = 0; i < places.size(); ++i) sum += static_cast<double>(i) * places[i];
  return sum;
}

std::size_t middle_place(const BagPlaces& places) {
  const double half = 0.5 * std::accumulate(places.begin(), places.end(), 0.0);
  double sum = 0.0;
  for (std::size_t place = 0; place < places.size(); ++place) {
    sum += places[place];
    if (sum >= half) return place;
  }
  return places.empty() ? 0 : places.size() - 1;
}

BagOrder::BagOrder(const Player& player) : place_(player.clubs.size()), names_{"lay-up"} {
  std::vector<std::size_t> longest_first(player.clubs.size());
  std::iota(longest_first.begin(), longest_first.end(), std::size_t{0});
  std::stable_sort(longest_first.begin(), longest_first.end(),
                   [&](std::size_t a, std::size_t b) { return player.clubs[a].carry_yd > player.clubs[b].carry_yd; });
  for (const std::size_t club : longest_first) {
    place_[club] = names_.size();
    names_.push_back(player.clubs[club].name);
  }
  names_.emplace_back("short game");
  names_.emplace_back("putter");
}

BagPlaces second_shots_of_par_4s(const std::vector<HoleGain>& holes, TeeShotResult HoleGain::*tee_shot) {
  BagPlaces sum;
  double count = 0.0;
  for (const HoleGain& hole : holes) {
    if (hole.par != 4) continue;
    const BagPlaces& places = (hole.*tee_shot).next_places;
    sum.resize(places.size(), 0.0);
    for (std::size_t i = 0; i < places.size(); ++i) sum[i] += places[i];
    count += 1.0;
  }
  for (double& share : sum) share /= count;
  return sum;
}

SecondShotChange second_shot_change(const std::vector<HoleGain>& holes, const Player& before, const Player& after) {
  const auto mean_where = [&](auto counts) -> std::optional<double> {
    double sum = 0.0;
    int count = 0;
    for (const HoleGain& hole : holes) {
      if (!hole.clubs_shorter || !counts(hole.par)) continue;
      sum += *hole.clubs_shorter;
      ++count;
    }
    return count > 0 ? std::optional(sum / count) : std::nullopt;
  };
  SecondShotChange change;
  change.clubs_shorter = mean_where([](int) { return true; });
  change.par_4 = mean_where([](int par) { return par == 4; });
  change.par_5 = mean_where([](int par) { return par >= 5; });
  if (!change.par_4) return change;
  const auto typical = [&](const Player& player, TeeShotResult HoleGain::*tee_shot) {
    return BagOrder(player).name_of(middle_place(second_shots_of_par_4s(holes, tee_shot)));
  };
  change.typical_before = typical(before, &HoleGain::before);
  change.typical_after = typical(after, &HoleGain::after);
  return change;
}

}  // namespace yardworth
