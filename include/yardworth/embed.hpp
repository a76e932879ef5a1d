#pragma once

#include <string>
#include <string_view>

namespace yardworth {

// The questions of gain, strategy, bands, delivery, bag and check in one function, for a browser or for another
// language: a request as JSON text in, the answer as JSON text out. docs/embedding.md has the members of both. What the
// command writes with --format json is the member "answer", and "text" is what it writes for a terminal. It reads no
// file and prints nothing, and whatever is wrong is told in the answer. The same request, the same bytes.
std::string answer(std::string_view request) noexcept;

}  // namespace yardworth
