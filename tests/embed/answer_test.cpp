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
#include "yardworth/read.hpp"

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
    check_same(ask(request_of(pair, "gain", {{"driver", 15}, {"irons", 5}, {"plan", "habit"}, {"mark", 85}})),
               "gain --driver +15 --irons +5 --plan habit --mark 85" + files_of(pair));
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

TEST_CASE("pictures come with an answer that asks for them, and with parts") {
  const ShortCourse course;
  const auto ask_for = [&](const Json& more) {
    Json request = {
        {"command", "strategy"}, {"course", course.text}, {"options", {{"driver", 15}, {"pictures", true}}}};
    request.update(more);
    return ask(request);
  };
  const Json whole = ask_for(Json::object());
  REQUIRE_MESSAGE(whole["status"] == 0, whole.dump(2));
  CHECK(whole["pictures"].size() == 18);  // large and small
  const Json first = ask_for({{"holes", {1, 2, 3, 4}}});
  const Json last = ask_for({{"holes", {5, 6, 7, 8, 9}}});
  CHECK(first["pictures"]["hole_4"] == whole["pictures"]["hole_4"]);
  const std::string small = first["pictures"]["small_4"];
  CHECK(small.find("Hole 4, par ") != std::string::npos);
  CHECK(small.find(" to ") != std::string::npos);
  CHECK(ask_for({{"parts", {first["part"], last["part"]}}}).dump() == whole.dump());
  Json changed = first["part"];
  changed["holes"][1]["drawing"]["plan"]["line"] = Json::array();
  CHECK(ask_for({{"parts", {changed, last["part"]}}})["status"] == 2);
  changed = first["part"];
  changed["holes"][0]["drawing"]["after"]["hazards"] = Json::array();
  CHECK(ask_for({{"parts", {changed, last["part"]}}})["status"] == 2);

  const Json checked = ask({{"command", "check"}, {"course", course.text}, {"options", {{"pictures", true}}}});
  CHECK(checked["pictures"]["course"].get<std::string>().rfind("<svg ", 0) == 0);
  CHECK_FALSE(ask({{"command", "check"}, {"course", course.text}}).contains("pictures"));
  const Json delivered = ask({{"command", "delivery"}, {"options", {{"pictures", true}}}});
  CHECK(delivered["pictures"]["delivery"].get<std::string>().rfind("<svg ", 0) == 0);
  const Json bag = ask({{"command", "bag"},
                        {"log", content("heron-ferry/bay/weekend-16-before.csv")},
                        {"options", {{"pictures", true}}}});
  REQUIRE_MESSAGE(bag["status"] == 0, bag.dump(2));
  CHECK(bag["pictures"]["bag"].get<std::string>().rfind("<svg ", 0) == 0);
}

TEST_CASE("a delivery is the command's, byte for byte") {
  check_same(ask({{"command", "delivery"}}), "delivery");
  check_same(ask({{"command", "delivery"},
                  {"options",
                   {{"club_speed_mph", 94},
                    {"attack_deg", -1},
                    {"dynamic_loft_deg", 17},
                    {"path_deg", -4},
                    {"face_deg", -1},
                    {"to", {{"attack_deg", 2}, {"dynamic_loft_deg", 15}}},
                    {"table", true}}}}),
             "delivery --club-speed-mph 94 --attack-deg -1 --dynamic-loft-deg 17 --path-deg -4 --face-deg -1 "
             "--to attack-deg=2 --to dynamic-loft-deg=15 --table");
  check_same(ask({{"command", "delivery"},
                  {"options",
                   {{"club", "7-iron"},
                    {"club_speed_mph", 76.5},
                    {"temperature_c", 5},
                    {"altitude_m", 1200},
                    {"pressure_hpa", 990},
                    {"wind_mps", 6},
                    {"wind_from_deg", 30},
                    {"firmness", "firm"},
                    {"table", {{"club_speed_mph", {70, 80}}, {"attack_deg", {-6, -4, -2}}}}}}}),
             "delivery --club 7-iron --club-speed-mph 76.5 --temperature-c 5 --altitude-m 1200 --pressure-hpa 990 "
             "--wind-mps 6 --wind-from-deg 30 --firmness firm --table club-speed-mph=70..80:10 "
             "--table attack-deg=-6..-2:2");
}

