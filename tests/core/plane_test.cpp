#include "core/plane.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_real_distribution.hpp>
#include <cmath>
#include <utility>

#include "yardworth/units.hpp"

namespace yardworth {
namespace {

namespace bg = boost::geometry;

constexpr double exact = 1e-9;

class Numbers {
 public:
  explicit Numbers(unsigned seed) : engine_(seed) {}
  double between(double low, double high) {
    return boost::random::uniform_real_distribution<double>(low, high)(engine_);
  }

 private:
  boost::random::mt19937 engine_;
};

void check_point(Point p, double x, double y) {
  CHECK(p.x == doctest::Approx(x).epsilon(exact));
  CHECK(p.y == doctest::Approx(y).epsilon(exact));
}

LineOfPlay one_corner(double turn_deg) { return {400.0, {{200.0, radians(turn_deg)}}}; }

TEST_CASE("headings: 0 along the line, right positive") {
  check_point(along_heading(0.0), 0.0, 1.0);
  check_point(along_heading(pi / 2.0), 1.0, 0.0);
  CHECK(heading_rad({0.0, 0.0}, {1.0, 1.0}) == doctest::Approx(pi / 4.0));
  CHECK(heading_rad({0.0, 0.0}, {-1.0, 1.0}) == doctest::Approx(-pi / 4.0));
  CHECK(distance_yd({1.0, 2.0}, {4.0, 6.0}) == doctest::Approx(5.0));
}

// Against the C library's sine and cosine of each angle.
TEST_CASE("directions turned side by side are those turned one by one, however far") {
  for (const double heading : {0.0, 0.7, -2.5}) {
    for (const double widest : {0.01, 0.5, pi, 2.0 * pi, 31.0}) {
      std::array<double, directions_at_a_time> right{};
      for (std::size_t i = 0; i < right.size(); ++i) {
        right[i] = widest * (2.0 * static_cast<double>(i) / (directions_at_a_time - 1) - 1.0);
      }
      const Directions turned = turned_right(along_heading(heading), right);
      for (std::size_t i = 0; i < right.size(); ++i) {
        CAPTURE(heading);
        CAPTURE(right[i]);
        CHECK(std::abs(turned.x[i] - std::sin(heading + right[i])) < 1e-14);
        CHECK(std::abs(turned.y[i] - std::cos(heading + right[i])) < 1e-14);
      }
    }
  }
}

// By hand: a line 200 yards up, then 100 of the 200 yards of the second leg at a right angle.
TEST_CASE("places along a right-angled dogleg") {
  const LineOfPlay right = one_corner(90.0);
  check_point(right.at(0.0), 0.0, 0.0);
  check_point(right.at(200.0), 0.0, 200.0);
  check_point(right.at(300.0), 100.0, 200.0);
  check_point(right.at(400.0), 200.0, 200.0);
  check_point(right.to_plane({10.0, 100.0}), 10.0, 100.0);
  check_point(right.to_plane({10.0, 300.0}), 100.0, 190.0);
  check_point(right.to_plane({-10.0, 300.0}), 100.0, 210.0);
  CHECK(right.heading_at(100.0) == doctest::Approx(0.0));
  CHECK(right.heading_at(300.0) == doctest::Approx(pi / 2.0));
  const LineOfPlay left = one_corner(-90.0);
  check_point(left.at(300.0), -100.0, 200.0);
  check_point(left.to_plane({10.0, 300.0}), -100.0, 210.0);
  // Beyond the ends the first and the last leg go on.
  check_point(right.at(-50.0), 0.0, -50.0);
  check_point(right.at(450.0), 250.0, 200.0);
}

// By hand: 20 yards inside a right angle the mitre lies 20 yards before the corner on both legs.
TEST_CASE("places on the inner side of a corner move to its mitre") {
  const LineOfPlay line = one_corner(90.0);
  check_point(line.to_plane({20.0, 190.0}), 20.0, 180.0);
  check_point(line.to_plane({20.0, 210.0}), 20.0, 180.0);
  check_point(line.to_plane({20.0, 175.0}), 20.0, 175.0);
  // The outer side has room for everything.
  check_point(line.to_plane({-20.0, 195.0}), -20.0, 195.0);
}

TEST_CASE("a strip takes the mitre corners of a dogleg") {
  const Polygon strip = one_corner(90.0).strip(100.0, 300.0, -10.0, 10.0);
  REQUIRE(strip.size() == 6);
  const double expected[6][2] = {{-10, 100}, {-10, 210}, {100, 210}, {100, 190}, {10, 190}, {10, 100}};
  for (std::size_t i = 0; i < 6; ++i) check_point(strip[i], expected[i][0], expected[i][1]);
}

// By hand: at an offset r to the side the line turns to, a stretch of length s that passes the corner is
// s - 2 r tan(turn / 2) long; integrated over the offsets that is the area.
TEST_CASE("the area of a strip round a dogleg, both ways") {
  for (const double turn_deg : {-60.0, -24.0, -15.0, 0.0, 16.0, 22.0, 45.0, 70.0}) {
    CAPTURE(turn_deg);
    const LineOfPlay line = one_corner(turn_deg);
    const double half = std::tan(radians(turn_deg) / 2.0);
    const auto by_hand = [&](double low, double high) {
      return 200.0 * (high - low) - half * (high * high - low * low);
    };
    for (const auto& [low, high] : {std::pair{-20.0, 20.0}, {10.0, 30.0}, {-30.0, -10.0}, {-5.0, 40.0}}) {
      const Polygon strip = line.strip(100.0, 300.0, low, high);
      CHECK(area_sq_yd(strip) == doctest::Approx(by_hand(low, high)).epsilon(exact));
      CHECK(is_simple(strip));
      CHECK(covers(strip, line.to_plane({0.5 * (low + high), 150.0})));
      CHECK(covers(strip, line.to_plane({0.5 * (low + high), 250.0})));
      CHECK_FALSE(covers(strip, line.to_plane({low - 1.0, 150.0})));
      CHECK_FALSE(covers(strip, line.to_plane({high + 1.0, 250.0})));
      CHECK_FALSE(covers(strip, line.to_plane({0.5 * (low + high), 301.0})));
    }
  }
}

TEST_CASE("an edge that passes a dogleg bends at it, at the offset it has there") {
  // From 10 right at 150 to 30 right at 250: 20 right at the corner, so the mitre of 20.
  const Polygon bent = one_corner(90.0).bend({{10.0, 150.0}, {30.0, 250.0}, {0.0, 250.0}, {0.0, 150.0}});
  REQUIRE(bent.size() == 6);
  check_point(bent[0], 10.0, 150.0);
  check_point(bent[1], 20.0, 180.0);
  check_point(bent[2], 50.0, 170.0);
  check_point(bent[3], 50.0, 200.0);
  check_point(bent[4], 0.0, 200.0);
  check_point(bent[5], 0.0, 150.0);
  // Away from the corner nothing bends.
  CHECK(one_corner(90.0).bend({{0.0, 20.0}, {5.0, 20.0}, {5.0, 60.0}}).size() == 3);
}

LineOfPlay random_line(Numbers& numbers) {
  std::vector<Dogleg> doglegs;
  double at = numbers.between(140.0, 220.0);
  doglegs.push_back({at, radians(numbers.between(-50.0, 50.0))});
  if (numbers.between(0.0, 1.0) < 0.5) {
    at += numbers.between(140.0, 220.0);
    doglegs.push_back({at, radians(numbers.between(-50.0, 50.0))});
  }
  return {at + numbers.between(100.0, 200.0), doglegs};
}

// A strip wider than a fairway and longer than its offset never folds over itself, however the line turns.
TEST_CASE("no strip crosses itself") {
  Numbers numbers(11);
  for (int i = 0; i < 4000; ++i) {
    const LineOfPlay line = random_line(numbers);
    const double from = numbers.between(-20.0, line.length_yd() - 80.0);
    const double to = from + numbers.between(80.0, 300.0);
    const double low = numbers.between(-60.0, 50.0);
    const double high = low + numbers.between(1.0, 60.0 - low);
    CAPTURE(i);
    const Polygon strip = line.strip(from, to, low, high);
    CHECK(is_simple(strip));
    CHECK(area_sq_yd(strip) > 0.0);
  }
}

TEST_CASE("a polygon that crosses itself is not simple") {
  CHECK_FALSE(is_simple({{0.0, 0.0}, {10.0, 10.0}, {10.0, 0.0}, {0.0, 10.0}}));
  CHECK_FALSE(is_simple({{0.0, 0.0}, {10.0, 10.0}}));
  CHECK(is_simple({{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}}));
  CHECK(is_simple({{0.0, 0.0}, {10.0, 10.0}, {10.0, 0.0}}));  // the other way round
  CHECK(area_sq_yd({{0.0, 0.0}, {10.0, 10.0}, {10.0, 0.0}}) == doctest::Approx(50.0));
  CHECK(distance_to_edge_yd({{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}, {0.0, 10.0}}, {4.0, 5.0}) == doctest::Approx(4.0));
  CHECK(distance_to_edge_yd({{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}, {0.0, 10.0}}, {13.0, 14.0}) ==
        doctest::Approx(5.0));
}

// 60 yards beside a 50-degree corner the mitre reaches 60 tan 25 = 28 yards along; 35 yards away from every corner
// nothing moves and the line's own legs are the nearest.
TEST_CASE("there and back again, away from the corners") {
  Numbers numbers(12);
  int checked = 0;
  for (int i = 0; i < 20000; ++i) {
    const LineOfPlay line = random_line(numbers);
    const LinePlace place{numbers.between(-60.0, 60.0), numbers.between(-30.0, line.length_yd() + 30.0)};
    const bool near_corner =
        std::abs(line.heading_at(place.along_yd - 35.0) - line.heading_at(place.along_yd + 35.0)) > 0.0;
    if (near_corner) continue;
    const LinePlace back = line.nearest(line.to_plane(place));
    CHECK(back.along_yd == doctest::Approx(place.along_yd).epsilon(exact));
    CHECK(back.right_yd == doctest::Approx(place.right_yd).epsilon(exact));
    ++checked;
  }
  CHECK(checked > 8000);
}

// Second road: Boost.Geometry's distance to the same line.
TEST_CASE("the nearest place of the line is as far away as the line is") {
  using Flat = bg::model::d2::point_xy<double>;
  Numbers numbers(13);
  for (int i = 0; i < 5000; ++i) {
    const LineOfPlay line = random_line(numbers);
    bg::model::linestring<Flat> road;
    const auto add = [&](double along) { road.push_back({line.at(along).x, line.at(along).y}); };
    add(-1000.0);
    double heading = line.heading_at(0.0);
    for (double along = 0.0; along < line.length_yd(); along += 0.5) {
      if (line.heading_at(along) == heading) continue;
      // The corner lies within the last half yard.
      double low = along - 0.5;
      double high = along;
      for (int halving = 0; halving < 50; ++halving) {
        const double middle = 0.5 * (low + high);
        (line.heading_at(middle) == heading ? low : high) = middle;
      }
      add(high);
      heading = line.heading_at(along);
    }
    add(line.length_yd() + 1000.0);
    const Point p{numbers.between(-200.0, 200.0), numbers.between(-50.0, 600.0)};
    const LinePlace nearest = line.nearest(p);
    CHECK(std::abs(nearest.right_yd) == doctest::Approx(bg::distance(Flat(p.x, p.y), road)).epsilon(1e-8));
    CHECK(distance_yd(line.at(nearest.along_yd), p) == doctest::Approx(std::abs(nearest.right_yd)).epsilon(1e-8));
  }
}

}  // namespace
}  // namespace yardworth
