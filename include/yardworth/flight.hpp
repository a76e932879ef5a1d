#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/diagnostics.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

// What a strike does in the air and on the ground it comes down to: docs/model.md, "Impact" to "What a strike gives
// away". Everything here is in SI units and radians; a name says its unit. Right of the line, an open face, a path to
// the right and an attack upwards are positive, for a right-hander and a left-hander's mirror image alike. Strikes off
// the middle of the face are not modelled.

namespace yardworth {

// How the club head meets the ball.
struct Delivery {
  double club_speed_mps = 0.0;
  double attack_rad = 0.0;        // of the head's path, upwards
  double dynamic_loft_rad = 0.0;  // of the face at impact, against the vertical
  double path_rad = 0.0;          // of the head's path, to the right
  double face_rad = 0.0;          // of the face at impact, to the right
};

// Of the speed along the face normal: at_rest - fall_per_mps x that speed.
struct Restitution {
  double at_rest = 0.83;
  double fall_per_mps = 0.0;
};

struct ClubHead {
  double mass_kg = 0.204;
  Restitution restitution;
  double friction = 0.40;  // of ball on face
};

// The heaviest and smallest that the rules allow; inertia = inertia_share x mass x radius^2.
struct Ball {
  double mass_kg = 0.04593;
  double radius_m = 0.021335;
  double inertia_share = 0.4;
};

// Tangential restitution of a ball that grips the face and springs back: a straight line in the spin loft, kept within
// two bounds. With all of it zero the ball leaves the face rolling.
struct Grip {
  double at_reference = -0.22;
  double reference_rad = radians(11.6);
  double rise_per_rad = 0.0126 / radians(1.0);
  double least = -0.30;
  double most = 0.25;
};

// The ball as it leaves the face.
struct Launch {
  double ball_speed_mps = 0.0;
  double smash_factor = 0.0;   // ball speed / club head speed
  double spin_loft_rad = 0.0;  // between the face normal and the head's path
  double launch_rad = 0.0;     // upwards
  double start_rad = 0.0;      // to the right
  double spin_radps = 0.0;
  double axis_tilt_rad = 0.0;  // of the spin axis; positive bends the flight to the right
};

// Coefficients of drag and lift against the spin ratio S = spin x radius / speed, data that can be exchanged:
//   C_D = sum drag[i] S^i + drag_wave sin(pi (Re - wave_from) / wave_length)
//   C_L = sum lift[i] S^i + lift_factor S^lift_power
// S is kept within the range of the measurements, but for lift below it, which falls to 0 with S.
struct Aerodynamics {
  std::string_view source;
  std::array<double, 5> drag{};
  std::array<double, 5> lift{};
  double drag_wave = 0.0, wave_from = 0.0, wave_length = 1.0;
  double lift_factor = 0.0, lift_power = 1.0;
  double least_spin_ratio = 0.0, most_spin_ratio = 10.0;
  double spin_decay = 0.0;  // d spin / dt = -spin_decay (density / 1.2) speed spin / radius
};
Aerodynamics naruo_2004();  // what is used unless another set is given
Aerodynamics smits_smith_1994();

struct Air {
  double temperature_c = 25.0;
  double altitude_m = 0.0;
  double pressure_hpa = 1013.25;  // reduced to sea level, as it is told in weather reports
  double humidity = 0.5;          // relative, 0 to 1
};
double air_density(const Air& air);  // kg/m^3

// Level, at its full speed 10 m up, as it is told in weather reports, and slower below. Without roughness the same at
// all heights.
struct Wind {
  double speed_mps = 0.0;
  double from_rad = 0.0;  // where it blows from: 0 from ahead, pi / 2 from the right, pi from behind
  double roughness_m = 0.03;
};
// The speed at a height, as a share of that at 10 m.
double wind_share(const Wind& wind, double height_m);
double headwind_mps(const Wind& wind);         // the part along the target line, 10 m up; negative from behind
double wind_from_right_mps(const Wind& wind);  // the part across it; negative from the left
Wind without_side_wind(const Wind& wind);      // the part along the target line alone

// What a ball bounces and rolls on. Tilt stands for the turf that gives way in front of the ball.
struct Turf {
  std::string_view name = "firm";
  double restitution_at_rest = 0.510;
  double restitution_fall = 0.0375;    // per m/s
  double restitution_bend = 0.000903;  // per (m/s)^2
  double restitution_fast = 0.120;     // beyond 20 m/s
  double tilt_rad = radians(15.4);     // of a ball of tilt_speed_mps that comes in tilt_angle_rad from the vertical
  double most_tilt_rad = radians(45.0);
  double tilt_speed_mps = 18.6;
  double tilt_angle_rad = radians(44.4);
  double friction = 0.40;
  double rolling = 0.131;
};
Turf soft_turf();
Turf normal_turf();
Turf firm_turf();

// Carries are right to 0.0003 yards with it (docs/performance.md, "Tolerances and thresholds").
inline constexpr double usual_flight_tolerance = 1e-6;

// Everything that is not the delivery.
struct FlightConditions {
  Air air;
  Wind wind;
  Turf turf = normal_turf();
  Aerodynamics aerodynamics = naruo_2004();
  Ball ball;
  Grip grip;
  double tolerance = usual_flight_tolerance;  // of the integration, m and m/s and their shares
};

struct Flight {
  Launch launch;
  double carry_m = 0.0;    // over the ground from the start to where the ball lands, level with it
  double offline_m = 0.0;  // of that place, right of the target line
  double curve_m = 0.0;    // of that place, right of the line on which the ball started
  double apex_m = 0.0;
  double landing_rad = 0.0;  // below the level
  double landing_speed_mps = 0.0;
  double hang_time_s = 0.0;
  double run_m = 0.0;    // total - carry; negative where the ball comes back
  double total_m = 0.0;  // over the ground from the start to where the ball comes to rest
  double total_offline_m = 0.0;
};

// Faults, empty where there are none: each with the range that is allowed. A finding's path is the value's name in mph,
// degrees and the like, as in "attack_deg".
std::vector<Diagnostic> validate(const Delivery& delivery);
std::vector<Diagnostic> validate(const ClubHead& head);
std::vector<Diagnostic> validate(const Launch& launch);
std::vector<Diagnostic> validate(const FlightConditions& conditions);

// The functions from here on that fly a ball or look for a delivery throw InvalidRequest where validate finds a fault
// in what they are given. Those that only tell what is typical of a club, typical_clubs to attainable, look at nothing.

Launch launch_of(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions = {});
Flight fly(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions = {});
Flight fly(const Launch& launch, const FlightConditions& conditions);

// ---- Clubs

// A club as it is typically struck.
struct TypicalClub {
  std::string_view name;
  ClubHead head;
  double speed_share = 1.0;  // of the driver's club head speed
  double attack_rad = 0.0;
  double dynamic_loft_rad = 0.0;
  bool teed = false;
};
std::vector<TypicalClub> typical_clubs();  // driver to pitching wedge
std::optional<TypicalClub> typical_club(std::string_view name);
inline constexpr double usual_driver_speed_mph = 94.0;  // of a club golfer; common practice, no source
// Straight, by a golfer of that driver speed.
Delivery typical_delivery(const TypicalClub& club, double driver_speed_mps);

// ---- What a strike gives away

// What an ordinary golfer can learn with a club, radians: the limits within which the best delivery is looked for.
// Where a delivery is outside already, they are widened to hold it.
struct Attainable {
  Limits attack, dynamic_loft, path, face;
};
Attainable attainable(const TypicalClub& club);
std::vector<Diagnostic> validate(const Attainable& limits);

struct DeliveryFlight {
  Delivery delivery;
  Flight flight;
};
// The most carry at the same club head speed. In still air none gains by bending; in wind the most may be bent.
DeliveryFlight most_carry(double club_speed_mps, const ClubHead& head, const FlightConditions& conditions,
                          const Attainable& limits);
// The most carry with the delivery as it is but for the dynamic loft, within limits.
DeliveryFlight best_loft(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions,
                         const Limits& dynamic_loft);

enum class DeliveryAngle { dynamic_loft, attack, path, face };
std::string_view name(DeliveryAngle angle);  // "dynamic_loft"

// What one angle gives away, metres of carry, in the air without the wind from the side.
struct Loss {
  DeliveryAngle of = DeliveryAngle::dynamic_loft;
  double own_rad = 0.0, best_rad = 0.0;  // of the delivery, and of the best delivery
  double alone_m = 0.0;  // gained with this angle at its best within limits and the others as they are; never negative
  double in_turn_m = 0.0;  // gained when it is brought to best_rad after those before it in the list
};
// In the air as it is but for the wind from the side: across it a bent flight can be carried further than a straight
// one.
struct Losses {
  DeliveryFlight own, best;
  std::array<Loss, 4> losses;  // in the order in which each gains most after those before it
  double together_m = 0.0;     // the best carry less the own one: the sum of in_turn_m
};
Losses losses_of(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions,
                 const Attainable& limits);

// What a new head could give with the delivery as it is, in the air as it is.
struct NewHead {
  Restitution restitution;                 // what the rules allow a driver, unless said
  double most_fitting_rad = radians(2.0);  // of its loft, up or down
};
struct NewHeadGain {
  double restitution_m = 0.0;  // of carry, by the restitution alone
  double loft_m = 0.0;         // by the fitted loft alone
  double together_m = 0.0;
  double dynamic_loft_rad = 0.0;  // that comes of the fitted loft
};
std::vector<Diagnostic> validate(const NewHead& new_head);
NewHeadGain new_head_gain(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions,
                          const NewHead& new_head = {});

// ---- Board

struct BoardCell {
  double club_speed_mps = 0.0;
  double attack_rad = 0.0;
  double dynamic_loft_rad = 0.0;  // that carries furthest
  double carry_m = 0.0, total_m = 0.0;
};
// A row for each speed, in it a cell for each attack angle; all straight.
std::vector<std::vector<BoardCell>> board(const std::vector<double>& club_speeds_mps,
                                          const std::vector<double>& attacks_rad, const ClubHead& head,
                                          const FlightConditions& conditions, const Limits& dynamic_loft);

// ---- All of it

struct DeliveryRequest {
  TypicalClub club;
  Delivery delivery;
  std::optional<Delivery> after;  // another one to set beside it
  FlightConditions conditions;
  // Of the board, at most limits::most_board_lines each; nothing of it where either is empty.
  std::vector<double> board_speeds_mps, board_attacks_rad;
};

// Asks for a board where nothing else is said: speeds around the delivery's own, on whole steps, and attack angles
// evenly over what can be learned with the club. Common practice, no source.
inline constexpr double usual_board_step_mph = 5.0;
inline constexpr int usual_board_steps_either_way = 3;
inline constexpr int usual_board_attacks = 5;
void ask_for_usual_board(DeliveryRequest& request);

// A driver's face gains from a head a little below what the rules allow, typical of one that is not new, to one at it.
inline constexpr double older_restitution = 0.815;

struct DeliveryResult {
  TypicalClub club;
  FlightConditions conditions;
  Attainable limits;  // as they were before the delivery widened them
  Losses losses;      // the delivery is its own, the best its best
  // The delivery, its best and the one set beside it, in the air as it is.
  DeliveryFlight own, best;
  std::optional<DeliveryFlight> after;
  // Of a driver only: its restitution from an older head's.
  std::optional<NewHeadGain> new_head;
  std::vector<std::vector<BoardCell>> board;
};
DeliveryResult compute_delivery(const DeliveryRequest& request);

}  // namespace yardworth
