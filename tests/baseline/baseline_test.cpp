#include "yardworth/baseline.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>

#include "baseline/published.hpp"
#include "input/derived_table.hpp"

namespace yardworth {
namespace {

const BaselineColumn& column_of(const BaselineTable& table, Lie lie) {
  switch (lie) {
    case Lie::tee:
      return table.tee;
    case Lie::fairway:
      return table.fairway;
    case Lie::rough:
      return table.rough;
    case Lie::bunker:
      return table.bunker;
    case Lie::recovery:
      return table.recovery;
    case Lie::green:
      break;
  }
  return table.green;
}

double yards_per_unit(Lie lie) { return lie == Lie::green ? 1.0 / 3.0 : 1.0; }

// Isotonic regression by its min-max formula (R. Barlow and others, Statistical Inference under Order Restrictions,
// Wiley, 1972, from memory): a second road to pooling adjacent violators.
std::vector<double> isotonic(const std::vector<double>& y) {
  const auto mean = [&](std::size_t first, std::size_t last) {
    double sum = 0.0;
    for (std::size_t i = first; i <= last; ++i) sum += y[i];
    return sum / static_cast<double>(last - first + 1);
  };
  std::vector<double> fitted;
  for (std::size_t i = 0; i < y.size(); ++i) {
    double highest = -1e9;
    for (std::size_t first = 0; first <= i; ++first) {
      double lowest = 1e9;
      for (std::size_t last = i; last < y.size(); ++last) lowest = std::min(lowest, mean(first, last));
      highest = std::max(highest, lowest);
    }
    fitted.push_back(highest);
  }
  return fitted;
}

// M. Broadie, "Assessing Golfer Performance on the PGA TOUR", Interfaces 42(2), 2012. These cells agree with a second
// quotation of the table; the rest of it is from memory.
TEST_CASE("published cells of the tour table") {
  const Baseline tour(tour_table());
  CHECK(tour.strokes(Lie::tee, 100.0) == doctest::Approx(2.92).epsilon(1e-9));
  CHECK(tour.strokes(Lie::tee, 400.0) == doctest::Approx(3.99).epsilon(1e-9));
  CHECK(tour.strokes(Lie::fairway, 160.0) == doctest::Approx(2.98).epsilon(1e-9));
  CHECK(tour.strokes(Lie::rough, 80.0) == doctest::Approx(2.96).epsilon(1e-9));
  CHECK(tour.strokes(Lie::rough, 180.0) == doctest::Approx(3.31).epsilon(1e-9));
  // Half-way between 40 and 60 yards the quotation gives 2.98 in sand; the cells are 2.82 and 3.15.
  CHECK(tour.strokes(Lie::bunker, 50.0) == doctest::Approx(2.98).epsilon(0.01));
  // Half of the putts of 8 feet are holed (Broadie, as reported), and hardly any takes three.
  CHECK(tour.putts(8.0) == doctest::Approx(1.50).epsilon(1e-9));
}

TEST_CASE("every cell is kept, but for those that go down with distance: they share their mean") {
  const BaselineTable table = tour_table();
  const Baseline tour(table);
  int kept = 0;
  int pooled = 0;
  for (const Lie lie : all_lies) {
    const BaselineColumn& column = column_of(table, lie);
    const std::vector<double> rising = isotonic(column.strokes);
    for (std::size_t i = 0; i < column.distance.size(); ++i) {
      CAPTURE(name(lie));
      CAPTURE(column.distance[i]);
      CHECK(tour.strokes(lie, column.distance[i] * yards_per_unit(lie)) == doctest::Approx(rising[i]).epsilon(1e-9));
      (rising[i] == column.strokes[i] ? kept : pooled) += 1;
      CHECK(std::abs(rising[i] - column.strokes[i]) <= 0.03);
    }
  }
  CHECK(kept > 120);
  CHECK(pooled > 0);
}

// F. Fritsch and R. Carlson, "Monotone Piecewise Cubic Interpolation", SIAM J. Numer. Anal. 17, 1980, with the
// harmonic mean of the neighbouring slopes (F. Fritsch and J. Butland, 1984): the cubic written out by hand.
TEST_CASE("between cells runs the monotone cubic") {
  const BaselineTable table = tour_table();
  const Baseline tour(table);
  for (const Lie lie : {Lie::tee, Lie::fairway, Lie::rough, Lie::bunker, Lie::recovery}) {
    const BaselineColumn& column = column_of(table, lie);
    const std::vector<double> y = isotonic(column.strokes);
    const auto slope = [&](std::size_t i) { return (y[i + 1] - y[i]) / 20.0; };
    const auto tangent = [&](std::size_t i) {
      const double before = slope(i - 1);
      const double after = slope(i);
      return before * after > 0.0 ? 2.0 * before * after / (before + after) : 0.0;
    };
    for (std::size_t i = 1; i + 2 < y.size(); ++i) {
      for (const double yards : {3.0, 10.0, 16.0}) {
        const double t = yards / 20.0;
        const double cubic = (1.0 + 2.0 * t) * (1.0 - t) * (1.0 - t) * y[i] +
                             t * (1.0 - t) * (1.0 - t) * 20.0 * tangent(i) + t * t * (3.0 - 2.0 * t) * y[i + 1] +
                             t * t * (t - 1.0) * 20.0 * tangent(i + 1);
        CAPTURE(name(lie));
        CAPTURE(column.distance[i] + yards);
        CHECK(tour.strokes(lie, column.distance[i] + yards) == doctest::Approx(cubic).epsilon(1e-9));
      }
    }
  }
}

TEST_CASE("two or three points are joined by straight lines, and beyond the table the last line goes on") {
  BaselineTable table = tour_table();
  table.fairway = {{100.0, 200.0}, {2.8, 3.2}};
  table.rough = {{100.0, 200.0, 400.0}, {3.0, 3.5, 4.0}};
  const Baseline baseline(table);
  CHECK(baseline.strokes(Lie::fairway, 150.0) == doctest::Approx(3.0).epsilon(1e-12));
  CHECK(baseline.strokes(Lie::fairway, 150.5) == doctest::Approx(3.002).epsilon(1e-12));
  CHECK(baseline.strokes(Lie::fairway, 50.0) == doctest::Approx(2.6).epsilon(1e-12));
  CHECK(baseline.strokes(Lie::fairway, 600.0) == doctest::Approx(4.8).epsilon(1e-12));
  CHECK(baseline.strokes(Lie::fairway, 800.0) == doctest::Approx(5.6).epsilon(1e-9));
  CHECK(baseline.strokes(Lie::rough, 150.0) == doctest::Approx(3.25).epsilon(1e-12));
  CHECK(baseline.strokes(Lie::rough, 300.0) == doctest::Approx(3.75).epsilon(1e-12));
  CHECK(baseline.strokes(Lie::rough, 500.0) == doctest::Approx(4.25).epsilon(1e-12));
  // Never less than the one stroke that holes it.
  table.rough = {{100.0, 200.0}, {1.5, 3.0}};
  CHECK(Baseline(table).strokes(Lie::rough, 10.0) == 1.0);
  CHECK(Baseline(table).name() == table.name);
}

TEST_CASE("a column of one point, or of points without strokes, is refused") {
  BaselineTable table = tour_table();
  table.tee = {{100.0}, {3.0}};
  CHECK_THROWS_AS(Baseline{table}, std::invalid_argument);
  table.tee = {{100.0, 200.0}, {3.0}};
  CHECK_THROWS_AS(Baseline{table}, std::invalid_argument);
}

TEST_CASE("further away is never worth less, from 0 to 700 yards, for every band and lie") {
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (const Band band : all_bands) {
      const Baseline baseline(derived_table(band, gender));
      CAPTURE(name(band));
      CAPTURE(name(gender));
      for (const Lie lie : all_lies) {
        CAPTURE(name(lie));
        double before = 1.0;
        int falls = 0;
        const double farthest = lie == Lie::green ? 100.0 : 700.0;
        for (double distance = 0.0; distance <= farthest; distance += 0.37) {
          const double strokes = baseline.strokes(lie, distance);
          if (!(strokes >= before - 1e-12 && std::isfinite(strokes))) ++falls;
          before = strokes;
        }
        CHECK(falls == 0);
        CHECK(before > 1.5);
        CHECK(before < 10.5);
      }
      CHECK(baseline.source().empty() == false);
    }
  }
}

// As they are shipped, before the reader makes them so.
TEST_CASE("derived tables ask for more strokes from further away, cell by cell") {
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (const Band band : all_bands) {
      const BaselineTable table = derived_table(band, gender);
      CAPTURE(table.name);
      for (const Lie lie : all_lies) {
        const BaselineColumn& column = column_of(table, lie);
        CAPTURE(name(lie));
        for (std::size_t i = 1; i < column.strokes.size(); ++i) {
          CAPTURE(column.distance[i]);
          CHECK(column.strokes[i] >= column.strokes[i - 1]);
        }
      }
    }
  }
}

