#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/diagnostics.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// Shots as they were measured, on a range or on a course: a table of text (CSV), one shot a row. docs/formats.md, "A
// shot log", has its columns.

// One shot. What the log does not say of it is missing. Right of the target line is positive.
struct Shot {
  int line = 0;             // of the file, from 1
  std::size_t club = 0;     // index into ShotLog::clubs
  std::size_t session = 0;  // index into ShotLog::sessions
  double carry_yd = 0.0;    // from the start to where the ball lands, >= 0
  std::optional<double> total_yd;
  std::optional<double> offline_yd;  // of where it lands; no more than the carry to either side
  std::optional<double> club_speed_mps, ball_speed_mps;
  std::optional<double> launch_rad, spin_radps;
  std::optional<double> attack_rad, dynamic_loft_rad, path_rad, face_rad;
};

struct ShotLog {
  std::string file;                   // as the user named it
  Units units = Units::yards;         // of the column of carries
  std::vector<std::string> clubs;     // as first written, in the order of the file; capitals, blanks and dashes aside
  std::vector<std::string> sessions;  // likewise; one without a name where the log has none
  std::vector<Shot> shots;
  std::size_t skipped_rows = 0;  // that could not be read
};

// What becomes of rows that cannot be read: the log is refused, or is used without them. Either way each is a finding,
// a fault or advice.
enum class BadRows { refused, skipped };

// Every fault of the log at once, by line and column; the log is there only when there is none.
Reading<ShotLog> read_shot_log(std::string_view text, const std::string& file, BadRows bad_rows = BadRows::refused);

// The shots of one session of a log, or of one club, by their names; nothing where the log has none of that name.
std::optional<ShotLog> shots_of_session(const ShotLog& log, std::string_view session);
std::optional<ShotLog> shots_of_club(const ShotLog& log, std::string_view club);

// A shot log may be longer than our other files: a million shots.
inline constexpr std::size_t largest_log_bytes = 256u << 20;

// A club's name, or a session's, as names are told apart: small letters, and neither blanks nor dashes.
std::string plain_name(std::string_view name);

}  // namespace yardworth
