#include "report/holes_bars.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/telling.hpp"
#include "report/bars.hpp"

namespace yardworth::report {
namespace {

constexpr std::size_t longest_bar = 31;
constexpr std::size_t shortest_bar = 9;  // beside another one
constexpr std::size_t between_halves = 3;

// What is written as 0.00 has no bar.
double shown_saving(const HoleGain& hole) {
  const double saved = hole.strokes.strokes_saved();
  return std::abs(saved) < telling::strokes_worth_telling ? 0.0 : saved;
}

// "   7    4   0.16  "
std::string hole_words(const HoleGain& hole) {
  return fmt::format("{:>4}  {:>3}  {:>6}  ", hole.number, hole.par, strokes_text(shown_saving(hole)));
}

// How the holes stand: in so many rows, with bars on one scale.
struct HolesLayout {
  std::size_t rows = 0;
  std::size_t bar_columns = 0;
  BarScale scale;
};

HolesLayout lay_out(const std::vector<HoleGain>& holes, std::size_t columns) {
  const std::size_t words = display_width(hole_words(holes.front()));
  HolesLayout layout;
  const std::size_t half = columns > between_halves ? (columns - between_halves) / 2 : 0;
  const bool abreast = holes.size() > 9 && half >= words + shortest_bar;
  layout.rows = abreast ? (holes.size() + 1) / 2 : holes.size();
  layout.bar_columns = std::min((abreast ? half : columns) - words, longest_bar);
  double low = 0.0;
  double high = 0.0;
  for (const HoleGain& hole : holes) {
    low = std::min(low, shown_saving(hole));
    high = std::max(high, shown_saving(hole));
  }
  layout.scale = bar_scale(low, high, layout.bar_columns);
  return layout;
}

std::string heading_line(const HolesLayout& layout, std::size_t holes) {
  const std::string one = "hole  par   saved";
  if (holes <= layout.rows) return one + "\n";
  return one + std::string(2 + layout.bar_columns + between_halves, ' ') + one + "\n";
}

}  // namespace

std::string holes_bars_section(const PolicyGain& gain, const Page& page, BarCharacters characters, bool coloured) {
  if (gain.holes.empty()) return "";
  const std::vector<HoleGain>& holes = gain.holes;
  const HolesLayout layout = lay_out(holes, page.columns());
  std::string text = heading_line(layout, holes.size());
  const auto bar_of = [&](const HoleGain& hole, bool colour) {
    return bar(shown_saving(hole), layout.scale, characters, colour);
  };
  for (std::size_t row = 0; row < layout.rows; ++row) {
    const HoleGain& left = holes[row];
    text += hole_words(left) + bar_of(left, coloured);
    if (row + layout.rows < holes.size()) {
      const HoleGain& right = holes[row + layout.rows];
      const std::size_t drawn = display_width(bar_of(left, false));
      text += std::string(layout.bar_columns - drawn + between_halves, ' ') + hole_words(right);
      text += bar_of(right, coloured);
    }
    text += '\n';
  }
  const bool losses = layout.scale.behind > 0;
  return page.section("Strokes saved on each hole") + text +
         (losses ? page.paragraph("To the right of the line: saved. To the left, in other characters: lost.") : "");
}

}  // namespace yardworth::report
