#include <doctest/doctest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/well_formed.hpp"
#include "support/words.hpp"

// The lesson sheet of the command report.

namespace {

using yardworth::cli::Outcome;
using yardworth::test::says;

// Arguments are separated by blanks.
Outcome run_report_words(const std::string& arguments) {
  std::istringstream words("report " + arguments);
  std::vector<std::string> all;
  for (std::string word; words >> word;) all.push_back(word);
  return yardworth::cli::run(all, {});
}

std::string bytes_of(const std::filesystem::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

}  // namespace

TEST_CASE("report writes the sheet of a strike, whole, and replaces no file without leave") {
  const std::filesystem::path path =
      std::filesystem::temp_directory_path() / ("yardworth-lesson-" + std::to_string(::getpid()) + ".html");
  std::ofstream(path) << "old";
  const std::string asked =
      "--method table --from-delivery club-speed-mph=94 attack-deg=-3 dynamic-loft-deg=18 --to attack-deg=2 --output " +
      path.string();
  const Outcome refused = run_report_words(asked);
  CHECK(refused.status == yardworth::cli::at_fault);
  CHECK(says(refused.err, "--force"));
  CHECK(bytes_of(path) == "old");
  const Outcome outcome = run_report_words(asked + " --force");
  REQUIRE_MESSAGE(outcome.status == yardworth::cli::done, outcome.err);
  CHECK(outcome.out.empty());
  const std::string html = bytes_of(path);
  std::filesystem::remove(path);
  yardworth::test::check_well_formed(html);
  CHECK(html.size() < 1000000);
  for (int hole = 1; hole <= 18; ++hole) CHECK(says(html, ">Hole " + std::to_string(hole) + ", par "));
  for (const char* words :
       {">The three holes where most is gained<", ">What to work on first<", "as the best plan plays"}) {
    CAPTURE(words);
    CHECK(says(html, words));
  }
}

TEST_CASE("report --bands writes a page for a club, with its members beside the bands") {
  const std::string folder = std::filesystem::temp_directory_path().string();
  const std::filesystem::path members = folder + "/yardworth-club-" + std::to_string(::getpid()) + ".csv";
  const std::filesystem::path page = folder + "/yardworth-club-" + std::to_string(::getpid()) + ".html";
  std::ofstream(members) << "label,index,gender\none of us,12.4,man\n";
  const std::string asked = "--bands --band scratch --gender men --tee forward --tee middle --plan habit --output " +
                            page.string() + " --members " + members.string();
  const Outcome outcome = run_report_words(asked);
  REQUIRE_MESSAGE(outcome.status == yardworth::cli::done, outcome.err);
  CHECK(outcome.out.empty());
  const std::string html = bytes_of(page);
  yardworth::test::check_well_formed(html);
  for (const char* words : {"Heron Ferry Municipal; tees: middle (", "forward (", "one of us<br/>", ">scratch men<",
                            "20 yards more with the driver", ">Which tees suit whom<", ">Who finds which hazard<"}) {
    CAPTURE(words);
    CHECK(says(html, words));
  }
  CHECK(run_report_words(asked).status == yardworth::cli::at_fault);
  CHECK(bytes_of(page) == html);
  const Outcome over_members =
      run_report_words("--bands --members " + members.string() + " --force --output " + members.string());
  CHECK(over_members.status == yardworth::cli::at_fault);
  std::filesystem::remove(page);
  std::filesystem::remove(members);
}

TEST_CASE("report --bands tells what an added hazard does, with nothing else assumed") {
  const Outcome outcome = run_report_words(
      "--bands --band scratch --gender men --tee forward --add-hazard 4:kind=bunker,side=left,from=200,to=215");
  REQUIRE_MESSAGE(outcome.status == yardworth::cli::done, outcome.err);
  yardworth::test::check_well_formed(outcome.out);
  CHECK(says(outcome.out, "<h1>What the changed hazards do</h1>"));
  CHECK(says(outcome.out, ">Hole 4, a new bunker left</h2>"));
  CHECK_FALSE(says(outcome.out, "more with the driver"));
}

TEST_CASE("report takes no option of one page for the other") {
  const auto refused = [](const std::string& arguments, const std::string& words) {
    const Outcome outcome = run_report_words(arguments);
    CHECK(outcome.status == yardworth::cli::at_fault);
    CHECK_MESSAGE(says(outcome.err, words), outcome.err);
  };
  for (const char* option : {"--band scratch", "--gender men", "--members m.csv", "--add-hazard 4:kind=bunker"}) {
    refused(option, "needs --bands, the page for a club");
  }
  for (const char* option : {"--player p.yaml", "--control", "--to 40", "--putting -5%", "--method play"}) {
    refused(std::string("--bands ") + option, "is about one golfer");
  }
  refused("--bands --plan both", "expected habit or best");
  refused("--tee middle --tee forward", "found 2 of them, expected one");
  refused("--tee nowhere", "found \"nowhere\"");
  refused("--bands --tee nowhere", "found \"nowhere\"");
  refused("--bands --members nowhere.csv --course nowhere.yaml", "nowhere.csv");
}

TEST_CASE("report refuses what gain refuses, and knows no other way to write") {
  CHECK(says(run_report_words("--step 5").err, "--step needs --to"));
  CHECK(says(run_report_words("--course nowhere.yaml").err, "nowhere.yaml"));
  CHECK(run_report_words("--format json").status == yardworth::cli::at_fault);
  CHECK(run_report_words("--force").status == yardworth::cli::at_fault);
}
