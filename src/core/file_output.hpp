#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "yardworth/diagnostics.hpp"

namespace yardworth {

// What is found where a file exists and there is no leave to replace it.
inline constexpr const char* existing_file = "a file that exists";

// Writes bytes to path as a whole or not at all: to a temporary name beside it, flushed to the disk, then renamed.
// An existing file is replaced only with replace, and keeps its permissions; a symbolic link to a file stays a link.
// Gives a finding, with the target untouched and nothing left beside it, when the target exists (without replace), is
// not an ordinary file, or cannot be written.
std::optional<Diagnostic> write_file(const std::string& path, std::string_view bytes, bool replace);

// Whether write_file could write there, told before there is anything to write: the same findings, but for what only
// the attempt shows (a full disk, a folder that changes meanwhile).
std::optional<Diagnostic> refuse_target(const std::string& path, bool replace);

}  // namespace yardworth
