#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "course/set_up.hpp"
#include "input/samples.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

using samples::changed;
using samples::lines;
using samples::Slip;

std::vector<std::string> course_findings(const std::string& text) { return lines(read_course(text, "f").findings); }

Course whole_course(const std::string& text) {
  const auto reading = read_course(text, "f");
  CHECK(lines(reading.findings) == std::vector<std::string>{});
  REQUIRE(reading.ok());
  return *reading.value;
}

const std::vector<Slip> course_slips = {
    {"unknown key", "ground:", "colour: green\nground:",
     "7:1: fault: colour: found unknown key \"colour\", expected one of format, name, units, tees, ground, holes"},
    {"misspelt key", "    stroke_index: 11", "    stroke_idnex: 11",
     "11:5: fault: holes[0].stroke_idnex: found unknown key \"stroke_idnex\", expected \"stroke_index\", the nearest "
     "known key"},
    {"misspelt required", "    length: {back", "    lenght: {back",
     "12:5: fault: holes[0].lenght: found unknown key \"lenght\", expected \"length\", the nearest known key"},
    {"missing name", "name: Test Nine\n", "",
     "1:1: fault: name: found nothing: the required key is missing, expected text"},
    {"missing par", "    par: 4\n", "",
     "9:5: fault: holes[0].par: found nothing: the required key is missing, expected a whole number from 3 to 6"},
    {"missing length", "    length: {back: 398, forward: 318}\n", "",
     "9:5: fault: holes[0].length: found nothing: the required key is missing, expected the length from each tee, such "
     "as {back: 398}"},
    {"missing tees", "tees:\n  - {name: back, course_rating: 35.8, slope: 129}\n  - {name: forward, for: women}\n", "",
     "1:1: fault: tees: found nothing: the required key is missing, expected a list of tees"},
    {"wrong type number", "    par: 4\n", "    par: four\n",
     "10:10: fault: holes[0].par: found \"four\", expected a whole number from 3 to 6"},
    {"quoted number", "    par: 4\n", "    par: \"4\"\n",
     "10:10: fault: holes[0].par: found \"4\", expected a whole number from 3 to 6"},
    {"fractional par", "    par: 4\n", "    par: 4.5\n",
     "10:10: fault: holes[0].par: found 4.5, expected a whole number from 3 to 6"},
    {"list for text", "name: Test Nine", "name: [Test, Nine]", "2:7: fault: name: found a list, expected text"},
    {"scalar for map", "    green: {depth: 30, width: 24}", "    green: 30",
     "15:12: fault: holes[0].green: found 30, expected a map with keys among depth, width"},
    {"scalar for list", "    dogleg: [{at: 240, turn: -18}]", "    dogleg: 240",
     "13:13: fault: holes[0].dogleg: found 240, expected a list of doglegs"},
    {"scalar length", "    length: {back: 398, forward: 318}", "    length: 398",
     "12:13: fault: holes[0].length: found 398, expected a map with keys among back, forward"},
    {"duplicate key", "    par: 4\n", "    par: 4\n    par: 5\n",
     "11:5: fault: holes[0].par: found the key \"par\" again, expected each key once"},
    {"negative length", "back: 398", "back: -398",
     "12:20: fault: holes[0].length.back: found -398, expected a number from 40 to 1000 yards"},
    {"absurd length", "back: 398", "back: 4000",
     "12:20: fault: holes[0].length.back: found 4000, expected a number from 40 to 1000 yards"},
    {"short hole", "forward: 318", "forward: 12",
     "12:34: fault: holes[0].length.forward: found 12, expected a number from 40 to 1000 yards"},
    {"NaN", "back: 398", "back: .nan",
     "12:20: fault: holes[0].length.back: found .nan, which is not a finite number, expected a number from 40 to 1000 "
     "yards"},
    {"infinity", "from: 140", "from: -.inf",
     "14:22: fault: holes[0].fairway[0].from: found -.inf, which is not a finite number, expected a number from -200 "
     "to 1300 yards"},
    {"a number beyond all numbers", "turn: -18", "turn: 1e999",
     "13:30: fault: holes[0].dogleg[0].turn: found 1e999, which is not a finite number, expected a number from -120 to "
     "120 degrees"},
    {"duplicate number", "{number: 2,", "{number: 3,",
     "21:14: fault: holes[2].number: found hole 3 again, expected each hole once"},
    {"number out of range", "{number: 9,", "{number: 10,",
     "27:14: fault: holes[8].number: found 10, expected a whole number from 1 to 9"},
    {"par 9", "    par: 4\n", "    par: 9\n",
     "10:10: fault: holes[0].par: found 9, expected a whole number from 3 to 6"},
    {"tee without length", "{back: 398, forward: 318}", "{back: 398}",
     "12:13: fault: holes[0].length.forward: found nothing: the required key is missing, expected a number of yards"},
    {"unknown tee", "forward: 318", "foward: 318",
     "12:25: fault: holes[0].length.foward: found unknown key \"foward\", expected \"forward\", the nearest known key"},
    {"extra tee", "forward: 318", "forward: 318, middle: 350",
     "12:39: fault: holes[0].length.middle: found unknown key \"middle\", expected one of back, forward"},
    {"duplicate tee", "{name: forward, for: women}", "{name: back, for: women}",
     "6:5: fault: tees[1]: found the tee \"back\" again, expected each tee once"},
    {"longer forward", "forward: 318", "forward: 410",
     "12:34: advice: holes[0].length.forward: found 410 yards, expected no more than the 398 yards of the first tee, "
     "or a reason"},
    {"fairway ends before", "to: 372", "to: 120",
     "14:31: fault: holes[0].fairway[0].to: found 120 yards, expected more than from: 140 yards"},
    {"fairway out of hole", "to: 372", "to: 399",
     "14:31: fault: holes[0].fairway[0].to: found 399 yards, expected at most the hole's length, 398 yards"},
    {"fairway before tee", "from: 140", "from: -5",
     "14:22: fault: holes[0].fairway[0].from: found -5 yards, expected 0, the longest tee, or more"},
    {"fairway overlap", "[{from: 140, to: 372, left: 17, right: 15}]", "[{from: 140, to: 300}, {from: 290, to: 372}]",
     "14:37: fault: holes[0].fairway[1]: found a fairway that begins at 290 yards, expected the end of the one before, "
     "300 yards, or more"},
    {"fairway no width", "left: 17, right: 15", "left: 0, right: 0",
     "14:15: fault: holes[0].fairway[0]: found a fairway without width, expected left or right above 0"},
    {"fairway negative", "left: 17", "left: -17",
     "14:42: fault: holes[0].fairway[0].left: found -17, expected a number from 0 to 100 yards"},
    {"hazard ends before", "to: 244", "to: 220",
     "17:52: fault: holes[0].hazards[0].to: found 220 yards, expected more than from: 226 yards"},
    {"hazard lost in a corner", "side: right, from: 226, to: 244", "side: left, from: 238, to: 242",
     "17:9: fault: holes[0].hazards[0]: found a hazard wholly inside the corner at 240 yards, where neither leg "
     "reaches "
     "it, expected one that begins before 237.9 yards or ends past 242.1 yards, or that lies nearer to the line"},
    {"polygon lost in a corner", "[[-22, 380], [-12, 380], [-14, 396]]", "[[-40, 238], [-30, 242], [-35, 243]]",
     "19:9: fault: holes[0].hazards[2]: found a hazard wholly inside the corner at 240 yards, where neither leg "
     "reaches "
     "it, expected one that begins before 235.2 yards or ends past 244.8 yards, or that lies nearer to the line"},
    {"hazard beyond", "from: 226, to: 244", "from: 470, to: 480",
     "17:43: fault: holes[0].hazards[0].from: found 470 yards: a hazard wholly off the hole, expected a place from -60 "
     "yards to 458 yards"},
    {"hazard far out", "near: 13, far: 25", "near: 210, far: 230",
     "17:63: fault: holes[0].hazards[0].near: found 210 yards: a hazard wholly off the hole, expected at most 200 "
     "yards"},
    {"far before near", "near: 13, far: 25", "near: 25, far: 13",
     "17:72: fault: holes[0].hazards[0].far: found 13 yards, expected more than near: 25 yards"},
    {"across near", "across, from", "across, near: 5, from",
     "18:50: fault: holes[0].hazards[1].near: found near of a hazard across the hole, expected near and far only with "
     "side left or right"},
    {"kind", "kind: bunker, side", "kind: bunkr, side",
     "17:16: fault: holes[0].hazards[0].kind: found \"bunkr\", expected one of bunker, penalty_area, out_of_bounds, "
     "trees; the nearest is bunker"},
    {"side", "side: right", "side: middle",
     "17:30: fault: holes[0].hazards[0].side: found \"middle\", expected one of left, right, across"},
    {"missing side", "side: right, ", "",
     "17:9: fault: holes[0].hazards[0].side: found nothing: the required key is missing, expected one of left, right, "
     "across"},
    {"polygon and side", "polygon: [[-22", "side: left, polygon: [[-22",
     "19:30: fault: holes[0].hazards[2].side: found side beside polygon, expected either a polygon or a place along "
     "the line"},
    {"dogleg outside", "at: 240", "at: 398",
     "13:19: fault: holes[0].dogleg[0].at: found 398 yards, expected a place between the longest tee and the green"},
    {"dogleg order", "[{at: 240, turn: -18}]", "[{at: 240, turn: -18}, {at: 200, turn: 10}]",
     "13:41: fault: holes[0].dogleg[1].at: found 200 yards, expected more than the 240 yards of the dogleg before"},
    // 25 (tan 9 degrees + tan 40 degrees) = 24.9 yards.
    {"doglegs that fold", "[{at: 240, turn: -18}]", "[{at: 240, turn: -18}, {at: 250, turn: -80}]",
     "13:41: fault: holes[0].dogleg[1].at: found 250 yards, expected 265 yards or more, so that the leg from the "
     "dogleg before does not fold over itself"},
    {"dogleg turn", "turn: -18", "turn: -121",
     "13:30: fault: holes[0].dogleg[0].turn: found -121, expected a number from -120 to 120 degrees"},
    {"polygon crossing", "[[-22, 380], [-12, 380], [-14, 396]]", "[[-22, 380], [-12, 390], [-12, 380], [-22, 396]]",
     "19:33: fault: holes[0].hazards[2].polygon: found a polygon that crosses or touches itself, expected corners in "
     "order around the area"},
    {"polygon 2", "[[-22, 380], [-12, 380], [-14, 396]]", "[[-22, 380], [-12, 380]]",
     "19:33: fault: holes[0].hazards[2].polygon: found a list of 2, expected from 3 to 200 corners"},
    {"polygon no area", "[[-22, 380], [-12, 380], [-14, 396]]", "[[-22, 380], [-12, 380], [-2, 380]]",
     "19:33: fault: holes[0].hazards[2].polygon: found a polygon without area, expected corners that enclose an area"},
    {"polygon corner", "[-14, 396]]", "[-14]]",
     "19:58: fault: holes[0].hazards[2].polygon[2]: found a list of 1, expected 2 numbers: right of the line, along "
     "it"},
    {"polygon off", "[[-22, 380], [-12, 380], [-14, 396]]", "[[-222, 380], [-212, 380], [-214, 396]]",
     "19:33: fault: holes[0].hazards[2].polygon: found a hazard wholly off the hole, expected a hazard on the hole or "
     "close to it"},
    {"dup index", "stroke_index: 2,", "stroke_index: 3,",
     "21:39: fault: holes[2].stroke_index: found stroke index 3 again, expected each once"},
    {"index 19", "stroke_index: 2,", "stroke_index: 19,",
     "20:39: fault: holes[1].stroke_index: found 19, expected a whole number from 1 to 18"},
    {"rating", "course_rating: 35.8", "course_rating: 71.6",
     "5:33: fault: tees[0].course_rating: found 71.6, expected a number from 25 to 45"},
    {"slope", "slope: 129", "slope: 156", "5:46: fault: tees[0].slope: found 156, expected a number from 55 to 155"},
    {"for", "for: women", "for: ladies",
     "6:26: fault: tees[1].for: found \"ladies\", expected women; the words are men, women"},
    {"units", "units: yards", "units: meters",
     "3:8: fault: units: found \"meters\", expected metres; the words are yards, metres"},
    {"firmness", "firmness: normal", "firmness: hard",
     "7:20: fault: ground.firmness: found \"hard\", expected firm; the words are soft, normal, firm"},
    {"ten holes", "  - {number: 9,", "  - {number: 9, par: 4, length: {back: 380, forward: 300}}\n  - {number: 10,",
     "9:3: fault: holes: found 10 holes, expected 9 or 18 holes"},
    {"green size", "depth: 30", "depth: 300",
     "15:20: fault: holes[0].green.depth: found 300, expected a number from 5 to 100 yards"},
};

