#include "core/file_output.hpp"

#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace yardworth {
namespace {

namespace fs = std::filesystem;

struct Folder {
  Folder() : path(fs::temp_directory_path() / ("yardworth_write_" + std::to_string(::getpid()))) {
    fs::create_directories(path);
  }
  ~Folder() { fs::remove_all(path); }
  std::string name(const std::string& file) const { return (path / file).string(); }
  long entries() const { return std::distance(fs::directory_iterator(path), fs::directory_iterator()); }
  fs::path path;
};

std::string bytes_of(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

std::string line_of(const std::optional<Diagnostic>& finding) {
  REQUIRE(finding.has_value());
  CHECK(finding->severity == Severity::fault);
  return to_line(*finding);
}

TEST_CASE("a new file is written whole, and nothing beside it") {
  const Folder folder;
  const std::string bytes("a\r\n\0b", 5);
  CHECK_FALSE(write_file(folder.name("new"), bytes, false).has_value());
  CHECK(bytes_of(folder.name("new")) == bytes);
  CHECK_FALSE(write_file(folder.name("empty"), "", false).has_value());
  CHECK(bytes_of(folder.name("empty")).empty());
  CHECK(folder.entries() == 2);
}

TEST_CASE("an existing file is replaced only with leave, and keeps its permissions") {
  const Folder folder;
  const std::string path = folder.name("old");
  REQUIRE_FALSE(write_file(path, "old", false).has_value());
  ::chmod(path.c_str(), 0640);
  CHECK(line_of(write_file(path, "new", false)) ==
        path + ": fault: found a file that exists, expected a new name, or leave to replace it");
  CHECK(bytes_of(path) == "old");
  CHECK_FALSE(write_file(path, "new", true).has_value());
  CHECK(bytes_of(path) == "new");
  struct stat status {};
  REQUIRE(::stat(path.c_str(), &status) == 0);
  CHECK((status.st_mode & 0777) == 0640);
  CHECK(folder.entries() == 1);
}

TEST_CASE("a link to a file stays a link") {
  const Folder folder;
  REQUIRE_FALSE(write_file(folder.name("file"), "old", false).has_value());
  fs::create_symlink("file", folder.name("link"));
  CHECK(write_file(folder.name("link"), "new", false).has_value());
  CHECK_FALSE(write_file(folder.name("link"), "new", true).has_value());
  CHECK(fs::is_symlink(folder.name("link")));
  CHECK(bytes_of(folder.name("file")) == "new");
}

TEST_CASE("places where no file can be written") {
  const Folder folder;
  const std::string directory = folder.path.string();
  CHECK(line_of(write_file(directory, "x", true)) ==
        directory + ": fault: found a directory, expected the name of a file to write");
  CHECK(line_of(write_file("", "x", true)).find("an empty file name") != std::string::npos);
  CHECK(line_of(write_file(folder.name("none/file"), "x", false)).find("an output that cannot be written") !=
        std::string::npos);
  CHECK(line_of(write_file("/dev/null", "x", true)).find("not an ordinary file") != std::string::npos);
  // Root writes wherever it likes.
  if (::geteuid() != 0) {
    ::chmod(directory.c_str(), 0500);
    CHECK(line_of(write_file(folder.name("file"), "x", false)).find("cannot be written") != std::string::npos);
    ::chmod(directory.c_str(), 0700);
  }
  CHECK(folder.entries() == 0);
}

TEST_CASE("a disk that fills up leaves the old file and nothing half-written") {
  const Folder folder;
  const std::string path = folder.name("file");
  REQUIRE_FALSE(write_file(path, "old", false).has_value());
  rlimit before{};
  REQUIRE(::getrlimit(RLIMIT_FSIZE, &before) == 0);
  rlimit small = before;
  small.rlim_cur = 1000;
  auto* handler = std::signal(SIGXFSZ, SIG_IGN);
  REQUIRE(::setrlimit(RLIMIT_FSIZE, &small) == 0);
  const auto finding = write_file(path, std::string(5000, 'x'), true);
  REQUIRE(::setrlimit(RLIMIT_FSIZE, &before) == 0);
  std::signal(SIGXFSZ, handler);
  CHECK(line_of(finding).find("cannot be written") != std::string::npos);
  CHECK(bytes_of(path) == "old");
  CHECK(folder.entries() == 1);
}

TEST_CASE("a target is refused before there is anything to write") {
  const Folder folder;
  const std::string path = folder.name("old");
  REQUIRE_FALSE(write_file(path, "old", false).has_value());
  CHECK_FALSE(refuse_target(folder.name("new"), false).has_value());
  CHECK_FALSE(refuse_target(path, true).has_value());
  CHECK(line_of(refuse_target(path, false)) == line_of(write_file(path, "new", false)));
  CHECK(line_of(refuse_target(folder.name("none/new"), false)) ==
        line_of(write_file(folder.name("none/new"), "", false)));
  CHECK(line_of(refuse_target(folder.name(""), true)) == line_of(write_file(folder.name(""), "", true)));
  CHECK(folder.entries() == 1);
  // The superuser may write anywhere.
  if (::geteuid() == 0) return;
  ::chmod(folder.path.c_str(), 0500);
  CHECK(refuse_target(folder.name("new"), false).has_value());
  CHECK(refuse_target(path, true).has_value());
  ::chmod(folder.path.c_str(), 0700);
}

}  // namespace
}  // namespace yardworth
