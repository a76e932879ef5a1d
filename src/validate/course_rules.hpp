#pragma once

#include <optional>
#include <string>
#include <vector>

#include "validate/tell.hpp"
#include "yardworth/course.hpp"

namespace yardworth {

// What the tees of a course have to be beside each other, for readers and validate() alike.

// Of a Course Rating, by the number of holes that it is for.
const Limits& rating_limits(std::size_t holes);

// That no two tees have the same name; empty ones were told before.
void check_tees_differ(const std::vector<Tee>& tees, const TellOf& tell_of);

// totals_yd: the length of the course from each tee, where it is known.
void check_longest_first(const std::vector<std::string>& tees, const std::vector<std::optional<double>>& totals_yd,
                         Units units, const TellOf& tell_of);

}  // namespace yardworth