TEST_CASE("every key of a course is read") {
  const Course course = whole_course(samples::course);
  CHECK(course.name == "Test Nine");
  CHECK(course.units == Units::yards);
  REQUIRE(course.tees.size() == 2);
  CHECK(course.tees[0].name == "back");
  CHECK(course.tees[0].course_rating == 35.8);
  CHECK(course.tees[0].slope == 129.0);
  CHECK_FALSE(course.tees[0].rated_for.has_value());
  CHECK(course.tees[1].rated_for == Gender::women);
  CHECK(course.firmness == Firmness::normal);
  REQUIRE(course.holes.size() == 9);

  const Hole& hole = course.holes[0];
  CHECK(hole.number == 1);
  CHECK(hole.par == 4);
  CHECK(hole.stroke_index == 11);
  CHECK(hole.length_yd == std::vector<double>{398.0, 318.0});
  REQUIRE(hole.doglegs.size() == 1);
  CHECK(hole.doglegs[0].at_yd == 240.0);
  CHECK(hole.doglegs[0].turn_rad == doctest::Approx(radians(-18.0)));
  REQUIRE(hole.fairway.size() == 1);
  CHECK(hole.fairway[0].from_yd == 140.0);
  CHECK(hole.fairway[0].to_yd == 372.0);
  CHECK(hole.fairway[0].left_yd == 17.0);
  CHECK(hole.fairway[0].right_yd == 15.0);
  CHECK(hole.green.depth_yd == 30.0);
  CHECK(hole.green.width_yd == 24.0);

  REQUIRE(hole.hazards.size() == 3);
  CHECK(hole.hazards[0].kind == HazardKind::bunker);
  CHECK(hole.hazards[0].side == Side::right);
  CHECK(hole.hazards[0].from_yd == 226.0);
  CHECK(hole.hazards[0].to_yd == 244.0);
  CHECK(hole.hazards[0].near_yd == 13.0);
  CHECK(hole.hazards[0].far_yd == 25.0);
  CHECK(hole.hazards[1].side == Side::across);
  CHECK(hole.hazards[1].near_yd == 0.0);
  CHECK(hole.hazards[1].far_yd == farthest_out_yd);
  REQUIRE(hole.hazards[2].corners.size() == 3);
  CHECK(hole.hazards[2].corners[2].right_yd == -14.0);
  CHECK(hole.hazards[2].corners[2].along_yd == 396.0);
}

