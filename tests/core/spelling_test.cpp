#include "core/spelling.hpp"

#include <doctest/doctest.h>

namespace yardworth {

TEST_CASE("a misspelt word is most likely the nearest one, if any is near") {
  const std::vector<std::string> words = {"bunker", "penalty_area", "out_of_bounds", "trees"};
  CHECK(nearest_word("bunkr", words) == "bunker");
  CHECK(nearest_word("BUNKER", words) == "bunker");
  CHECK(nearest_word("tress", words) == "trees");
  // Two neighbours swapped are one slip, not two: F. J. Damerau, "A technique for computer detection and correction of
  // spelling errors", Communications of the ACM 7(3), 1964 (from memory).
  CHECK(nearest_word("tere", {"tree"}) == "tree");
  CHECK(nearest_word("water", words) == "penalty_area");
  CHECK_FALSE(nearest_word("water", {"bunker", "trees"}).has_value());
  CHECK_FALSE(nearest_word("", words).has_value());
  CHECK_FALSE(nearest_word(std::string(41, 'b'), words).has_value());
  CHECK_FALSE(nearest_word("bunkr", {}).has_value());
}

}  // namespace yardworth
