#include "core/contours.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "core/plane.hpp"

namespace yardworth {
namespace {

// A field over the square from -half to half on both axes.
template <class Function>
GridField field_of(double half, double step, Function function) {
  GridField field;
  field.origin = {-half, -half};
  field.step = step;
  field.columns = field.rows = static_cast<std::size_t>(std::lround(2.0 * half / step)) + 1;
  for (std::size_t row = 0; row < field.rows; ++row) {
    for (std::size_t column = 0; column < field.columns; ++column) {
      field.values.push_back(
          function(-half + step * static_cast<double>(column), -half + step * static_cast<double>(row)));
    }
  }
  return field;
}

double cone(double x, double y) { return std::max(0.0, 10.0 - std::sqrt(x * x + y * y)); }
// A ring: highest 6 from the middle.
double ring(double x, double y) { return std::max(0.0, 3.0 - std::abs(std::sqrt(x * x + y * y) - 6.0)); }

}  // namespace

TEST_CASE("the contour of a cone is a circle, and its area is that of Archimedes") {
  const GridField field = field_of(12.0, 0.25, cone);
  const auto outlines = contours_at(field, 4.0);
  REQUIRE(outlines.size() == 1);
  CHECK(area_sq_yd(outlines.front()) == doctest::Approx(3.14159265 * 36.0).epsilon(0.002));
  for (const Point p : outlines.front()) CHECK(std::hypot(p.x, p.y) == doctest::Approx(6.0).epsilon(0.002));
  CHECK(field.at({1.0, 2.0}) == doctest::Approx(cone(1.0, 2.0)).epsilon(1e-3));
  CHECK(field.at({40.0, 0.0}) == 0.0);
}

TEST_CASE("what lies between two outlines is inside, what lies within both is not") {
  const auto outlines = contours_at(field_of(12.0, 0.25, ring), 1.0);
  REQUIRE(outlines.size() == 2);
  CHECK(inside_outlines(outlines, {6.0, 0.0}));
  CHECK(inside_outlines(outlines, {0.0, -4.5}));
  CHECK_FALSE(inside_outlines(outlines, {0.0, 0.0}));
  CHECK_FALSE(inside_outlines(outlines, {9.0, 0.0}));
}

TEST_CASE("a cell that two outlines cross is decided by its middle") {
  // Two hills that touch at a corner: apart with a low middle, one with a high one. Worked by hand.
  const auto saddle = [](double other) {
    GridField field{{0.0, 0.0}, 1.0, 4, 4, std::vector<double>(16, 0.0)};
    field.node(1, 1) = field.node(2, 2) = 3.0;
    field.node(1, 2) = field.node(2, 1) = other;
    return contours_at(field, 2.0);
  };
  CHECK(saddle(0.5).size() == 2);  // middle (3 + 3 + 0.5 + 0.5) / 4 = 1.75
  CHECK(saddle(1.5).size() == 1);  // 2.25
}

TEST_CASE("a polygon is simplified within the tolerance") {
  Polygon circle;
  for (int i = 0; i < 360; ++i) circle.push_back(10.0 * along_heading(i * 3.14159265 / 180.0));
  const Polygon simple = simplified(circle, 0.1);
  CHECK(simple.size() < 60);
  for (const Point p : circle) CHECK(distance_to_edge_yd(simple, p) <= 0.1 + 1e-9);
}

}  // namespace yardworth