TEST_CASE("each slip in a course file gives its own line, and no value") {
  for (const Slip& slip : course_slips) {
    CAPTURE(slip.name);
    const auto reading = read_course(changed(samples::course, slip.from, slip.to), "f");
    CHECK(lines(reading.findings) == std::vector<std::string>{slip.line});
    CHECK(reading.ok() == !has_fault(reading.findings));
  }
}

TEST_CASE("all faults of a course file are reported together, in the order of the file") {
  std::string text = changed(samples::course, "slope: 129", "slope: 12");
  text = changed(text, "    par: 4", "    par: 9");
  text = changed(text, "{number: 9, par: 4", "{number: 9, prr: 4");
  CHECK(course_findings(text) ==
        std::vector<std::string>{
            "5:46: fault: tees[0].slope: found 12, expected a number from 55 to 155",
            "10:10: fault: holes[0].par: found 9, expected a whole number from 3 to 6",
            "27:17: fault: holes[8].prr: found unknown key \"prr\", expected \"par\", the nearest known key"});
}

TEST_CASE("tees stand longest first by the whole course") {
  const auto found = course_findings(changed(samples::course, "forward: 300", "forward: 399", true));
  REQUIRE_FALSE(found.empty());
  CHECK(found.front() ==
        "6:5: fault: tees[1]: found 3241 yards from \"forward\" after 3218 yards from \"back\", expected tees longest "
        "first");
}

