#pragma once

namespace yardworth::test {

// Sanitizers slow everything about ten times: what is repeated for the sake of numbers alone is repeated less then.
#ifdef YARDWORTH_SANITIZED  // by the build: compilers tell it in ways of their own
inline constexpr bool sanitized = true;
#else
inline constexpr bool sanitized = false;
#endif

constexpr int repeats(int in_full) { return sanitized ? (in_full + 19) / 20 : in_full; }

}  // namespace yardworth::test
