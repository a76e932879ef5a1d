#include "yardworth/shot_log.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "yardworth/diagnostics.hpp"

namespace yardworth {
namespace {

std::vector<std::string> told_of_log(const std::string& text, BadRows bad_rows = BadRows::refused) {
  std::vector<std::string> lines;
  for (const Diagnostic& finding : read_shot_log(text, "log.csv", bad_rows).findings) lines.push_back(to_line(finding));
  return lines;
}

ShotLog log_of(const std::string& text) {
  const Reading<ShotLog> reading = read_shot_log(text, "log.csv");
  for (const Diagnostic& finding : reading.findings) MESSAGE(to_line(finding));
  REQUIRE(reading.ok());
  return *reading.value;
}

}  // namespace

TEST_CASE("a shot log is read whatever the order, the units and the spelling of its columns") {
  const ShotLog plain = log_of("club,carry_yd,offline_yd,session\ndriver,210,-4.5,may\n7-iron,140,2,may\n");
  CHECK(plain.clubs == std::vector<std::string>{"driver", "7-iron"});
  CHECK(plain.sessions == std::vector<std::string>{"may"});
  REQUIRE(plain.shots.size() == 2);
  CHECK(plain.shots[0].carry_yd == 210.0);
  CHECK(plain.shots[0].offline_yd == -4.5);
  CHECK(plain.shots[1].line == 3);
  CHECK(plain.units == Units::yards);

  const ShotLog metric = log_of(
      "\xEF\xBB\xBF Session ; Offline m;CLUB SPEED MPS;Carry_M;Club\r\nmay;-4,5;42,0;192,024;Driver\r\n\r\n;0;40;"
      "182,88;  driver \r\n");
  CHECK(metric.units == Units::metres);
  CHECK(metric.clubs == std::vector<std::string>{"Driver"});
  REQUIRE(metric.shots.size() == 2);
  CHECK(metric.shots[0].carry_yd == doctest::Approx(210.0));
  CHECK(*metric.shots[0].offline_yd == doctest::Approx(-4.5 / 0.9144));
  CHECK(*metric.shots[0].club_speed_mps == doctest::Approx(42.0));
  CHECK(metric.shots[1].line == 4);
  CHECK(metric.sessions == std::vector<std::string>{"may", ""});

  const ShotLog short_rows = log_of("carry_yd,club,total_yd\n\"150.5\",\"iron, \"\"old\"\"\"\n140,pw,\n");
  CHECK(short_rows.clubs == std::vector<std::string>{"iron, \"old\"", "pw"});
  CHECK_FALSE(short_rows.shots[1].total_yd.has_value());
}

TEST_CASE("names of clubs that differ in capitals, blanks and dashes are one club") {
  const ShotLog log = log_of("club,carry_yd\n7-iron,140\n7 Iron,141\n7iron,142\n8-iron,130\n");
  CHECK(log.clubs == std::vector<std::string>{"7-iron", "8-iron"});
  CHECK(shots_of_club(log, "7 IRON")->shots.size() == 3);
  CHECK_FALSE(shots_of_club(log, "9-iron").has_value());
}

TEST_CASE("all faults of a shot log are told at once, by line and column") {
  CHECK(told_of_log("club,carry_yd,launch_deg\ndriver,far,12\n,200,99\n7-iron,,10\nputter,20,\n3-wood,190,1,5\n") ==
        std::vector<std::string>{
            "log.csv:2:8: fault: carry_yd: found \"far\", expected a number from 0 to 420 yards",
            "log.csv:3:6: fault: launch_deg: found \"99\", expected a number from -30 to 80 degrees",
            "log.csv:3:1: fault: club: found nothing, expected the name of the club",
            "log.csv:4:1: fault: carry_yd: found nothing, expected a carry",
            "log.csv:5:1: fault: club: found a putter, expected clubs with a carry",
            "log.csv:6:14: fault: found 4 cells, expected at most 3, as in the header; decimal commas need semicolons "
            "between the cells",
        });
  CHECK(told_of_log("club,carry_yd,offline_yd\ndriver,100,-101\n") ==
        std::vector<std::string>{
            "log.csv:2:1: fault: offline_yd: found 101 yards to the side, expected at most the carry, 100 yards"});
  CHECK(told_of_log("club,carry_yd\ndriver,\"196,5\"\n") ==
        std::vector<std::string>{
            "log.csv:2:8: fault: carry_yd: found \"196,5\", expected 196.5, with a point in the place "
            "of the comma"});
  CHECK(told_of_log("club,carry_yd\n\"driver,200\n") ==
        std::vector<std::string>{
            "log.csv:2:1: fault: found a quotation mark that is not closed on its line, expected the "
            "same mark at the end of the text"});
}

TEST_CASE("a header that is at fault is told of") {
  CHECK(told_of_log("") == std::vector<std::string>{"log.csv:1:1: fault: found an empty file, expected a header and a "
                                                    "row for each shot"});
  CHECK(told_of_log("club,carry_yd\n") ==
        std::vector<std::string>{"log.csv:1:1: fault: found a header alone, expected a row for each shot"});
  CHECK(told_of_log("club,carry\ndriver,200\n") ==
        std::vector<std::string>{
            "log.csv:1:6: advice: found the column \"carry\", which is not read, expected the unit in the heading: "
            "carry_yd or carry_m",
            "log.csv:1:1: fault: carry_yd: found no such column, expected a column carry_yd, or carry_m for metres"});
  for (const std::string heading : {"Carry (yds)", "carry_ft", "CARRY METERS"}) {
    CHECK(told_of_log("club," + heading + "\ndriver,200\n").front() ==
          "log.csv:1:6: advice: found the column \"" + heading +
              "\", which is not read, expected the unit in the heading: carry_yd or carry_m");
  }
  CHECK(told_of_log("club,carry_yd,carry_m\ndriver,200,180\n").front() ==
        "log.csv:1:15: fault: carry_m: found a second column for it, beside carry_yd, expected one of them");
  CHECK(told_of_log("club\tcarry_yd\ndriver\t200\n").back() ==
        "log.csv:1:1: fault: found tabs between the columns, expected commas or semicolons");
  CHECK(told_of_log("\xFF\xFE"
                    "c") ==
        std::vector<std::string>{"log.csv:1:1: fault: found text in UTF-16, expected text in UTF-8"});
}

TEST_CASE("columns that are not read are advice, and so are yards beside metres") {
  CHECK(told_of_log("club,carry_yd,height,sidespin,lunch_deg\ndriver,200,1,2,3\n") ==
        std::vector<std::string>{
            "log.csv:1:31: advice: found the column \"lunch_deg\", which is not read, expected launch_deg",
            "log.csv:1:15: advice: found columns that are not read: height, sidespin, expected nothing of them"});
  CHECK(told_of_log("club,carry_yd,ball_speed_mps\ndriver,200,60\n") ==
        std::vector<std::string>{
            "log.csv:1:1: advice: carry_yd: found yards beside metric columns, expected carry_m, if the carries are "
            "metres"});
}

TEST_CASE("bounds are written out, and cells that are missing at the end of a row are told of once") {
  CHECK(told_of_log("club,carry_yd,spin_rpm\ndriver,200,99999\n") ==
        std::vector<std::string>{
            "log.csv:2:12: fault: spin_rpm: found \"99999\", expected a number from 0 to 20000 rpm"});
  CHECK(told_of_log("club,carry_yd,spin_rpm\ndriver,200\ndriver,201,2500\n") ==
        std::vector<std::string>{"log.csv:2:1: advice: found 2 cells, expected 3, as in the header; the last ones are "
                                 "taken to be empty"});
  CHECK(told_of_log("club,carry_yd,spin_rpm\ndriver,200\ndriver,201\n") ==
        std::vector<std::string>{"log.csv:2:1: advice: found 2 cells, expected 3, as in the header; the last ones are "
                                 "taken to be empty, in 2 rows in all"});
}

TEST_CASE("cells that are missing under headings that are not read are not told of") {
  CHECK(told_of_log("club,carry_yd,\ndriver,200\n").empty());
}

TEST_CASE("bad rows are left out on demand, each of them told of") {
  const std::string text = "club,carry_yd\ndriver,far\ndriver,200\ndriver,-5\n";
  CHECK_FALSE(read_shot_log(text, "log.csv").ok());
  const Reading<ShotLog> reading = read_shot_log(text, "log.csv", BadRows::skipped);
  REQUIRE(reading.ok());
  CHECK(reading.value->shots.size() == 1);
  CHECK(reading.value->skipped_rows == 2);
  CHECK(told_of_log(text, BadRows::skipped) ==
        std::vector<std::string>{"log.csv:2:8: advice: carry_yd: found \"far\", expected a number from 0 to 420 yards",
                                 "log.csv:4:8: advice: carry_yd: found \"-5\", expected a number from 0 to 420 yards"});
  CHECK_FALSE(read_shot_log("club,carry_yd\ndriver,far\n", "log.csv", BadRows::skipped).ok());
}

TEST_CASE("of very many faults the first are told and the rest counted") {
  std::string text = "club,carry_yd\n";
  for (int i = 0; i < 1000; ++i) text += "driver,far\n";
  const auto told = told_of_log(text);
  REQUIRE(told.size() == 201);
  CHECK(told.back() == "log.csv:201:8: fault: found 800 more of the kind, expected the first ones to be put right");
}

}  // namespace yardworth