TEST_CASE("a gain and a strategy by strikes are the command's, byte for byte") {
  const Json from = {{"club_speed_mph", 94}, {"attack_deg", -3}, {"dynamic_loft_deg", 18}};
  const Json to = {{"attack_deg", 2}, {"dynamic_loft_deg", 15}};
  const std::string strikes =
      "--from-delivery club-speed-mph=94 attack-deg=-3 dynamic-loft-deg=18 --to attack-deg=2 dynamic-loft-deg=15";
  check_same(ask(request_of(pairs[2], "gain", {{"from_delivery", from}, {"to", to}, {"plan", "habit"}})),
             "gain --plan habit " + strikes + files_of(pairs[2]));
  check_same(
      ask(request_of(pairs[2], "gain",
                     {{"from_delivery", from}, {"to", {20, to}}, {"step", 10}, {"irons", 3}, {"method", "table"}})),
      "gain --method table --irons 3 --step 10 " + strikes + " --to 20" + files_of(pairs[2]));
  check_same(ask(request_of(pairs[2], "strategy", {{"from_delivery", from}, {"to", to}})),
             "strategy " + strikes + files_of(pairs[2]));
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

TEST_CASE("members are the command's, byte for byte") {
  const ShortCourse course;
  const std::string list = "label,index,gender,driver_carry_yd\nearly 13 man,13.4,men,201\nearly 20 woman,20,women,\n";
  const std::string path = course.path + ".members.csv";
  std::ofstream(path) << list;
  const cli::Outcome told =
      cli::run({"bands", "--course", course.path, "--members", path, "--driver", "+10", "--format", "json"}, {});
  std::filesystem::remove(path);
  REQUIRE_MESSAGE(told.status == 0, told.err);
  const Json request = {
      {"command", "bands"}, {"course", course.text}, {"members", list}, {"options", {{"driver", 10}}}};
  const Json answered = ask(request);
  REQUIRE_MESSAGE(answered["status"] == 0, answered.dump(2));
  CHECK(answered["answer"].dump(2, ' ', true) + "\n" == told.out);
  Json faulty = request;
  faulty["members"] = "label,index,gender\na,99,men\n";
  faulty["names"] = {{"members", "club.csv"}};
  faulty["options"]["band"] = "scratch";
  const std::string told_faults = messages(ask(faulty));
  CHECK(test::says(told_faults, "club.csv:2:3: fault: index: found \"99\""));
  CHECK(test::says(told_faults, "options.band: found \"members\" beside it"));
  CHECK(test::says(messages(ask({{"command", "gain"}, {"members", list}})), "lists of members are for the command"));
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

TEST_CASE("every fault of strikes and of what they fly through is told at its member") {
  const std::string strikes = messages(ask({{"command", "gain"},
                                            {"options",
                                             {{"driver", 10},
                                              {"from_delivery", {{"club_speed_mph", 300}, {"atack_deg", -1}}},
                                              {"to", {{"face_deg", "open"}, {"path_deg", 90}}}}}}));
  for (const char* words :
       {"options.from_delivery: found \"driver\" beside it", "options.from_delivery.club_speed_mph: found 300",
        "options.from_delivery.atack_deg", "the nearest is attack_deg", "options.to.face_deg: found \"open\"",
        "options.to.path_deg: found 90, expected a number from -30 to 30 degrees"}) {
    CAPTURE(words);
    CHECK_MESSAGE(test::says(strikes, words), strikes);
  }
  const std::string delivery = messages(ask({{"command", "delivery"},
                                             {"course", content(pairs[2].course)},
                                             {"holes", {1}},
                                             {"options",
                                              {{"club", "driver "},
                                               {"attack_deg", 8},
                                               {"dynamic_loft_deg", 5},
                                               {"to", {{"attack_deg", -15}, {"dynamic_loft_deg", 70}}},
                                               {"firmness", "hard"},
                                               {"wind_mps", 60},
                                               {"table", {{"attack_deg", {"up", 40}}, {"club_speed_mph", 90}}}}}}));
  for (const char* words :
       {"options.club: found", "options.dynamic_loft_deg: found 5, expected a number from the attack angle, 8",
        "options.to: found a spin loft of 85 degrees", "options.firmness: found \"hard\"", "options.wind_mps: found 60",
        "options.table.attack_deg: found \"up\"", "options.table.attack_deg: found 40",
        "options.table.club_speed_mph: found 90, expected a list of numbers", "course: found a text",
        "holes: found a question that is not answered hole by hole"}) {
    CAPTURE(words);
    CHECK_MESSAGE(test::says(delivery, words), delivery);
  }
  CHECK(test::says(messages(ask({{"command", "gain"}, {"options", {{"to", {{"attack_deg", 2}}}}}})),
                   "options.to: found no \"from_delivery\" beside it"));
  CHECK(test::says(messages(ask({{"command", "strategy"}, {"options", {{"from_delivery", {{"attack_deg", 2}}}}}})),
                   "options.from_delivery: found no \"to\" beside it"));
  CHECK(test::says(messages(ask({{"command", "gain"}, {"options", {{"to", {10, 20}}}}})), "options.to: found 20"));
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
  CHECK(test::says(answered["message"].dump(), "cannot be finished with these clubs in 30 strokes a hole: hole 1"));
}

}  // namespace
TEST_CASE("options are weighed, and their faults told by place") {
  const Json request = {
      {"command", "weigh"},
      {"options", {{"stroke_worth", 20}}},
      {"names", {{"options_file", "mine.yaml"}}},
      {"options_file",
       "format: yardworth/options/1\noptions:\n  - {name: a, change: {driver: +3}, doubt: 0%, cost: {money: 60}}\n"}};
  const Json said = Json::parse(answer(request.dump()));
  REQUIRE(said["status"] == 0);
  CHECK(said["answer"]["format"] == "yardworth/weigh/1");
  CHECK(said["answer"]["options"][0]["strokes_saved"]["value"].get<double>() > 0.0);
  Json wrong = request;
  wrong["options_file"] = "format: yardworth/options/1\noptions:\n  - {name: a, cost: {}}\n";
  const Json refused = Json::parse(answer(wrong.dump()));
  CHECK(refused["status"] == 2);
  CHECK(refused["findings"][0]["file"] == "mine.yaml");
  CHECK(refused["findings"][0]["line"] == 3);
  wrong["options"]["draws"] = 1;
  CHECK(Json::parse(answer(wrong.dump()))["findings"][0]["key"] == "options.draws");
  wrong["options"].erase("draws");
  wrong.erase("options_file");
  CHECK(Json::parse(answer(wrong.dump()))["findings"][0]["key"] == "options_file");
}

TEST_CASE("an option that was measured is solved again as often as the request says") {
  const std::string bay = "heron-ferry/bay/weekend-16-";
  const Json said = Json::parse(
      answer(Json{{"command", "weigh"},
                  {"course", content("bare-scorecard/course.yaml")},
                  {"player", content("heron-ferry/members/weekend-16-man.yaml")},
                  {"options", {{"draws", 3}}},
                  {"files", {{"b.csv", content(bay + "before.csv")}, {"a.csv", content(bay + "after.csv")}}},
                  {"options_file",
                   "format: yardworth/options/1\noptions:\n"
                   "  - {name: lessons, change: {from_log: [b.csv, a.csv], bad_rows: skipped}, cost: {money: 60}}\n"}}
                 .dump()));
  REQUIRE_MESSAGE(said["status"] == 0, said.dump());
  CHECK(said["answer"]["options"][0]["draws"] == 3);
}

TEST_CASE("files that options name are texts of the request, of the size of a file at most") {
  Json request = {
      {"command", "weigh"},
      {"options_file",
       "format: yardworth/options/1\noptions:\n  - {name: a, change: {after: me.yaml}, cost: {money: 60}}\n"}};
  const auto finding_of = [&request] { return Json::parse(answer(request.dump()))["findings"][0]; };
  CHECK(finding_of()["file"] == "me.yaml");
  CHECK(finding_of()["found"] == "no such text in files");
  request["files"] = {{"me.yaml", std::string(largest_file_bytes + 1, 'x')}};
  CHECK(finding_of()["file"] == "me.yaml");
  CHECK(test::says(finding_of()["expected"].get<std::string>(), "at most"));
  request["files"] = "me.yaml";
  CHECK(finding_of()["key"] == "files");
}

TEST_CASE("text has lines as long as a request says, as in a terminal of that width") {
  const auto longest = [](const Json& answered) {
    std::size_t most = 0;
    for (const std::string& line : test::lines_of(answered["text"].get<std::string>()))
      most = std::max(most, line.size());
    return most;
  };
  const Json wide = {{"command", "delivery"}};
  Json narrow = wide;
  narrow["columns"] = 44;
  CHECK(longest(ask(wide)) > 90);
  CHECK(longest(ask(narrow)) <= 44);
  CHECK(ask(narrow)["answer"] == ask(wide)["answer"]);
  for (const int columns : {39, 101}) {
    narrow["columns"] = columns;
    const Json refused = ask(narrow);
    CHECK(refused["status"] == 2);
    CHECK(refused["findings"][0]["key"] == "columns");
  }
}

// Without line ends and the blanks beside them.
std::string unbroken(const std::string& text) {
  std::istringstream words(text);
  std::string line;
  for (std::string word; words >> word;) line += (line.empty() ? "" : " ") + word;
  return line;
}

TEST_CASE("the sentences of an answer stand in its text") {
  const std::string bay = "heron-ferry/bay/weekend-16-";
  const std::vector<Json> requests = {
      {{"command", "gain"}, {"options", {{"plan", "habit"}}}},
      {{"command", "strategy"}, {"options", {{"driver", 20}}}, {"holes", {4, 11}}},
      {{"command", "bands"}, {"options", {{"band", "13-20"}, {"gender", "men"}, {"tee", "middle"}}}},
      {{"command", "delivery"}},
      {{"command", "bag"},
       {"log", content(bay + "before.csv")},
       {"after", content(bay + "after.csv")},
       {"options", {{"skip_bad_rows", true}}}},
      {{"command", "bag"}, {"log", content(bay + "before.csv")}, {"options", {{"skip_bad_rows", true}}}}};
  for (const Json& request : requests) {
    CAPTURE(request["command"]);
    const Json answered = ask(request);
    const std::string text = unbroken(answered["text"].get<std::string>());
    REQUIRE_FALSE(answered["sentences"].empty());
    for (const Json& sentence : answered["sentences"]) {
      CAPTURE(sentence);
      CHECK(text.find(unbroken(sentence.get<std::string>())) != std::string::npos);
    }
  }
}

TEST_CASE("check gives the names and lengths of what it understood in its own units") {
  const Json answered = ask({{"command", "check"},
                             {"course", content("marsh-end/course.yaml")},
                             {"player", content("heron-ferry/members/weekend-16-man.yaml")}});
  const Json& course = answered["answer"]["course"];
  CHECK(course["units"] == "metres");
  CHECK(course["tees"].size() > 1);
  const Json& hole = course["holes"][0];
  CHECK(hole["number"] == 1);
  // As courses/marsh-end/course.yaml says it of hole 1.
  CHECK(hole["length"].get<double>() == doctest::Approx(334.0));
  CHECK(hole["hazards"][0]["kind"] == "bunker");
  CHECK(hole["hazards"][0]["side"] == "left");
  CHECK(hole["hazards"][0]["from"].get<double>() == doctest::Approx(196.0));
  CHECK(hole["hazards"][0]["words"].get<std::string>().starts_with("bunker, 196 to "));
  CHECK(answered["answer"]["player"]["clubs"][0] == "driver");
}

TEST_CASE("check looks at hazards that are moved, and draws their hole") {
  const std::string course = content("heron-ferry/course.yaml");
  const auto looked_at = [&](const Json& moves, bool pictures) {
    return ask({{"command", "check"},
                {"course", course},
                {"options", {{"hole", 5}, {"hazards", moves}, {"pictures", pictures}}}});
  };
  // As the file has it: polygon [[-6, 216], [5, 214], [8, 229], [-3, 232]].
  const Json here = looked_at({{{"hole", 5}, {"hazard", 1}, {"along", 0}}}, true);
  const Json moved = looked_at({{{"hole", 5}, {"hazard", 1}, {"along", 10}, {"right", -4}}}, true);
  const Json& is = moved["answer"]["course"]["holes"][4]["hazards"][0];
  CHECK(is["from"] == 224.0);
  CHECK(is["to"] == 242.0);
  CHECK(is["right"] == -3.0);
  CHECK_FALSE(is.contains("side"));
  CHECK(is["words"] == "bunker, 224 to 242 yards along the hole, 10 left to 4 right of its line");
  CHECK_FALSE(moved["pictures"].contains("course"));
  const auto picture = moved["pictures"]["hole"].get<std::string>();
  CHECK(picture != here["pictures"]["hole"]);
  for (int hazard = 1; hazard <= 5; ++hazard) CHECK(test::says(picture, fmt::format("data-hazard=\"{}\"", hazard)));
  CHECK(test::says(picture, "data-held=\"1\""));
  CHECK_FALSE(test::says(picture, "data-held=\"2\""));
  CHECK_FALSE(looked_at({{{"hole", 5}, {"hazard", 1}, {"along", 0}}}, false).contains("pictures"));
  CHECK(test::says(messages(looked_at({{{"hole", 5}, {"hazard", 1}, {"along", 900}}}, true)),
                   "options.hazards[0]: fault: found a hazard wholly off the hole"));
}

TEST_CASE("holes that hazards change are told of alone as they are beside rounds") {
  Json request = {{"command", "bands"},
                  {"course", content("marsh-end/course.yaml")},
                  {"options",
                   {{"band", {"scratch", "13-20"}},
                    {"gender", "men"},
                    {"hazards", {{{"hole", 1}, {"hazard", 1}, {"along", -25}, {"right", 10}}}},
                    {"pictures", true}}}};
  const Json whole = ask(request);
  request["options"]["changed_holes_alone"] = true;
  const Json alone = ask(request);
  REQUIRE(alone["status"] == 0);
  CHECK(alone["sentences"] == whole["sentences"]);
  CHECK(alone["text"] == whole["text"]);
  CHECK(alone["pictures"] == whole["pictures"]);
  CHECK_FALSE(alone["answer"].contains("suiting_tees"));
  const Json& golfers = alone["answer"]["golfers"];
  REQUIRE(golfers.size() == whole["answer"]["golfers"].size());
  for (std::size_t i = 0; i < golfers.size(); ++i) {
    CHECK(golfers[i]["changed_holes"] == whole["answer"]["golfers"][i]["changed_holes"]);
    CHECK_FALSE(golfers[i].contains("round"));
  }
  request["options"].erase("hazards");
  CHECK(test::says(messages(ask(request)), "options.changed_holes_alone: found no \"hazards\" beside it"));
}

}  // namespace yardworth
