#pragma once

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <iostream>

namespace yardworth::test {

// Checks a property on so many random cases, from a seed that is printed; RC_PARAMS of the environment goes before. The
// library itself reads its parameters once in a run of the program, so each property brings its own.
template <class Property>
void check_property(const char* what, std::uint64_t seed, int cases, Property property) {
  rc::detail::TestParams parameters = rc::detail::configuration().testParams;
  if (std::getenv("RC_PARAMS") == nullptr) {
    parameters.seed = seed;
    parameters.maxSuccess = cases;
  }
  std::printf("%s: RC_PARAMS=\"seed=%llu max_success=%d\"\n", what, static_cast<unsigned long long>(parameters.seed),
              parameters.maxSuccess);
  rc::detail::TestMetadata metadata;
  metadata.id = metadata.description = what;
  const auto result = rc::detail::checkTestable(property, metadata, parameters);
  const bool holds = result.template is<rc::detail::SuccessResult>();
  if (!holds) rc::detail::printResultMessage(result, std::cerr);
  CHECK(holds);
}

}  // namespace yardworth::test
