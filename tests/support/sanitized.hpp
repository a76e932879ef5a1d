#pragma once

// GCC says by a macro that the address sanitizer is at work, clang by a feature.
#if defined(__SANITIZE_ADDRESS__)
#define YARDWORTH_SANITIZED 1
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
#define YARDWORTH_SANITIZED 1
#endif
#endif

namespace yardworth::test {

// Sanitizers slow everything about ten times: what is repeated for the sake of numbers alone is repeated less then.
#ifdef YARDWORTH_SANITIZED
inline constexpr bool sanitized = true;
#else
inline constexpr bool sanitized = false;
#endif

constexpr int repeats(int in_full) { return sanitized ? (in_full + 19) / 20 : in_full; }

}  // namespace yardworth::test
