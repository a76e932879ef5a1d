#include "baseline/published.hpp"

#include <doctest/doctest.h>

#include <cstdio>
#include <numeric>
#include <string>

#include "course/set_up.hpp"
#include "input/derived_table.hpp"
#include "support/courses.hpp"
#include "support/figures.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {
namespace {

// Strokes that 20 more yards of driver carry, with the roll unchanged, save a round on the standard course.
double saved_by_20(Band band, const BaselineTable& table, Method method) {
  GainRequest request;
  request.change = {20.0, 0.0};
  request.method = method;
  request.policy = PolicyChoice::habit;
  request.threads = 1;
  const Player player = standard_player(band, Gender::men);
  return compute_gain(test::standard_course(), player, Baseline(table), request).answer().round.strokes_saved();
}

double saved_by_20(Band band, Method method) { return saved_by_20(band, derived_table(band, Gender::men), method); }

// 14 drives of 20 yards, 280 yards in all, by the yardage rating for men: USGA Course Rating System manual; scratch
// effective length / 220 + 40.9 (quoted), bogey effective length / 160 + 50.7 (memory).
double by_rating(Band band) { return 14 * 20.0 / yardage_rating(band, Gender::men).yards_per_stroke; }

// The published table of tour professionals (M. Broadie, "Assessing Golfer Performance on the PGA TOUR", Interfaces 42,
// 2012): what 20 yards less are worth from the tee, over the 14 long holes.
double by_tour_table() {
  const Baseline tour(tour_table());
  double saved = 0.0;
  for (const double length : standard_hole_lengths_yd()) {
    if (default_par(length) > 3) saved += tour.strokes(Lie::tee, length) - tour.strokes(Lie::tee, length - 20.0);
  }
  return saved;
}

struct Golfer {
  Band band;
  double published, low, high;
};

std::vector<Golfer> golfers() {
  return {{Band::scratch, by_rating(Band::scratch), 0.9, 1.5},
          {Band::bogey, by_rating(Band::bogey), 1.3, 2.2},
          {Band::tour, by_tour_table(), 0.5, 1.0}};
}

}  // namespace

TEST_CASE("the standard course is 6,300 yards of four par 3s, eleven par 4s and three par 5s") {
  const Course course = test::standard_course();
  CHECK(total_length_yd(course, 0) == doctest::Approx(6300.0));
  int holes_of_par[7] = {};
  for (const Hole& hole : course.holes) ++holes_of_par[hole.par];
  CHECK(holes_of_par[3] == 4);
  CHECK(holes_of_par[4] == 11);
  CHECK(holes_of_par[5] == 3);
}

TEST_CASE("20 yards more carry save what the published ratings and the published table say") {
  for (const Golfer& golfer : golfers()) {
    const std::string who(name(golfer.band));
    const bool is_tour = golfer.band == Band::tour;
    const BaselineTable table = is_tour ? tour_table() : derived_table(golfer.band, Gender::men);
    const double saved = saved_by_20(golfer.band, table, Method::table);
    test::print_figure("+20 driver, by table, " + who + " man", golfer.published, saved);
    CHECK_MESSAGE(saved >= golfer.low, who);
    CHECK_MESSAGE(saved <= golfer.high, who);
  }
}

TEST_CASE("playing the golfer's own shots agrees with the table within 35%") {
  for (const Golfer& golfer : golfers()) {
    const double table = saved_by_20(golfer.band, Method::table);
    const double play = saved_by_20(golfer.band, Method::play);
    const std::string who(name(golfer.band));
    test::print_figure("+20 driver, by play, " + who + " man", golfer.published, play);
    std::printf("  play / table = %.3f / %.3f = %.2f\n", play, table, play / table);
    CHECK_MESSAGE(play >= 0.65 * table, who);
    CHECK_MESSAGE(play <= 1.35 * table, who);
  }
}

}  // namespace yardworth
