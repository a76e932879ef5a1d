#include <doctest/doctest.h>
#include <fmt/format.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <thread>
#include <vector>

#include "support/sanitized.hpp"
#include "support/words.hpp"

// The built program stopped by a limit or a signal: whatever stops it, an output is the old file or the new one, whole,
// and nothing lies beside it.

namespace {

namespace fs = std::filesystem;

const std::string json_gain = "gain --method table --plan habit --driver +20 --format json";

std::string content(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

using yardworth::test::says;

struct Ran {
  int status = -1;  // -1: ended by a signal
  std::string err;
};

// A folder with a file `old`, gone when the test is over.
class Outputs {
 public:
  Outputs() {
    std::string pattern = (fs::temp_directory_path() / "yardworth-outputs-XXXXXX").string();
    REQUIRE(::mkdtemp(pattern.data()) != nullptr);
    path_ = pattern;
    fs::create_directory(path_ / "of");
    std::ofstream(file(), std::ios::binary) << "old";
  }
  Outputs(const Outputs&) = delete;
  Outputs& operator=(const Outputs&) = delete;
  ~Outputs() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }

  std::string file() const { return (path_ / "of" / "file").string(); }
  std::string folder() const { return (path_ / "of").string(); }
  long files() const { return std::distance(fs::directory_iterator(folder()), fs::directory_iterator()); }
  // before: what the shell does first, such as set a limit.
  Ran run(const std::string& before, const std::string& arguments) const {
    const std::string errors = (path_ / "stderr").string();
    const std::string line = fmt::format("{} '{}' {} 2>'{}'", before, YARDWORTH_PROGRAM, arguments, errors);
    const int status = std::system(line.c_str());
    return {WIFEXITED(status) && WEXITSTATUS(status) < 126 ? WEXITSTATUS(status) : -1, content(errors)};
  }

 private:
  fs::path path_;
};

}  // namespace

TEST_CASE("a limit on file sizes is an error of the output, with nothing left") {
  const Outputs outputs;
  const Ran ran = outputs.run("ulimit -f 1;", json_gain + fmt::format(" --force --output '{}'", outputs.file()));
  CHECK(ran.status == 1);
  CHECK_MESSAGE(says(ran.err, "an output that cannot be written: File too large"), ran.err);
  CHECK(content(outputs.file()) == "old");
  CHECK(outputs.files() == 1);

  const Ran out = outputs.run("ulimit -f 1;", json_gain + fmt::format(" >'{}'", outputs.folder() + "/out"));
  CHECK(out.status == 1);
  CHECK_MESSAGE(says(out.err, "cannot write the output"), out.err);
}

TEST_CASE("an output that the system does not write could not be done") {
  const Outputs outputs;
  if (fs::exists("/dev/full")) CHECK(outputs.run("", json_gain + " >/dev/full").status == 1);
  if (::geteuid() == 0) {
    // Nobody, not even the superuser, makes files there.
    CHECK(outputs.run("", json_gain + " --output /proc/yardworth").status != 0);
    return;
  }
  fs::permissions(outputs.folder(), fs::perms::owner_read | fs::perms::owner_exec);
  CHECK(outputs.run("", json_gain + fmt::format(" --output '{}/new'", outputs.folder())).status == 1);
  fs::permissions(outputs.folder(), fs::perms::owner_all);
}

