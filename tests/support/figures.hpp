#pragma once

#include <cstdio>
#include <string>

namespace yardworth::test {

// One line for a published figure, on standard output: "what: published 1.27, computed 1.20, difference -0.07".
inline void print_figure(const std::string& what, double published, double computed) {
  std::printf("%s: published %.3f, computed %.3f, difference %+.3f\n", what.c_str(), published, computed,
              computed - published);
}

}  // namespace yardworth::test
