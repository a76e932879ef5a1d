#pragma once

#include <cstddef>

namespace yardworth::telling {

// From what difference on golfers are told of it, and how much they are told. None of these changes a value that is
// computed; all are common practice, no source. Lengths are yards.

// ---- Tee shots

// What else could be played is told of so many tee shots at most; further behind, in strokes, nobody asks about one.
inline constexpr std::size_t most_alternatives = 3;
inline constexpr double too_dear = 0.35;
// The same club aimed elsewhere is another choice from this difference on, where the straight ball finishes.
inline constexpr double other_aim_yd = 8.0;
// Ways to finish that are likelier than this are told in thirds.
inline constexpr double worth_thirds = 0.15;

// ---- Where one aims, and what hazards lie there

// Nobody aims closer than this.
inline constexpr double aim_precision_yd = 2.0;
// An aim within this of the edge of the fairway is at the edge.
inline constexpr double edge_width_yd = 3.0;
// A hazard that lies on both sides of the line within so little is told as one that can be passed on either side.
inline constexpr double narrow_yd = 40.0;
// What would finish this close to the hole, or beyond it, is played at the green.
inline constexpr double near_green_yd = 30.0;
// Closer than this to the tee or to the green nobody tells where a long hazard begins or ends.
inline constexpr double end_slack_yd = 25.0;
// Hazards are looked for along the line of play as far as this behind the green, edges of a fairway as far to its side,
// and the far side of what is carried as far from the tee; all at these steps.
inline constexpr double beyond_green_yd = 40.0;
inline constexpr double widest_fairway_yd = 80.0;
inline constexpr double farthest_carry_yd = 400.0;
inline constexpr double edge_step_yd = 0.5;

// ---- What a change does to a policy

// Aims that finish closer together than this are the same aim.
inline constexpr double same_aim_yd = 4.0;
// A hazard is a reason for another club from this difference in the chance of finding it, and for another aim from the
// smaller one.
inline constexpr double reason_for_club = 0.03;
inline constexpr double reason_for_aim = 0.01;

// ---- Reports

// Chances under this have no row of their own in the report of a strategy, nor shares of clubs under the second in that
// of a gain: it would round to none.
inline constexpr double chance_worth_a_row = 0.01;
inline constexpr double club_worth_a_row = 0.005;
// Clubs named after a way to finish: the likeliest few that are played this often.
inline constexpr std::size_t most_clubs_named = 3;
inline constexpr double club_worth_naming = 0.1;
// A lesson sheet draws so many holes large, at most.
inline constexpr std::size_t most_holes_drawn_large = 3;
// A page for a club tells who finds so many hazards at most, those that are found most often.
inline constexpr std::size_t most_hazards_told = 12;
// Tables of clubs by band are shown when there are at most so many: one for each gender and tee.
inline constexpr std::size_t most_club_tables = 2;
// A hazard that fewer tee shots than this reach is out of reach.
inline constexpr double hazard_reached = 0.005;
// A difference in strokes smaller than this is nothing to speak of: it would be written as 0.00.
inline constexpr double strokes_worth_telling = 0.005;
// What takes more rounds than this before a change, and as many after it, nobody sees: with both, two seasons of a keen
// golfer.
inline constexpr double rounds_ever_seen = 50.0;
// More rounds than this are not counted.
inline constexpr double countless_rounds = 1000.0;

// ---- A strike from a log

// The carry that a strike gives is set beside that of the log's shots where it differs by more than this share of it.
inline constexpr double carry_apart = 0.05;
// Sessions taken together are named up to so many.
inline constexpr std::size_t most_sessions_named = 5;

// ---- Pictures

// The shares of the tee shots that the outlines of where they finish hold.
inline constexpr double inner_share = 0.5;
inline constexpr double outer_share = 0.9;
// A hazard comes into reach of the tee shot where less than this share of them reached it before, and at least as many
// do now; it is cleared where from less than the second share as many as that finish beyond it.
inline constexpr double within_reach = 0.1;
inline constexpr double mostly_cleared = 0.5;
// What lies beside the line of play over more than this is passed, not carried.
inline constexpr double longest_carried_yd = 60.0;

// ---- The graph of a policy

// States of a lie within one such stretch of distance are drawn as one.
inline constexpr double drawn_stretch_yd = 20.0;
// Edges that are less likely, given their beginning, and states with fewer expected visits are left out.
inline constexpr double drawn_edge = 0.02;
inline constexpr double drawn_state = 0.005;

// ---- Rounds until a change shows

// A two-sided test at this level finds the change with this power: the usual ones of statistics.
inline constexpr double test_level = 0.05;
inline constexpr double test_power = 0.8;

}  // namespace yardworth::telling
