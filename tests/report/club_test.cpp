#include <doctest/doctest.h>

#include "report/html_table.hpp"
#include "report/sample_bands.hpp"
#include "support/courses.hpp"
#include "support/page_checks.hpp"
#include "support/scenario.hpp"
#include "support/well_formed.hpp"
#include "support/words.hpp"
#include "yardworth/limits.hpp"

// The page for a club.

namespace yardworth {
namespace {

using test::says;

MemberResult club_member(const std::string& label, double saved) {
  MemberResult member;
  member.member = {label, -1.2, Gender::men, 192.0};
  member.by_clubs = 1;
  MemberOnTee on_tee;
  on_tee.round = test::of_carries(90.0, 90.0 - saved, 90.0 - saved, 90.0 - saved);
  member.from_tees = {on_tee, on_tee};
  return member;
}

// Two bands of each gender from two tees, the second of which they find easier, and two members.
ClubReport sample_club() {
  ClubReport report{test::sample_bands(), MembersReport{}};
  BandsResult& bands = report.bands.result;
  bands.tees.push_back({"forward", 5210.0, 121.0, Gender::women});
  std::vector<BandOnTee> golfers;
  for (const BandOnTee& golfer : bands.golfers) {
    golfers.push_back(golfer);
    golfers.push_back(golfer);
    golfers.back().tee = 1;
    golfers.back().round = test::of_carries(golfer.round.before - 4.0, golfer.round.before - 4.5,
                                            golfer.round.before - 4.5, golfer.round.before - 4.5);
  }
  bands.golfers = golfers;
  bands.suiting[0].by_clubs = bands.suiting[0].by_length = 0;
  bands.suiting[3].by_clubs = 1;
  report.bands.opening = {"Assumed: built-in course."};
  MembersResult& members = report.members->result;
  members.course = bands.course;
  members.tees = bands.tees;
  members.change = bands.change;
  members.holes = 18;
  members.members = {club_member("one of us", 1.0), club_member("another", 2.0)};
  members.notes = {{Note::Kind::members_have_standard_bags}};
  members.cautions = {{Caution::Kind::swing_changes_load_the_body}, {Caution::Kind::ratings_are_the_associations}};
  return report;
}

}  // namespace

TEST_CASE("a page for a club says what it has to say, the answer first") {
  const std::string html = club_html(sample_club());
  const std::vector<std::string> in_order = {
      "Heron Ferry Municipal; tees: middle (6013 yards), forward (5210 yards)<",
      "bogey women from the middle tees most, 2.0 strokes a round, and scratch men from the forward tees least, 0.5.<",
      "members 1.5 strokes a round on average",
      "<li>Assumed: built-in course.</li>",
      ">What is saved, band by band and tee by tee</h2>",
      "<h3>Men</h3>",
      ">forward tees<",
      "<h3>Women</h3>",
      "<caption>Men: strokes a round; below, fewer (-) or more (+) with the change</caption>",
      "<th scope=\"row\">scratch</th><td>72.0<br/>-1.00</td><td>68.0<br/>-0.50</td>",
      ">Which tees suit whom</h2>",
      "<li>middle tees: scratch men</li>",
      "<li>forward tees: bogey women</li>",
      "USGA / PGA of America tee guideline",
      ">The members</h2>",
      "<th scope=\"row\">one of us<br/>+1.2, middle tees</th><td>90.0</td><td>1.00</td><td><b>forward</b></td>",
      ">Who finds which hazard</h2>",
      "<caption>Men, middle tees: of 100 tee shots</caption>",
      "<th scope=\"row\">4, bunker right at 209-229</th><td><b>12</b></td><td><b>12</b></td>",
      "<caption>Women, forward tees: of 100 tee shots</caption>",
      ">Net scores and points</h2>",
      "<th scope=\"row\">scratch men<br/>middle tees</th><td>18</td><td>72.0 -&gt; 71.0</td>",
      ">What it rests on</h2>",
      "Habit plan: ",
      "A member is a golfer of the Handicap Index",
      "Made by Yardworth ",
      ">Cautions</h2>",
      "authorised golf association",
      "medical professional"};
  test::check_says_in_order(html, in_order);
}

TEST_CASE("a page for a club stands by itself") {
  const std::string html = club_html(sample_club());
  test::check_stands_by_itself(html);
}

TEST_CASE("a page for a club leaves out what there is nothing to say of") {
  ClubReport report = sample_club();
  report.members.reset();
  BandsResult& bands = report.bands.result;
  bands.change = {0.0, 0.0};
  bands.tees.pop_back();
  std::erase_if(bands.golfers, [](const BandOnTee& golfer) { return golfer.tee == 1; });
  for (BandOnTee& golfer : bands.golfers) {
    golfer.handicap.reset();
    for (BandHole& hole : golfer.holes) hole.before.hazards.clear();
  }
  bands.golfers.front().cannot_finish = {{4, 0.0}};
  const std::string html = club_html(report);
  test::check_well_formed(html);
  for (const char* words : {"suit whom", "The members", "Who finds", "Net scores", "fewer", "<svg"}) {
    CAPTURE(words);
    CHECK_FALSE(says(html, words));
  }
  CHECK(says(html, "<td>cannot<br/>finish</td>"));
  CHECK(says(html, "<li>scratch men, middle tees: "));
  CHECK(says(html, "<td>91.0</td>"));
}

TEST_CASE("a page about changed hazards draws what they do before all else") {
  ClubReport report{test::sample_changed_bands(), std::nullopt};
  report.bands.result.change = {0.0, 0.0};
  const std::string html = club_html(report);
  test::check_well_formed(html);
  CHECK(says(html, "<h1>What the changed hazards do</h1>"));
  const std::size_t moved = html.find(">Hole 4, the bunker right moved</h2>");
  REQUIRE(moved != std::string::npos);
  CHECK(html.find(">0.25, 12<") > moved);
  CHECK(html.find(">The round, band by band and tee by tee</h2>") > moved);
}

TEST_CASE("hazards are told that are found most often, and whom they catch most stands out") {
  ClubReport report = sample_club();
  for (BandOnTee& golfer : report.bands.result.golfers) {
    std::vector<HazardMet>& hazards = golfer.holes.front().before.hazards;
    const HazardMet bunker = hazards.front();
    hazards.clear();
    for (int i = 0; i < 20; ++i) {
      hazards.push_back(bunker);
      hazards.back().hazard.hazard = i;
      hazards.back().hazard.from_yd = 200.0 + i;
      hazards.back().found = golfer.band == Band::bogey ? 0.01 * (i + 1) : 0.01;
    }
  }
  const std::string html = club_html(report);
  CHECK_FALSE(says(html, "bunker right at 207-229"));
  CHECK(says(html, "4, bunker right at 208-229</th><td>1</td><td><b>9</b></td>"));
  CHECK(says(html, "4, bunker right at 219-229</th><td>1</td><td><b>20</b></td>"));
}

TEST_CASE("hostile names on a page for a club are shown as text") {
  for (const std::string& name :
       {std::string("<script>alert(1)</script>"), std::string("\"'><svg onload=x>"), std::string("]]> & &amp; <!--"),
        std::string("\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D \xE2\x80\xAE evil"),
        std::string("\xF0\x9F\x8F\x8C\xEF\xB8\x8F\xF0\x9F\x8F\xBD emoji"), std::string(300, 'W'),
        std::string("\x01\x1B[31m\x7F\xC2\x85"), std::string("\xEF\xBF\xBE\xEF\xBF\xBF"),
        std::string("\xFF\xC0 not UTF-8"), std::string("two\nlines")}) {
    CAPTURE(name);
    ClubReport report = sample_club();
    report.bands.result.course = report.bands.result.longest_tee = report.members->result.course = name;
    report.bands.opening = {name};
    for (TeeOfBands& tee : report.bands.result.tees) tee.name = name;
    report.members->result.tees = report.bands.result.tees;
    for (MemberResult& member : report.members->result.members) member.member.label = name;
    const std::string html = club_html(report);
    test::check_well_formed(html);
    for (const char* element : {"<script", "<svg onload", "<!--", "]]>", "\xE2\x80\xAE"}) {
      CHECK_FALSE(says(html, element));
    }
    CHECK(html.find_first_of("\x01\x1B\x7F") == std::string::npos);
  }
}

TEST_CASE("a table of a page has headings for its rows and columns") {
  report::HtmlTable table;
  table.caption = "a & b";
  table.kind = "many";
  table.columns = {"", "x\ny"};
  CHECK(report::html_table(table).empty());
  table.rows = {{{"<r>"}, {"1", true}}};
  CHECK(report::html_table(table) ==
        "<table class=\"many\">\n<caption>a &amp; b</caption>\n<thead><tr><th scope=\"col\"></th><th "
        "scope=\"col\">x<br/>y</th></tr></thead>\n<tbody>\n<tr><th scope=\"row\">&lt;r&gt;</th><td><b>1</b></td></tr>\n"
        "</tbody>\n</table>\n");
}

TEST_CASE("a page for a club is the same bytes on any number of threads, and no large file") {
  const Course course = test::scenario_course();
  const auto html = [&](int threads) {
    BandsRequest of_bands;
    of_bands.threads = threads;
    of_bands.tees = {test::middle_tee};
    of_bands.bands = {Band::scratch, Band::from_13_to_20};
    MembersRequest of_members;
    of_members.threads = threads;
    of_members.tees = of_bands.tees;
    of_members.members = {{"a", 12.0, Gender::men, {}}, {"b", 20.0, Gender::women, 150.0}};
    return club_html(
        {{compute_bands(course, of_bands), {}, {}, {}}, MembersReport{compute_members(course, of_members), {}}});
  };
  const std::string one = html(1);
  CHECK(html(3) == one);
  test::check_well_formed(one);
  CHECK(one.size() < 200000);
}

TEST_CASE("a page for a club of as many members as a list may have stays under a megabyte") {
  ClubReport report = sample_club();
  std::vector<MemberResult>& members = report.members->result.members;
  while (members.size() < limits::most_members)
    members.push_back(club_member("member " + std::to_string(members.size()), 1.0));
  CHECK(club_html(report).size() < 1000000);
}

}  // namespace yardworth
