#include <fmt/format.h>

#include <algorithm>

#include "report/bands_parts.hpp"
#include "report/basis_words.hpp"
#include "report/picture/bands_charts.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

// "0.05, 3 to 8": strokes that the hole then takes more, and tee shots of 100 that find the hazard.
std::string cost_words(const ChangedHole& hole, const ChangedHazard& hazard) {
  const std::string strokes = strokes_text(hole.with.strokes.before - hole.without.strokes.before);
  const HazardMet* now = hazard_met(hole.with.before, hazard.hazard);
  if (now == nullptr) return strokes + ", behind";
  const HazardMet* was = hazard.added ? nullptr : hazard_met(hole.without.before, hazard.hazard);
  const std::string found = in_100(now->found);
  if (was == nullptr || in_100(was->found) == found) return strokes + ", " + found;
  return strokes + ", " + in_100(was->found) + " to " + found;
}

Bar cost_bar(const BandOnTee& golfer, const ChangedHazard& hazard) {
  Bar bar{std::string(name(golfer.band)), 0.0, 0.0, "cannot finish"};
  if (!golfer.cannot_finish.empty()) return bar;
  for (const ChangedHole& hole : golfer.changed) {
    if (hole.with.number != hazard.hole) continue;
    bar.to = hole.with.strokes.before - hole.without.strokes.before;
    bar.value = cost_words(hole, hazard);
  }
  return bar;
}

// A row for each golfer of the gender under a row for each tee, all on one scale.
template <class BarOf>
std::vector<Bar> bars_by_tee(const BandsResult& result, Gender gender, BarOf bar_of) {
  std::vector<Bar> bars;
  for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
    bars.push_back({fmt::format("{} tees", result.tees[tee].name), 0.0, 0.0, "", true});
    for (const BandOnTee& golfer : result.golfers) {
      if (golfer.gender == gender && golfer.tee == tee) bars.push_back(bar_of(golfer));
    }
  }
  return bars;
}

Bar saved_bar(const BandOnTee& golfer) {
  const bool finishes = golfer.cannot_finish.empty();
  const double saved = finishes ? golfer.round.strokes_saved() : 0.0;
  return {std::string(name(golfer.band)), 0.0, saved, finishes ? strokes_text(saved) : "cannot finish"};
}

}  // namespace

void add_saved_by_band(Sheet& sheet, const BandsResult& result, Gender gender) {
  add_bars(sheet, bars_by_tee(result, gender, saved_bar), Joined::no, fmt::format("bands-{}", name(gender)));
}

void add_changed_hazard(Sheet& sheet, const BandsResult& result, std::size_t which, Gender gender) {
  const ChangedHazard& hazard = result.changed_hazards[which];
  sheet.paragraph(
      "Bars: strokes more on the hole, hatched where fewer. Behind them also how many tee shots of 100 "
      "find the hazard" +
      std::string(hazard.added ? "." : ", before and after it is moved."));
  const auto bar_of = [&](const BandOnTee& golfer) { return cost_bar(golfer, hazard); };
  add_bars(sheet, bars_by_tee(result, gender, bar_of), Joined::no,
           fmt::format("changed-{}-{}", which + 1, name(gender)));
}

namespace {

Panel saved_panel(const BandsResult& result, Gender gender) {
  Sheet sheet;
  sheet.heading(fmt::format("Strokes saved a round: {}", name(gender)));
  add_saved_by_band(sheet, result, gender);
  return sheet.panel();
}

Panel changed_panel(const BandsResult& result, std::size_t which, Gender gender) {
  Sheet sheet;
  sheet.heading(fmt::format("{}: {}", changed_hazard_title(result, result.changed_hazards[which]), name(gender)));
  add_changed_hazard(sheet, result, which, gender);
  return sheet.panel();
}

Panel answer_panel(const BandsResult& result) {
  Sheet sheet;
  sheet.heading(result.course);
  sheet.paragraph(bands_sentence(result));
  return sheet.panel();
}

Panel cautions_panel(const BandsResult& result) {
  Sheet sheet;
  for (const std::string& caution : all_caution_words(result.cautions)) sheet.paragraph(caution);
  return sheet.panel();
}

std::vector<Panel> bands_panels(const BandsResult& result) {
  std::vector<Panel> panels = {answer_panel(result)};
  for (const Gender gender : genders_of(result)) {
    if (result.changed_hazards.empty()) panels.push_back(saved_panel(result, gender));
    for (std::size_t i = 0; i < result.changed_hazards.size(); ++i) panels.push_back(changed_panel(result, i, gender));
  }
  panels.push_back(cautions_panel(result));
  return panels;
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string bands_svg(const BandsReport& report) {
  const char* what = report.result.changed_hazards.empty() ? "What added carry saves whom" : "What hazards do to whom";
  const std::string title = fmt::format("{} on {}", what, report.result.course);
  return report::svg_file(report::bands_panels(report.result), title, bands_sentence(report.result));
}

}  // namespace yardworth
