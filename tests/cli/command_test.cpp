#include <doctest/doctest.h>
#include <fmt/format.h>
#include <sys/wait.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "support/words.hpp"
#include "yardworth/version.hpp"

// The built program as a user meets it: exit statuses and both streams.

namespace {

namespace fs = std::filesystem;

// A folder of its own for each test, gone when the test is over.
class Folder {
 public:
  Folder() {
    std::string pattern = (fs::temp_directory_path() / "yardworth-cli-XXXXXX").string();
    REQUIRE(::mkdtemp(pattern.data()) != nullptr);
    path_ = pattern;
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }

  std::string operator/(const std::string& name) const { return (path_ / name).string(); }
  std::string write(const std::string& name, const std::string& text) const {
    std::ofstream(path_ / name, std::ios::binary) << text;
    return *this / name;
  }
  std::size_t files() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(path_), fs::directory_iterator()));
  }

 private:
  fs::path path_;
};

std::string text_in(const std::string& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

struct Ended {
  int status = -1;  // -1: ended by a signal
  std::string out;
  std::string err;
};

// arguments as a shell reads them; behind is what comes after the redirection of standard error, such as a pipe.
Ended run(const std::string& arguments, const std::string& behind = "") {
  const Folder folder;
  const std::string errors = folder / "stderr";
  const std::string line = fmt::format("'{}' {} 2>'{}' {}", YARDWORTH_PROGRAM, arguments, errors, behind);
  std::FILE* pipe = ::popen(line.c_str(), "r");
  REQUIRE(pipe != nullptr);
  Ended ran;
  std::array<char, 4096> buffer{};
  while (const std::size_t count = std::fread(buffer.data(), 1, buffer.size(), pipe)) {
    ran.out.append(buffer.data(), count);
  }
  const int status = ::pclose(pipe);
  if (WIFEXITED(status)) ran.status = WEXITSTATUS(status);
  ran.err = text_in(errors);
  return ran;
}

using yardworth::test::says;

std::string heron_ferry(const std::string& file) {
  return std::string(YARDWORTH_SOURCE_DIR) + "/courses/heron-ferry/" + file;
}

// The quickest question there is; which numbers come out is for other tests.
const std::string table_gain = "gain --method table --plan habit --driver +20 ";

const std::string faulty_course =
    "format: yardworth/course/1\n"
    "name: Two slips\n"
    "tees: [{name: middle}]\n"
    "holse: []\n"
    "untis: yards\n";

}  // namespace

TEST_CASE("help and version are done, on standard output") {
  for (const char* arguments : {"--help", "-h", "gain --help", "strategy --help", "bands --help", "delivery --help",
                                "bag --help", "check --help"}) {
    CAPTURE(arguments);
    const Ended ran = run(arguments);
    CHECK(ran.status == 0);
    CHECK(says(ran.out, "Usage: yardworth"));
    CHECK(ran.err.empty());
  }
  const Ended version = run("--version");
  CHECK(version.status == 0);
  CHECK(version.out == fmt::format("yardworth {}\n", yardworth::version));
  CHECK(says(run("gain --help").out, "the middle one"));
}

