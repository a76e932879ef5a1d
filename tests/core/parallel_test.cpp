#include "core/parallel.hpp"

#include <doctest/doctest.h>

#include <atomic>
#include <stdexcept>
#include <vector>

namespace yardworth {

TEST_CASE("every piece is done once, on any number of threads") {
  for (const int threads : {0, 1, 2, 1000}) {
    CAPTURE(threads);
    std::vector<std::atomic<int>> done(500);
    work_in_parallel(threads, done.size(), [&](std::size_t i) { ++done[i]; });
    for (const auto& times : done) REQUIRE(times == 1);
  }
  work_in_parallel(0, std::size_t{0}, [](std::size_t) { FAIL("there is no piece"); });
}

TEST_CASE("the largest piece comes first, the first of two alike before the second") {
  std::vector<std::size_t> order;
  work_in_parallel(1, {2.0, 5.0, 3.0, 5.0}, [&](std::size_t i) { order.push_back(i); });
  CHECK(order == std::vector<std::size_t>{1, 3, 2, 0});
}

TEST_CASE("what a piece throws reaches who asked for the work") {
  for (const int threads : {1, 2}) {
    const auto work = [](std::size_t i) {
      if (i == 3) throw std::runtime_error("the third");
    };
    CHECK_THROWS_WITH_AS(work_in_parallel(threads, std::size_t{10}, work), "the third", std::runtime_error);
  }
}

}  // namespace yardworth
