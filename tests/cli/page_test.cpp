#include <doctest/doctest.h>
#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"

// The command page, with a page that is as long as it has to be. tests/browser opens real ones.

namespace yardworth::cli {
namespace {

using test::says;

constexpr const char* case_opens = "\n<script type=\"application/json\" id=\"case\">";
const std::string small_page = std::string("<!DOCTYPE html>\n<p>page</p>") + case_opens + "{}</script>\n<p>end</p>\n";

// A folder that goes with what was written into it.
class PageFolder {
 public:
  PageFolder() {
    char name[] = "/tmp/yardworth-copy-XXXXXX";
    REQUIRE(::mkdtemp(name) != nullptr);
    path_ = name;
    write("yardworth.html", small_page);
  }
  PageFolder(const PageFolder&) = delete;
  PageFolder& operator=(const PageFolder&) = delete;
  ~PageFolder() { std::filesystem::remove_all(path_); }

  std::string file(const std::string& name) const { return (path_ / name).string(); }
  void write(const std::string& name, const std::string& text) const {
    std::ofstream(path_ / name, std::ios::binary) << text;
  }
  std::string text(const std::string& name) const {
    std::ostringstream text;
    text << std::ifstream(path_ / name, std::ios::binary).rdbuf();
    return text.str();
  }
  bool has(const std::string& name) const { return std::filesystem::exists(path_ / name); }

 private:
  std::filesystem::path path_;
};

Outcome copy_page(std::vector<std::string> arguments, const std::string& installed = "") {
  arguments.insert(arguments.begin(), "page");
  Surroundings surroundings;
  surroundings.installed_page = installed;
  return run(arguments, surroundings);
}

std::string in_tree(const std::string& path) { return std::string(YARDWORTH_SOURCE_DIR) + "/" + path; }

nlohmann::json case_in(const std::string& page) {
  const std::size_t start = page.find(case_opens) + std::string(case_opens).size();
  return nlohmann::json::parse(page.substr(start, page.find("</script>", start) - start));
}

}  // namespace

TEST_CASE("page copies the page with the files inside, by their names without their folders") {
  const PageFolder folder;
  const std::string bay = "courses/heron-ferry/bay/weekend-16-";
  const Outcome outcome = copy_page({"--course", in_tree("courses/marsh-end/course.yaml"), "--player",
                                     in_tree("courses/heron-ferry/members/8-man.yaml"), "--baseline",
                                     in_tree("src/baseline/derived/men-6-12.yaml"), "--log",
                                     in_tree(bay + "before.csv"), in_tree(bay + "after.csv"), "--page",
                                     folder.file("yardworth.html"), "--output", folder.file("a.html")});
  REQUIRE_MESSAGE(outcome.status == done, outcome.err);
  CHECK(outcome.out.empty());
  const std::string page = folder.text("a.html");
  CHECK(page.starts_with("<!DOCTYPE html>\n<p>page</p>\n"));
  CHECK(page.ends_with("</script>\n<p>end</p>\n"));
  const nlohmann::json found = case_in(page);
  CHECK(found["format"] == "yardworth/case/1");
  CHECK(found["course"] == test::text_of("courses/marsh-end/course.yaml"));
  CHECK(found["after"] == test::text_of(bay + "after.csv"));
  CHECK(found["names"] == nlohmann::json{{"course", "course.yaml"},
                                         {"player", "8-man.yaml"},
                                         {"baseline", "men-6-12.yaml"},
                                         {"log", "weekend-16-before.csv"},
                                         {"after", "weekend-16-after.csv"}});
}

TEST_CASE("page copies the installed page, with what is given alone, and replaces no file without leave") {
  const PageFolder folder;
  const std::string installed = folder.file("yardworth.html");
  const std::vector<std::string> asked = {"--course", in_tree("courses/bare-scorecard/course.yaml"), "--output",
                                          folder.file("a.html")};
  REQUIRE(copy_page(asked, installed).status == done);
  CHECK(case_in(folder.text("a.html")).size() == 3);
  const Outcome refused = copy_page(asked, installed);
  CHECK(refused.status == at_fault);
  CHECK(says(refused.err, "--force"));
  CHECK(copy_page({"--output", installed, "--force"}, installed).status == at_fault);
  CHECK(folder.text("yardworth.html") == small_page);
}

TEST_CASE("page names every fault of the files at once, and writes nothing") {
  const PageFolder folder;
  folder.write("course.yaml", "format: yardworth/course/1\nname: X\nholes: none\n");
  folder.write("log.csv", "club,carry_yd\ndriver,far\n");
  const Outcome outcome = copy_page({"--course", folder.file("course.yaml"), "--player", folder.file("nowhere.yaml"),
                                     "--log", folder.file("log.csv"), "--output", folder.file("a.html")},
                                    folder.file("yardworth.html"));
  CHECK(outcome.status == at_fault);
  for (const char* words : {"course.yaml:3", "nowhere.yaml", "log.csv:2"}) CHECK(says(outcome.err, words));
  CHECK_FALSE(folder.has("a.html"));
}

TEST_CASE("page says how to get a page where there is none, or none of ours") {
  const PageFolder folder;
  folder.write("other.html", "<p>other</p>");
  for (const std::string& installed : {std::string(), folder.file("none.html")}) {
    const Outcome outcome = copy_page({"--output", folder.file("a.html")}, installed);
    CHECK(outcome.status == at_fault);
    CHECK(says(outcome.err, "README.md"));
  }
  const Outcome missing = copy_page({"--page", folder.file("none.html"), "--output", folder.file("a.html")});
  CHECK(missing.status == at_fault);
  CHECK(says(missing.err, "none.html"));
  const Outcome other = copy_page({"--page", folder.file("other.html"), "--output", folder.file("a.html")});
  CHECK(other.status == at_fault);
  CHECK(says(other.err, "no place for a case"));
  CHECK_FALSE(folder.has("a.html"));
}

}  // namespace yardworth::cli