TEST_CASE("what is not understood is refused with what to do next") {
  struct Refused {
    const char* arguments;
    const char* words;
  };
  for (const Refused& refused : {
           Refused{"", "which command?"},
           Refused{"gian", "did you mean gain?"},
           Refused{"--versoin", "did you mean --version?"},
           Refused{"gain --drver +20", "did you mean --driver?"},
           Refused{"gain --drver=+20", "there is no option --drver;"},
           Refused{"gain extra", "\"extra\" belongs to no option; see yardworth gain --help"},
           Refused{"gain --driver", "a value is missing or given twice: --driver"},
           Refused{"gain --driver 5 --driver 6", "a value is missing or given twice: --driver"},
           Refused{"gain --method tabel", "the nearest is table"},
           Refused{"gain --plan worst", "expected both, habit or best"},
           Refused{"gain --format xml", "expected text, json or csv"},
           Refused{"gain --force", "--force needs --output or --svg"},
           Refused{"gain --tee midle", "expected a tee of Heron Ferry Municipal: back, middle or forward"},
           Refused{"gain --course ''", "--course: found \"\""},
           Refused{"gain --threads 0", "--threads: found \"0\", expected a whole number from 1 to 1024"},
           Refused{"gain --threads 1.5", "--threads: found \"1.5\", expected a whole number"},
           Refused{"gain --step 5", "--step needs --to"},
           Refused{"gain --to 40 --step 3", "--to has to be a multiple of --step, which is 3"},
           Refused{"gain --to 3", "--to has to be a multiple of --step, which is 5"},
           Refused{"gain --to 0", "--to: found \"0\""},
           Refused{"gain --to 100 --step 0.1", "--to is more than 200 times --step"},
           Refused{"gain --mark 19", "--mark"},
           Refused{"gain --mark ninety", "--mark"},
           Refused{"gain --control --method table", "--control"},
           Refused{"gain --mark 90 --method table", "--mark needs --method play"},
           Refused{"gain --to 40 --irons 6", "--to needs a --driver other than 0"},
           Refused{"strategy --hole 0", "--hole: found \"0\""},
           Refused{"strategy --dot x.dot", "--dot needs --hole"},
           Refused{"strategy --hole 6 --force", "--force needs --output, --dot or --svg"},
           Refused{"strategy --hole 6 --svg ./x --output x", "--svg and --output are the same file"},
           Refused{"strategy --hole 6 --svg ./x --dot x", "--svg and --dot are the same file"},
           Refused{"check --force x", "--force needs --svg"},
           Refused{"strategy --hole 6 --dot ./x --output x", "are the same file"},
           Refused{"check", "FILE is required"},
           Refused{"check --all x", "there is no option --all"},
       }) {
    CAPTURE(refused.arguments);
    const Ended ran = run(refused.arguments);
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK_MESSAGE(says(ran.err, refused.words), ran.err);
  }
}

TEST_CASE("a change is a number of the course's units, and not an absurd one") {
  for (const char* change :
       {"abc", "nan", "inf", "-inf", "1e999", "151", "-151", "+-5", "++5", "5yd", "0x10", "' 5'"}) {
    for (const char* option : {"--driver", "--irons"}) {
      CAPTURE(change);
      const Ended ran = run(fmt::format("gain {} {}", option, change));
      CHECK(ran.status == 2);
      CHECK(says(ran.err, fmt::format("{}: found", option)));
      CHECK(says(ran.err, "expected a number from -150 to 150"));
    }
  }
}

TEST_CASE("control characters of the command line are shown, not obeyed") {
  const Ended ran = run("\"$(printf 'ga\\033[2Jn')\"");
  CHECK(ran.status == 2);
  CHECK(says(ran.err, "ga\\x1B[2Jn"));
}

TEST_CASE("every fault of every input file is told in one go, on standard error") {
  const Folder folder;
  const std::string course = folder.write("course.yaml", faulty_course);
  const Ended ran =
      run(fmt::format("gain --course '{}' --player '{}' --baseline '{}'", course, folder / "none.yaml", folder / "."));
  CHECK(ran.status == 2);
  CHECK(ran.out.empty());
  CHECK(says(ran.err, "course.yaml:4:1: fault: holse:"));
  CHECK(says(ran.err, "course.yaml:5:1: fault: untis:"));
  CHECK(says(ran.err, "none.yaml: fault: found no such file"));
  CHECK(says(ran.err, "fault: found a directory"));
}

TEST_CASE("check says what it understood") {
  const Ended ran =
      run(fmt::format("check '{}' '{}'", heron_ferry("course.yaml"), heron_ferry("members/weekend-16-man.yaml")));
  CHECK(ran.status == 0);
  CHECK(says(ran.out, "course.yaml: course \"Heron Ferry Municipal\""));
  CHECK(says(ran.out, "weekend 16"));
  CHECK(ran.err.empty());
}

TEST_CASE("check names faults on standard output and goes on with the next file") {
  const Folder folder;
  const std::string course = folder.write("course.yaml", faulty_course);
  const Ended ran = run(fmt::format("check '{}' '{}' '{}'", course, folder / "none.yaml", heron_ferry("course.yaml")));
  CHECK(ran.status == 2);
  CHECK(says(ran.out, "course.yaml:4:1: fault: holse:"));
  CHECK(says(ran.out, "none.yaml: fault: found no such file"));
  CHECK(says(ran.out, "course.yaml: course \"Heron Ferry Municipal\""));
  CHECK(ran.err.empty());
}

