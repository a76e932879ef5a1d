#pragma once

#include <string>

#include "yardworth/change.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

// What a sentence is about, and whether the verb behind it ends with an s.
struct Subject {
  std::string text;
  bool singular = true;
};

// "20 more yards of driver carry, with 6 more in the irons,".
Subject carry_subject(const DistanceChange& change, Units units);

// A name of a file as a sentence has it: safe for a terminal, and no longer than a sentence can bear.
std::string shown_name(const std::string& text);

// Sessions of a log that are taken together, by name: "may, june and 3 more".
std::string session_names(const std::vector<std::string>& sessions);

}  // namespace yardworth::report
