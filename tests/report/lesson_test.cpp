#include <doctest/doctest.h>

#include "report/lesson_words.hpp"
#include "report/sample_gain.hpp"
#include "support/courses.hpp"
#include "support/page_checks.hpp"
#include "support/scenario.hpp"
#include "support/step_values.hpp"
#include "support/well_formed.hpp"
#include "support/words.hpp"

namespace yardworth {
namespace {

using test::says;

StrategyResult lesson_strategy(const Course& course) {
  StrategyRequest request;
  request.change = Change{20.0, 6.0};
  request.drawing = true;
  return compute_strategy(course, standard_player(Band::from_13_to_20, Gender::men), request);
}

GainReport lesson_gain() {
  GainReport report = test::sample_gain();
  PolicyScores scores;
  scores.before.gross = {88, {0.25, 0.5, 0.25}};
  scores.after.gross = {86, {0.25, 0.25, 0.5}};
  scores.before.breaks = {{89, 0.25}};
  scores.after.breaks = {{89, 0.75}};
  report.result.best->scores = scores;
  report.result.mark = 89;
  report.opening = {"The built-in course stands in."};
  for (HoleGain& hole : report.result.best->holes) hole.strokes_variance = 1.0;
  report.curve = {{{0.0, 0.0}, test::of_carries(92.5, 92.5, 92.5, 92.5)},
                  {{40.0, 12.0}, test::of_carries(92.5, 90.5, 90.0, 89.5)}};
  return report;
}

DeliveryResult lesson_delivery() {
  DeliveryRequest request;
  request.club = *typical_club("driver");
  request.delivery = {from_mph(94.0), radians(-3.0), radians(18.0), 0.0, 0.0};
  return compute_delivery(request);
}

// A par 4 with a bunker, then a par 3 over water, as the gain has them.
Course lesson_course() {
  Course course = test::water_and_bunker(Units::yards);
  std::swap(course.holes[0], course.holes[1]);
  course.holes[0].number = 1;
  course.holes[1].number = 2;
  return course;
}

const LessonReport& sample_lesson() {
  static const LessonReport lesson{lesson_gain(), lesson_strategy(lesson_course()), lesson_delivery()};
  return lesson;
}

}  // namespace

TEST_CASE("a lesson sheet says what it has to say, the answer first") {
  const std::string html = lesson_html(sample_lesson());
  const std::vector<std::string> in_order = {">weekend 16 on Heron Ferry Municipal, middle tees<",
                                             "save weekend 16 about 1.8 strokes",
                                             "<li>The built-in",
                                             ">How many clubs shorter<",
                                             "5-iron",
                                             ">Where the strokes come from</h2>",
                                             ">saved a round<",
                                             ">The hole where most is gained<",
                                             "<h3>Hole 1, par 4: saves 0.50</h3>",
                                             " strokes become ",
                                             "The tee shot leaves ",
                                             ">All holes<",
                                             ">Hole 2, par 3<",
                                             ">as before<",
                                             ">Second shots, before and now</h2>",
                                             ">Scores of a round, before and now</h2>",
                                             ">When it shows<",
                                             ">What to work on first<",
                                             "What the strike gives away",
                                             ">What it rests on<",
                                             "Made by Yardworth ",
                                             ">Cautions<"};
  const std::size_t at = test::check_says_in_order(html, in_order);
  // What changes a swing ends with whom to ask.
  CHECK(says(html.substr(at), "qualified coach"));
}

TEST_CASE("a lesson sheet stands by itself") {
  const std::string html = lesson_html(sample_lesson());
  test::check_stands_by_itself(html);
}

TEST_CASE("a lesson sheet leaves out what there is nothing to say of") {
  LessonReport lesson = sample_lesson();
  lesson.delivery.reset();
  lesson.gain.curve.clear();
  lesson.gain.opening.clear();
  lesson.gain.result.best->scores.reset();
  lesson.gain.result.method = Method::table;
  lesson.strategy.holes.clear();
  const std::string html = lesson_html(lesson);
  test::check_well_formed(html);
  for (const char* heading :
       {"What to work on first", "added carry", "Scores of a round", "When it shows", "All holes", "most is gained"}) {
    CAPTURE(heading);
    CHECK_FALSE(says(html, heading));
  }
  CHECK(says(html, ">Where the strokes come from</h2>"));
}

TEST_CASE("the holes drawn large are those where most is gained, or lost") {
  PolicyGain answer;
  const auto hole = [&](int number, double saved) {
    HoleGain gained;
    gained.number = number;
    gained.strokes = test::of_carries(5.0, 5.0, 5.0, 5.0 - saved);
    answer.holes.push_back(gained);
  };
  for (int number = 1; number <= 5; ++number) hole(number, number == 3 ? 0.5 : 0.1 * number);
  hole(6, -0.75);
  const auto numbers = [&] {
    std::vector<int> of;
    for (const HoleGain* gained : report::telling_holes(answer)) of.push_back(gained->number);
    return of;
  };
  answer.round = test::of_carries(90.0, 90.0, 90.0, 89.0);
  CHECK(numbers() == std::vector<int>{3, 5, 4});
  CHECK(report::telling_holes_heading(answer) == "The three holes where most is gained");
  CHECK(report::saved_on_hole(answer.holes.back()) == "costs 0.75");
  answer.round = test::of_carries(90.0, 90.0, 90.0, 91.0);
  CHECK(numbers() == std::vector<int>{6});
  CHECK(report::telling_holes_heading(answer) == "The hole where most is lost");
}

TEST_CASE("hostile names on a lesson sheet are shown as text") {
  for (const std::string& name :
       {std::string("<script>alert(1)</script>"), std::string("\"'><svg onload=x>"), std::string("]]> & &amp; <!--"),
        std::string("\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D \xE2\x80\xAE evil"),
        std::string("\xF0\x9F\x8F\x8C\xEF\xB8\x8F\xF0\x9F\x8F\xBD emoji"), std::string(300, 'W'),
        std::string("\x01\x1B[31m\x7F\xC2\x85"), std::string("\xEF\xBF\xBE\xEF\xBF\xBF"),
        std::string("\xFF\xC0 not UTF-8")}) {
    CAPTURE(name);
    LessonReport lesson = sample_lesson();
    GainResult& result = lesson.gain.result;
    result.course = result.player = result.tee = result.baseline_name = result.baseline_source = name;
    result.best->second_shot.typical_after = name;
    lesson.gain.opening = {name};
    lesson.strategy.course = lesson.strategy.player = lesson.strategy.tee = name;
    HoleDrawing& drawing = *lesson.strategy.holes.front().drawing;
    drawing.before.result.club = drawing.after->result.next_club = name;
    lesson.strategy.holes.front().after->tee_shot.club = name;
    const std::string html = lesson_html(lesson);
    test::check_well_formed(html);
    for (const char* element : {"<script", "<svg onload", "<!--", "]]>", "\xE2\x80\xAE"}) {
      CHECK_FALSE(says(html, element));
    }
    CHECK(html.find_first_of("\x01\x1B\x7F") == std::string::npos);
  }
}

TEST_CASE("a lesson sheet is the same bytes on any number of threads, and no large file") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const auto html = [&](int threads) {
    LessonReport lesson;
    GainRequest gain;
    gain.change = Change{20.0, 6.0};
    gain.threads = threads;
    gain.holes = {2, 7};
    lesson.gain.result = compute_gain(course, player, gain);
    StrategyRequest strategy;
    strategy.change = gain.change;
    strategy.holes = gain.holes;
    strategy.drawing = true;
    strategy.threads = threads;
    lesson.strategy = compute_strategy(course, player, strategy);
    return lesson_html(lesson);
  };
  const std::string one = html(1);
  CHECK(html(3) == one);
  test::check_well_formed(one);
  // Two holes of eighteen, each drawn large and small.
  CHECK(one.size() < 1000000 / 9);
}

}  // namespace yardworth
