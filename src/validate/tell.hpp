#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/diagnostics.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// How a rule says that something is against it: the key at fault, as files have it ("from"; empty for the thing as a
// whole), what is there and what should be there. A reader turns the key into a place of its file.
using Tell = std::function<void(std::string_view key, std::string found, std::string expected)>;

// Tells of the things of a list, each by its index.
using TellOf = std::function<Tell(std::size_t index)>;

// Faults of a thing that has no file; name stands for it.
Tell tell_into(std::vector<Diagnostic>& findings, std::string name);
// Of a part of the thing: "from" told to it is told on as "hazards[1].from".
Tell below(Tell tell, std::string path);
Tell below(Tell tell, std::string_view list, std::size_t index);

// What is said of a required key that is not there.
inline constexpr const char* missing_key = "nothing: the required key is missing";

std::string spoken(double yards, Units units);      // "230 yards"
std::string bounds(const Limits& limits);           // "from 40 to 1000 yards"
std::string percent_words(const Limits& limits);    // "a percentage from -90% to 200%, such as -10%"
Limits in_units(const Limits& yards, Units units);  // for a message

// Each tells and gives false where the value is not within its limits (NaN never is), but for what the conversion of
// a length to yards and back may have changed of it.
bool check_number(double value, const Limits& limits, std::string_view key, const Tell& tell);
bool check_whole(int value, int low, int high, std::string_view key, const Tell& tell);
bool check_length(double yards, const Limits& limits_yd, Units units, std::string_view key, const Tell& tell);
bool check_count(std::size_t count, std::size_t least, std::size_t most, std::string_view of_what, std::string_view key,
                 const Tell& tell);
bool check_text(const std::string& text, std::string_view key, const Tell& tell);

}  // namespace yardworth
