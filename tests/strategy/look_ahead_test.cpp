#include "strategy/look_ahead.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <optional>
#include <utility>
#include <vector>

#include "strategy/shot_at_hole.hpp"
#include "strategy/state_values.hpp"
#include "support/close_look_ahead.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"

namespace yardworth::test {

namespace {

// A golfer on a bare hole who has been to a search that says the same of all states.
struct OnBareHole {
  OnBareHole() : hole(open_hole(1, 400.0), Firmness::normal, 0, player, baseline, mesh) {}

  const HoleModel& model() const { return hole.model; }
  // By a search that gives two clubs so many strokes everywhere, in full; the first is taken.
  std::optional<int> swing_ahead(double first_strokes, double second_strokes, double weight) const {
    Policy policy(static_cast<std::size_t>(model().state_count()), Action{first, 0.0, 0.0, 0, false});
    const SearchedShots shots(policy.size(),
                              {{first, false, 0.0, first_strokes}, {second, false, 0.0, second_strokes}});
    const std::vector<double> unknown(policy.size(), std::numeric_limits<double>::quiet_NaN());
    BallsAround around(model(), model().discretisation().options());
    around.add(Lie::fairway, from, weight);
    const LookAhead ahead({model(), policy, shots}, model(), filled_values(model(), unknown), std::move(around));
    return ahead.swing(Lie::fairway, from);
  }

  static constexpr int first = 3;
  static constexpr int second = 0;
  static constexpr Point from{0.0, 160.0};
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  Baseline baseline = Baseline(tour_table());
  Mesh mesh;
  PreparedHole hole;
};

}  // namespace

// On a bare hole nearer is better by the baseline that the values are filled with, so that with 240 yards left the
// longest club is (common practice, no source).
TEST_CASE("looking ahead takes the club that closer values favour, of those that came near the best of the search") {
  const OnBareHole golfer;
  CHECK(golfer.swing_ahead(4.00, 4.01, 1.0) == OnBareHole::second);
  // What the search has far behind is not asked about again.
  CHECK(golfer.swing_ahead(4.00, 4.00 + 2.0 * numerics::look_ahead_margin, 1.0) == OnBareHole::first);
  // Where hardly a ball comes to nothing is said.
  CHECK(!golfer.swing_ahead(4.00, 4.01, 0.5 * numerics::look_ahead_visits));
}

TEST_CASE("what is played with the club ahead is the search's shot with it, nothing where the search has none") {
  const OnBareHole golfer;
  const HoleModel& model = golfer.model();
  Policy policy(static_cast<std::size_t>(model.state_count()), Action{OnBareHole::first, 0.0, 0.0, 0, false});
  const std::vector<double> unknown(policy.size(), std::numeric_limits<double>::quiet_NaN());
  const auto played = [&](const SearchedShots& weighed, const SearchedShots& asked, Point at) {
    BallsAround around(model, model.discretisation().options());
    around.add(Lie::fairway, OnBareHole::from, 1.0);
    const LookAhead ahead({model, policy, weighed}, model, filled_values(model, unknown), std::move(around));
    return action_ahead({model, policy, asked}, ahead, Lie::fairway, at);
  };
  const SearchedShots shots(policy.size(), {{OnBareHole::first, false, 0.04, 4.0}});
  const SearchedShots none(policy.size());
  CHECK(played(shots, shots, OnBareHole::from) ==
        action_of(model, Lie::fairway, OnBareHole::from, {OnBareHole::first, false, 0.04, 4.0}));
  CHECK(!played(shots, none, OnBareHole::from));
  CHECK(!played(shots, shots, {0.0, 20.0}));
}

// Who stays with a shot of shorter clubs plays neither to the hole nor in full. Of one club nothing else can be chosen,
// whatever places are worth.
TEST_CASE(
    "one step of look-ahead on close places plays a shot to the carry that the policy names, in full, or to the hole, "
    "as that does") {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  player.clubs = {player.clubs.front()};
  const Baseline baseline = Baseline(tour_table());
  const Mesh mesh;
  const PreparedHole hole(open_hole(1, 400.0), Firmness::normal, 0, player, baseline, mesh);
  const HoleModel& model = hole.model;
  const Point from{0.0, 250.0};
  const Swing& club = model.swings(Lie::fairway).front();
  const double to_hole = carry_to_hole(model, from, club);
  REQUIRE(to_hole < club.carry_yd);
  const auto played = [&](double carry_yd) {
    Policy policy(static_cast<std::size_t>(model.state_count()));
    for (StateId state = 0; state < model.state_count(); ++state) {
      const Point place = model.place_of(state);
      const double carry = carry_yd > 0.0 ? carry_yd : carry_to_hole(model, place, club);
      policy[static_cast<std::size_t>(state)] = in_reference_direction(model, model.lie_of(state), place, 0, carry);
    }
    const std::vector<double> unknown(policy.size(), std::numeric_limits<double>::quiet_NaN());
    BallsAround balls(model, model.discretisation().options());
    balls.add(Lie::fairway, from, 1.0);
    const CloseLookAhead look_ahead(model, policy, filled_values(model, unknown), std::move(balls));
    const std::optional<Action> action = look_ahead.action(Lie::fairway, from);
    REQUIRE(action);
    return action->carry_yd;
  };
  CHECK(played(to_hole - 40.0) == doctest::Approx(to_hole - 40.0));
  CHECK(played(club.carry_yd) == club.carry_yd);
  CHECK(played(0.0) == doctest::Approx(to_hole));
}

}  // namespace yardworth::test
