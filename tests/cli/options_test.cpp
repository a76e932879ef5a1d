#include "cli/options.hpp"

#include <doctest/doctest.h>

#include "cli/inputs.hpp"
#include "yardworth/read.hpp"

using namespace yardworth;
using namespace yardworth::cli;

TEST_CASE("the tees that are taken where none are named") {
  Course course;
  course.tees = {{"black", {}, {}, {}}};
  CHECK(default_tee(course, Gender::men) == 0);
  course.tees = {{"black", {}, {}, {}}, {"white", {}, {}, {}}};
  CHECK(default_tee(course, Gender::men) == 0);
  course.tees = {{"black", {}, {}, {}}, {"white", {}, {}, {}}, {"red", {}, {}, Gender::women}};
  CHECK(default_tee(course, Gender::men) == 1);
  CHECK(default_tee(course, Gender::women) == 2);
  course.tees[0].rated_for = Gender::men;
  CHECK(default_tee(course, Gender::men) == 0);
}

TEST_CASE("words to choose from, with the one that was most likely meant") {
  CHECK(expected_word("x", {"play"}) == "play");
  CHECK(expected_word("zzzzz", {"text", "json", "csv"}) == "text, json or csv");
  CHECK(expected_word("tabel", {"play", "table"}) == "play or table; the nearest is table");
}
