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

TEST_CASE("report refuses what gain refuses, and knows no other way to write") {
  CHECK(says(run_report_words("--step 5").err, "--step needs --to"));
  CHECK(says(run_report_words("--course nowhere.yaml").err, "nowhere.yaml"));
  CHECK(run_report_words("--format json").status == yardworth::cli::at_fault);
  CHECK(run_report_words("--force").status == yardworth::cli::at_fault);
}
