#pragma once

#include <cstdio>
#include <cstdlib>

namespace yardworth::fuzz {

// A promise that the input broke is a crash, which is what the fuzzer looks for.
inline void promise(bool kept, const char* what) {
  if (kept) return;
  std::fprintf(stderr, "broken promise: %s\n", what);
  std::abort();
}

}  // namespace yardworth::fuzz