TEST_CASE("a scorecard alone is a course") {
  std::string text = "format: yardworth/course/1\nname: Card\ntees: [{name: only}]\nholes:\n";
  for (int number = 9; number >= 1; --number) {
    const bool short_hole = number == 3;
    text += "  - {number: " + std::to_string(number) + ", par: " + (short_hole ? "3" : "4") +
            ", length: {only: " + (short_hole ? "150" : "400") + "}}\n";
  }
  const Course course = whole_course(text);
  CHECK(course.units == Units::yards);
  CHECK(course.firmness == Firmness::normal);
  for (int i = 0; i < 9; ++i) CHECK(course.holes[static_cast<std::size_t>(i)].number == i + 1);
  CHECK(course.holes[2].fairway.empty());
  const Hole& hole = course.holes[0];
  REQUIRE(hole.fairway.size() == 1);
  CHECK(hole.fairway[0].from_yd == 110.0);
  CHECK(hole.fairway[0].to_yd == 370.0);
  CHECK(hole.green.depth_yd == default_green().depth_yd);
  CHECK(hole.hazards.empty());
  CHECK_FALSE(hole.stroke_index.has_value());
  CHECK(total_length_yd(course, 0) == 8 * 400.0 + 150.0);
}

TEST_CASE("metres convert every length and nothing else") {
  const Course yards = whole_course(samples::course);
  const Course metres = whole_course(changed(samples::course, "units: yards", "units: metres"));
  const double k = 1.0 / 0.9144;
  CHECK(metres.units == Units::metres);
  const Hole& a = yards.holes[0];
  const Hole& b = metres.holes[0];
  CHECK(b.length_yd[1] == doctest::Approx(k * a.length_yd[1]));
  CHECK(b.doglegs[0].at_yd == doctest::Approx(k * a.doglegs[0].at_yd));
  CHECK(b.doglegs[0].turn_rad == a.doglegs[0].turn_rad);
  CHECK(b.fairway[0].to_yd == doctest::Approx(k * a.fairway[0].to_yd));
  CHECK(b.fairway[0].left_yd == doctest::Approx(k * a.fairway[0].left_yd));
  CHECK(b.green.depth_yd == doctest::Approx(k * a.green.depth_yd));
  CHECK(b.hazards[0].near_yd == doctest::Approx(k * a.hazards[0].near_yd));
  CHECK(b.hazards[2].corners[0].right_yd == doctest::Approx(k * a.hazards[2].corners[0].right_yd));
  CHECK(metres.tees[0].slope == yards.tees[0].slope);
  // 1000 yards are 914.4 metres.
  std::string text = changed(samples::course, "units: yards", "units: metres");
  CHECK(read_course(changed(text, "back: 398", "back: 914.4"), "f").ok());
  CHECK(course_findings(changed(text, "back: 398", "back: 914.5")) ==
        std::vector<std::string>{
            "12:20: fault: holes[0].length.back: found 914.5, expected a number from 36.58 to 914.4 metres"});
}

