#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "gain/followed_policy.hpp"
#include "input/derived_table.hpp"
#include "strategy/follow.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"
#include "support/random_player.hpp"

namespace yardworth {
namespace {

// A golfer with longer clubs on a hole of the golfer before, state by state.
struct LongerClubs {
  LongerClubs(const Player& player, double driver_yd, double irons_yd, double length_yd)
      : baseline(derived_table(player.band, player.gender)),
        before(test::open_hole(1, length_yd), Firmness::normal, 0, player, baseline, mesh),
        after(test::open_hole(1, length_yd), Firmness::normal, 0, lengthen(player, driver_yd, irons_yd), baseline,
              mesh) {}

  test::Mesh mesh = without_edges();
  Baseline baseline;
  test::PreparedHole before, after;

 private:
  static test::Mesh without_edges() {
    test::Mesh mesh;
    mesh.edges = false;
    return mesh;
  }
};

constexpr auto eight_iron = "8-iron";

const Club& the_club(const Player& player, const std::string& name) {
  return *std::find_if(player.clubs.begin(), player.clubs.end(), [&](const Club& club) { return club.name == name; });
}

// The 13-20 golfer, who hits the 8-iron so many times as wide as that.
Player with_eight_iron(double wildness) {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  for (Club& club : player.clubs) {
    if (club.name == eight_iron) club.direction_sd_rad *= wildness;
  }
  return player;
}

// What the policy plays from the tee.
const std::string& tee_club(const Player& player, const HoleModel& model, const PolicyEvaluation& planned) {
  const Action& action = planned.policy[static_cast<std::size_t>(model.tee_state())];
  return player.clubs[model.swing_of(Lie::tee, action).club].name;
}

}  // namespace

TEST_CASE("the same shot with longer clubs: the same club to the same total in the same direction") {
  const LongerClubs clubs(standard_player(Band::from_13_to_20, Gender::men), 20.0, 6.0, 400.0);
  const double green = roll_factor(Ground::green, Firmness::normal);
  const std::vector<Swing>& swings = clubs.before.model.swings(Lie::fairway);
  for (std::size_t i = 0; i < swings.size(); ++i) {
    const Action action{static_cast<int>(i), 0.8 * swings[i].carry_yd, 0.3, 2};
    const auto same = same_shot(clubs.after.model, clubs.before.model, Lie::fairway, action);
    REQUIRE(same);
    const Swing was = clubs.before.model.swing_of(Lie::fairway, action);
    const Swing now = clubs.after.model.swing_of(Lie::fairway, *same);
    CHECK(now.club == was.club);
    CHECK(now.total_yd(green) == doctest::Approx(was.total_yd(green)).epsilon(1e-12));
    CHECK(HoleModel::heading_of(now, *same) == doctest::Approx(HoleModel::heading_of(was, action)).epsilon(1e-12));
    // Shorter clubs cannot play the full shot of longer ones.
    const Action full{static_cast<int>(i), clubs.after.model.swings(Lie::fairway)[i].carry_yd, 0.0, 0};
    CHECK(!same_shot(clubs.before.model, clubs.after.model, Lie::fairway, full));
  }
}

TEST_CASE("with longer clubs the wild one that now fits is left for the shot played before, the sure one taken") {
  for (const double wildness : {1.0, 3.0}) {
    CAPTURE(wildness);
    const Player player = with_eight_iron(wildness);
    // Just too far for the 8-iron before the change.
    const Club& club = the_club(player, eight_iron);
    const double distance = club.carry_yd + club.roll_yd * roll_factor(Ground::green, Firmness::normal) + 3.0;
    const LongerClubs clubs(player, 0.0, 8.0, distance);
    const HoleModel& before = clubs.before.model;
    const HoleModel& after = clubs.after.model;
    const PolicyEvaluation was = evaluate_policy(before, habit_of(before));
    const PolicyEvaluation now = evaluate_followed(after, habit_of(after), {before, was}, {before, was});
    CHECK(tee_club(player, before, was) == "7-iron");
    CHECK(tee_club(player, after, now) == (wildness > 1.0 ? "7-iron" : eight_iron));
    CHECK(now.at_tee <= was.at_tee);
  }
}

TEST_CASE("what a longer shot is beside the one before: none, further, or other where it comes into the short game") {
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  const LongerClubs clubs(player, 20.0, 0.0, 400.0);
  const HoleModel& before = clubs.before.model;
  const HoleModel& after = clubs.after.model;
  const Action was = habit_action(before, Lie::tee, before.tee());
  const Action now = habit_action(after, Lie::tee, after.tee());
  const auto earlier = same_shot(after, before, Lie::tee, was);
  REQUIRE(earlier);
  CHECK(difference_of(after, Lie::tee, after.tee(), now, *earlier) == Difference::further);
  CHECK(difference_of(after, Lie::tee, after.tee(), *earlier, *earlier) == Difference::none);
  const Point near_green = after.pin() - 210.0 * Point{0.0, 1.0};
  CHECK(difference_of(after, Lie::tee, near_green, now, *earlier) == Difference::other);
}

TEST_CASE("a longer driver that reaches a bunker is played into it all the same") {
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  const test::Mesh mesh;
  const Baseline baseline(derived_table(player.band, player.gender));
  Hole hole = test::open_hole(1, 420.0);
  const double reach = player.clubs.front().carry_yd + player.clubs.front().roll_yd;
  // Further off than the habit's margin before the change.
  const double margin = 1.2 * player.clubs.front().carry_sd_yd;
  hole.hazards = {test::across(HazardKind::bunker, reach + margin, reach + margin + 33.0)};
  const test::PreparedHole before(hole, Firmness::normal, 0, player, baseline, mesh);
  const HoleModel after = before.model.for_player(lengthen(player, margin + 10.0, 0.0));
  const PolicyEvaluation was = evaluate_policy(before.model, habit_of(before.model));
  const auto tee = static_cast<std::size_t>(before.model.tee_state());
  const PolicyEvaluation now =
      evaluate_followed(after, followed(after, before.model, was.policy), {before.model, was}, {before.model, was});
  REQUIRE(was.policy[tee].swing == 0);
  CHECK(now.policy[tee].swing == 0);
  CHECK(now.policy[tee].carry_yd == after.swings(Lie::tee).front().carry_yd);
  CHECK(now.at_tee > was.at_tee);
}

TEST_CASE("a par 3 played as before with longer irons is played no worse, whatever the club table") {
  RandomEngine engine(22);
  for (int table = 0; table < 6; ++table) {
    CAPTURE(table);
    const LongerClubs clubs(test::random_player(engine), 0.0, 9.0, 160.0);
    const HoleModel& before = clubs.before.model;
    const HoleModel& after = clubs.after.model;
    const PolicyEvaluation was = evaluate_policy(before, habit_of(before));
    const PolicyEvaluation now = evaluate_followed(after, habit_of(after), {before, was}, {before, was});
    CHECK(now.at_tee <= was.at_tee + 0.001);
  }
}

}  // namespace yardworth
