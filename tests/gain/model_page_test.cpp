#include <doctest/doctest.h>

#include <sstream>
#include <string>
#include <vector>

#include "gain/strokes_variance.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

struct Row {
  double expected = 0.0;
  double variance = 0.0;
};

// The rows of the table of docs/model.md, "Spread of the score": none where its head is not on the page.
std::vector<Row> rows_of_page() {
  std::istringstream page(test::text_of("docs/model.md"));
  std::string line;
  while (std::getline(page, line) && line != "| `J` | variance |") {
  }
  std::getline(page, line);  // the rule under the head
  std::vector<Row> rows;
  while (std::getline(page, line)) {
    std::istringstream cells(line);
    char bar = ' ';
    Row row;
    if (!(cells >> bar >> row.expected >> bar >> row.variance >> bar)) break;
    rows.push_back(row);
  }
  return rows;
}

// The page is how a reader rebuilds the model: it has to say what the code does. The second road is the page itself;
// whether the numbers are right is for hole_play_test.cpp, where strokes are drawn.
TEST_CASE("the page of the model has the variances of the short game as they are") {
  const std::vector<Row> rows = rows_of_page();
  REQUIRE(rows.size() >= 2);
  CHECK(rows.front().expected == 1.0);
  for (const Row& row : rows) {
    CAPTURE(row.expected);
    CHECK(short_game_variance(row.expected) == doctest::Approx(row.variance).epsilon(1e-12));
  }
  // Straight lines between the rows, so that no knot of the code is missing from the page.
  for (std::size_t i = 1; i < rows.size(); ++i) {
    const Row& a = rows[i - 1];
    const Row& b = rows[i];
    CAPTURE(a.expected);
    CHECK(b.expected > a.expected);
    for (const double share : {0.25, 0.5, 0.75}) {
      const double between = a.variance + share * (b.variance - a.variance);
      const double expected = a.expected + share * (b.expected - a.expected);
      CHECK(short_game_variance(expected) == doctest::Approx(between).epsilon(1e-12));
    }
  }
  // The last line goes on beyond them.
  const Row& last = rows.back();
  const Row& before = rows[rows.size() - 2];
  const double slope = (last.variance - before.variance) / (last.expected - before.expected);
  CHECK(short_game_variance(last.expected + 2.0) == doctest::Approx(last.variance + 2.0 * slope).epsilon(1e-12));
}

}  // namespace
}  // namespace yardworth