TEST_CASE("a side hazard without near and far has those of its kind") {
  const Course course = whole_course(changed(samples::course, ", near: 13, far: 25", ""));
  CHECK(course.holes[0].hazards[0].near_yd == 16.0);
  CHECK(course.holes[0].hazards[0].far_yd == 28.0);
  const std::string bounds = "{kind: out_of_bounds, side: left, from: 0, to: 398, near: 38}";
  const Course fenced =
      whole_course(changed(samples::course, "{kind: penalty_area, side: across, from: 338, to: 352}", bounds));
  CHECK(fenced.holes[0].hazards[1].near_yd == 38.0);
  CHECK(fenced.holes[0].hazards[1].far_yd == 150.0);
}

TEST_CASE("a polygon may repeat its first corner at the end") {
  const Course course = whole_course(changed(samples::course, "[-14, 396]]", "[-14, 396], [-22, 380]]"));
  CHECK(course.holes[0].hazards[2].corners.size() == 3);
}

TEST_CASE("very many faults are cut to a few and a count") {
  std::string text = samples::course;
  for (int i = 0; i < 500; ++i) text += "unknown_key_" + std::to_string(i) + ": 1\n";
  const auto findings = read_course(text, "f").findings;
  REQUIRE(findings.size() == 201);
  // Where the first of those left out is.
  const auto lines = std::count(text.begin(), text.end(), '\n');
  CHECK(to_line(findings.back()) ==
        "f:" + std::to_string(lines - 299) +
            ":1: fault: found 300 more of the kind, expected the first ones to be put right");
}

TEST_CASE("advice does not hide a fault behind it") {
  std::string text = samples::course;
  for (int i = 0; i < 300; ++i) text += "unknown_key_" + std::to_string(i) + ": 1\n";
  text = changed(text, "forward: 318", "forward: 399");
  const auto findings = read_course(text, "f").findings;
  for (const Diagnostic& finding : findings) CHECK(finding.severity == Severity::fault);
}

}  // namespace
TEST_CASE("only what is lost wholly inside a corner is a fault") {
  const auto with_bunker = [](const std::string& place) {
    return samples::changed(samples::course, "side: right, from: 226, to: 244, near: 13, far: 25", place);
  };
  // The legs end 13 tan 9 degrees = 2.06 yards before and past the corner at 240.
  whole_course(with_bunker("side: left, from: 238, to: 242.1, near: 13, far: 25"));
  whole_course(with_bunker("side: left, from: 237.9, to: 242, near: 13, far: 25"));
  CHECK(course_findings(with_bunker("side: left, from: 238, to: 242, near: 13, far: 25")).size() == 1);
  // On the outer side of the corner nothing is lost, nor nearer to the line.
  whole_course(with_bunker("side: right, from: 238, to: 242, near: 13, far: 25"));
  whole_course(with_bunker("side: left, from: 238, to: 242, near: 0, far: 25"));
  // A corner that is at fault itself says nothing of the hazards around it.
  const std::string no_corner =
      samples::changed(with_bunker("side: left, from: 238, to: 242, near: 13, far: 25"), "at: 240", "at: 500");
  CHECK(course_findings(no_corner).size() == 1);
}

}  // namespace yardworth