TEST_CASE("a better band never needs more strokes") {
  // In rising order of Handicap Index; "bogey" lies between 13-20 and 21 and over.
  constexpr Band order[] = {Band::tour,          Band::scratch, Band::below_6, Band::from_6_to_12,
                            Band::from_13_to_20, Band::bogey,   Band::from_21};
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (std::size_t i = 0; i + 1 < std::size(order); ++i) {
      REQUIRE(typical_handicap_index(order[i], gender) <= typical_handicap_index(order[i + 1], gender));
      const Baseline better(derived_table(order[i], gender));
      const Baseline worse(derived_table(order[i + 1], gender));
      CAPTURE(name(gender));
      CAPTURE(name(order[i]));
      for (const Lie lie : {Lie::tee, Lie::fairway, Lie::rough, Lie::bunker, Lie::recovery}) {
        CAPTURE(name(lie));
        double worst = 0.0;
        double at = 0.0;
        // Nearer than two yards there is nothing but green.
        for (double distance = 2.0; distance <= 700.0; distance += 1.0) {
          const double behind = better.strokes(lie, distance) - worse.strokes(lie, distance);
          if (behind > worst) at = distance;
          worst = std::max(worst, behind);
        }
        CAPTURE(at);
        CHECK(worst <= 1e-9);
      }
      double worst = 0.0;
      for (double feet = 0.0; feet <= 90.0; feet += 0.5) {
        worst = std::max(worst, better.putts(feet) - worse.putts(feet));
      }
      CHECK(worst <= 1e-9);
    }
  }
}

