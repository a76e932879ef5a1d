#pragma once

#include <doctest/doctest.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

namespace yardworth::test {

// By libxml2 (Debian: libxml2-utils), which is not ours. Where it is not installed the check is skipped, and says so.
inline void check_well_formed(const std::string& svg) {
  if (std::system("xmllint --version >/dev/null 2>&1") != 0) {
    MESSAGE("skipped: xmllint (Debian: libxml2-utils) is not installed");
    return;
  }
  const auto folder = std::filesystem::temp_directory_path();
  const std::string path = (folder / ("yardworth-picture-" + std::to_string(::getpid()) + ".svg")).string();
  std::ofstream(path) << svg;
  CHECK(std::system(("xmllint --noout --nonet '" + path + "'").c_str()) == 0);
  std::filesystem::remove(path);
}

}  // namespace yardworth::test
