#pragma once

#include <string>

#include "yardworth/gain.hpp"

namespace yardworth::report {

// How many rounds it takes until a change shows, in words; empty with method table.

// In the scores, in one sentence; empty too where nothing is saved.
std::string shows_sentence(const GainResult& result);
// In the scores and in what the tee shots leave.
std::string until_it_shows_words(const GainResult& result);

}  // namespace yardworth::report
