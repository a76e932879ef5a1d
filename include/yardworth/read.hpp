#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/options.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Readers of our files. Every fault of the file is reported at once; the value is there only when there is none.
// docs/formats.md is the contract. `file` is how findings name the text.

Reading<Course> read_course(std::string_view text, const std::string& file);
Reading<Player> read_player(std::string_view text, const std::string& file);
Reading<BaselineTable> read_baseline(std::string_view text, const std::string& file);

// A club's list of members: a table of text (CSV), one member a row. At least one, and no more than
// limits::most_members.
Reading<std::vector<Member>> read_members(std::string_view text, const std::string& file);

// A table as the text of a file that read_baseline reads back to the same table.
std::string write_baseline(const BaselineTable& table);

// Whichever of our files it is, by its `format:` line.
using AnyFile = std::variant<Course, Player, BaselineTable, OptionsFile>;
Reading<AnyFile> read_any(std::string_view text, const std::string& file);

// Every fault of a course, a player or a table that was made or changed in memory, all at once; empty where there is
// none. The limits are those of files (limits.hpp): what a reader gives has no faults. A finding's file is "course",
// "player" or "baseline", and its path is that of the key in a file, as in "holes[3].hazards[1].from".
//
// One thing is allowed that no file may have: any number of holes from 1 to 18, for questions about some of them.

std::vector<Diagnostic> validate(const Course& course);
std::vector<Diagnostic> validate(const Player& player);
std::vector<Diagnostic> validate(const BaselineTable& table);

// What a round is played with where nothing is said: the first tee marked for this gender, otherwise the middle one of
// the list (the longer of two), and the baseline of the player's Handicap Index, or of the band where there is none.
std::size_t default_tee(const Course& course, Gender gender);
Baseline default_baseline(const Player& player);

// The file's bytes, or a finding: not there, a directory, larger than most_bytes, unreadable.
inline constexpr std::size_t largest_file_bytes = 4u << 20;
Reading<std::string> read_text(const std::string& path, std::size_t most_bytes = largest_file_bytes);

}  // namespace yardworth