TEST_CASE("no command writes over what it reads") {
  const Outputs outputs;
  const std::string course = outputs.folder() + "/course.yaml";
  const std::string player = outputs.folder() + "/player.yaml";
  const std::string heron_ferry = std::string(YARDWORTH_SOURCE_DIR) + "/courses/heron-ferry/";
  fs::copy_file(heron_ferry + "course.yaml", course);
  fs::copy_file(heron_ferry + "members/8-man.yaml", player);
  fs::create_hard_link(course, outputs.folder() + "/hard");
  fs::create_symlink("player.yaml", outputs.folder() + "/soft");
  const std::string before = content(course) + content(player);
  const std::string both = fmt::format("--course '{}' --player '{}'", course, player);
  for (const std::string& arguments : {std::string(json_gain).append(" ").append(both), "strategy --hole 6 " + both,
                                       fmt::format("bands --band scratch --course '{}'", course)}) {
    CAPTURE(arguments);
    const Ran ran = outputs.run("", arguments + fmt::format(" --force --output '{}/hard'", outputs.folder()));
    CHECK(ran.status == 2);
    CHECK(says(ran.err, "found a file that is read for this"));
  }
  for (const char* option : {"--output", "--dot"}) {
    const Ran ran =
        outputs.run("", fmt::format("strategy --hole 6 {} --force {} '{}/soft'", both, option, outputs.folder()));
    CHECK(ran.status == 2);
    CHECK(says(ran.err, "found a file that is read for this"));
  }
  CHECK(content(course) + content(player) == before);
}

TEST_CASE("with too little memory the command says so, and leaves nothing") {
  if (yardworth::test::sanitized) return;  // the sanitizers take more for themselves
  bool too_little = false;
  bool enough = false;
  for (int kilobytes = 10'000; kilobytes < 400'000 && !enough; kilobytes += kilobytes / 8) {
    CAPTURE(kilobytes);
    const Outputs outputs;
    const Ran ran =
        outputs.run(fmt::format("ulimit -v {};", kilobytes), "gain --plan habit --driver +20 --threads 2" +
                                                                 fmt::format(" --force --output '{}'", outputs.file()));
    CHECK(outputs.files() == 1);
    if (ran.status != 0) CHECK(content(outputs.file()) == "old");
    if (ran.status == 0) CHECK(says(content(outputs.file()), "Assumed: "));
    // Below that the program cannot even be loaded.
    if (kilobytes < 30'000) continue;
    CHECK((ran.status == 0 || ran.status == 1));
    if (ran.status == 1) CHECK_MESSAGE(says(ran.err, "yardworth: out of memory"), ran.err);
    too_little = too_little || ran.status == 1;
    enough = enough || ran.status == 0;
  }
  CHECK(too_little);
  CHECK(enough);
}

// Starts the command with the default answer to signals from its first moment: what this program of tests does at a
// signal must not happen in the child.
pid_t start_gain(const std::string& file) {
  std::vector<std::string> words = {"yardworth", "gain", "--method", "table",    "--plan", "habit",
                                    "--driver",  "+20",  "--force",  "--output", file};
  std::vector<char*> arguments;
  for (std::string& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  sigset_t answered;
  sigemptyset(&answered);
  for (const int signal : {SIGTERM, SIGINT, SIGHUP}) sigaddset(&answered, signal);
  posix_spawnattr_t attributes;
  posix_spawnattr_init(&attributes);
  posix_spawnattr_setsigdefault(&attributes, &answered);
  posix_spawnattr_setflags(&attributes, POSIX_SPAWN_SETSIGDEF);
  pid_t child = 0;
  REQUIRE(posix_spawn(&child, YARDWORTH_PROGRAM, nullptr, &attributes, arguments.data(), environ) == 0);
  posix_spawnattr_destroy(&attributes);
  return child;
}

TEST_CASE("a signal at any time leaves the old output or the new one") {
  int stopped = 0;
  for (int round = 0; round < yardworth::test::repeats(60); ++round) {
    const Outputs outputs;
    const int signal = std::array{SIGTERM, SIGINT, SIGHUP}[static_cast<std::size_t>(round) % 3];
    const std::string file = outputs.file();
    const pid_t child = start_gain(file);
    std::this_thread::sleep_for(std::chrono::milliseconds(round));
    ::kill(child, signal);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    const std::string left = content(file);
    CHECK(outputs.files() == 1);
    if (WIFSIGNALED(status)) {
      CHECK(WTERMSIG(status) == signal);
      ++stopped;
    } else {
      CHECK(WEXITSTATUS(status) == 0);
      CHECK(left != "old");
    }
    CHECK((left == "old" || (says(left, "Assumed: ") && left.back() == '\n')));
  }
  CHECK(stopped > 0);
}
