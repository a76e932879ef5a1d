#include <fmt/format.h>

#include <algorithm>

#include "report/basis_words.hpp"
#include "report/picture/charts.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

// A row for each golfer of the gender under a row for each tee, all on one scale.
Panel bands_panel(const BandsResult& result, Gender gender) {
  Sheet sheet;
  sheet.heading(fmt::format("Strokes saved a round: {}", name(gender)));
  std::vector<Bar> bars;
  for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
    bars.push_back({fmt::format("{} tees", result.tees[tee].name), 0.0, 0.0, "", true});
    for (const BandOnTee& golfer : result.golfers) {
      if (golfer.gender != gender || golfer.tee != tee) continue;
      const bool finishes = golfer.cannot_finish.empty();
      const double saved = finishes ? golfer.round.strokes_saved() : 0.0;
      bars.push_back({std::string(name(golfer.band)), 0.0, saved, finishes ? strokes_text(saved) : "cannot finish"});
    }
  }
  add_bars(sheet, bars, Joined::no, fmt::format("bands-{}", name(gender)));
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
  for (const Gender gender : {Gender::men, Gender::women}) {
    const bool any = std::any_of(result.golfers.begin(), result.golfers.end(),
                                 [gender](const BandOnTee& golfer) { return golfer.gender == gender; });
    if (any) panels.push_back(bands_panel(result, gender));
  }
  panels.push_back(cautions_panel(result));
  return panels;
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string bands_svg(const BandsReport& report) {
  const std::string title = fmt::format("What added carry saves whom on {}", report.result.course);
  return report::svg_file(report::bands_panels(report.result), title, bands_sentence(report.result));
}

}  // namespace yardworth
