#pragma once

#include <string>
#include <vector>

namespace yardworth::test {

// A line of stored results: strokes before and after a change and their difference, of a hole or a round.
struct Figures {
  std::string name;  // such as gain/weekend-16-man/best/hole-07
  std::vector<double> values;
};

// As the file of results says them, a line each, and back. Lines of a text that begin with # are left out.
std::string write_figures(const std::vector<Figures>& all);
std::vector<Figures> read_figures(const std::string& text);

// What moved from the stored to the computed: a line for each number that did by more than tolerance, for each name
// that is not stored, and, with all_computed, for each that is stored and not computed.
struct Moves {
  std::vector<std::string> lines;
  double largest = 0.0;  // of all numbers, those within the tolerance too
};
Moves moves(const std::vector<Figures>& stored, const std::vector<Figures>& computed, double tolerance,
            bool all_computed);

}  // namespace yardworth::test