TEST_CASE("yardage ratings are published for scratch and bogey golfers only") {
  CHECK(yardage_rating(Band::scratch, Gender::men).yards_per_stroke == 220.0);
  CHECK(yardage_rating(Band::bogey, Gender::men).constant == 50.7);
  CHECK_THROWS_AS(yardage_rating(Band::from_6_to_12, Gender::men), std::invalid_argument);
}

TEST_CASE("the standard course: eighteen holes, 6,300 yards, in rising order") {
  const std::vector<double> lengths = standard_hole_lengths_yd();
  CHECK(lengths.size() == 18);
  CHECK(std::is_sorted(lengths.begin(), lengths.end()));
  CHECK(std::accumulate(lengths.begin(), lengths.end(), 0.0) == doctest::Approx(6300.0));
}

TEST_CASE("a Handicap Index between two bands has strokes between theirs") {
  const Baseline scratch(derived_table(0.0, Gender::men));
  const Baseline nine(derived_table(9.0, Gender::men));
  const Baseline eighteen(derived_table(18.0, Gender::men));
  for (double distance = 20.0; distance <= 600.0; distance += 20.0) {
    CHECK(scratch.strokes(Lie::fairway, distance) < nine.strokes(Lie::fairway, distance));
    CHECK(nine.strokes(Lie::fairway, distance) < eighteen.strokes(Lie::fairway, distance));
  }
  // The table of a band is that of its typical index.
  const double index = typical_handicap_index(Band::from_13_to_20, Gender::women);
  CHECK(Baseline(derived_table(index, Gender::women)).strokes(Lie::tee, 333.0) ==
        Baseline(derived_table(Band::from_13_to_20, Gender::women)).strokes(Lie::tee, 333.0));
  // Every table says where it is from.
  CHECK(derived_table(Band::scratch, Gender::men).source.find("derived") != std::string::npos);
}

}  // namespace
}  // namespace yardworth
