#include <doctest/doctest.h>

#include <map>
#include <optional>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "structure/source_files.hpp"

// The floors of DEVELOPERS.md, "The house": a floor includes only itself and
// what is below it.

namespace yardworth::test {
namespace {

// The height of each folder of src. Those of one height may know each other,
// though never both each the other.
const std::map<std::string, int> heights = {
    {"core", 0},     {"course", 1}, {"player", 1}, {"baseline", 1}, {"input", 1},    {"validate", 1},
    {"scenario", 1}, {"flight", 1}, {"shot", 2},   {"bag", 3},      {"strategy", 3}, {"gain", 4},
    {"derive", 4},   {"report", 5}, {"embed", 6},  {"cli", 6},      {"rebuild", 6},  {"page", 7},
};

// Nobody includes what is in these: programs, what only they and the tests
// need.
const std::set<std::string> apart = {"cli", "derive", "page", "rebuild"};

// The floor of each public header is that of its content.
const std::map<std::string, std::string> public_floor = {
    {"bag", "bag"},           {"shot_log", "input"}, {"bands", "gain"},       {"baseline", "baseline"},
    {"change", "course"},     {"course", "course"},  {"diagnostics", "core"}, {"flight", "flight"},
    {"embed", "embed"},       {"gain", "gain"},      {"geometry", "core"},    {"limits", "core"},
    {"plan_view", "course"},  {"player", "player"},  {"read", "input"},       {"report", "report"},
    {"scenario", "scenario"}, {"score", "gain"},     {"strategy", "gain"},    {"tee_view", "gain"},
    {"units", "core"},        {"version", "core"},   {"members", "gain"},     {"options", "input"},
    {"weigh", "gain"},
};

// The floor of a file by its path from the root, or of an include by its words;
// nothing where it has none.
std::optional<std::string> floor_of(const std::string& path) {
  static const std::regex folder("^(?:src/)?([a-z_]+)/");
  static const std::regex header("^(?:include/)?yardworth/([a-z_]+)\\.hpp$");
  std::smatch found;
  if (std::regex_search(path, found, header)) {
    const auto floor = public_floor.find(found[1]);
    return floor == public_floor.end() ? std::nullopt : std::optional(floor->second);
  }
  if (std::regex_search(path, found, folder) && heights.contains(found[1])) return found[1];
  return std::nullopt;
}

// What a file includes by quotation marks: all that is ours is included so.
std::vector<std::string> includes_of(const SourceFile& file) {
  static const std::regex directive("^\\s*#\\s*include\\s*\"([^\"]+)\"");
  std::vector<std::string> included;
  for (const std::string& line : lines_of(file.text)) {
    std::smatch found;
    if (std::regex_search(line, found, directive)) included.push_back(found[1]);
  }
  return included;
}

// Why a file of one floor may not include something of another; empty where it
// may.
std::string objection(const std::string& from, const std::string& to) {
  if (from == to) return "";
  if (apart.contains(to) && !(to == "derive" && from == "rebuild")) return to + " is for nobody else";
  if (heights.at(to) > heights.at(from)) return to + " is above " + from;
  if (to == "scenario" && from != "cli" && from != "embed") return "scenario stands apart";
  if (from == "flight" && to != "core" && to != "validate") return "flight knows neither course nor golfer";
  return "";
}

std::vector<std::string> wrong_includes(const std::vector<SourceFile>& files) {
  std::vector<std::string> wrong;
  for (const SourceFile& file : files) {
    const auto from = floor_of(file.path);
    if (!from) wrong.push_back(file.path + " belongs to no floor; heights and public_floor say which there are");
    for (const std::string& included : includes_of(file)) {
      const std::string what = file.path + " includes " + included + ": ";
      const auto to = floor_of(included);
      if (!to) wrong.push_back(what + "it belongs to no floor");
      if (!from || !to) continue;
      const std::string why = objection(*from, *to);
      if (!why.empty()) wrong.push_back(what + why);
      if (file.path.starts_with("include/") && !included.starts_with("yardworth/")) {
        wrong.push_back(what + "it is not public");
      }
    }
  }
  return wrong;
}

// Pairs of folders of src that include each other, through public headers too.
std::vector<std::string> mutual_includes(const std::vector<SourceFile>& files) {
  std::map<std::string, std::set<std::string>> below;
  for (const SourceFile& file : files) {
    for (const std::string& included : includes_of(file)) {
      const auto from = floor_of(file.path);
      const auto to = floor_of(included);
      if (from && to) below[*from].insert(*to);
    }
  }
  std::vector<std::string> mutual;
  for (const auto& [from, floors] : below) {
    for (const std::string& to : floors) {
      if (from < to && below[to].contains(from)) mutual.push_back(std::string(from).append(" and ").append(to));
    }
  }
  return mutual;
}

std::vector<SourceFile> all_sources() {
  std::vector<SourceFile> files = source_files("src");
  for (SourceFile& file : source_files("include")) files.push_back(std::move(file));
  return files;
}

}  // namespace

TEST_CASE("a floor includes only itself and what is below it") {
  const std::vector<SourceFile> files = all_sources();
  REQUIRE(files.size() > 50);
  const auto wrong = wrong_includes(files);
  CHECK_MESSAGE(wrong.empty(), listed(wrong));
  const auto mutual = mutual_includes(files);
  CHECK_MESSAGE(mutual.empty(), "these include each other:" << listed(mutual));
}

TEST_CASE("a picture knows results, not what worked them out") {
  for (const SourceFile& file : source_files("src/report/picture")) {
    for (const std::string& included : includes_of(file)) {
      const auto floor = floor_of(included);
      const bool engine = floor && !included.starts_with("yardworth/") && heights.at(*floor) >= 2 && *floor != "report";
      CHECK_MESSAGE(!engine, file.path << " includes " << included);
    }
  }
}

TEST_CASE("a wrong include is found") {
  struct Planted {
    SourceFile file;
    std::string found;
  };
  for (const Planted& planted : {
           Planted{{"src/core/plane.cpp", "#include \"shot/rest.hpp\"\n"}, "shot is above core"},
           Planted{{"src/strategy/policy.cpp", "// why\n# include \"yardworth/gain.hpp\"\n"}, "gain is above strategy"},
           Planted{{"src/gain/gain.cpp", "#include \"derive/scores.hpp\"\n"}, "derive is for nobody else"},
           Planted{{"src/report/text.cpp", "#include \"cli/options.hpp\"\n"}, "cli is for nobody else"},
           Planted{{"src/gain/gain.cpp", "#include \"yardworth/scenario.hpp\"\n"}, "scenario stands apart"},
           Planted{{"src/flight/run.cpp", "#include \"yardworth/course.hpp\"\n"}, "flight knows neither"},
           Planted{{"src/gain/gain.cpp", "#include \"gian/gain.hpp\"\n"}, "it belongs to no floor"},
           Planted{{"include/yardworth/gain.hpp", "#include \"strategy/policy.hpp\"\n"}, "it is not public"},
           Planted{{"include/yardworth/course.hpp", "#include \"yardworth/gain.hpp\"\n"}, "gain is above course"},
           Planted{{"src/attic/trunk.cpp", ""}, "belongs to no floor"},
       }) {
    CAPTURE(planted.file.path);
    const auto wrong = wrong_includes({planted.file});
    REQUIRE(wrong.size() == 1);
    CHECK(wrong.front().find(planted.found) != std::string::npos);
  }
  CHECK(wrong_includes({{"src/gain/gain.cpp", "#include \"core/plane.hpp\"\n#include <vector>\n"}}).empty());
  CHECK(mutual_includes({{"src/course/course.cpp", "#include \"yardworth/player.hpp\"\n"},
                         {"src/player/skill.cpp", "#include \"course/set_up.hpp\"\n"}})
            .size() == 1);
}

TEST_CASE("the public headers are few, and say nothing of how a hole is solved") {
  const std::vector<SourceFile> headers = source_files("include");
  CHECK(headers.size() <= 25);
  // A ring as a word or a part of a name, not the end of a string.
  const std::regex inner("lattice|stride|StateId|(^|[^a-z])rings?($|[^a-z])", std::regex::icase);
  for (const SourceFile& header : headers) {
    for (const std::string& line : lines_of(header.text)) {
      CHECK_MESSAGE(!std::regex_search(line, inner), header.path << ": " << line);
    }
  }
  CHECK(std::regex_search(std::string("  double ring_yd = 0.0;"), inner));
  CHECK_FALSE(std::regex_search(std::string("for (std::string words : strings)"), inner));
}

}  // namespace yardworth::test
