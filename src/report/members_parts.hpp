#pragma once

#include <string>

#include "yardworth/members.hpp"

namespace yardworth::report {

// What the reports of members say alike.

const MemberOnTee& on_usual_tee(const MemberResult& member);
// Whether the member gets round from there.
bool finishes(const MemberResult& member);

// The Handicap Index as golfers write it: "16.4", "+1.2".
std::string index_words(double index);

}  // namespace yardworth::report
