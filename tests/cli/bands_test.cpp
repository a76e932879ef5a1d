#include <doctest/doctest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

#include "cli/command.hpp"
#include "support/words.hpp"

// The command `bands`, called without starting a process. One band from one tee is the quickest question.

namespace {

using yardworth::cli::Outcome;

using yardworth::test::says;

Outcome run_bands(std::vector<std::string> more) {
  std::vector<std::string> arguments = {"bands"};
  arguments.insert(arguments.end(), more.begin(), more.end());
  return yardworth::cli::run(arguments, {});
}

Outcome quick_bands(std::vector<std::string> more) {
  std::vector<std::string> arguments = {"--band", "scratch", "--gender", "men", "--tee", "forward"};
  arguments.insert(arguments.end(), more.begin(), more.end());
  return run_bands(arguments);
}

}  // namespace

TEST_CASE("bands: help says what it can be asked") {
  const Outcome help = run_bands({"--help"});
  CHECK(help.status == 0);
  for (const char* words :
       {"--band", "--gender", "--tee", "--move-hazard", "--add-hazard", "--plan", "--hole", "--members"}) {
    CAPTURE(words);
    CHECK(says(help.out, words));
  }
}

TEST_CASE("bands: the built-in course, said to be assumed") {
  const Outcome outcome = quick_bands({});
  CHECK(outcome.status == 0);
  CHECK(says(outcome.out, "Assumed: built-in course Heron Ferry Municipal, 20 yards more with the driver."));
  CHECK(says(outcome.out, "save scratch men from the forward tees"));
}

TEST_CASE("bands: options limit who is looked at") {
  const Outcome outcome = quick_bands({"--band", "bogey", "--driver", "+10", "--format", "json"});
  REQUIRE(outcome.status == 0);
  const auto json = nlohmann::json::parse(outcome.out);
  CHECK(json["golfers"].size() == 2);
  CHECK(json["change"]["driver_carry_yd"] == 10.0);
  CHECK(json["golfers"][0]["tee"] == "forward");
  CHECK(json["golfers"][0]["holes"].size() == 18);
}

TEST_CASE("bands: no change saves nothing") {
  const Outcome outcome = quick_bands({"--driver", "0", "--format", "json"});
  REQUIRE(outcome.status == 0);
  const auto round = nlohmann::json::parse(outcome.out)["golfers"][0]["round"];
  CHECK(round["strokes_saved"] == 0.0);
  CHECK(round["from_tee"] == 0.0);
  CHECK(round["from_irons"] == 0.0);
}

TEST_CASE("bands: hazards moved and added") {
  const Outcome moved = quick_bands({"--move-hazard", "4:2:from=200,to=212"});
  CHECK(moved.status == 0);
  CHECK(says(moved.out, "Hole 4, the bunker right moved: men"));
  const Outcome added = quick_bands({"--add-hazard", "4:kind=bunker,side=left,from=230,to=245", "--add-hazard",
                                     "1:kind=trees,side=left,from=200,to=245", "--format", "csv"});
  CHECK(added.status == 0);
  CHECK(says(added.out, "changed"));
  CHECK(says(added.err, "Assumed"));
}

TEST_CASE("bands: what does not fit is refused, with all of its faults") {
  struct Refused {
    std::vector<std::string> arguments;
    const char* words;
  };
  for (const Refused& refused : {
           Refused{{"--tee", "mddle"}, "the nearest is middle"},
           Refused{{"--band", "scrach"}, "the nearest is scratch"},
           Refused{{"--gender", "all"}, "men, women or both"},
           Refused{{"--plan", "both"}, "habit or best"},
           Refused{{"--hole", "19"}, "from 1 to 18"},
           Refused{{"--drver", "3"}, "did you mean --driver?"},
           Refused{{"--add-hazard", "4:knd=bunker,side=left,from=230,to=245"}, "\"kind\", the nearest known key"},
           Refused{{"--move-hazard", "4:7:from=230"}, "a hazard of hole 4, 1 to 5"},
           Refused{{"--move-hazard", "4:2:from=x", "--add-hazard", "20:kind=bunker"}, "hole: found \"20\""},
           Refused{{"--course", "/nowhere.yaml"}, "no such file"},
           Refused{{"--driver", "-150", "--band", "21 and over", "--gender", "women"},
                   "the driver of 21 and over women no carry"},
       }) {
    const Outcome outcome = run_bands(refused.arguments);
    CAPTURE(refused.words);
    CAPTURE(outcome.err);
    CHECK(outcome.status == 2);
    CHECK(outcome.out.empty());
    CHECK(says(outcome.err, refused.words));
  }
}

TEST_CASE("bands: the same bytes for any number of threads") {
  const Outcome one = quick_bands({"--tee", "back", "--format", "json", "--threads", "1"});
  const Outcome two = quick_bands({"--tee", "back", "--format", "json", "--threads", "2"});
  CHECK(one.status == 0);
  CHECK(one.out == two.out);
}

namespace {

// A list of members in a file of its own, which is gone afterwards.
class ListFile {
 public:
  explicit ListFile(const std::string& text)
      : path_((std::filesystem::temp_directory_path() / ("yardworth-members-" + std::to_string(::getpid()) + ".csv"))
                  .string()) {
    std::ofstream(path_, std::ios::binary) << text;
  }
  ListFile(const ListFile&) = delete;
  ListFile& operator=(const ListFile&) = delete;
  ~ListFile() { std::filesystem::remove(path_); }
  const std::string& path() const { return path_; }

 private:
  std::string path_;
};

}  // namespace

TEST_CASE("bands --members: a list in place of the bands") {
  const ListFile list("label,index,gender,driver_carry_yd\nweekend 16 man,16.4,men,192\nlong hitter,16.4,men,330\n");
  const Outcome text = run_bands({"--members", list.path(), "--tee", "forward"});
  CHECK(text.status == 0);
  CHECK(says(text.out, "save 2 members"));
  CHECK(says(text.out, "weekend 16 man"));
  CHECK(says(text.err, "advice: driver_carry_yd: found a driver that carries 330 yards"));
  const Outcome one = run_bands({"--members", list.path(), "--tee", "forward", "--format", "json", "--threads", "1"});
  const Outcome two = run_bands({"--members", list.path(), "--tee", "forward", "--format", "json", "--threads", "2"});
  CHECK(one.status == 0);
  CHECK(one.out == two.out);
  CHECK(nlohmann::json::parse(one.out)["members"].size() == 2);
  const Outcome csv = run_bands({"--members", list.path(), "--tee", "forward", "--format", "csv"});
  CHECK(says(csv.out, "weekend 16 man,16.4,men,"));
  CHECK(says(csv.err, "Assumed"));
}

TEST_CASE("bands --members: what does not fit is refused, with all of its faults") {
  const ListFile list("label,index,gender\na,99,men\na,3,boys\n");
  const Outcome bad = run_bands({"--members", list.path(), "--band", "scratch", "--gender", "men", "--hole", "3",
                                 "--add-hazard", "4:kind=bunker,side=left,from=230,to=245", "--tee", "mddle"});
  CHECK(bad.status == 2);
  CHECK(bad.out.empty());
  for (const char* words :
       {"--band: found --members beside it", "--gender: found --members beside it", "--hole: found --members beside it",
        "--add-hazard: found --members beside it", ":2:3: fault: index: found \"99\"", ":3:1: fault: label",
        ":3:5: fault: gender", "the nearest is middle"}) {
    CAPTURE(words);
    CAPTURE(bad.err);
    CHECK(says(bad.err, words));
  }
  CHECK(says(run_bands({"--members", "/nowhere.csv"}).err, "no such file"));
}
