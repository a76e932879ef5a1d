#include "report/picture/ground_style.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace yardworth::report {
namespace {

// A row for each ground, in its order: its paper, the strokes of its tile and their side, its bound.
struct GroundStyle {
  Ground ground = Ground::rough;
  const char* paper;
  double tile;
  const char* marks;  // in a tile
  const char* bound;
};

constexpr GroundStyle styles[] = {
    {Ground::green, "#a9c58d", 0.0, "", "stroke=\"#33482a\" stroke-width=\"1.2\""},
    {Ground::out_of_bounds, "#ecebe6", 7.0, "<path d=\"M-1,8L8,-1M-1,1L1,-1M6,8L8,6\" stroke=\"#7d7068\"/>",
     "stroke=\"#4d443e\" stroke-width=\"1.2\" stroke-dasharray=\"7 2 1.5 2\""},
    {Ground::penalty_area, "#cddfe8", 10.0, "<path d=\"M0,3q2.5,-3 5,0t5,0M0,8q2.5,-3 5,0t5,0\" stroke=\"#2f6480\"/>",
     "stroke=\"#2f6480\" stroke-width=\"1.2\""},
    {Ground::bunker, "#fdf6dd", 4.0, "<path d=\"M0.6,1h0.9M2.6,3h0.9\" stroke=\"#7c6423\" stroke-width=\"1\"/>",
     "stroke=\"#7c6423\" stroke-width=\"1\""},
    {Ground::trees, "#dbe2cf", 11.0,
     "<path d=\"M3,6V3.6M3,0.6L0.9,3.8H5.1ZM8.5,11.2V9M8.5,6L6.4,9.2H10.6Z\" stroke=\"#48613c\"/>",
     "stroke=\"#48613c\" stroke-width=\"0.6\" stroke-dasharray=\"1 2\""},
    {Ground::fairway, "#dbe6c9", 0.0, "", "stroke=\"#8fa27a\" stroke-width=\"0.8\""},
    {Ground::rough, "#f1f3ea", 0.0, "", "stroke=\"#b9c0ae\" stroke-width=\"0.8\""},
};

const GroundStyle& style_of(Ground ground) { return styles[static_cast<std::size_t>(ground)]; }

std::string pattern_name(Ground ground, const std::string& prefix) {
  std::string word(name(ground));
  std::replace(word.begin(), word.end(), ' ', '-');
  return prefix + '-' + word;
}

}  // namespace

std::string ground_patterns(const std::string& prefix) {
  std::string svg;
  for (const GroundStyle& style : styles) {
    if (style.tile <= 0.0) continue;
    svg += fmt::format(
        "<pattern id=\"{}\" width=\"{}\" height=\"{}\" patternUnits=\"userSpaceOnUse\"><rect width=\"{}\" "
        "height=\"{}\" fill=\"{}\"/><g fill=\"none\" stroke-width=\"0.8\">{}</g></pattern>\n",
        pattern_name(style.ground, prefix), px(style.tile), px(style.tile), px(style.tile), px(style.tile), style.paper,
        style.marks);
  }
  return svg;
}

std::string ground_attributes(Ground ground, const std::string& prefix) {
  const GroundStyle& style = style_of(ground);
  const std::string fill =
      style.tile > 0.0 ? fmt::format("url(#{})", pattern_name(ground, prefix)) : std::string(style.paper);
  return fmt::format("fill=\"{}\" {}", fill, style.bound);
}

std::vector<Ground> grounds_of(const std::vector<PlanArea>& areas) {
  std::vector<Ground> grounds;
  for (const PlanArea& area : areas) grounds.push_back(area.ground);
  grounds.push_back(Ground::rough);
  std::sort(grounds.begin(), grounds.end());
  grounds.erase(std::unique(grounds.begin(), grounds.end()), grounds.end());
  return grounds;
}

std::string ground_key(const std::vector<Ground>& grounds, const std::string& prefix, double& top) {
  constexpr double margin = 8.0;
  constexpr double swatch = 18.0;
  constexpr double line = 16.0;
  std::string svg;
  double left = margin;
  for (const Ground ground : grounds) {
    const std::string word(name(ground));
    const double width = swatch + 4.0 + text_width(word, key_size) + 12.0;
    if (left + width > picture_width) {
      left = margin;
      top += line;
    }
    svg += fmt::format("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"11\" {}/>\n", px(left), px(top), px(swatch),
                       ground_attributes(ground, prefix));
    svg += text_line({left + swatch + 4.0, top + 9.5}, width, word, {key_size});
    left += width;
  }
  top += line;
  return svg;
}

}  // namespace yardworth::report
