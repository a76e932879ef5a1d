#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "yardworth/read.hpp"

namespace yardworth {
namespace {

namespace fs = std::filesystem;

struct Folder {
  Folder() : path(fs::temp_directory_path() / ("yardworth_read_" + std::to_string(::getpid()))) {
    fs::create_directories(path);
  }
  ~Folder() { fs::remove_all(path); }
  std::string file(const std::string& name, const std::string& text) const {
    std::ofstream(path / name, std::ios::binary) << text;
    return (path / name).string();
  }
  fs::path path;
};

std::string line_of(const Reading<std::string>& reading) {
  CHECK_FALSE(reading.ok());
  REQUIRE(reading.findings.size() == 1);
  return to_line(reading.findings.front());
}

TEST_CASE("the bytes of a file as they are") {
  const Folder folder;
  const std::string bytes("a\r\n\0b\xFF", 6);
  const auto reading = read_text(folder.file("plain", bytes));
  REQUIRE(reading.ok());
  CHECK(*reading.value == bytes);
  CHECK(read_text(folder.file("empty", "")).value == "");
}

TEST_CASE("what cannot be read is a finding") {
  const Folder folder;
  const std::string directory = folder.path.string();
  CHECK(line_of(read_text(directory)) == directory + ": fault: found a directory, expected a file to read");
  CHECK(line_of(read_text(directory + "/none")) == directory + "/none: fault: found no such file");
  CHECK(line_of(read_text("")) == ": fault: found no such file");
  const std::string under_a_file = folder.file("file", "x") + "/below";
  CHECK(line_of(read_text(under_a_file)).find("fault: found") != std::string::npos);
  // Root reads whatever it likes.
  if (::geteuid() != 0) {
    const std::string closed = folder.file("closed", "x");
    ::chmod(closed.c_str(), 0);
    CHECK(line_of(read_text(closed)).find("a file that cannot be read") != std::string::npos);
  }
}

TEST_CASE("a file that is too large is not read") {
  const Folder folder;
  const std::string path = folder.file("large", "format: yardworth/course/1\n");
  const std::string expected = path + ": fault: found a file that is too large, expected at most " +
                               std::to_string(largest_file_bytes) + " bytes";
  fs::resize_file(path, 50'000'000);
  CHECK(line_of(read_text(path)) == expected);
  fs::resize_file(path, largest_file_bytes + 1);
  CHECK(line_of(read_text(path)) == expected);
  fs::resize_file(path, largest_file_bytes);
  CHECK(read_text(path).ok());
}

}  // namespace
}  // namespace yardworth
