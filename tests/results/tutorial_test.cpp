// The commands of docs/tutorial.md are run, and its pictures and quoted sentences held to what comes out. With
// YARDWORTH_UPDATE_RESULTS set the pictures, docs/pictures, are written anew first.

#include <doctest/doctest.h>
#include <unistd.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"

namespace yardworth {
namespace {

namespace fs = std::filesystem;

// A command of the page and the sentences that are quoted below it.
struct Shown {
  std::vector<std::string> arguments;
  std::vector<std::string> quotes;
};

std::vector<Shown> commands_of(const std::string& page) {
  std::vector<Shown> all;
  for (const std::string& line : test::lines_of(page)) {
    if (line.starts_with("yardworth ")) {
      std::istringstream words(line);
      Shown shown;
      for (std::string word; words >> word;) shown.arguments.push_back(word);
      shown.arguments.erase(shown.arguments.begin());
      all.push_back(std::move(shown));
    } else if (line.starts_with("> ")) {
      REQUIRE(!all.empty());
      all.back().quotes.push_back(line.substr(2));
    }
  }
  return all;
}

std::string bytes_of_file(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

// Another compiler may round a place of a picture the other way: numbers are as good as equal within a tenth.
bool is_same_picture(const std::string& one, const std::string& other) {
  static const std::regex number("-?[0-9]+(\\.[0-9]+)?");
  if (std::regex_replace(one, number, "#") != std::regex_replace(other, number, "#")) return false;
  std::sregex_iterator a(one.begin(), one.end(), number);
  std::sregex_iterator b(other.begin(), other.end(), number);
  for (; a != std::sregex_iterator(); ++a, ++b) {
    if (std::abs(std::stod(a->str()) - std::stod(b->str())) > 0.11) return false;
  }
  return true;
}

// Runs a command in the tree, with what it would write into a folder of its own instead.
class Tutorial {
 public:
  Tutorial() : folder_(fs::temp_directory_path() / ("yardworth-tutorial-" + std::to_string(::getpid()))) {
    fs::create_directories(folder_);
  }
  ~Tutorial() { fs::remove_all(folder_); }
  Tutorial(const Tutorial&) = delete;
  Tutorial& operator=(const Tutorial&) = delete;

  void follow(const Shown& shown) const {
    std::vector<std::string> arguments = shown.arguments;
    std::string picture;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
      if (arguments[i].starts_with("courses/")) arguments[i] = tree_ + "/" + arguments[i];
      if (i == 0 || (arguments[i - 1] != "--svg" && arguments[i - 1] != "--output")) continue;
      if (arguments[i - 1] == "--svg") picture = arguments[i];
      arguments[i] = (folder_ / arguments[i]).string();
    }
    const cli::Outcome outcome = cli::run(arguments, {});
    REQUIRE_MESSAGE(outcome.status == cli::done, outcome.err);
    for (const std::string& quote : shown.quotes) {
      CAPTURE(quote);
      CHECK(test::says(test::words_of(outcome.out), quote));
    }
    if (!picture.empty()) check_picture(picture);
  }

 private:
  void check_picture(const std::string& picture) const {
    const std::string drawn = bytes_of_file(folder_ / picture);
    const fs::path kept = fs::path(tree_) / "docs" / "pictures" / picture;
    if (std::getenv("YARDWORTH_UPDATE_RESULTS") != nullptr) std::ofstream(kept, std::ios::binary) << drawn;
    CAPTURE(picture);
    CHECK(is_same_picture(drawn, bytes_of_file(kept)));
  }

  fs::path folder_;
  std::string tree_ = YARDWORTH_SOURCE_DIR;
};

}  // namespace

// A minute of two cores: among the recipes (tests/CMakeLists.txt).
TEST_CASE("the tutorial says and shows what its commands do" * doctest::skip()) {
  const std::vector<Shown> commands = commands_of(test::text_of("docs/tutorial.md"));
  CHECK(commands.size() == 7);
  const Tutorial tutorial;
  for (const Shown& shown : commands) {
    CAPTURE(shown.arguments[0]);
    tutorial.follow(shown);
  }
}

TEST_CASE("pictures of pages that are not the same are told apart") {
  CHECK(is_same_picture("<a x=\"1.0\">b</a>", "<a x=\"1.1\">b</a>"));
  CHECK_FALSE(is_same_picture("<a x=\"1.0\">b</a>", "<a x=\"1.3\">b</a>"));
  CHECK_FALSE(is_same_picture("<a x=\"1.0\">b</a>", "<a x=\"1.0\">c</a>"));
}

}  // namespace yardworth
