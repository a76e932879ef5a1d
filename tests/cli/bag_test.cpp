#include <doctest/doctest.h>
#include <fmt/format.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/words.hpp"

namespace yardworth::cli {
namespace {

// A file that is there as long as this is.
struct LogFile {
  LogFile(const std::string& name, const std::string& text)
      : path((std::filesystem::temp_directory_path() / ("yardworth-bag-" + std::to_string(::getpid()) + "-" + name))
                 .string()) {
    std::ofstream(path, std::ios::binary) << text;
  }
  ~LogFile() { std::filesystem::remove(path); }
  LogFile(const LogFile&) = delete;
  LogFile& operator=(const LogFile&) = delete;

  std::string path;
};

Outcome run_bag_with(const std::vector<std::string>& more) {
  std::vector<std::string> arguments = {"bag"};
  arguments.insert(arguments.end(), more.begin(), more.end());
  return run(arguments, {});
}

const std::string seven_drives =
    "club,carry_yd,offline_yd\ndriver,196,3\ndriver,204,-9\ndriver,199,14\ndriver,210,2\ndriver,188,-20\ndriver,201,"
    "5\ndriver,110,30\n7-iron,131,2\n";

}  // namespace

TEST_CASE("bag tells a log in text, JSON and CSV, with a caution at the end of what people read") {
  const LogFile log("log.csv", seven_drives);
  const Outcome text = run_bag_with({log.path});
  CHECK(text.status == done);
  CHECK(text.err.empty());
  CHECK(test::says(text.out, "2 clubs from 8 shots: driver 2"));
  CHECK(test::says(test::words_of(text.out), "one shot of 7-iron: fewer than 5 tell a carry alone"));
  CHECK(test::says(text.out.substr(text.out.find("Cautions")), "medical professional"));
  CHECK(test::says(run_bag_with({log.path, "--format", "json"}).out, "\"format\": \"yardworth/bag/1\""));
  CHECK(test::says(run_bag_with({log.path, "--format", "csv"}).out, "club,shots,carry_yd,carry_low_yd"));
  CHECK(test::says(test::words_of(run_bag_with({log.path, "--index", "16.2"}).out), "91% of its spreads"));
}

TEST_CASE("bag tells all faults of a log at once, and uses the other rows on demand") {
  const LogFile log("bad.csv", seven_drives + "driver,far,0\ndriver,200,lost\n");
  const Outcome refused = run_bag_with({log.path});
  CHECK(refused.status == at_fault);
  CHECK(refused.out.empty());
  CHECK(test::says(refused.err, ":10:8: fault: carry_yd: found \"far\""));
  CHECK(test::says(refused.err, ":11:12: fault: offline_yd: found \"lost\""));
  CHECK(test::says(refused.err, "the other rows can be used: --skip-bad-rows"));
  const Outcome skipped = run_bag_with({log.path, "--skip-bad-rows"});
  CHECK(skipped.status == done);
  CHECK(test::says(skipped.err, ":10:8: advice: carry_yd: found \"far\""));
  CHECK(test::says(test::words_of(skipped.out), "2 rows of the log could not be read and are left out"));
}

TEST_CASE("bag compares two logs, two sessions of one, and two clubs hit in turn") {
  std::string rows;
  for (const int carry : {196, 204, 199, 210, 188, 201, 195, 199}) {
    rows += fmt::format("may,driver A,{}\njune,driver A,{}\nmay,driver B,{}\n", carry, carry + 30, carry + 1);
  }
  const LogFile log("sessions.csv", "session,club,carry_yd\n" + rows);
  const Outcome sessions = run_bag_with({log.path, "--sessions", "may", "June"});
  CHECK(sessions.status == done);
  CHECK(test::says(sessions.out, "driver A 30 yards longer ("));
  CHECK(test::says(sessions.out, "): real."));
  CHECK(test::says(test::words_of(sessions.out), "nobody knows whether the ball was struck better or only harder"));
  CHECK(test::says(sessions.out.substr(sessions.out.find("Cautions")), "qualified"));
  CHECK(test::says(sessions.out, "carry, yards"));
  CHECK(test::says(test::words_of(run_bag_with({log.path}).out), "Shots of 2 sessions are taken together: may, june."));
  CHECK(test::says(run_bag_with({log.path, "--sessions", "may", "may"}).err, "found \"may\" twice"));
  const Outcome clubs = run_bag_with({log.path, "--clubs", "driver A", "driver B"});
  CHECK(test::says(clubs.out, "driver B against driver A 1"));
  const Outcome same = run_bag_with({log.path, log.path, "--format", "json"});
  CHECK(test::says(same.out, "\"verdict\": \"cannot tell\""));
  CHECK(test::says(run_bag_with({log.path, "--sessions", "may", "july"}).err, "--sessions: found \"july\", expected"));
  CHECK(test::says(run_bag_with({log.path, log.path, "--sessions", "may", "june"}).err, "expected one way"));
  CHECK(run_bag_with({log.path, "--sessions", "may"}).status == at_fault);
}

TEST_CASE("bag tells both logs in one unit, and what is sure of the club head's speed") {
  std::string yards, metres;
  for (const int mph : {90, 92, 91, 93, 89, 91}) {
    yards += fmt::format("driver,{},{}\n", 2 * mph + mph % 2, mph);
    metres += fmt::format("driver,{},{}\n", 0.9144 * (2 * mph + mph % 2), 0.44704 * (mph + 3));
  }
  const LogFile before("metres.csv", "club,carry_m,club_speed_mps\n" + metres);
  const LogFile after("yards.csv", "club,carry_yd,club_speed_mph\n" + yards);
  const std::string out = run_bag_with({before.path, after.path}).out;
  CHECK(test::says(out, "Before: "));
  CHECK(!test::says(out, "Before: /"));
  CHECK(!test::says(out, "carry, metres"));
  CHECK(test::says(test::words_of(out), "The club head is 3.0 mph slower"));
}

TEST_CASE("bag writes a player file, and changes an existing one with --force alone") {
  const LogFile log("log.csv", seven_drives);
  const LogFile player("player.yaml", "");
  std::filesystem::remove(player.path);
  CHECK(test::says(run_bag_with({log.path, "--write", player.path}).err, "neither --index nor --player"));
  CHECK(run_bag_with({log.path, "--write", player.path, "--index", "16.2"}).status == done);
  CHECK(run({"check", player.path}, {}).status == done);
  CHECK(test::says(run_bag_with({log.path, "--write", player.path}).err, "a file that exists"));
  CHECK(run_bag_with({log.path, "--write", player.path, "--force"}).status == done);
  CHECK(run({"check", player.path}, {}).status == done);
  CHECK(run_bag_with({log.path, "--write", log.path, "--force"}).status == at_fault);
}

TEST_CASE("delivery takes the strike from a log, and says what uneven dynamic loft spreads") {
  std::string text = "club,carry_yd,club_speed_mph,attack_deg,dynamic_loft_deg\n";
  std::string even = text;
  for (const int loft : {14, 15, 16, 17, 18, 19, 20}) {
    text += fmt::format("driver,{},94,-2,{}\n", 210 - loft, loft);
    even += fmt::format("driver,{},94,-2,17\n", 210 - loft);
  }
  const LogFile log("strikes.csv", text + "7-iron,130,,,\n");
  const std::string out = test::words_of(run({"delivery", "--from-log", log.path}, {}).out);
  CHECK(test::says(out,
                   "From the log, the median of 7 strikes with driver: club head speed 94.0 mph, attack angle -2.0 "
                   "degrees, dynamic loft 17.0 degrees."));
  CHECK(test::says(out, "The dynamic loft differs by 2."));
  const LogFile same("even.csv", even);
  CHECK(
      test::says(test::words_of(run({"delivery", "--from-log", same.path}, {}).out), "spreads the carry by 0.0 yards"));
  // What is given counts before the log.
  CHECK(test::says(run({"delivery", "--from-log", log.path, "--club-speed-mph", "100"}, {}).out, "Driver at 100 mph"));
  CHECK(test::says(run({"delivery", "--from-log", log.path, "--club", "5-wood"}, {}).err, "no shots of 5-wood"));
  CHECK(test::says(run({"delivery", "--from-log", log.path, "--club", "7-iron"}, {}).err, "no column of a strike"));
  CHECK(run({"delivery", "--from-log", "nowhere.csv"}, {}).status == at_fault);
}

TEST_CASE("bag says what is wrong with its options") {
  CHECK(run_bag_with({}).status == at_fault);
  CHECK(test::says(run_bag_with({"nowhere.csv"}).err, "nowhere.csv: fault: found no such file"));
  const LogFile log("log.csv", seven_drives);
  CHECK(test::says(run_bag_with({log.path, "--index", "99"}).err, "--index: found \"99\""));
  const Outcome both = run_bag_with({log.path, "--index", "9", "--player", "nobody.yaml"});
  CHECK(both.status == at_fault);
  CHECK(test::says(both.err, "--index: found --player beside it"));
  CHECK(test::says(both.err, "nobody.yaml: fault: found no such file"));
  CHECK(test::says(run_bag_with({log.path, "--sessions", "a", "b"}).err, "found no column for that in the log"));
  const LogFile header("header.csv", "club,carry_yd\n");
  CHECK(test::says(run_bag_with({header.path}).err, "found a header alone"));
}

}  // namespace yardworth::cli
