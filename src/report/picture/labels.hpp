#pragma once

#include <string>
#include <vector>

#include "report/picture/svg.hpp"

namespace yardworth::report {

// Words beside a plan view, each with a line to what they are about. They stand in two columns at the sides, so that
// none covers another whatever a hole looks like.

inline constexpr double label_column = 118.0;  // pixels wide
inline constexpr double label_inset = 3.0;     // of the words in their box
inline constexpr double label_width = label_column - 2.0 * label_inset;
inline constexpr double label_size = 10.5;  // of the letters
inline constexpr double label_line = 13.0;  // from line to line

enum class Column { left, right };

struct Label {
  Point anchor;  // what it is about
  Column column = Column::left;
  std::vector<std::string> lines;  // the first is bold
  int rank = 0;                    // the highest are left out first, where there is no room
};

struct PlacedLabel {
  Label label;
  double top = 0.0;

  double height() const { return label_line * static_cast<double>(label.lines.size()) + 4.0; }
};

struct LabelLayout {
  std::vector<PlacedLabel> placed;
  std::size_t left_out = 0;
};

// Each as near to its anchor as the others allow, between two heights.
LabelLayout place_labels(std::vector<Label> labels, double top, double bottom);

std::string labels_svg(const LabelLayout& layout);

}  // namespace yardworth::report
