#include "course/set_up.hpp"

#include <doctest/doctest.h>

#include "course/hazard_kind.hpp"
#include "yardworth/course.hpp"

namespace yardworth {
namespace {

TEST_CASE("names as files write them") {
  for (const HazardKind kind : all_hazard_kinds) {
    CHECK(hazard_kind_named(name(kind)) == kind);
  }
  CHECK(name(HazardKind::penalty_area) == "penalty_area");
  for (const Side side : {Side::left, Side::right, Side::across}) CHECK(side_named(name(side)) == side);
  for (const Firmness firmness : {Firmness::soft, Firmness::normal, Firmness::firm}) {
    CHECK(firmness_named(name(firmness)) == firmness);
  }
  CHECK_FALSE(hazard_kind_named("penalty area").has_value());
}

TEST_CASE("standard fairways lie between the tee and the green") {
  CHECK(default_fairway(3, 160.0).empty());
  for (double length = 60.0; length <= 700.0; length += 10.0) {
    for (const FairwayStretch& stretch : default_fairway(4, length)) {
      CHECK(stretch.from_yd > 0.0);
      CHECK(stretch.to_yd > stretch.from_yd);
      CHECK(stretch.to_yd < length - default_green().depth_yd / 2.0);
    }
  }
  CHECK(default_fairway(4, 300.0).size() == 1);
}

TEST_CASE("a hazard without near or far lies outside the fairway and has a width") {
  const double half_fairway = default_fairway(4, 400.0).front().right_yd;
  for (const HazardKind kind : all_hazard_kinds) {
    CHECK(default_near_yd(kind) >= half_fairway);
    CHECK(default_far_yd(kind, default_near_yd(kind)) > default_near_yd(kind));
    CHECK(default_far_yd(kind, 199.0) > 199.0);
  }
}

TEST_CASE("the par that a length suggests") {
  CHECK(default_par(140.0) == 3);
  CHECK(default_par(380.0) == 4);
  CHECK(default_par(520.0) == 5);
  CHECK(default_par(720.0) == 6);
}

TEST_CASE("tees by name and length") {
  Course course;
  course.tees = {{"back", {}, {}, {}}, {"forward", {}, {}, {}}};
  Hole hole;
  hole.length_yd = {400.0, 300.0};
  course.holes = {hole, hole};
  CHECK(tee_index(course, "forward") == 1u);
  CHECK_FALSE(tee_index(course, "middle").has_value());
  CHECK(total_length_yd(course, 1) == 600.0);
}

}  // namespace
}  // namespace yardworth
