#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>

#include "yardworth/baseline/baseline.hpp"

namespace yardworth {

namespace {

// Where a golfer stands against the tour table: extra(d) strokes at distance d on the tee and the fairway, how much
// harder the other lies are, and how much nearer the hole a putt of the same difficulty is.
struct Anchor {
  double extra_at_zero = 0.0;
  double extra_per_yard = 0.0;
  double least_extra = 0.0;
  double lie_factor = 1.0;
  double putt_stretch = 1.0;

  double extra(double distance_yd) const { return std::max(least_extra, extra_at_zero + extra_per_yard * distance_yd); }
};

// A woman's drive reaches 250 where a man's on tour reaches 280: every length is that much longer for her.
double length_stretch(Gender gender) { return gender == Gender::men ? 1.0 : 280.0 / 250.0; }

double strokes_over(const std::vector<double>& lengths_yd, const Baseline& tour, double stretch, const Anchor& anchor) {
  double strokes = 0.0;
  for (const double length : lengths_yd) strokes += tour.strokes(Lie::tee, length * stretch) + anchor.extra(length);
  return strokes;
}

std::vector<double> scaled_to(const std::vector<double>& lengths_yd, double total_yd) {
  const double factor = total_yd / std::accumulate(lengths_yd.begin(), lengths_yd.end(), 0.0);
  std::vector<double> scaled = lengths_yd;
  for (double& length : scaled) length *= factor;
  return scaled;
}

// The two numbers of extra(d) for which the tee column, over the standard course at a short and at a long total, gives
// the published yardage rating moved to the mean of all scores. The totals are the Chebyshev points of 5,500 to 7,000
// yards (women 4,700 to 6,000), where a straight line fits a curve best over the whole of it.
Anchor fit_to_rating(Band band, Gender gender, Anchor anchor) {
  const Baseline tour(tour_table());
  const YardageRating rating = yardage_rating(band, gender);
  const double short_yd = gender == Gender::men ? 5720.0 : 4890.0;
  const double long_yd = gender == Gender::men ? 6780.0 : 5810.0;
  const auto short_holes = scaled_to(standard_hole_lengths_yd(), short_yd);
  const auto long_holes = scaled_to(standard_hole_lengths_yd(), long_yd);
  const auto miss = [&](const std::vector<double>& holes, double total_yd) {
    const double target = total_yd / rating.yards_per_stroke + rating.constant + rating.mean_above_better_half;
    return target - strokes_over(holes, tour, length_stretch(gender), anchor);
  };
  const double holes = static_cast<double>(short_holes.size());
  for (int round = 0; round < 200; ++round) {
    const double slope = (miss(long_holes, long_yd) - miss(short_holes, short_yd)) / (long_yd - short_yd);
    anchor.extra_per_yard += slope;
    anchor.extra_at_zero += miss(short_holes, short_yd) / holes;
  }
  return anchor;
}

Anchor anchor_of(double handicap_index, Gender gender) {
  if (handicap_index <= typical_handicap_index(Band::tour, gender)) return {};
  // Lie factors and the least extra are common practice, no source. Putts: half are holed from 8 feet on tour, from 6
  // by 0-9 handicaps, from 5 by golfers around 90 (Broadie, as reported).
  const Anchor tour{};
  const Anchor scratch = fit_to_rating(Band::scratch, gender, {0.0, 0.0, 0.06, 1.1, 8.0 / 6.5});
  const Anchor bogey = fit_to_rating(Band::bogey, gender, {0.0, 0.0, 0.30, 1.4, 8.0 / 5.0});
  const double tour_index = typical_handicap_index(Band::tour, gender);
  const double scratch_index = typical_handicap_index(Band::scratch, gender);
  const double bogey_index = typical_handicap_index(Band::bogey, gender);
  const bool better = handicap_index < scratch_index;
  const Anchor& low = better ? tour : scratch;
  const Anchor& high = better ? scratch : bogey;
  const double share = better ? (handicap_index - tour_index) / (scratch_index - tour_index)
                              : (handicap_index - scratch_index) / (bogey_index - scratch_index);
  return {std::lerp(low.extra_at_zero, high.extra_at_zero, share),
          std::lerp(low.extra_per_yard, high.extra_per_yard, share),
          std::lerp(low.least_extra, high.least_extra, share), std::lerp(low.lie_factor, high.lie_factor, share),
          std::lerp(low.putt_stretch, high.putt_stretch, share)};
}

BaselineColumn lie_column(const Baseline& tour, Lie lie, double first_yd, double stretch, const Anchor& anchor) {
  BaselineColumn column;
  for (double distance = first_yd; distance <= 700.0; distance += 20.0) {
    const double good = tour.strokes(Lie::fairway, distance * stretch);
    const double here = tour.strokes(lie, distance * stretch);
    // What the lie itself costs is scaled; a tee is better than a fairway by the same for everybody.
    const double factor = lie == Lie::tee || lie == Lie::fairway ? 1.0 : anchor.lie_factor;
    column.distance.push_back(distance);
    column.strokes.push_back(good + factor * (here - good) + anchor.extra(distance));
  }
  return column;
}

BaselineColumn putt_column(const Baseline& tour, const Anchor& anchor) {
  BaselineColumn column;
  for (const double feet : {1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 15.0, 20.0, 30.0, 40.0, 50.0, 60.0, 90.0, 120.0}) {
    column.distance.push_back(feet);
    column.strokes.push_back(tour.putts(feet * anchor.putt_stretch));
  }
  return column;
}

BaselineTable table_of(const Anchor& anchor, Gender gender) {
  const Baseline tour(tour_table());
  const double stretch = length_stretch(gender);
  BaselineTable table;
  table.gender = gender;
  table.source =
      "tour table (Broadie 2012) moved to the yardage ratings of the USGA Course Rating System manual; anchored, to be "
      "replaced by derived tables";
  table.tee = lie_column(tour, Lie::tee, 20.0, stretch, anchor);
  table.fairway = lie_column(tour, Lie::fairway, 20.0, stretch, anchor);
  table.rough = lie_column(tour, Lie::rough, 20.0, stretch, anchor);
  table.bunker = lie_column(tour, Lie::bunker, 20.0, stretch, anchor);
  table.recovery = lie_column(tour, Lie::recovery, 100.0, stretch, anchor);
  table.green = putt_column(tour, anchor);
  return table;
}

}  // namespace

std::vector<double> standard_hole_lengths_yd() {
  return {140, 160, 175, 195, 300, 320, 340, 350, 360, 370, 380, 390, 400, 410, 475, 495, 510, 530};
}

YardageRating yardage_rating(Band band, Gender gender) {
  // Men: quoted (scratch) and from memory (bogey); women: from memory. A course rating is of the better half of scores:
  // for normal scores their mean lies 0.798 standard deviations under the mean of all (half-normal mean,
  // sqrt(2 / pi)); a round of scratch golfers spreads by about 2.8 strokes, of bogey golfers by about 4.4 (memory).
  const double half_normal_mean = std::sqrt(2.0 / pi);
  const bool is_men = gender == Gender::men;
  if (band == Band::scratch) return {is_men ? 220.0 : 180.0, is_men ? 40.9 : 40.1, half_normal_mean * 2.8};
  if (band == Band::bogey) return {is_men ? 160.0 : 120.0, is_men ? 50.7 : 51.3, half_normal_mean * 4.4};
  throw std::invalid_argument("yardage ratings are published for scratch and bogey golfers only");
}

BaselineTable anchored_table(double handicap_index, Gender gender) {
  BaselineTable table = table_of(anchor_of(handicap_index, gender), gender);
  table.band = band_of(handicap_index);
  table.name = "anchored " + std::string(name(table.band)) + " " + std::string(name(gender));
  return table;
}

BaselineTable anchored_table(Band band, Gender gender) {
  if (band == Band::tour && gender == Gender::men) return tour_table();
  BaselineTable table = table_of(anchor_of(typical_handicap_index(band, gender), gender), gender);
  table.band = band;
  table.name = "anchored " + std::string(name(band)) + " " + std::string(name(gender));
  return table;
}

}  // namespace yardworth
