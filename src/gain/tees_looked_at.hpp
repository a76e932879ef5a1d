#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "yardworth/bands.hpp"

namespace yardworth {

// The tees of a question about many golfers, and which of them suits one.

inline constexpr std::size_t longest_tee = 0;  // courses list their tees longest first

// Those asked for, or all.
std::vector<std::size_t> tees_or_all(const Course& course, const std::vector<std::size_t>& wanted);
std::vector<TeeOfBands> describe_tees(const Course& course, const std::vector<std::size_t>& tees);

// Which tee suits by its length; nothing of one tee.
std::optional<std::size_t> tee_by_length(const RecommendedLength& recommended, const std::vector<TeeOfBands>& tees);
// The tee whose second shots are least apart from the scratch golfer's (BandOnTee::clubs_apart); nothing of one tee, or
// where no tee has a number.
std::optional<std::size_t> tee_by_clubs(const std::vector<std::optional<double>>& clubs_apart);

}  // namespace yardworth
