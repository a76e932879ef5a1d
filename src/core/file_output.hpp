#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/diagnostics.hpp"

namespace yardworth {

// What is found where a file exists and there is no leave to replace it.
inline constexpr const char* existing_file = "a file that exists";

// Why a file is not written.
struct OutputRefusal {
  Diagnostic finding;
  // The name would do, but the system does not: no permission, a full disk, a limit on file sizes. Otherwise the name
  // itself is at fault.
  bool by_system = false;
};

// How the bytes stand until they are whole: in a file without a name, where the system has such, or in one with a name
// of its own beside the target.
enum class Unfinished { nameless, named };

// Writes bytes to path as a whole or not at all: to a file without a name in the same folder, flushed to the disk, then
// linked or renamed to the target. An existing file is replaced only with replace, and keeps its permissions; a
// symbolic link to a file stays a link. Gives a refusal, with the target untouched and nothing left beside it, when the
// target exists (without replace), is not an ordinary file, or cannot be written.
//
// Nothing is left by a signal that ends the process either; one that the process does not ignore or handle waits while
// the file has a name other than the target's. Only SIGKILL and a power cut within the moment of replacing, or at any
// time in a file system without nameless files, leave a file .yardworth-N.part. For that the disposition of signals is
// changed during the call: to be called by one thread at a time.
std::optional<OutputRefusal> write_file(const std::string& path, std::string_view bytes, bool replace,
                                        Unfinished unfinished = Unfinished::nameless);

// Whether write_file could write there, told before there is anything to write: the same refusals, but for what only
// the attempt shows (a full disk, a folder that changes meanwhile). Refused too, whatever the names and links, is a
// file that is one of those read (empty: none).
std::optional<OutputRefusal> refuse_target(const std::string& path, bool replace,
                                           const std::vector<std::string>& read = {});

}  // namespace yardworth
