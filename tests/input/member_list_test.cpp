#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

std::vector<Member> members_of(const std::string& text) {
  const Reading<std::vector<Member>> reading = read_members(text, "members.csv");
  for (const Diagnostic& finding : reading.findings) MESSAGE(to_line(finding));
  REQUIRE(reading.ok());
  return *reading.value;
}

std::vector<std::string> told_of_list(const std::string& text) {
  std::vector<std::string> lines;
  const Reading<std::vector<Member>> reading = read_members(text, "members.csv");
  for (const Diagnostic& finding : reading.findings) lines.push_back(to_line(finding));
  CHECK(reading.ok() == !has_fault(reading.findings));
  return lines;
}

bool tells(const std::vector<std::string>& lines, const std::string& words) {
  return std::any_of(lines.begin(), lines.end(),
                     [&](const std::string& line) { return line.find(words) != std::string::npos; });
}

std::string list_of(std::size_t count) {
  std::string text = "label,index,gender\n";
  for (std::size_t i = 0; i < count; ++i) text += "member " + std::to_string(i) + ",16,men\n";
  return text;
}

}  // namespace

TEST_CASE("a list of members is read whatever the order, the units and the spelling of its columns") {
  const std::vector<Member> plain =
      members_of("label,index,gender,driver_carry_yd\nweekend 16 man,16.4,men,192\nscratch woman,-0.5,women,\n");
  REQUIRE(plain.size() == 2);
  CHECK(plain[0].label == "weekend 16 man");
  CHECK(plain[0].handicap_index == 16.4);
  CHECK(plain[0].gender == Gender::men);
  CHECK(plain[0].driver_carry_yd == 192.0);
  CHECK(plain[1].handicap_index == -0.5);
  CHECK(plain[1].gender == Gender::women);
  CHECK_FALSE(plain[1].driver_carry_yd);

  const std::vector<Member> metric = members_of(
      "\xEF\xBB\xBF Gender ; Driver Carry M;HANDICAP-INDEX;Label;\r\nF;128,016;24,5;\"one; two\";\r\n\r\nMan;;0; b "
      "\r\n");
  REQUIRE(metric.size() == 2);
  CHECK(metric[0].label == "one; two");
  CHECK(metric[0].gender == Gender::women);
  CHECK(metric[0].handicap_index == 24.5);
  CHECK(*metric[0].driver_carry_yd == doctest::Approx(140.0));
  CHECK(metric[1].label == "b");
  CHECK(metric[1].gender == Gender::men);
}

TEST_CASE("every fault of a list of members is told at once, by its line and column") {
  const std::vector<std::string> lines = told_of_list(
      "label,index,gender,driver_carry_yd\n"
      "a,16,men,192\n"
      "a,17,men,190\n"
      "b,60,boys,20\n"
      "c,+2.1,men,\n"
      ",,,\n"
      "d,12 5,men,1e9\n"
      "e,12,5,men,200\n"
      "\"f,12,men\n");
  for (const char* words :
       {"members.csv:3:1: fault: label: found \"a\", expected another label than that of line 2",
        "members.csv:4:3: fault: index: found \"60\", expected a number from -10 to 54",
        "members.csv:4:6: fault: gender: found \"boys\", expected men or women",
        "members.csv:4:11: fault: driver_carry_yd: found \"20\", expected a number from 50 to 400",
        "members.csv:5:3: fault: index: found +2.1, expected -2.1 for a plus handicap, 2.1 for any other",
        "members.csv:6:1: fault: label: found nothing", "members.csv:6:1: fault: index: found nothing",
        "members.csv:6:1: fault: gender: found nothing", "members.csv:7:3: fault: index: found \"12 5\"",
        "members.csv:7:12: fault: driver_carry_yd: found \"1e9\"",
        "members.csv:8:", "at most 4, as in the header; decimal commas need semicolons",
        "members.csv:9:1: fault: found a quotation mark that is not closed"}) {
    CAPTURE(words);
    CHECK(tells(lines, words));
  }
}

TEST_CASE("what is no list of members is said in words") {
  CHECK(tells(told_of_list(""), "found an empty file, expected a header and a row for each member"));
  CHECK(tells(told_of_list("\n \n"), "found an empty file"));
  CHECK(tells(told_of_list("label,index,gender\n"), "found a header alone"));
  CHECK(tells(told_of_list("\xFF\xFEl"), "text in UTF-16"));
  CHECK(tells(told_of_list("label\tindex\tgender\na\t1\tmen\n"), "tabs between the columns"));
  const std::vector<std::string> wanting = told_of_list("name,handicap\na,3\n");
  for (const char* words : {"label: found no such column", "index: found no such column",
                            "gender: found no such column", "the column \"name\", which is not read"}) {
    CHECK(tells(wanting, words));
  }
  CHECK(tells(told_of_list("label,label,index,gender\na,b,3,men\n"), "a second column for it"));
  CHECK(tells(told_of_list("label,index,gender,driver_carry_yd,driver_carry_m\na,3,men,200,180\n"),
              "a second column for it"));
  CHECK(tells(told_of_list("label,index,gender,driver\na,3,men,200\n"), "the unit stands in the heading"));
  CHECK(tells(told_of_list("label,index,gender\na,\"3,5\",men\n"), "3.5, with a point in the place of the comma"));
}

TEST_CASE("a driver that is unlike the index is read with advice") {
  const std::string text = "label,index,gender,driver_carry_yd\na,16,men,300\n";
  CHECK(members_of(text).front().driver_carry_yd == 300.0);
  CHECK(tells(told_of_list(text), "members.csv:2:10: advice: driver_carry_yd: found a driver that carries 300 yards"));
}

TEST_CASE("a list may have so many members, and labels are only text") {
  CHECK(members_of(list_of(limits::most_members)).size() == limits::most_members);
  CHECK(tells(told_of_list(list_of(limits::most_members + 1)), "more than 5000 members"));
  const std::vector<Member> hostile = members_of("label,index,gender\n\"=1+1 \"\"x\"\" \x1b[31m\xff\",3,men\n");
  CHECK(hostile.front().label == "=1+1 \"x\" \x1b[31m\xff");
  CHECK(tells(told_of_list("label,index,gender\n" + std::string(1001, 'x') + ",3,men\n"), "at most 1000 bytes"));
  // Faults beyond so many are counted.
  std::string many = "label,index,gender\n";
  for (int i = 0; i < 1000; ++i) many += "x,99,men\n";
  const std::vector<std::string> lines = told_of_list(many);
  CHECK(lines.size() == 201);
  CHECK(tells(lines, "more of the kind"));
}

TEST_CASE("the members of the scenario are a list without a finding") {
  const Reading<std::vector<Member>> reading =
      read_members(test::text_of("courses/heron-ferry/members.csv"), "members.csv");
  CHECK(reading.findings.empty());
  REQUIRE(reading.ok());
  CHECK(reading.value->size() == 40);
}

}  // namespace yardworth
