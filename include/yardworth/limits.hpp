#pragma once

#include <cstddef>
#include <string_view>

namespace yardworth {

// What is taken for golf rather than for a slip of the pen. Readers hold files to these limits, validate() what was
// made by hand, and the command its options. docs/formats.md says what each is about; where it names no source they
// are common practice.

// Both ends are allowed. unit is for messages and may be empty.
struct Limits {
  double low = 0.0;
  double high = 0.0;
  std::string_view unit = "";
};

namespace limits {

inline constexpr std::size_t longest_text = 1000;  // bytes of a name, a label, a source

// Of a course, in yards where nothing else is said.
inline constexpr int most_holes = 18;
inline constexpr std::size_t most_tees = 20;
inline constexpr std::size_t most_parts =
    200;  // doglegs, stretches of fairway, hazards of a hole; corners of a polygon
inline constexpr std::size_t fewest_corners = 3;
inline constexpr int lowest_par = 3;
inline constexpr int highest_par = 6;
inline constexpr Limits hole_length{40.0, 1000.0};
inline constexpr Limits along_hole{-200.0, 1300.0};  // from the longest tee
// Lengths of holes of par 3, 4, 5 and 6 for men and women together: Rules of Handicapping, appendix F (from memory). A
// hole that is a tenth beyond is read with advice.
inline constexpr Limits usual_length[] = {{40.0, 260.0}, {200.0, 490.0}, {370.0, 710.0}, {570.0, 1000.0}};
inline constexpr Limits half_width{0.0, 100.0};  // of a fairway
inline constexpr Limits green_extent{5.0, 100.0};
inline constexpr Limits from_line{0.0, 400.0};  // near and far edge of a hazard
inline constexpr Limits beside_line{-400.0, 400.0};
inline constexpr Limits moved{-1500.0, 1500.0};  // a hazard as a whole: from end to end of what may be said
inline constexpr Limits turn{-120.0, 120.0, "degrees"};
inline constexpr Limits rating_of_18_holes{50.0, 90.0};
inline constexpr Limits rating_of_9_holes{25.0, 45.0};
inline constexpr Limits rating_of_any_holes{25.0, 90.0};
inline constexpr Limits slope{55.0, 155.0};       // Slope Rating: USGA Course Rating System manual
inline constexpr double past_the_hole = 60.0;     // a hazard wholly beyond this is not on the hole
inline constexpr double beside_the_hole = 200.0;  // likewise
inline constexpr double least_area = 0.1;         // of a polygon, square yards

// Of a player, in yards where nothing else is said.
inline constexpr std::size_t most_clubs = 30;
inline constexpr Limits handicap_index{-10.0, 54.0};  // 54 is the highest, Rules of Handicapping (from memory)
inline constexpr Limits carry{5.0, 420.0};
// A driver that carries so many times what is typical of the Handicap Index is read with advice (common practice, no
// source).
inline constexpr Limits carry_of_typical{0.6, 1.5};
inline constexpr Limits roll{0.0, 150.0};
inline constexpr Limits carry_sd{0.1, 100.0};
inline constexpr double largest_carry_sd_share = 0.5;  // of the carry
inline constexpr Limits direction_sd{0.1, 30.0, "degrees"};
inline constexpr Limits direction_mean{-20.0, 20.0, "degrees"};
inline constexpr Limits poor_strike{0.0, 0.9};

// Of a baseline.
inline constexpr std::size_t fewest_rows = 2;
inline constexpr std::size_t most_rows = 2000;
inline constexpr Limits baseline_distance{0.0, 1000.0, "yards"};
inline constexpr Limits putt_distance{0.0, 300.0, "feet"};
inline constexpr Limits baseline_strokes{0.0, 20.0, "strokes"};

// Of a strike and of what it flies through. docs/formats.md, "The limits of a strike", says what each is about and why.
inline constexpr Limits club_speed{10.0, 160.0, "mph"};
inline constexpr Limits attack{-15.0, 15.0, "degrees"};
inline constexpr Limits dynamic_loft{0.0, 70.0, "degrees"};
inline constexpr Limits path{-30.0, 30.0, "degrees"};
inline constexpr Limits face{-30.0, 30.0, "degrees"};
inline constexpr Limits spin_loft{0.0, 80.0, "degrees"};
inline constexpr Limits fitted_loft{0.0, 10.0, "degrees"};
inline constexpr Limits ball_speed{1.0, 250.0, "mph"};
inline constexpr Limits launch{-30.0, 80.0, "degrees"};
inline constexpr Limits start{-60.0, 60.0, "degrees"};
inline constexpr Limits spin{0.0, 20000.0, "rpm"};
inline constexpr Limits axis_tilt{-90.0, 90.0, "degrees"};
inline constexpr Limits head_mass{0.1, 0.5, "kg"};
inline constexpr Limits restitution{0.0, 0.95};
inline constexpr Limits restitution_fall{0.0, 0.01, "in a m/s"};
inline constexpr Limits friction{0.0, 1.0};
inline constexpr Limits ball_mass{0.02, 0.1, "kg"};
inline constexpr Limits ball_radius{0.015, 0.03, "metres"};
inline constexpr Limits inertia_share{0.1, 0.7};
inline constexpr Limits grip_restitution{-1.0, 1.0};
inline constexpr Limits temperature{-20.0, 50.0, "degrees Celsius"};
inline constexpr Limits altitude{-500.0, 5000.0, "metres"};
inline constexpr Limits pressure{850.0, 1100.0, "hPa"};
inline constexpr Limits humidity{0.0, 1.0};
inline constexpr Limits wind{0.0, 25.0, "m/s"};
inline constexpr Limits wind_from{-360.0, 360.0, "degrees"};
inline constexpr Limits roughness{0.0, 1.0, "metres"};
inline constexpr Limits coefficient{-100.0, 100.0};
inline constexpr Limits wave_from{0.0, 1e9};
inline constexpr Limits wave_length{1.0, 1e9};
inline constexpr Limits lift_power{0.0, 100.0};
inline constexpr Limits spin_ratio{0.0, 100.0};
inline constexpr Limits spin_decay{0.0, 1e-3};
inline constexpr Limits turf_tilt{0.0, 90.0, "degrees"};
inline constexpr Limits turf_tilt_speed{1.0, 100.0, "m/s"};
inline constexpr Limits turf_tilt_angle{1.0, 90.0, "degrees"};
inline constexpr Limits turf_rolling{0.01, 10.0};
inline constexpr Limits flight_tolerance{1e-13, 1e-2};
inline constexpr int most_board_lines = 50;

// Of a shot log, in yards where nothing else is said; its speeds and angles are those of a strike and of a launch. A
// shot may be topped, so that its carry is none.
inline constexpr Limits shot_carry{0.0, 420.0};
inline constexpr Limits shot_total{0.0, 570.0};
inline constexpr Limits shot_offline{-420.0, 420.0};
inline constexpr std::size_t most_log_clubs = 200;
inline constexpr std::size_t most_log_sessions = 2000;

// Of a list of members, in yards where nothing else is said: no driver carries less, and none so much more.
inline constexpr std::size_t most_members = 5000;
inline constexpr Limits member_driver_carry{50.0, 400.0};

// Of a request; lengths in the course's units, so that a limit is a round number there.
inline constexpr Limits carry_change{-150.0, 150.0};  // no training and no club adds more
inline constexpr double least_carry_yd = 1.0;         // that a change leaves a club
inline constexpr double longest_carry_yd = 570.0;     // likewise
inline constexpr double least_carry_sd_yd = 0.01;
inline constexpr double least_direction_sd_deg = 0.01;
// Of spreads: nobody becomes surer than that, and who becomes three times as wild plays another game.
inline constexpr Limits spread_change{-90.0, 200.0, "percent"};
inline constexpr Limits poor_strike_change{-90.0, 90.0, "in 100 strikes"};
inline constexpr Limits direction_mean_change{-20.0, 20.0, "degrees"};
inline constexpr Limits curve_step{0.1, 150.0};
inline constexpr int most_curve_steps = 200;
inline constexpr Limits mark{20.0, 200.0};  // a score to break, of 9 or 18 holes
inline constexpr int most_threads = 1024;
inline constexpr int most_draws = 100000;  // of what was measured
inline constexpr int largest_seed = 1000000000;

// Of ways to spend money and hours; money is in whatever the options are written in.
inline constexpr std::size_t most_options = 20;
inline constexpr Limits option_doubt{0.0, 100.0, "percent"};  // of the change
inline constexpr Limits option_money{0.0, 1e7};
inline constexpr Limits option_hours{0.0, 1e5, "hours"};
inline constexpr Limits stroke_worth{0.01, 1e6};  // money for a stroke

}  // namespace limits
}  // namespace yardworth
