#include <doctest/doctest.h>
#include <fmt/format.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/words.hpp"
#include "yardworth/embed.hpp"

// The embedding function against the command: two roads to the same text, and parts against the whole.

namespace yardworth {
namespace {

using Json = nlohmann::ordered_json;

const std::string courses = YARDWORTH_SOURCE_DIR "/courses/";

std::string content(const std::string& path) {
  std::ifstream file(courses + path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

Json ask(const Json& request) { return Json::parse(answer(request.dump())); }

// What the command writes; its arguments are separated by blanks.
std::string command(const std::string& arguments) {
  std::istringstream words(arguments);
  std::vector<std::string> all;
  for (std::string word; words >> word;) all.push_back(word);
  const cli::Outcome outcome = cli::run(all, {});
  REQUIRE_MESSAGE(outcome.status == 0, outcome.err);
  return outcome.out;
}

struct Pair {
  std::string course, player;
};

Json request_of(const Pair& pair, const std::string& name, const Json& options) {
  return {{"command", name}, {"course", content(pair.course)}, {"player", content(pair.player)}, {"options", options}};
}

std::string files_of(const Pair& pair) {
  return fmt::format(" --course {}{} --player {}{}", courses, pair.course, courses, pair.player);
}

const std::vector<Pair> pairs = {{"heron-ferry/course.yaml", "heron-ferry/members/weekend-16-man.yaml"},
                                 {"bare-scorecard/course.yaml", "heron-ferry/members/28-woman.yaml"},
                                 {"marsh-end/course.yaml", "heron-ferry/members/8-man.yaml"}};

void check_same(const Json& answered, const std::string& arguments) {
  CAPTURE(arguments);
  REQUIRE_MESSAGE(answered["status"] == 0, answered.dump(2));
  CHECK(answered["answer"].dump(2, ' ', true) + "\n" == command(arguments + " --format json"));
  CHECK(answered["text"] == command(arguments));
}

TEST_CASE("a gain is the command's, byte for byte") {
  for (const Pair& pair : pairs) {
    check_same(ask(request_of(pair, "gain", {{"driver", 15}, {"irons", 5}, {"plan", "habit"}})),
               "gain --driver +15 --irons +5 --plan habit" + files_of(pair));
  }
  check_same(ask(request_of(pairs[2], "gain", {{"driver", 15}, {"tee", "short"}, {"plan", "both"}})),
             "gain --driver +15 --tee short" + files_of(pairs[2]));
  check_same(ask({{"command", "gain"}, {"options", {{"driver", 10}, {"to", 20}, {"step", 10}, {"method", "table"}}}}),
             "gain --driver +10 --to 20 --step 10 --method table");
}

// Nine short holes, in a file for the command: proofs take long.
struct ShortCourse {
  ShortCourse()
      : text("format: yardworth/course/1\nname: Short\nunits: yards\ntees: [{name: only}]\nholes:\n"),
        path(fmt::format("{}/yardworth-embed-{}.yaml", std::filesystem::temp_directory_path().string(), ::getpid())) {
    for (int hole = 1; hole <= 9; ++hole) {
      text += fmt::format("  - {{number: {}, par: 3, length: {{only: {}}}", hole, 90 + 15 * hole);
      text += hole % 2 == 0 ? "}\n" : ", hazards: [{kind: bunker, side: left, from: 90, to: 120}]}\n";
    }
    std::ofstream(path) << text;
  }
  ~ShortCourse() { std::filesystem::remove(path); }
  std::string text, path;
};

TEST_CASE("strategies and bands are the command's, byte for byte") {
  const ShortCourse course;
  check_same(
      ask({{"command", "strategy"},
           {"course", course.text},
           {"player", content(pairs[2].player)},
           {"options", {{"driver", 15}, {"prove", true}}}}),
      fmt::format("strategy --driver +15 --prove --course {} --player {}{}", course.path, courses, pairs[2].player));
  const Json bands = {
      {"command", "bands"},
      {"course", content(pairs[2].course)},
      {"options",
       {{"band", {"scratch", "bogey"}},
        {"gender", "men"},
        {"hole", 4},
        {"hazards", {{{"hole", 4}, {"kind", "bunker"}, {"side", "left"}, {"from", 210}, {"to", 225}}}}}}};
  const cli::Outcome told =
      cli::run({"bands", "--course", courses + pairs[2].course, "--band", "scratch", "--band", "bogey", "--gender",
                "men", "--hole", "4", "--add-hazard", "4:kind=bunker,side=left,from=210,to=225", "--format", "json"},
               {});
  REQUIRE_MESSAGE(told.status == 0, told.err);
  const Json answered = ask(bands);
  REQUIRE_MESSAGE(answered["status"] == 0, answered.dump(2));
  CHECK(answered["answer"].dump(2, ' ', true) + "\n" == told.out);
}

// The holes of a course in three parts, the last ones first.
void check_parts(Json request, int holes) {
  const std::string whole = answer(request.dump());
  REQUIRE(Json::parse(whole)["status"] == 0);
  Json parts = Json::array();
  for (int first = holes - holes / 3 + 1; first > 0; first -= holes / 3) {
    Json part = request;
    part["holes"] = Json::array();
    for (int i = 0; i < holes / 3; ++i) part["holes"].push_back(first + i);
    const Json answered = ask(part);
    REQUIRE_MESSAGE(answered["status"] == 0, answered.dump(2));
    CHECK(answered["answer"]["holes"].size() == static_cast<std::size_t>(holes / 3));
    parts.push_back(answered["part"]);
  }
  request["parts"] = parts;
  CHECK(answer(request.dump()) == whole);
  request["parts"].erase(1);
  const Json incomplete = ask(request);
  CHECK(incomplete["status"] == 2);
  CHECK(test::says(incomplete["findings"][0]["message"], "every hole of the course once"));
  request["parts"] = parts;
  request["options"]["driver"] = 11;
  CHECK(test::says(ask(request)["findings"][0]["message"], "a part of another question"));
  if (request["command"] == "gain") {
    request["options"]["driver"] = 15;
    request["parts"] = parts;
    for (const char* policy : {"habit", "best"}) request["parts"][0]["holes"][0][policy] = nullptr;
    CHECK(ask(request)["status"] == 2);
  }
  request["parts"] = {1, Json::object(), {{"format", "yardworth/part/0"}}};
  CHECK(ask(request)["findings"].size() == 3);
}

TEST_CASE("holes answered apart are put together to the bytes of one answer") {
  check_parts(request_of(pairs[0], "gain", {{"driver", 15}, {"irons", 5}, {"plan", "habit"}}), 18);
  check_parts(request_of(pairs[2], "gain", {{"driver", 15}, {"irons", 5}}), 9);
  check_parts(request_of(pairs[2], "gain", {{"driver", 15}, {"irons", 5}, {"method", "table"}}), 9);
  check_parts(request_of(pairs[2], "strategy", {{"driver", 15}, {"graph", true}}), 9);
}

TEST_CASE("what is understood of files is what check says") {
  const Json answered = ask({{"command", "check"}, {"course", content("marsh-end/course.yaml")}});
  CHECK(answered["status"] == 0);
  CHECK(test::says(command("check " + courses + "marsh-end/course.yaml"), answered["answer"]["understood"]["course"]));
}

std::string messages(const Json& answered) {
  CHECK(answered["status"] == 2);
  CHECK_FALSE(answered.contains("answer"));
  std::string all;
  for (const Json& finding : answered["findings"]) all += finding["message"].get<std::string>() + "\n";
  return all;
}

TEST_CASE("every fault of request and texts is told at once, at its place") {
  const std::string told = messages(ask({{"command", "gian"},
                                         {"course", "format: yardworth/course/1\nname: 7\nholes: nine\n"},
                                         {"player", 12},
                                         {"names", {{"course", "links.yaml"}}},
                                         {"optoins", Json::object()},
                                         {"holes", {1, "two"}}}));
  for (const char* words :
       {"\"gian\"", "the nearest is gain", "links.yaml:3:8", "player: found 12", "optoins", "found \"two\""}) {
    CAPTURE(words);
    CHECK_MESSAGE(test::says(told, words), told);
  }
  const std::string options =
      messages(ask({{"command", "gain"},
                    {"options", {{"driver", "far"}, {"irons", 200}, {"tee", "mddle"}, {"plan", 3}, {"knd", 1}}}}));
  for (const char* words : {"options.driver: found \"far\"", "options.irons: found 200", "the nearest is middle",
                            "options.plan: found 3", "options.knd"}) {
    CAPTURE(words);
    CHECK_MESSAGE(test::says(options, words), options);
  }
}

TEST_CASE("what the library refuses is told by the members of the request") {
  CHECK(test::says(messages(ask({{"command", "gain"}, {"options", {{"irons", -145}}}})), "options.irons: found"));
  CHECK(test::says(messages(ask({{"command", "gain"}, {"options", {{"driver", 10}, {"to", 12}, {"step", 5}}}})),
                   "options.to: found 12"));
  CHECK(test::says(messages(ask({{"command", "gain"}, {"holes", Json::array()}})), "an empty list"));
  CHECK(test::says(messages(ask({{"command", "bands"}, {"options", {{"hazards", {{{"kind", "bunker"}}}}}}})),
                   "options.hazards[0].hole: found nothing"));
}

TEST_CASE("a member that is null is not there") {
  CHECK(ask({{"command", "check"}, {"course", nullptr}})["answer"]["understood"].empty());
}

TEST_CASE("no text is too broken for an answer") {
  CHECK(test::says(messages(Json::parse(answer("{\n  \"command\": }"))), "request:2:14"));
  CHECK(test::says(messages(Json::parse(answer(""))), "no JSON"));
  CHECK(test::says(messages(Json::parse(answer("{\"options\": {\"driver\": 1e999}}"))), "too large"));
  CHECK(test::says(messages(Json::parse(answer("[1]"))), "expected an object"));
  CHECK(test::says(messages(Json::parse(answer(std::string(1 << 20, '[')))), "request"));
  CHECK(test::says(messages(Json::parse(answer(std::string(40, '[') + std::string(40, ']')))), "too deep"));
  CHECK(test::says(messages(Json::parse(answer("{\"command\": \"gain\", \"course\": \"\xff\"}"))), "no JSON"));
  CHECK(test::says(messages(Json::parse(answer(std::string(33u << 20, ' ')))), "bytes"));
}

TEST_CASE("a hole that cannot be finished has the words and the status of the command") {
  // Water 150 metres wide across the first hole.
  std::string course = content("marsh-end/course.yaml");
  const std::string first = "    hazards:\n";
  REQUIRE(test::says(course, first));
  course.replace(course.find(first), first.size(),
                 first + "      - {kind: penalty_area, side: across, from: 100, to: 250}\n");
  const Json answered = ask({{"command", "gain"},
                             {"course", course},
                             {"player", content(pairs[1].player)},
                             {"options", {{"plan", "habit"}, {"driver", 1}}}});
  CHECK(answered["status"] == 1);
  CHECK(test::says(answered["message"].dump(), "cannot be finished with these clubs in 1000 strokes a hole: hole 1"));
}

}  // namespace
}  // namespace yardworth
