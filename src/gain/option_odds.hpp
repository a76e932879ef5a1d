#pragma once

#include <array>
#include <cstddef>
#include <vector>

namespace yardworth {

// What an option saves where its change turns out so many standard deviations more or less than is said: at these, and
// between and beyond them as worth_at has it.
inline constexpr std::array<double, 5> odds_nodes = {-2.0, -1.0, 0.0, 1.0, 2.0};
using Response = std::array<double, odds_nodes.size()>;  // strokes saved at each

// Straight lines from node to node, the outer ones going on: what a habit is worth may jump.
double worth_at(const Response& response, double deviations);

// What an option saves in so many cases that are equally likely, the least first: the change is normal.
std::vector<double> equally_likely(const Response& response);

// Below which this share of the cases lies.
double quantile(const std::vector<double>& equally_likely, double share);

// With what probability each saves the most of all, where none depends on another; they sum to 1.
std::vector<double> best_probabilities(const std::vector<std::vector<double>>& equally_likely);

}  // namespace yardworth
