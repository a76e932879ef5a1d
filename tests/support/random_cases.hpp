#pragma once

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace yardworth::test {

// Checks a property on so many random cases, from a seed that is printed; RC_PARAMS of the environment goes before.
template <class Property>
void check_property(const char* what, int seed, int cases, Property property) {
  const bool given = std::getenv("RC_PARAMS") != nullptr;
  const std::string parameters = "seed=" + std::to_string(seed) + " max_success=" + std::to_string(cases);
  setenv("RC_PARAMS", parameters.c_str(), 0);
  std::printf("rapidcheck: RC_PARAMS=\"%s\"\n", std::getenv("RC_PARAMS"));
  CHECK(rc::check(what, property));
  if (!given) unsetenv("RC_PARAMS");
}

}  // namespace yardworth::test
