#include "core/file_output.hpp"

#include <doctest/doctest.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <thread>

#include "support/sanitized.hpp"

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

std::string line_of(const std::optional<OutputRefusal>& refusal) {
  REQUIRE(refusal.has_value());
  CHECK(refusal->finding.severity == Severity::fault);
  return to_line(refusal->finding);
}

constexpr std::array both_ways = {Unfinished::nameless, Unfinished::named};

TEST_CASE("a new file is written whole, and nothing beside it") {
  for (const Unfinished unfinished : both_ways) {
    const Folder folder;
    const std::string bytes("a\r\n\0b", 5);
    CHECK_FALSE(write_file(folder.name("new"), bytes, false, unfinished).has_value());
    CHECK(bytes_of(folder.name("new")) == bytes);
    CHECK_FALSE(write_file(folder.name("empty"), "", true, unfinished).has_value());
    CHECK(bytes_of(folder.name("empty")).empty());
    CHECK_FALSE(write_file(folder.name("new"), "other", true, unfinished).has_value());
    CHECK(bytes_of(folder.name("new")) == "other");
    CHECK(line_of(write_file(folder.name("new"), "", false, unfinished)).find("a file that exists") !=
          std::string::npos);
    CHECK(folder.entries() == 2);
  }
}

TEST_CASE("a name may be as long as names can be, and no longer") {
  const Folder folder;
  for (const Unfinished unfinished : both_ways) {
    const std::string longest = folder.name(std::string(255, unfinished == Unfinished::named ? 'a' : 'b'));
    CHECK_FALSE(refuse_target(longest, false).has_value());
    CHECK_FALSE(write_file(longest, "x", false, unfinished).has_value());
    CHECK_FALSE(write_file(longest, "y", true, unfinished).has_value());
    CHECK(bytes_of(longest) == "y");
  }
  CHECK(folder.entries() == 2);
  const auto refusal = refuse_target(folder.name(std::string(256, 'a')), false);
  CHECK(line_of(refusal).find("cannot be written") != std::string::npos);
  CHECK_FALSE(refusal->by_system);
}

TEST_CASE("a file that is read is not written, by whatever name") {
  const Folder folder;
  const std::string read = folder.name("course.yaml");
  REQUIRE_FALSE(write_file(read, "mine", false).has_value());
  fs::create_hard_link(read, folder.name("hard"));
  fs::create_symlink("course.yaml", folder.name("soft"));
  fs::create_symlink("hard", folder.name("through"));
  fs::create_directory_symlink(".", folder.name("here"));
  for (const char* name : {"course.yaml", "./course.yaml", "hard", "soft", "through", "here/hard"}) {
    for (const bool replace : {false, true}) {
      CAPTURE(name);
      const auto refusal = refuse_target(folder.name(name), replace, {"", read});
      CHECK(line_of(refusal).find("a file that is read for this, expected another") != std::string::npos);
      CHECK_FALSE(refusal->by_system);
    }
  }
  CHECK_FALSE(refuse_target(folder.name("other"), false, {"", read}).has_value());
}

constexpr std::array ending_signals = {SIGTERM, SIGINT, SIGHUP, SIGXCPU};

// Holds these signals back (SIG_BLOCK) or no longer (SIG_UNBLOCK).
void hold_back(int how) {
  sigset_t set;
  ::sigemptyset(&set);
  for (const int signal : ending_signals) ::sigaddset(&set, signal);
  ::pthread_sigmask(how, &set, nullptr);
}

// In a child process: writes files of as many letters over one another until it is stopped, while other threads wait.
[[noreturn]] void write_for_ever(const std::string& path, std::size_t letters, Unfinished unfinished) {
  // Without the handlers of the test framework; only then may signals come.
  for (const int signal : ending_signals) std::signal(signal, SIG_DFL);
  hold_back(SIG_UNBLOCK);
  for (int i = 0; i < 2; ++i) std::thread([] { ::pause(); }).detach();
  for (char letter = 'a';; letter = letter == 'a' ? 'b' : 'a') {
    if (!write_file(path, std::string(letters, letter), true, unfinished)) continue;
    // Stopped because a signal waits, which another thread may just be taking: it is given the time to end us.
    ::sleep(5);
    ::_exit(1);
  }
}

TEST_CASE("whenever a signal ends the process, the file is the old one or the new one, and nothing is beside it") {
  std::mt19937 random(17);
  for (const Unfinished unfinished : both_ways) {
    for (int round = 0; round < test::repeats(120); ++round) {
      const Folder folder;
      const std::string path = folder.name("file");
      const std::size_t letters = round % 2 == 0 ? 10 : 500'000;
      REQUIRE_FALSE(write_file(path, std::string(letters, 'a'), false).has_value());
      const int signal = ending_signals[static_cast<std::size_t>(round) % ending_signals.size()];
      hold_back(SIG_BLOCK);
      const pid_t child = ::fork();
      if (child == 0) write_for_ever(path, letters, unfinished);
      hold_back(SIG_UNBLOCK);
      REQUIRE(child >= 0);
      std::this_thread::sleep_for(std::chrono::microseconds(1000 + random() % 9000));
      ::kill(child, signal);
      int status = 0;
      REQUIRE(::waitpid(child, &status, 0) == child);
      REQUIRE(WIFSIGNALED(status));
      CHECK(WTERMSIG(status) == signal);
      const std::string left = bytes_of(path);
      REQUIRE(left.size() == letters);
      CHECK(left == std::string(letters, left.front()));
      CHECK(folder.entries() == 1);
    }
  }
}

TEST_CASE("a disk that is full leaves the old file") {
  const Folder folder;
  const fs::path disk = folder.path / "disk";
  fs::create_directory(disk);
  if (::mount("none", disk.c_str(), "tmpfs", 0, "size=64k") != 0) {
    MESSAGE("not looked at: a file system of its own is for the superuser");
    return;
  }
  const std::string path = (disk / "file").string();
  CHECK_FALSE(write_file(path, "old", false).has_value());
  for (const Unfinished unfinished : both_ways) {
    const auto refusal = write_file(path, std::string(200'000, 'x'), true, unfinished);
    CHECK(line_of(refusal).find("cannot be written: No space left on device") != std::string::npos);
    CHECK(refusal->by_system);
    CHECK(bytes_of(path) == "old");
    CHECK(std::distance(fs::directory_iterator(disk), fs::directory_iterator()) == 1);
  }
  CHECK(::umount(disk.c_str()) == 0);
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

TEST_CASE("a limit on file sizes leaves the old file and nothing half-written") {
  const Folder folder;
  const std::string path = folder.name("file");
  REQUIRE_FALSE(write_file(path, "old", false).has_value());
  rlimit before{};
  REQUIRE(::getrlimit(RLIMIT_FSIZE, &before) == 0);
  rlimit small = before;
  small.rlim_cur = 1000;
  auto* handler = std::signal(SIGXFSZ, SIG_IGN);
  REQUIRE(::setrlimit(RLIMIT_FSIZE, &small) == 0);
  const auto nameless = write_file(path, std::string(5000, 'x'), true);
  const auto named = write_file(path, std::string(5000, 'x'), true, Unfinished::named);
  REQUIRE(::setrlimit(RLIMIT_FSIZE, &before) == 0);
  std::signal(SIGXFSZ, handler);
  for (const auto& refusal : {nameless, named}) {
    CHECK(line_of(refusal).find("cannot be written") != std::string::npos);
    CHECK(refusal->by_system);
  }
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
