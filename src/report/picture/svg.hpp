#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "yardworth/geometry.hpp"

namespace yardworth::report {

// SVG as text, in one place: numbers with a fixed number of decimals and no locale, text that no file can break. Units
// are pixels of a picture that is as wide as a small telephone; y grows downwards, as SVG has it.

inline constexpr double picture_width = 360.0;

// "12.5"; never "-0.0".
std::string px(double value);
// "12.5,-3.0"
std::string px(Point p);

// Text between tags: made safe for a terminal first (control characters, direction marks and what is not UTF-8 are
// shown as \xNN), then for XML, which allows no U+FFFE and U+FFFF either.
std::string svg_text(const std::string& text);

// Pixels that text takes in the widest of the usual sans-serif fonts, at most: for characters beyond ASCII a guess on
// the wide side.
double text_width(std::string_view text, double size, bool bold = false);
// The text, or as much of its beginning as fits with "..." behind it.
std::string fit_text(const std::string& text, double width, double size, bool bold = false);
// Words broken into lines that fit; words that do not are shortened.
std::vector<std::string> wrap_text(const std::string& text, double width, double size, bool bold = false);

enum class Anchor { start, end };

struct TextStyle {
  double size = 11.0;
  bool bold = false;
  Anchor anchor = Anchor::start;
};

// One line of text, shortened to a width; y is the base line. Text beyond ASCII, whose width is a guess, is also cut
// off there.
std::string text_line(Point at, double width, const std::string& text, const TextStyle& style);

// A path through the corners of polygons, filled where an odd number hold a place: "M1.0,2.0L3.0,4.0Z".
std::string path_of(const std::vector<Polygon>& polygons);
std::string open_path(const std::vector<Point>& points);

// A picture as a file: drawn pieces below each other, each as high as it says.
struct Panel {
  std::string svg;
  double height = 0.0;
};
// Title and description are for those who do not see it.
std::string svg_file(const std::vector<Panel>& panels, const std::string& title, const std::string& description);

}  // namespace yardworth::report