TEST_CASE("check says where a hazard has no ground, and from where to where it would have some") {
  const Folder folder;
  std::ostringstream written;
  written << std::ifstream(heron_ferry("course.yaml")).rdbuf();
  std::string text = written.str();
  const std::string corner = "dogleg: [{at: 240, turn: -18}]";
  const std::size_t hazards = text.find("hazards:\n", text.find(corner));
  REQUIRE(hazards != std::string::npos);
  text.insert(hazards + 9, "      - {kind: trees, side: left, from: 235, to: 243, near: 50, far: 90}\n");
  const Ended ran = run("check '" + folder.write("course.yaml", text) + "'");
  CHECK(ran.status == 2);
  CHECK(says(ran.out, ": fault: holes[0].hazards[0]: found a hazard wholly inside the corner at 240 yards"));
  CHECK(says(ran.out, "expected one that begins before 232.1 yards or ends past 247.9 yards"));
}

TEST_CASE("without files the scenario is used, and the first line says so") {
  const Ended ran = run("gain --method table --plan habit");
  CHECK(ran.status == 0);
  CHECK(ran.err.empty());
  const std::string first = ran.out.substr(0, ran.out.find('\n'));
  CHECK(first == "Assumed: built-in course Heron Ferry Municipal, built-in player weekend 16, middle tees.");
  CHECK(says(ran.out, "Assumed, with neither --driver nor --irons: 20 yards more with the driver, 6 with the"));
  CHECK(says(ran.out, "20 more yards of driver carry, with 6 more in the irons, "));
  CHECK(ran.out.find('\x1b') == std::string::npos);
}

TEST_CASE("with everything given the answer comes first") {
  const Ended ran = run(table_gain + fmt::format("--tee back --course '{}' --player '{}'", heron_ferry("course.yaml"),
                                                 heron_ferry("members/weekend-16-man.yaml")));
  CHECK(ran.status == 0);
  CHECK(ran.out.rfind("20 more yards of driver carry ", 0) == 0);
  // The sentence is wrapped where it happens to be.
  std::string unwrapped = ran.out;
  std::replace(unwrapped.begin(), unwrapped.end(), '\n', ' ');
  CHECK(says(unwrapped, "from the back tees"));
}

TEST_CASE("the tees of a woman are those rated for women") {
  const Ended ran = run(table_gain + fmt::format("--player '{}'", heron_ferry("members/12-woman.yaml")));
  CHECK(ran.status == 0);
  CHECK(says(ran.out, "Heron Ferry Municipal, forward tees."));
}

TEST_CASE("a loss is a fair question, with and without an equals sign") {
  const Ended apart = run("gain --method table --plan habit --driver -20");
  const Ended joined = run("gain --method table --plan habit --driver=-20");
  CHECK(apart.status == 0);
  CHECK(says(apart.out, "20 fewer yards of driver carry cost"));
  CHECK(apart.out == joined.out);
}

TEST_CASE("a loss that leaves no carry is the command's fault") {
  const Folder folder;
  const std::string player = folder.write("short.yaml",
                                          "format: yardworth/player/1\nlabel: short\nhandicap_index: 30\n"
                                          "clubs: [{club: driver, carry: 100}, {club: 7-iron, carry: 60}]\n");
  const Ended ran = run(fmt::format("gain --driver -120 --player '{}'", player));
  CHECK(ran.status == 2);
  CHECK(ran.out.empty());
  CHECK(says(ran.err, "yardworth: "));
}

