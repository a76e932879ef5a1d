#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <cstdio>
#include <memory>

#include "strategy/strikes.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"

namespace yardworth {
namespace {

// One club on a straight hole with a hazard on each side, so that what a strike costs jumps in the tails too.
struct Tails {
  Tails() {
    Hole narrow = test::open_hole(1, 420.0);
    narrow.hazards = {test::boundary(narrow, Side::right, 40.0),
                      hazard_beside(HazardKind::penalty_area, Side::left, 0.0, 420.0, 35.0, 90.0)};
    hole = std::make_unique<test::PreparedHole>(narrow, Firmness::normal, 0, player, baseline, mesh);
    state = model().nearest_state(Lie::fairway, model().map().line().at(80.0));
    swing = model().swings(Lie::fairway).front();
  }
  const HoleModel& model() const { return hole->model; }

  Player player = standard_player(Band::from_13_to_20, Gender::men);
  Baseline baseline = Baseline(tour_table());
  test::Mesh mesh;
  std::unique_ptr<test::PreparedHole> hole;
  StateId state = 0;
  Swing swing;
};

// What a strike is worth: by the baseline, a replay as if it was played from the place again.
double worth_of(const HoleModel& model, Point from, const Rest& rest) {
  const Point at = rest.replay ? from : rest.at;
  return rest.penalty_strokes + model.short_game().strokes(rest.lie, distance_yd(at, model.pin()));
}

// By node of one aim, from the leftmost on.
struct StruckNodes {
  std::vector<double> worth;
  int strikes = 0;
};

StruckNodes strike_all(const Tails& tails, const Stratum& stratum, int thin) {
  const HoleModel& model = tails.model();
  const Point from = model.place_of(tails.state);
  const auto nodes = static_cast<int>(stratum.weights().size());
  StruckNodes struck;
  struck.worth.assign(static_cast<std::size_t>(nodes), std::nan(""));
  strike_thinly(model, from, tails.swing, stratum, heading_rad(from, model.pin()), -stratum.lattice->half_width(),
                nodes, thin, [&](int i, int n, const Rest& rest) {
                  ++struck.strikes;
                  for (int node = i; node < i + n; ++node) {
                    struck.worth[static_cast<std::size_t>(node)] = worth_of(model, from, rest);
                  }
                });
  return struck;
}

double sum_of(const Stratum& stratum, const std::vector<double>& worth) {
  double sum = 0.0;
  for (std::size_t i = 0; i < worth.size(); ++i) sum += stratum.weights()[i] * worth[i];
  return sum;
}

// The probability further than so many spreads from the aim, by Boost.Math: Student t with 5 degrees of freedom, scaled
// to unit variance and cut.
double beyond(double spreads, double cut) {
  const boost::math::students_t_distribution<double> student(5.0);
  const double unit = std::sqrt(5.0 / 3.0);
  const auto above = [&](double z) { return boost::math::cdf(boost::math::complement(student, z * unit)); };
  return 2.0 * (above(spreads) - above(cut)) / (1.0 - 2.0 * above(cut));
}

}  // namespace

TEST_CASE("thin tails: every node has a strike that stands for it, and the middle its own") {
  const Tails tails;
  for (const int stride : {1, 2, 3, 6}) {
    for (const Stratum& stratum : strata_of(tails.model(), tails.state, tails.swing, stride)) {
      CAPTURE(stride);
      CAPTURE(stratum.solid);
      const int thin = thin_nodes(stratum);
      REQUIRE(thin % numerics::thin_every == 0);
      const StruckNodes all = strike_all(tails, stratum, 0);
      const StruckNodes thinned = strike_all(tails, stratum, thin);
      const auto nodes = static_cast<int>(stratum.weights().size());
      CHECK(all.strikes == nodes);
      CHECK(thinned.strikes == nodes - 2 * thin + 2 * thin / numerics::thin_every);
      double sum = 0.0;
      double tail = 0.0;
      for (int i = 0; i < nodes; ++i) {
        const auto index = static_cast<std::size_t>(i);
        sum += stratum.weights()[index];
        const bool in_tail = i < thin || i >= nodes - thin;
        REQUIRE_FALSE(std::isnan(thinned.worth[index]));
        if (in_tail) tail += stratum.weights()[index];
        // In a tail the middle one of three stands for all three.
        const int nth = i < thin ? i % numerics::thin_every : (i - (nodes - thin)) % numerics::thin_every;
        if (!in_tail || nth == numerics::thin_every / 2)
          CHECK(std::abs(thinned.worth[index] - all.worth[index]) < 1e-9);
      }
      CHECK(std::abs(sum - 1.0) < 1e-12);
      const double cut = stratum.solid ? direction_cut_sd : poor_direction_cut_sd;
      // A group of three more or less at each end: nodes begin at the cut and are whole groups.
      const double node = static_cast<double>(stride) / stratum.lattice->steps_per_sd();
      CHECK(tail <= beyond(numerics::thin_from_sd, cut) + 1e-3);
      CHECK(tail >= beyond(numerics::thin_from_sd + (numerics::thin_every + 1) * node, cut) - 1e-3);
    }
  }
}

// Nothing is wrong but in the tails, and there by no more than a node and its stand-in differ.
TEST_CASE("thin tails: the sum is that over every node, within what tails weigh times how far neighbours differ") {
  const Tails tails;
  for (const int stride : {1, 2, 3, 6}) {
    for (const Stratum& stratum : strata_of(tails.model(), tails.state, tails.swing, stride)) {
      CAPTURE(stride);
      CAPTURE(stratum.solid);
      const StruckNodes all = strike_all(tails, stratum, 0);
      const StruckNodes thinned = strike_all(tails, stratum, thin_nodes(stratum));
      const auto [least, most] = std::minmax_element(all.worth.begin(), all.worth.end());
      const double off = std::abs(sum_of(stratum, thinned.worth) - sum_of(stratum, all.worth));
      const double cut = stratum.solid ? direction_cut_sd : poor_direction_cut_sd;
      // Strict: a tail weighs a thirtieth, and costs differ by some two strokes.
      CHECK(off <= (beyond(numerics::thin_from_sd, cut) + 1e-3) * (*most - *least));
    }
  }
}

// Neighbours are other carries, so that what they miss cancels.
TEST_CASE(
    "thin tails: wherever the carries begin, a sum between two hazards moves by less than 0.006 strokes (root of the "
    "mean square)") {
  const Tails tails;
  for (Stratum stratum : strata_of(tails.model(), tails.state, tails.swing, 1)) {
    CAPTURE(stratum.solid);
    double squares = 0.0;
    int places = 0;
    for (int offset = 0; offset < lattice_offsets; offset += 8, ++places) {
      stratum.lattice_offset = offset;
      const double thinned = sum_of(stratum, strike_all(tails, stratum, thin_nodes(stratum)).worth);
      const double off = stratum.share * (thinned - sum_of(stratum, strike_all(tails, stratum, 0).worth));
      squares += off * off;
    }
    std::printf("thin tails move a sum by %.5f\n", std::sqrt(squares / places));
    CHECK(std::sqrt(squares / places) < 0.006);
  }
}

}  // namespace yardworth
