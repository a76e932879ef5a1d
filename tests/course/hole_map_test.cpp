#include "course/hole_map.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/ring.hpp>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_int_distribution.hpp>
#include <boost/random/uniform_real_distribution.hpp>
#include <cmath>
#include <functional>
#include <set>
#include <string>

#include "yardworth/read.hpp"

namespace yardworth {
namespace {

namespace bg = boost::geometry;
using Flat = bg::model::d2::point_xy<double>;
using Ring = bg::model::ring<Flat>;

using Engine = boost::random::mt19937;

double between(Engine& engine, double low, double high) {
  return boost::random::uniform_real_distribution<double>(low, high)(engine);
}

Ring ring_of(const Polygon& polygon) {
  Ring ring;
  for (const Point p : polygon) ring.emplace_back(p.x, p.y);
  bg::correct(ring);
  return ring;
}

// The second road: each polygon asked by Boost.Geometry, and the order of precedence as docs/model.md states it.
class AskedDirectly {
 public:
  explicit AskedDirectly(const HoleMap& map) {
    for (const Area& area : map.areas()) {
      rings_.push_back({area.ground, ring_of(area.polygon), {}});
      bg::envelope(rings_.back().ring, rings_.back().box);
    }
  }
  Ground at(Point p) const {
    const Flat flat(p.x, p.y);
    std::set<Ground> covering;
    for (const Entry& entry : rings_) {
      if (bg::covered_by(flat, entry.box) && bg::covered_by(flat, entry.ring)) covering.insert(entry.ground);
    }
    for (const Ground ground :
         {Ground::green, Ground::out_of_bounds, Ground::penalty_area, Ground::bunker, Ground::trees, Ground::fairway}) {
      if (covering.count(ground) > 0) return ground;
    }
    return Ground::rough;
  }