TEST_CASE("JSON and CSV of the command are whole, and what was assumed is told") {
  const Ended json = run(table_gain + "--format json");
  REQUIRE(json.status == 0);
  const auto parsed = nlohmann::json::parse(json.out);
  CHECK(parsed["format"] == "yardworth/gain/1");
  CHECK(parsed["change"]["driver_carry_yd"] == 20.0);
  CHECK(parsed["holes"].size() == 18);
  CHECK(says(parsed["notes"][0].get<std::string>(), "built-in"));

  const Ended csv = run(table_gain + "--format csv");
  CHECK(csv.status == 0);
  CHECK(csv.out.rfind("hole,par,length_yd,", 0) == 0);
  CHECK(std::count(csv.out.begin(), csv.out.end(), '\n') == 20);
  CHECK(says(csv.err, "built-in"));
}

TEST_CASE("the curve goes from nothing to its end in steps") {
  const Ended csv = run(table_gain + "--to 20 --step 10 --format csv");
  CHECK(csv.status == 0);
  CHECK(says(csv.out, "\r\n0,0,"));
  CHECK(says(csv.out, "\r\n10,0,"));
  CHECK(says(csv.out, "\r\n20,0,"));
  CHECK(std::count(csv.out.begin(), csv.out.end(), '\n') == 4);
  CHECK(says(run(table_gain + "--to 20 --step 10").out, "Strokes saved a round against added carry"));
}

TEST_CASE("an output is written whole, and an existing one only with --force") {
  const Folder folder;
  const std::string path = folder / "gain.txt";
  const std::string to_file = table_gain + fmt::format("--output '{}'", path);
  const Ended first = run(to_file);
  CHECK(first.status == 0);
  CHECK(first.out.empty());
  CHECK(text_in(path) == run(table_gain).out);

  folder.write("gain.txt", "mine");
  const Ended refused = run(to_file);
  CHECK(refused.status == 2);
  CHECK(says(refused.err, "--force"));
  CHECK(text_in(path) == "mine");

  const Ended forced = run(to_file + " --force");
  CHECK(forced.status == 0);
  CHECK(text_in(path) == run(table_gain).out);
  CHECK(folder.files() == 1);
}

TEST_CASE("an output that cannot be written is refused") {
  const Folder folder;
  for (const std::string& path : {folder / "none/gain.txt", folder / "."}) {
    CAPTURE(path);
    const Ended ran = run(table_gain + fmt::format("--output '{}' --force", path));
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(says(ran.err, "fault: found"));
  }
  CHECK(folder.files() == 0);
}

TEST_CASE("a full device is not done, a reader that leaves is no failure") {
  if (fs::exists("/dev/full")) {
    const Ended full = run("--help", ">/dev/full");
    CHECK(full.status == 1);
    CHECK(says(full.err, "cannot write the output"));
  }
  const Folder folder;
  const std::string status = folder / "status";
  // The reader is gone before the program begins to write.
  const std::string line =
      fmt::format("{{ sleep 0.2; '{}' --help; echo $? >'{}'; }} | true; sleep 0.6", YARDWORTH_PROGRAM, status);
  CHECK(std::system(line.c_str()) == 0);
  CHECK(text_in(status) == "0\n");
}

TEST_CASE("an output is looked at before the work begins") {
  const Folder folder;
  const std::string path = folder.write("mine", "mine");
  const std::string course = folder.write("course.yaml", faulty_course);
  for (const char* command : {"gain", "strategy"}) {
    // Nothing of the course is told: it was not even read.
    const Ended ran = run(fmt::format("{} --course '{}' --output '{}'", command, course, path));
    CHECK(ran.status == 2);
    CHECK(says(ran.err, "--force"));
    CHECK_FALSE(says(ran.err, "holse"));
  }
  CHECK(text_in(path) == "mine");
}

TEST_CASE("the strategy of a hole, with its graph in a file") {
  const Folder folder;
  const std::string graph = folder / "hole.dot";
  const std::string quick = fmt::format("strategy --hole 16 --driver +20 --irons +6 --dot '{}' ", graph);
  const Ended text = run(quick);
  CHECK(text.status == 0);
  CHECK(text.err.empty());
  CHECK(says(text.out, "Assumed: built-in course Heron Ferry Municipal"));
  CHECK(says(text.out, "\nHole 16, par 3, 124 yards\n"));
  CHECK(text_in(graph).rfind("digraph", 0) == 0);
  CHECK(run(quick).status == 2);

  const Ended json = run(quick + "--force --format json");
  REQUIRE(json.status == 0);
  CHECK(nlohmann::json::parse(json.out)["holes"][0]["number"] == 16);
  const Ended csv = run("strategy --hole 16 --format csv");
  CHECK(csv.out.rfind("hole,par,length_yd,when,", 0) == 0);
  CHECK(says(csv.err, "Assumed: built-in course"));
}

