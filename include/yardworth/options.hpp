#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/change.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/player.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// What says an option's change in the place of numbers: one of a second player file, logs, and strikes.
struct ChangeSource {
  std::string after;                       // a player file with the same clubs, by its name
  std::vector<std::string> logs;           // shot logs before and after by their names, or one
  std::vector<std::string> sessions;       // of one log: two sessions of it
  bool skip_bad_rows = false;              // of logs: those that can be read are used without them
  std::map<std::string, double> from, to;  // the driver's strike, and what is different afterwards; keys and
                                           // units of `delivery`
  std::optional<double> irons;             // beside strikes, in the file's units
  Diagnostic place;                        // where the file says so: what a fault of it begins with
};

// A way to spend money and hours on one's golf, as an options file has it: docs/formats.md.
struct Option {
  std::string name;
  Change change;
  std::optional<std::string> tee;  // played from in place of the others
  // How sure the change is: in 9 cases of 10 it is no further from what is said than this share of itself.
  std::optional<double> doubt;
  double money = 0.0;  // in whatever money the file is written in
  double hours = 0.0;
  std::optional<ChangeSource> source = {};  // of change and draws, which work_out_changes makes of it
  std::vector<Change> draws = {};           // of a change that was measured: what it may be as well, equally likely
};

// What a change is taken to be sure to where nothing is said (our assumption).
inline constexpr double assumed_doubt = 0.5;

struct OptionsFile {
  Units units = Units::yards;  // that its lengths are in; here they are yards
  std::vector<Option> options;
};

// Draws that are made of a measured change where nobody says how many.
inline constexpr int default_draws = 200;

// As the readers of read.hpp.
Reading<OptionsFile> read_options(std::string_view text, const std::string& file);

// The text of a file by the name that an options file has it by, or why it cannot be read; longer ones are refused.
using TextOfFile = std::function<Reading<std::string>(const std::string& name, std::size_t most_bytes)>;

// Works out the changes that have a source, for this golfer, with so many draws of those that were measured, 2 to
// limits::most_draws. Every fault, and advice about logs, in the order of the options; where there is a fault some
// changes are still to be worked out.
std::vector<Diagnostic> work_out_changes(OptionsFile& file, const Player& player, const TextOfFile& text_of,
                                         int draws = default_draws);

}  // namespace yardworth
