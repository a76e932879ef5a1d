#include "strategy/look_ahead.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <optional>
#include <utility>
#include <vector>

#include "strategy/shot_at_hole.hpp"
#include "strategy/state_values.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"

namespace yardworth::test {

// Who stays with a shot of shorter clubs plays neither to the hole nor in full. Of one club nothing else can be chosen,
// whatever places are worth. By the definition in docs/model.md, "Second shots by look-ahead".
TEST_CASE(
    "one step of look-ahead plays a shot to the carry that the policy names, in full, or to the hole, as that does") {
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
    const LookAhead look_ahead(model, policy, filled_values(model, unknown), std::move(balls));
    const std::optional<Action> action = look_ahead.action(Lie::fairway, from);
    REQUIRE(action);
    return action->carry_yd;
  };
  CHECK(played(to_hole - 40.0) == doctest::Approx(to_hole - 40.0));
  CHECK(played(club.carry_yd) == club.carry_yd);
  CHECK(played(0.0) == doctest::Approx(to_hole));
}

}  // namespace yardworth::test