TEST_CASE("pictures go to files, whole or not at all") {
  const Folder folder;
  const std::string picture = folder / "hole.svg";
  const std::string course = fmt::format("'{}/courses/marsh-end/course.yaml'", YARDWORTH_SOURCE_DIR);
  const std::string draw = fmt::format("strategy --hole 4 --course {} --driver +20 --svg '{}'", course, picture);
  const Ended drawn = run(draw);
  REQUIRE_MESSAGE(drawn.status == 0, drawn.err);
  CHECK(drawn.out == run(fmt::format("strategy --hole 4 --course {} --driver +20", course)).out);
  CHECK(text_in(picture).rfind("<svg ", 0) == 0);
  CHECK(says(text_in(picture), ">Hole 4, par "));
  CHECK(says(run(draw).err, "a file that exists"));

  const std::string all = folder / "course.svg";
  CHECK(run(fmt::format("check {} --svg '{}'", course, all)).status == 0);
  CHECK(says(text_in(all), ">Hole 9, par "));
  CHECK(run(fmt::format("check {} --svg '{}'", course, all)).status == 2);
  CHECK(run(fmt::format("check {} --svg '{}' --force", course, all)).status == 0);
  const std::string charts = folder / "gain.svg";
  CHECK(run(fmt::format("gain --course {} --method table --plan habit --svg '{}'", course, charts)).status == 0);
  CHECK(says(text_in(charts), ">Where the strokes come from<"));
  CHECK(run(fmt::format("delivery --svg '{}'", charts)).status == 2);
  CHECK(run(fmt::format("delivery --svg '{}' --force", charts)).status == 0);
  CHECK(says(text_in(charts), ">What the strike gives away<"));
  const std::string log = fmt::format("'{}/courses/heron-ferry/bay/weekend-16-before.csv'", YARDWORTH_SOURCE_DIR);
  CHECK(run(fmt::format("bag {} --svg '{}'", log, charts)).status == 2);
  CHECK(run(fmt::format("bag {} --svg '{}' --force", log, charts)).status == 0);
  CHECK(says(text_in(charts), ">What the clubs carry<"));
  const std::string bands =
      fmt::format("bands --course {} --band scratch --gender men --svg '{}' --force", course, charts);
  CHECK(run(bands).status == 0);
  CHECK(says(text_in(charts), ">Strokes saved a round: men<"));
  CHECK(run(bands + " --add-hazard 4:kind=bunker,side=left,from=210,to=225").status == 0);
  CHECK(says(text_in(charts), ">Hole 4, a new bunker left: men<"));
  const std::string none = folder / "none.svg";
  const std::string player = fmt::format("'{}/courses/heron-ferry/members/8-man.yaml'", YARDWORTH_SOURCE_DIR);
  const Ended no_course = run(fmt::format("check {} --svg '{}'", player, none));
  CHECK(no_course.status == 2);
  CHECK(says(no_course.err, "--svg draws one course; among the files are 0"));
  const std::string faulty = folder / "faulty.yaml";
  std::ofstream(faulty) << faulty_course;
  CHECK(run(fmt::format("check '{}' --svg '{}'", faulty, none)).status == 2);
  CHECK_FALSE(std::filesystem::exists(none));
}

TEST_CASE("a hole that the course does not have is the command's fault") {
  const Ended ran =
      run(fmt::format("strategy --hole 10 --course '{}/courses/marsh-end/course.yaml'", YARDWORTH_SOURCE_DIR));
  CHECK(ran.status == 2);
  CHECK(says(ran.err, "--hole: found 10, expected a hole of Marsh End"));
}

TEST_CASE("more threads than cores change nothing, and nothing is said of them") {
  const Ended many = run(table_gain + "--threads 64");
  CHECK(many.err.empty());
  CHECK(many.out == run(table_gain + "--threads 1").out);
}
