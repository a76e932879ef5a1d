#pragma once

#include <string>
#include <vector>

#include "report/sentence_words.hpp"
#include "yardworth/change.hpp"
#include "yardworth/gain.hpp"

namespace yardworth::report {

// What reports say of a change that may be of more than carry.

// "20 more yards of driver carry, with 6 more in the irons, and 10% less spread of direction". There is something.
Subject change_subject(const Change& change, Units units);

// Where strokes come from: "the longer tee shot", "the longer irons", "fewer poor strikes".
std::string step_source(const Change& change, ChangeStep step);

// What the numbers of its wider steps rest on, each a sentence; none of carry alone.
std::vector<std::string> wider_change_words(const GainResult& result);

}  // namespace yardworth::report
