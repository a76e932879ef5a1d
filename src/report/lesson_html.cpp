#include <fmt/format.h>

#include <algorithm>

#include "report/basis_words.hpp"
#include "report/delivery_parts.hpp"
#include "report/gain_basis.hpp"
#include "report/gain_parts.hpp"
#include "report/html.hpp"
#include "report/lesson_words.hpp"
#include "report/measured_words.hpp"
#include "report/picture/delivery_chart.hpp"
#include "report/picture/gain_charts.hpp"
#include "report/picture/hole_picture.hpp"
#include "report/rounds_words.hpp"
#include "report/score_parts.hpp"
#include "report/text.hpp"
#include "yardworth/version.hpp"

namespace yardworth::report {
namespace {

// A chart with nothing but itself: the page has its heading.
template <class Add>
std::string chart(const std::string& title, const std::string& description, Add add) {
  Sheet sheet;
  add(sheet);
  return html_figure(svg_file({sheet.panel()}, title, description));
}

const HoleStrategy* strategy_of(const StrategyResult& strategy, int number) {
  for (const HoleStrategy& hole : strategy.holes) {
    if (hole.number == number && hole.drawing) return &hole;
  }
  return nullptr;
}

std::string head(const GainResult& result) {
  return fmt::format("<h1>What the change is worth</h1>\n<p class=\"whose\">{}</p>\n",
                     svg_text(fmt::format("{} on {}, {} tees", result.player, result.course, result.tee)));
}

// The answer stands first, without a heading of its own.
std::string answer(const LessonReport& report) {
  const GainResult& result = report.gain.result;
  std::string html = "<section class=\"answer\">\n";
  html += html_paragraphs(
      {gain_sentence(result), interval_sentence(result), scores_sentence(result), control_sentence(report.gain)});
  html += "</section>\n";
  if (report.gain.opening.empty()) return html;
  return html + "<section class=\"assumed\">\n" + html_list(report.gain.opening) + "</section>\n";
}

std::string parts(const GainReport& report) {
  const GainResult& result = report.result;
  std::string html = chart("Where the strokes come from", gain_sentence(result),
                           [&](Sheet& sheet) { add_parts_chart(sheet, result); });
  if (!report.curve.empty()) {
    const std::string title = "Strokes saved against added carry";
    html += "<h3>" + title + "</h3>\n";
    html += chart(title, title, [&](Sheet& sheet) { add_curve_chart(sheet, report); });
  }
  return html_section("Where the strokes come from", html);
}

std::string large_hole(const LessonReport& report, const HoleGain& gained) {
  const StrategyResult& strategy = report.strategy;
  const HoleStrategy* hole = strategy_of(strategy, gained.number);
  if (hole == nullptr) return "";
  const std::string title = fmt::format("Hole {}, par {}: {}", hole->number, hole->par, saved_on_hole(gained));
  const std::string advice = strategy_sentence(*hole, strategy.units);
  return "<article class=\"hole\">\n<div>\n<h3>" + title + "</h3>\n" +
         html_paragraphs({advice, leaves_sentence(*hole, strategy.units)}) + "</div>\n" +
         html_figure(svg_file({labelled_hole_panel(strategy, *hole)}, title, advice)) + "</article>\n";
}

std::string telling_section(const LessonReport& report) {
  const PolicyGain& answer = report.gain.result.answer();
  std::string holes;
  for (const HoleGain* gained : telling_holes(answer)) holes += large_hole(report, *gained);
  if (holes.empty()) return "";
  holes = "<div class=\"large\">\n" + holes + "</div>\n";
  std::string words = html_paragraph(hole_picture_key(report.strategy.units));
  const GainResult& result = report.gain.result;
  if (!result.best || result.method != Method::play) {
    words += html_paragraph("The holes are drawn as the best plan plays them, with the player's own shots.");
  }
  return html_section(telling_holes_heading(answer), words + holes, "most");
}

std::string all_holes(const LessonReport& report) {
  std::string holes;
  for (const HoleGain& gained : report.gain.result.answer().holes) {
    const HoleStrategy* hole = strategy_of(report.strategy, gained.number);
    if (hole == nullptr) continue;
    const std::string saved = saved_on_hole(gained);
    const std::string title = fmt::format("Hole {}, par {}: {}", hole->number, hole->par, saved);
    holes +=
        html_figure(svg_file({small_hole_panel(*hole, saved)}, title, strategy_sentence(*hole, report.strategy.units)));
  }
  if (holes.empty()) return "";
  return html_section("All holes",
                      html_paragraph("Strokes saved on each hole, and where the tee shots finish: dashed before, solid "
                                     "after.") +
                          "<div class=\"small\">\n" + holes + "</div>\n",
                      "all");
}

std::string second_shots_section(const GainResult& result) {
  if (second_shots(result.answer()).holes == 0) return "";
  return html_section("Second shots, before and now",
                      chart("Second shots, before and now", second_shot_sentence(result),
                            [&](Sheet& sheet) { add_second_shots_chart(sheet, result); }));
}

std::string scores(const GainResult& result) {
  if (!result.answer().scores) return "";
  return html_section("Scores of a round, before and now",
                      chart("Scores of a round, before and now", scores_sentence(result),
                            [&](Sheet& sheet) { add_scores_chart(sheet, result); }));
}

std::string work_on_first(const LessonReport& report) {
  if (!report.delivery) return "";
  const DeliveryResult& delivery = *report.delivery;
  return html_section("What to work on first", html_paragraph(delivery_sentence(delivery)) +
                                                   chart("What the strike gives away", delivery_sentence(delivery),
                                                         [&](Sheet& sheet) { add_losses_chart(sheet, delivery); }));
}

std::string seed_words(const LessonReport& report) {
  if (!report.gain.result.interval) return "Nothing is drawn at random, so there is no seed to name.";
  return fmt::format("Drawn with the seed {}.", report.seed);
}

std::string basis(const LessonReport& report) {
  const GainResult& result = report.gain.result;
  std::vector<std::string> words = gain_basis(result);
  if (report.delivery) {
    for (std::string& more : delivery_basis(*report.delivery)) words.push_back(std::move(more));
  }
  words.push_back(fmt::format("Made by Yardworth {}. {}", version, seed_words(report)));
  return html_section("What it rests on", html_list(words), "basis");
}

std::string cautions(const LessonReport& report) {
  std::vector<std::string> words = all_caution_words(report.gain.result.cautions);
  if (report.delivery) {
    for (std::string& more : delivery_cautions()) {
      if (std::find(words.begin(), words.end(), more) == words.end()) words.push_back(std::move(more));
    }
  }
  return html_section("Cautions", html_list(words));
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string lesson_html(const LessonReport& report) {
  const GainResult& result = report.gain.result;
  std::string body = report::head(result) + report::answer(report);
  body +=
      report::html_section("How many clubs shorter", report::html_paragraphs({report::second_shot_sentence(result)}));
  body += report::parts(report.gain) + report::telling_section(report) + report::all_holes(report);
  body += report::second_shots_section(result) + report::scores(result);
  body += report::html_section("When it shows", report::html_paragraphs({report::until_it_shows_words(result)}));
  body += report::work_on_first(report) + report::basis(report) + report::cautions(report);
  return report::html_page(fmt::format("{} on {}: what distance is worth", result.player, result.course), body);
}

}  // namespace yardworth
