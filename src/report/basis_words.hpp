#pragma once

#include <string>
#include <vector>

#include "yardworth/gain.hpp"

namespace yardworth::report {

// "the driver misses 8 degrees to the right on average, the 7-iron 2 degrees to the left"; there is one at least.
std::string miss_words(const std::vector<SideMiss>& misses);

// What numbers rest on and what a reader is to bear in mind, each a sentence, in the units of the course.
std::string note_words(const Note& note, Units units);
std::string caution_words(const Caution& caution);

std::vector<std::string> all_note_words(const std::vector<Note>& notes, Units units);
// The same behind what a report says before all else.
std::vector<std::string> opening_and_notes(std::vector<std::string> opening, const std::vector<Note>& notes,
                                           Units units);
std::vector<std::string> all_caution_words(const std::vector<Caution>& cautions);

}  // namespace yardworth::report
