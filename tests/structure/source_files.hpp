#pragma once

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "support/words.hpp"

namespace yardworth::test {

// A file of the tree, or one made up by a test.
struct SourceFile {
  std::string path;  // from the root of the tree
  std::string text;
};

// The C++ files below a folder of the tree, by path; what CMake fills in (.cpp.in) is among them.
inline std::vector<SourceFile> source_files(const std::string& folder) {
  namespace fs = std::filesystem;
  const fs::path tree = YARDWORTH_SOURCE_DIR;
  std::vector<SourceFile> files;
  for (const auto& entry : fs::recursive_directory_iterator(tree / folder)) {
    const std::string path = fs::relative(entry.path(), tree).generic_string();
    const bool ours = path.ends_with(".hpp") || path.ends_with(".cpp") || path.ends_with(".cpp.in");
    if (!entry.is_regular_file() || !ours) continue;
    std::ostringstream text;
    text << std::ifstream(entry.path(), std::ios::binary).rdbuf();
    files.push_back({path, text.str()});
  }
  std::sort(files.begin(), files.end(), [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
  return files;
}

// One to a line, for a message.
inline std::string listed(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += "\n  " + line;
  return all;
}

}  // namespace yardworth::test
