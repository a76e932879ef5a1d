#include <fmt/format.h>

#include <algorithm>

#include "core/telling.hpp"
#include "report/basis_words.hpp"
#include "report/gain_parts.hpp"
#include "report/measured_words.hpp"
#include "report/picture/gain_charts.hpp"
#include "report/reach_words.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

std::string saved_words(double strokes) { return strokes_text(strokes) + " strokes"; }

}  // namespace

void add_parts_chart(Sheet& sheet, const GainResult& result) {
  const StepValues& round = result.answer().round;
  const ComputedParts computed = computed_parts(result);
  std::vector<Bar> bars;
  double sum = 0.0;
  const auto add = [&](const std::string& words, double strokes) {
    bars.push_back({words, sum, sum + strokes, saved_words(strokes)});
    sum += strokes;
  };
  if (is_carry_alone(result.change)) {
    add("from the tee shot", round.from_tee());
    if (computed.irons) add("from the irons", round.from_irons());
  } else {
    for (const ChangeStep step : steps_asked(result.change)) {
      if (is_counted(result.method, step)) add(std::string(name(step)), round.from(step));
    }
  }
  if (computed.replanning) add("from replanning", round.from_replanning());
  bars.push_back({"saved a round", 0.0, round.strokes_saved(), saved_words(round.strokes_saved()), true});
  add_bars(sheet, bars, Joined::yes, "parts");
}

void add_holes_chart(Sheet& sheet, const GainResult& result) {
  std::vector<Bar> bars;
  for (const HoleGain& hole : result.answer().holes) {
    const double saved = hole.strokes.strokes_saved();
    bars.push_back({fmt::format("hole {}, par {}", hole.number, hole.par), 0.0, saved, strokes_text(saved)});
  }
  add_bars(sheet, bars, Joined::no, "holes");
}

namespace {

// Where the curve was asked about, and where it may lie there.
void mark_asked(const GainResult& result, LineChart& chart) {
  const std::vector<Point>& points = chart.lines.front().points;
  const double asked = from_yards(result.change.driver_carry_yd, result.units);
  if (asked < points.front().x || asked > points.back().x) return;
  const double saved = result.answer().round.strokes_saved();
  chart.marks.push_back({asked, fmt::format("asked about: {} saves {}", plain_number(asked), strokes_text(saved))});
  if (result.interval) chart.spans.push_back({asked, saved, result.interval->low, result.interval->high});
}

}  // namespace

void add_curve_chart(Sheet& sheet, const GainReport& report) {
  const GainResult& result = report.result;
  LineChart chart;
  chart.lines.emplace_back();
  Line& line = chart.lines.front();
  line.dotted_points = report.curve.size() <= 12;
  for (const CurvePoint& point : report.curve) {
    line.points.push_back({from_yards(point.change.driver_carry_yd, result.units), point.round.strokes_saved()});
    if (!point.into_reach.empty()) chart.pins.push_back(line.points.back());
  }
  mark_asked(result, chart);
  chart.x_words = fmt::format("{} added to the driver; the irons in proportion", name(result.units));
  add_lines(sheet, chart);
  if (!chart.spans.empty()) {
    sheet.paragraph("The mark is what was measured, with all else that changed; the curve is of carry alone.");
    sheet.paragraph(interval_sentence(result));
  }
  const std::vector<std::string> reached = into_reach_words(report.curve, result.units);
  if (!reached.empty()) sheet.paragraph("Hazards that come into reach of one tee shot in ten, at the numbered places:");
  for (std::size_t i = 0; i < reached.size(); ++i) sheet.paragraph(fmt::format("{}. {}", i + 1, reached[i]));
}

