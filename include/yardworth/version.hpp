#pragma once

#include <string_view>

// The version, said here and nowhere else: CMake reads these three numbers, the command prints them. Macros, so that a
// program that uses the library can choose by #if. A new minor version may break what an older one offered, until 1.0.
#define YARDWORTH_VERSION_MAJOR 0
#define YARDWORTH_VERSION_MINOR 1
#define YARDWORTH_VERSION_PATCH 0

// The preprocessor fills in a number only where it passes through one macro more.
#define YARDWORTH_TEXT_OF(number) #number
#define YARDWORTH_NUMBER_TEXT(number) YARDWORTH_TEXT_OF(number)

namespace yardworth {

inline constexpr std::string_view version = YARDWORTH_NUMBER_TEXT(YARDWORTH_VERSION_MAJOR) "." YARDWORTH_NUMBER_TEXT(
    YARDWORTH_VERSION_MINOR) "." YARDWORTH_NUMBER_TEXT(YARDWORTH_VERSION_PATCH);

}  // namespace yardworth

#undef YARDWORTH_TEXT_OF
#undef YARDWORTH_NUMBER_TEXT
