#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "support/words.hpp"
#include "yardworth/embed.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using BagJson = nlohmann::ordered_json;

const std::string spring =
    "club,session,carry_yd\ndriver,a,196\ndriver,a,204\ndriver,a,199\ndriver,a,210\ndriver,a,188\n7-iron,a,131\n"
    "driver,b,226\ndriver,b,234\ndriver,b,229\ndriver,b,240\ndriver,b,218\n";

BagJson bag_answer(const BagJson& request) { return BagJson::parse(answer(request.dump())); }

}  // namespace

TEST_CASE("the embedding function answers what shots say, as the command does") {
  const BagJson json = bag_answer({{"command", "bag"}, {"log", spring}, {"options", {{"index", 16.2}}}});
  REQUIRE(json["status"] == 0);
  BagRequest request;
  request.golfer = golfer_of_index(16.2, Gender::men);
  const BagReport report{measure_bag(*read_shot_log(spring, "log").value, request), {}, {}};
  CHECK(json["answer"] == BagJson::parse(bag_json(report)));
  CHECK(json["text"] == bag_text(report));
}

TEST_CASE("the embedding function compares logs, sessions and clubs") {
  const BagJson two = bag_answer({{"command", "bag"}, {"log", spring}, {"after", spring}});
  REQUIRE(two["status"] == 0);
  CHECK(two["answer"]["changes"].size() == 2);
  const BagJson sessions =
      bag_answer({{"command", "bag"}, {"log", spring}, {"options", {{"sessions", BagJson::array({"a", "b"})}}}});
  REQUIRE(sessions["status"] == 0);
  CHECK(sessions["answer"]["changes"][0]["verdict"] == "real");
  const BagJson clubs =
      bag_answer({{"command", "bag"}, {"log", spring}, {"options", {{"clubs", BagJson::array({"driver", "7 iron"})}}}});
  CHECK(clubs["answer"]["changes"][0]["verdict"] == "too few shots");
}

TEST_CASE("the embedding function tells every fault of a log and of a question about one") {
  const BagJson bad = bag_answer({{"command", "bag"},
                                  {"log", "club,carry_yd\ndriver,far\n"},
                                  {"names", {{"log", "mine.csv"}}},
                                  {"course", "format: yardworth/course/1"},
                                  {"options", {{"index", 99}}}});
  CHECK(bad["status"] == 2);
  const std::string findings = bad["findings"].dump();
  CHECK(test::says(findings, "mine.csv:2:8: fault: carry_yd"));
  CHECK(test::says(findings, "measured shots know no course"));
  CHECK(test::says(findings, "options.index"));
  CHECK(test::says(bag_answer({{"command", "bag"}}).dump(), "the text of a shot log"));
  CHECK(test::says(bag_answer({{"command", "check"}, {"log", spring}}).dump(),
                   "shot logs and second players are for bag, gain, strategy and report"));
  const BagJson skipped =
      bag_answer({{"command", "bag"}, {"log", spring + "driver,a,far\n"}, {"options", {{"skip_bad_rows", true}}}});
  CHECK(skipped["status"] == 0);
  CHECK(skipped["answer"]["skipped_rows"] == 1);
  CHECK(skipped["findings"].size() == 1);
  const BagJson twice =
      bag_answer({{"command", "bag"}, {"log", spring}, {"options", {{"sessions", BagJson::array({"a", "A"})}}}});
  CHECK(twice["status"] == 2);
  CHECK(test::says(twice.dump(), "two to compare"));
  const BagJson none = bag_answer({{"command", "bag"},
                                   {"log", "club,carry_yd\ndriver,200\n"},
                                   {"options", {{"sessions", BagJson::array({"a", "b"})}}}});
  CHECK(none["status"] == 2);
  CHECK(test::says(none.dump(), "no column for that in the log"));
}

}  // namespace yardworth
