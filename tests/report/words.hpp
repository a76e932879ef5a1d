#pragma once

#include <sstream>
#include <string>
#include <vector>

namespace yardworth::test {

inline bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

inline std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

}  // namespace yardworth::test
