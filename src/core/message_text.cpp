#include "core/message_text.hpp"

namespace yardworth {

std::string shortened(const std::string& text) {
  constexpr std::size_t longest_shown = 60;
  if (text.size() <= longest_shown) return text;
  std::size_t end = longest_shown;
  const auto continues_character = [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0) == 0x80; };
  while (end > 0 && continues_character(text[end])) --end;
  return text.substr(0, end) + "...";
}

std::string quoted(const std::string& text) { return '"' + shortened(text) + '"'; }

}  // namespace yardworth
