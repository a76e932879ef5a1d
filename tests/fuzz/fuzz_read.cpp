// The three readers: any bytes are a value or findings, each with its place; what is written back reads the same.

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

#include "promise.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"

namespace yardworth::fuzz {
namespace {

void read(std::string_view text) {
  const Reading<AnyFile> reading = read_any(text, "f");
  promise(reading.ok() != has_fault(reading.findings), "a value or a fault, never both, never neither");
  for (const Diagnostic& finding : reading.findings) {
    promise(finding.line > 0 && finding.column > 0, "every finding has its place");
    promise(to_line(finding).find('\n') == std::string::npos, "a finding is one line");
  }
  if (!reading.ok()) return;
  promise(!summarise(*reading.value).empty(), "what was understood can be said");
  if (const auto* table = std::get_if<BaselineTable>(&*reading.value)) {
    const std::string written = write_baseline(*table);
    const Reading<BaselineTable> again = read_baseline(written, "f");
    promise(again.ok(), "a table that was written can be read");
    promise(write_baseline(*again.value) == written, "and is the same");
  }
}

}  // namespace
}  // namespace yardworth::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  yardworth::fuzz::read({reinterpret_cast<const char*>(data), size});
  return 0;
}