void add_second_shots_chart(Sheet& sheet, const GainResult& result) {
  const SecondShots shots = second_shots(result.answer());
  sheet.paragraph(
      fmt::format("What is played after the tee shot of {} hole{} longer than a par 3: hollow bars before, "
                  "solid bars now.",
                  shots.holes, shots.holes == 1 ? "" : "s"));
  std::vector<Pair> pairs;
  for (const ClubShare& share : shots.clubs) {
    if (std::max(share.before, share.after) < telling::club_worth_a_row) continue;
    pairs.push_back({short_club_name(share.club), share.before, share.after,
                     fmt::format("{}, now {}", percent(share.before), percent(share.after))});
  }
  add_pairs(sheet, pairs);
}

namespace {

// Scores that come up too rarely to be seen are left out at both ends.
Line scores_line(const ScoreDistribution& scores, bool dashed) {
  constexpr double seen = 0.0005;
  Line line{{}, dashed, true, false};
  for (std::size_t i = 0; i < scores.probability.size(); ++i) {
    const bool ends = scores.probability[i] < seen;
    if (!ends)
      line.points.push_back(
          {static_cast<double>(scores.lowest) + static_cast<double>(i), 100.0 * scores.probability[i]});
  }
  return line;
}

}  // namespace

void add_scores_chart(Sheet& sheet, const GainResult& result) {
  const PolicyScores& scores = *result.answer().scores;
  sheet.paragraph(
      "Rounds of 100 that take so many strokes: dashed before, solid now. A mark is broken left of its line.");
  LineChart chart;
  chart.lines = {scores_line(scores.before.gross, true), scores_line(scores.after.gross, false)};
  chart.x_words = "strokes";
  const std::vector<Point>& points = chart.lines.front().points;
  for (std::size_t i = 0; i < std::min(scores.before.breaks.size(), scores.after.breaks.size()); ++i) {
    const BrokenMark& before = scores.before.breaks[i];
    const double x = before.mark - 0.5;
    if (x < points.front().x || x > points.back().x) continue;
    chart.marks.push_back({x, fmt::format("{} broken {}, now {}", before.mark, percent(before.probability),
                                          percent(scores.after.breaks[i].probability))});
  }
  add_lines(sheet, chart);
}

namespace {

// One chart under its heading.
template <class Add>
Panel chart_panel(const std::string& heading, Add add) {
  Sheet sheet;
  sheet.heading(heading);
  add(sheet);
  return sheet.panel();
}

Panel parts_panel(const GainResult& result) {
  return chart_panel("Where the strokes come from", [&](Sheet& sheet) {
    sheet.paragraph(gain_sentence(result));
    sheet.paragraph(second_shot_sentence(result));
    add_parts_chart(sheet, result);
  });
}

// Whose round it is, and what to bear in mind.
Panel basis_panel(const GainResult& result) {
  Sheet sheet;
  sheet.paragraph(fmt::format("{} on {}, {} tees, {} plan.", result.player, result.course, result.tee,
                              result.best ? "best" : "habit"));
  for (const std::string& caution : all_caution_words(result.cautions)) sheet.paragraph(caution);
  return sheet.panel();
}

std::vector<Panel> gain_panels(const GainReport& report) {
  const GainResult& result = report.result;
  std::vector<Panel> panels = {parts_panel(result)};
  const auto add = [&](const char* heading, auto chart) { panels.push_back(chart_panel(heading, chart)); };
  add("Strokes saved on each hole", [&](Sheet& sheet) { add_holes_chart(sheet, result); });
  if (!report.curve.empty()) {
    add("Strokes saved against added carry", [&](Sheet& sheet) { add_curve_chart(sheet, report); });
  }
  if (second_shots(result.answer()).holes > 0) {
    add("Second shots, before and now", [&](Sheet& sheet) { add_second_shots_chart(sheet, result); });
  }
  if (result.answer().scores) {
    add("Scores of a round, before and now", [&](Sheet& sheet) { add_scores_chart(sheet, result); });
  }
  panels.push_back(basis_panel(result));
  return panels;
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string gain_svg(const GainReport& report) {
  const GainResult& result = report.result;
  const std::string title = fmt::format("What added carry is worth to {} on {}", result.player, result.course);
  return report::svg_file(report::gain_panels(report), title, gain_sentence(result));
}

}  // namespace yardworth
