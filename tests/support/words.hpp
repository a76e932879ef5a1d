#pragma once

#include <sstream>
#include <string>
#include <vector>

namespace yardworth::test {

inline bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

// The same text on one line.
inline std::string words_of(const std::string& text) {
  std::string words;
  std::istringstream stream(text);
  for (std::string word; stream >> word;) words += (words.empty() ? "" : " ") + word;
  return words;
}

inline std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

}  // namespace yardworth::test
