#include "course/ground.hpp"

#include <doctest/doctest.h>

#include <sstream>
#include <string>
#include <vector>

#include "course/hazard_kind.hpp"
#include "course/set_up.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

using Cells = std::vector<std::string>;

std::string trimmed(const std::string& text) {
  const std::size_t first = text.find_first_not_of(" `");
  if (first == std::string::npos) return "";
  return text.substr(first, text.find_last_not_of(" `") + 1 - first);
}

Cells cells_of(const std::string& line) {
  Cells cells;
  std::istringstream parts(line.substr(1));
  for (std::string cell; std::getline(parts, cell, '|');) cells.push_back(trimmed(cell));
  return cells;
}

// The rows of the table of a page that has this head; none where there is no such table.
std::vector<Cells> table_of_page(const std::string& page, const std::string& head) {
  std::istringstream lines(test::text_of(page));
  std::string line;
  while (std::getline(lines, line) && line != head) {
  }
  std::getline(lines, line);  // the rule under the head
  std::vector<Cells> rows;
  while (std::getline(lines, line) && !line.empty() && line.front() == '|') rows.push_back(cells_of(line));
  return rows;
}

std::string words(Penalty penalty) {
  switch (penalty) {
    case Penalty::none:
      return "nothing";
    case Penalty::drop:
      return "a stroke and a drop";
    case Penalty::stroke_and_distance:
      return "a stroke and the distance";
  }
  return "";
}

// The pages are how a reader knows what the model does. The second road is the pages themselves.
TEST_CASE("the page of the model has the table of grounds, in the order in which they count") {
  const std::vector<Cells> rows = table_of_page("docs/model.md", "| ground | a ball on it costs | lie | roll |");
  REQUIRE(rows.size() == ground_count);
  for (std::size_t i = 0; i < ground_count; ++i) {
    const GroundFacts& facts = ground_table[i];
    CAPTURE(facts.name);
    REQUIRE(rows[i].size() == 4);
    CHECK(rows[i][0] == facts.name);
    CHECK(rows[i][1] == words(facts.penalty));
    if (!facts.lie) {
      CHECK(rows[i][2] == "");
      continue;
    }
    CHECK(rows[i][2] == name(*facts.lie));
    CHECK(std::stod(rows[i][3]) == facts.roll);
  }
}

TEST_CASE("the page of the model has what firmness does to the roll") {
  const std::vector<Cells> rows = table_of_page("docs/model.md", "| firmness | roll |");
  REQUIRE(rows.size() == firmness_count);
  for (const Cells& row : rows) {
    const auto firmness = firmness_named(row[0]);
    REQUIRE(firmness.has_value());
    CHECK(std::stod(row[1]) == facts_of(*firmness).roll);
  }
}

TEST_CASE("the page of files has the kinds of hazard and what they may leave out") {
  const std::vector<Cells> rows = table_of_page("docs/formats.md", "| `kind` | ground | `near` | `far` |");
  REQUIRE(rows.size() == hazard_kind_count);
  for (const Cells& row : rows) {
    CAPTURE(row[0]);
    const auto kind = hazard_kind_named(row[0]);
    REQUIRE(kind.has_value());
    CHECK(row[1] == name(facts_of(*kind).ground));
    CHECK(std::stod(row[2]) == default_near_yd(*kind));
    const bool to_the_end = row[3] == "150";
    if (to_the_end) {
      CHECK(default_far_yd(*kind, 25.0) == 150.0);
      CHECK(default_far_yd(*kind, 145.0) == 157.0);
    } else {
      REQUIRE(row[3].substr(0, 8) == "near` + ");
      CHECK(default_far_yd(*kind, 25.0) == 25.0 + std::stod(row[3].substr(8)));
    }
  }
}

TEST_CASE("grounds and kinds have names of their own") {
  for (std::size_t i = 0; i < ground_count; ++i) {
    for (std::size_t j = 0; j < i; ++j) CHECK(ground_table[i].name != ground_table[j].name);
  }
  for (const HazardKind kind : all_hazard_kinds) CHECK(hazard_kind_named(name(kind)) == kind);
}

}  // namespace
}  // namespace yardworth