 private:
  struct Entry {
    Ground ground;
    Ring ring;
    bg::model::box<Flat> box;
  };
  std::vector<Entry> rings_;
};

Course course_at(const std::string& place) {
  const std::string path = std::string(YARDWORTH_SOURCE_DIR) + "/courses/" + place + "/course.yaml";
  const Reading<std::string> text = read_text(path);
  REQUIRE(text.ok());
  const Reading<Course> course = read_course(*text.value, path);
  REQUIRE(course.ok());
  return *course.value;
}

std::vector<Course> both_courses() { return {course_at("heron-ferry"), course_at("marsh-end")}; }

Hole straight_hole(double length_yd) {
  Hole hole;
  hole.number = 1;
  hole.par = 4;
  hole.length_yd = {length_yd};
  hole.fairway = {{100.0, length_yd - 30.0, 16.0, 16.0}};
  hole.green = {30.0, 24.0};
  return hole;
}

Hazard polygon_hazard(HazardKind kind, std::vector<LinePlace> corners) {
  Hazard hazard;
  hazard.kind = kind;
  hazard.corners = std::move(corners);
  return hazard;
}

// Half of the points anywhere on the hole and round it, half within three yards of an edge.
Point random_point(const HoleMap& map, Engine& engine) {
  if (between(engine, 0.0, 1.0) < 0.5) {
    const Point middle = map.line().at(between(engine, -100.0, map.line().length_yd() + 100.0));
    return middle + Point{between(engine, -180.0, 180.0), between(engine, -20.0, 20.0)};
  }
  const auto& areas = map.areas();
  const Polygon& polygon =
      areas[boost::random::uniform_int_distribution<std::size_t>(0, areas.size() - 1)(engine)].polygon;
  const auto corner = boost::random::uniform_int_distribution<std::size_t>(0, polygon.size() - 1)(engine);
  const Point a = polygon[corner];
  const Point b = polygon[(corner + 1) % polygon.size()];
  const Point on_edge = a + between(engine, 0.0, 1.0) * (b - a);
  return on_edge + Point{between(engine, -3.0, 3.0), between(engine, -3.0, 3.0)};
}

// Counts what breaks on every hole of both courses: count(map, what the polygons say, engine).
void check_every_hole(unsigned seed, const std::function<int(const HoleMap&, const AskedDirectly&, Engine&)>& count) {
  for (const Course& course : both_courses()) {
    for (const Hole& hole : course.holes) {
      const HoleMap map(hole, course.firmness);
      Engine engine(seed++);
      CAPTURE(course.name);
      CAPTURE(hole.number);
      CHECK(count(map, AskedDirectly(map), engine) == 0);
    }
  }
}

TEST_CASE("what the ball lies on is what Boost.Geometry says of the polygons, on every hole of two courses") {
  constexpr int points = 200000;
  check_every_hole(21, [&](const HoleMap& map, const AskedDirectly& direct, Engine& engine) {
    int different = 0;
    for (int i = 0; i < points; ++i) {
      const Point p = random_point(map, engine);
      if (map.ground_at(p) != direct.at(p)) ++different;
    }
    return different;
  });
}

TEST_CASE("a hole of thin strips round a dogleg is what Boost.Geometry says of the polygons") {
  for (const double apart_yd : {0.9, 2.5}) {
    Hole hole = straight_hole(400.0);
    hole.doglegs = {{220.0, radians(35.0)}};
    for (double at = 60.0; at < 340.0; at += apart_yd) {
      Hazard strip;
      strip.kind = HazardKind::penalty_area;
      strip.side = Side::across;
      strip.from_yd = at;
      strip.to_yd = at + 0.4;
      strip.far_yd = 60.0;
      hole.hazards.push_back(strip);
    }
    const HoleMap map(hole, Firmness::normal);
    const AskedDirectly direct(map);
    Engine engine(5);
    int different = 0;
    for (int i = 0; i < 20000; ++i) {
      const Point p = random_point(map, engine);
      if (map.ground_at(p) != direct.at(p)) ++different;
    }
    CHECK(different == 0);
  }
}

TEST_CASE("corners and edges of areas, doglegs included") {
  int corners = 0;
  for (const Course& course : both_courses()) {
    for (const Hole& hole : course.holes) {
      const HoleMap map(hole, course.firmness);
      const AskedDirectly direct(map);
      CAPTURE(course.name);
      CAPTURE(hole.number);
      for (const Area& area : map.areas()) {
        for (std::size_t i = 0; i < area.polygon.size(); ++i) {
          const Point a = area.polygon[i];
          const Point b = area.polygon[(i + 1) % area.polygon.size()];
          CHECK(map.ground_at(a) == direct.at(a));
          ++corners;
          // A place between corners is on the edge only to the last digit: it has to be what is on one side or other.
          const Point across = (1e-6 / distance_yd(a, b)) * Point{b.y - a.y, a.x - b.x};
          for (const double share : {0.125, 0.5, 0.7}) {
            const Point p = a + share * (b - a);
            const Ground here = map.ground_at(p);
            CHECK((here == direct.at(p + across) || here == direct.at(p - across)));
          }
        }
      }
    }
  }
  CHECK(corners > 1000);
}

TEST_CASE("an edge belongs to its area, to the last digit where the digits are exact") {
  Hole hole = straight_hole(400.0);
  hole.hazards = {polygon_hazard(HazardKind::bunker, {{4.0, 200.0}, {12.0, 200.0}, {12.0, 208.0}, {4.0, 208.0}})};
  const HoleMap map(hole, Firmness::normal);
  const AskedDirectly direct(map);
  for (double t = 0.0; t <= 8.0; t += 0.25) {
    for (const Point p :
         {Point{4.0 + t, 200.0}, Point{12.0, 200.0 + t}, Point{4.0 + t, 208.0}, Point{4.0, 200.0 + t}}) {
      CHECK(map.ground_at(p) == Ground::bunker);
      CHECK(direct.at(p) == Ground::bunker);
    }
  }
  CHECK(map.ground_at({4.0 - 1e-9, 204.0}) == Ground::fairway);
  for (double y = 100.0; y <= 370.0; y += 0.5) {
    CHECK(map.ground_at({16.0, y}) == Ground::fairway);
    CHECK(map.ground_at({-16.0, y}) == Ground::fairway);
    CHECK(map.ground_at({16.0 + 1e-9, y}) == Ground::rough);
  }
}

// docs/decisions/0003-which-area-counts.md.
TEST_CASE("where areas overlap the order decides, whatever the order of the file") {
  Hole hole = straight_hole(400.0);
  const auto square = [](HazardKind kind, double along) {
    return polygon_hazard(kind,
                          {{-10.0, along - 10.0}, {10.0, along - 10.0}, {10.0, along + 10.0}, {-10.0, along + 10.0}});
  };
  hole.hazards = {square(HazardKind::bunker, 150.0),        square(HazardKind::trees, 200.0),
                  square(HazardKind::penalty_area, 200.0),  square(HazardKind::bunker, 250.0),
                  square(HazardKind::out_of_bounds, 250.0), square(HazardKind::trees, 300.0),
                  square(HazardKind::bunker, 300.0),        square(HazardKind::penalty_area, 400.0)};
  for (int order = 0; order < 2; ++order) {
    const HoleMap map(hole, Firmness::normal);
    CHECK(map.ground_at({0.0, 150.0}) == Ground::bunker);        // inside the fairway
    CHECK(map.ground_at({0.0, 200.0}) == Ground::penalty_area);  // with trees in it
    CHECK(map.ground_at({0.0, 250.0}) == Ground::out_of_bounds);
    CHECK(map.ground_at({0.0, 300.0}) == Ground::bunker);
    CHECK(map.ground_at({0.0, 400.0}) == Ground::green);  // inside a penalty area
    CHECK(map.ground_at({0.0, 125.0}) == Ground::fairway);
    CHECK(map.ground_at({30.0, 200.0}) == Ground::rough);
    const int bunker = map.area_at({0.0, 150.0});
    REQUIRE(bunker >= 0);
    CHECK(map.areas()[static_cast<std::size_t>(bunker)].ground == Ground::bunker);
    CHECK(map.area_at({30.0, 200.0}) == -1);
    std::reverse(hole.hazards.begin(), hole.hazards.end());
  }
}

TEST_CASE("a green touched by water stays whole, and has the size the file says") {
  Hole hole = straight_hole(150.0);
  hole.hazards = {polygon_hazard(HazardKind::penalty_area, {{0.0, 100.0}, {80.0, 100.0}, {80.0, 200.0}, {0.0, 200.0}})};
  const HoleMap map(hole, Firmness::normal);
  CHECK(map.ground_at({11.9, 150.0}) == Ground::green);
  CHECK(map.ground_at({12.1, 150.0}) == Ground::penalty_area);
  CHECK(map.ground_at({0.0, 164.9}) == Ground::green);
  CHECK(map.ground_at({-1.0, 165.2}) == Ground::rough);
  CHECK(map.ground_at({-12.1, 150.0}) == Ground::rough);
}

TEST_CASE("nothing changes within the clearance, and nothing but fairway and rough within the distance free of edges") {
  bool anywhere_far = false;
  check_every_hole(51, [&](const HoleMap& map, const AskedDirectly& direct, Engine& engine) {
    int broken = 0;
    for (int i = 0; i < 3000; ++i) {
      const Point p = random_point(map, engine);
      const HoleMap::GroundProbe probed = map.probe(p);
      if (probed.ground != direct.at(p) || probed.clearance_yd > probed.edge_free_yd) ++broken;
      anywhere_far = anywhere_far || probed.clearance_yd >= 40;
      const bool mown = probed.ground == Ground::fairway || probed.ground == Ground::rough;
      for (int probe = 0; probe < 12; ++probe) {
        const Point direction = along_heading(between(engine, -pi, pi));
        // The whole way to the very limit, where a wrong bound shows first.
        const double share = probe < 6 ? 0.999999 : between(engine, 0.0, 1.0);
        if (direct.at(p + (share * probed.clearance_yd) * direction) != probed.ground) ++broken;
        const Ground far = direct.at(p + (share * probed.edge_free_yd) * direction);
        const bool harmless = mown ? far == Ground::fairway || far == Ground::rough : far == probed.ground;
        if (!harmless) ++broken;
      }
    }
    return broken;
  });
  CHECK(anywhere_far);  // a bound of 0 would be true and useless
}

TEST_CASE("where one edge lies between two places, the ground changes there and nowhere else on the way") {
  int found = 0;
  check_every_hole(77, [&](const HoleMap& map, const AskedDirectly& direct, Engine& engine) {
    int broken = 0;
    for (int i = 0; i < 20000; ++i) {
      const Point a = random_point(map, engine);
      const Point b = a + along_heading(between(engine, -pi, pi));
      const auto share = map.edge_between(a, b);
      if (!share) continue;
      ++found;
      const auto ground_at = [&](double part) { return direct.at(a + part * (b - a)); };
      constexpr double little = 1e-9;
      if (*share < 0.0 || *share > 1.0) ++broken;
      for (const double part : {0.0, 0.5 * *share, *share - little}) {
        if (part >= 0.0 && ground_at(part) != ground_at(0.0)) ++broken;
      }
      for (const double part : {*share + little, 0.5 * (1.0 + *share), 1.0}) {
        if (part <= 1.0 && ground_at(part) != ground_at(1.0)) ++broken;
      }
    }
    return broken;
  });
  CHECK(found > 1000);
}

TEST_CASE("far away from the hole the answer is still right") {
  Hole hole = straight_hole(400.0);
  hole.hazards = {
      polygon_hazard(HazardKind::out_of_bounds, {{40.0, 0.0}, {900.0, 0.0}, {900.0, 400.0}, {40.0, 400.0}})};
  const HoleMap map(hole, Firmness::normal);
  CHECK(map.ground_at({899.0, 200.0}) == Ground::out_of_bounds);
  CHECK(map.ground_at({901.0, 200.0}) == Ground::rough);
  CHECK(map.ground_at({0.0, 5000.0}) == Ground::rough);
  CHECK(map.ground_at({-1e6, -1e6}) == Ground::rough);
}

TEST_CASE("every tee lies on the line, its length from the hole") {
  for (const Course& course : both_courses()) {
    for (const Hole& hole : course.holes) {
      const HoleMap map(hole, course.firmness);
      CAPTURE(hole.number);
      CHECK(distance_yd(map.pin(), map.line().at(map.line().length_yd())) < 1e-9);
      CHECK(map.ground_at(map.pin()) == Ground::green);
      CHECK(distance_yd(map.tee(hole.length_yd.front()), {0.0, 0.0}) < 1e-9);
      for (const double length : hole.length_yd) {
        const Point tee = map.tee(length);
        const LinePlace place = map.line().nearest(tee);
        CHECK(std::abs(place.right_yd) < 1e-9);
        CHECK(map.line().length_yd() - place.along_yd == doctest::Approx(length).epsilon(1e-9));
        if (hole.doglegs.empty()) CHECK(distance_yd(tee, map.pin()) == doctest::Approx(length).epsilon(1e-9));
        if (!hole.doglegs.empty()) CHECK(distance_yd(tee, map.pin()) < length);
      }
    }
  }
}

// Whole-numbered corners and points: many points lie exactly on an edge or a corner, and both roads are exact there.
TEST_CASE("contains() and covers() give the same answer") {
  Engine engine(61);
  int on_edge = 0;
  for (int i = 0; i < 300; ++i) {
    // Round a middle by rising angle, so that the outline does not cross itself; reaches differ, so that it is hollow.
    Polygon polygon;
    const int count = boost::random::uniform_int_distribution<int>(3, 11)(engine);
    for (int corner = 0; corner < count; ++corner) {
      const double angle = 2.0 * pi * (corner + between(engine, 0.0, 0.6)) / count;
      const double reach = between(engine, 4.0, 20.0);
      polygon.push_back({std::round(reach * std::cos(angle)), std::round(reach * std::sin(angle))});
    }
    if (!is_simple(polygon)) continue;
    if (i % 2 == 0) std::reverse(polygon.begin(), polygon.end());
    int different = 0;
    for (double x = -21.0; x <= 21.0; x += 1.0) {
      for (double y = -21.0; y <= 21.0; y += 1.0) {
        const Point p{x, y};
        if (contains(polygon, p) != covers(polygon, p)) ++different;
        if (distance_to_edge_yd(polygon, p) == 0.0) ++on_edge;
        const Point q{between(engine, -21.0, 21.0), between(engine, -21.0, 21.0)};
        if (contains(polygon, q) != covers(polygon, q)) ++different;
      }
    }
    CAPTURE(i);
    CHECK(different == 0);
  }
  CHECK(on_edge > 2000);
}

}  // namespace
}  // namespace yardworth
