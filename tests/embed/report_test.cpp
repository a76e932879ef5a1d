#include <doctest/doctest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "embed/page_case.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/embed.hpp"

// The lesson sheet by the embedding function, and the case that a page holds.

namespace yardworth {
namespace {

using SheetJson = nlohmann::ordered_json;

SheetJson report_answer(SheetJson request) {
  request["command"] = "report";
  return SheetJson::parse(answer(request.dump()));
}

std::string sheet_of_command(const std::string& arguments) {
  const std::filesystem::path path =
      std::filesystem::temp_directory_path() / ("yardworth-sheet-" + std::to_string(::getpid()) + ".html");
  std::istringstream words("report --output " + path.string() + " " + arguments);
  std::vector<std::string> all;
  for (std::string word; words >> word;) all.push_back(word);
  const cli::Outcome outcome = cli::run(all, {});
  REQUIRE_MESSAGE(outcome.status == cli::done, outcome.err);
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  std::filesystem::remove(path);
  return text.str();
}

}  // namespace

TEST_CASE("the embedding function gives the lesson sheet that the command writes, byte for byte") {
  const SheetJson plain = report_answer({{"options", {{"driver", 15}, {"method", "table"}, {"tee", "back"}}}});
  REQUIRE_MESSAGE(plain["status"] == 0, plain.dump());
  CHECK(plain["answer"]["format"] == "yardworth/gain/1");
  CHECK(plain["sheet"] == sheet_of_command("--driver 15 --method table --tee back"));
  const SheetJson struck = report_answer({{"options",
                                           {{"method", "table"},
                                            {"from_delivery", {{"club_speed_mph", 94}, {"attack_deg", -3}}},
                                            {"to", {{"attack_deg", 2}}}}}});
  REQUIRE_MESSAGE(struck["status"] == 0, struck.dump());
  CHECK(struck["sheet"] ==
        sheet_of_command("--method table --from-delivery club-speed-mph=94 attack-deg=-3 --to attack-deg=2"));
}

TEST_CASE("a lesson sheet is of a whole round, and has pictures without being asked") {
  CHECK(report_answer({{"holes", {1}}})["findings"][0]["key"] == "holes");
  CHECK(report_answer({{"options", {{"pictures", true}}}})["findings"][0]["key"] == "options.pictures");
}

TEST_CASE("a case in a page is data, whatever its texts spell") {
  const std::vector<embed::CaseText> texts = {
      {"course", "</script><b>.yaml", "name: </script><script>alert(1)</script> <!-- \xe2\x80\xa8 \xff\n"}};
  const std::string line = embed::case_json(texts);
  CHECK(line.find('<') == std::string::npos);
  CHECK(line.find('\n') == std::string::npos);
  const SheetJson json = SheetJson::parse(line);
  CHECK(json["format"] == "yardworth/case/1");
  CHECK(json["names"]["course"] == texts[0].name);
  CHECK(json["course"] == "name: </script><script>alert(1)</script> <!-- \xe2\x80\xa8 \xef\xbf\xbd\n");
}

TEST_CASE("a case takes the place of the one before, and nothing else of a page moves") {
  const std::string opens = "<p>a</p>\n<script type=\"application/json\" id=\"case\">";
  const std::string closes =
      "</script>\n<script>const a = '<script type=\"application/json\" id=\"case\">';</script>\n";
  const std::vector<embed::CaseText> texts = {{"player", "p.yaml", "label: a\n"}};
  const std::string expected = opens + embed::case_json(texts) + closes;
  CHECK(embed::page_with_case(opens + "{}" + closes, texts) == expected);
  CHECK(embed::page_with_case(expected, texts) == expected);
  CHECK(embed::page_with_case(opens + embed::case_json({}), texts) == std::nullopt);
  CHECK(embed::page_with_case("<p>no page of ours</p>", texts) == std::nullopt);
}

}  // namespace yardworth
