#include "report/picture/labels.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace yardworth::report {
namespace {

constexpr double margin = 4.0;  // from the frame
constexpr double gap = 3.0;     // between labels

double height_of(const Label& label) { return PlacedLabel{label, 0.0}.height(); }

// Leaves out the highest ranks until the rest has room.
std::size_t make_room(std::vector<Label>& column, double room) {
  std::size_t left_out = 0;
  const auto needed = [&] {
    double sum = 0.0;
    for (const Label& label : column) sum += height_of(label) + gap;
    return sum;
  };
  while (!column.empty() && needed() > room) {
    column.erase(
        std::max_element(column.begin(), column.end(), [](const Label& a, const Label& b) { return a.rank < b.rank; }));
    ++left_out;
  }
  return left_out;
}

// From the top down each moves below the one before; then, from the bottom up, above the one behind.
std::vector<PlacedLabel> place_column(const std::vector<Label>& column, double top, double bottom) {
  std::vector<PlacedLabel> placed;
  double next = top;
  for (const Label& label : column) {
    const double height = height_of(label);
    placed.push_back({label, std::max(next, label.anchor.y - height / 2.0)});
    next = placed.back().top + height + gap;
  }
  double limit = bottom;
  for (auto label = placed.rbegin(); label != placed.rend(); ++label) {
    label->top = std::min(label->top, limit - label->height());
    limit = label->top - gap;
  }
  return placed;
}

double box_width(const Label& label) {
  double widest = 0.0;
  for (std::size_t i = 0; i < label.lines.size(); ++i) {
    widest =
        std::max(widest, text_width(fit_text(label.lines[i], label_width, label_size, i == 0), label_size, i == 0));
  }
  return widest + 2.0 * label_inset;
}

double box_left(const Label& label) {
  return label.column == Column::left ? margin : picture_width - margin - box_width(label);
}

std::string leader(const PlacedLabel& placed) {
  const Label& label = placed.label;
  const bool left = label.column == Column::left;
  const Point from = {left ? margin + box_width(label) : box_left(label), placed.top + placed.height() / 2.0};
  return fmt::format(
      "<path d=\"{}\" fill=\"none\" stroke=\"#fff\" stroke-width=\"2.6\" opacity=\"0.8\"/>"
      "<path d=\"{}\" fill=\"none\" stroke=\"#1f2420\" stroke-width=\"0.8\"/>"
      "<circle cx=\"{}\" cy=\"{}\" r=\"1.8\"/>\n",
      open_path({from, label.anchor}), open_path({from, label.anchor}), px(label.anchor.x), px(label.anchor.y));
}

std::string words(const PlacedLabel& placed) {
  const Label& label = placed.label;
  std::string svg = fmt::format(
      "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"2\" fill=\"#fff\" fill-opacity=\"0.92\" "
      "stroke=\"#9aa396\" stroke-width=\"0.6\"/>\n",
      px(box_left(label)), px(placed.top), px(box_width(label)), px(placed.height()));
  for (std::size_t i = 0; i < label.lines.size(); ++i) {
    const Point at = {box_left(label) + label_inset, placed.top + label_line * static_cast<double>(i + 1) - 1.0};
    svg += text_line(at, label_width, label.lines[i], {label_size, i == 0});
  }
  return svg;
}

}  // namespace

LabelLayout place_labels(std::vector<Label> labels, double top, double bottom) {
  LabelLayout layout;
  for (const Column column : {Column::left, Column::right}) {
    std::vector<Label> here;
    std::copy_if(labels.begin(), labels.end(), std::back_inserter(here),
                 [&](const Label& label) { return label.column == column; });
    std::stable_sort(here.begin(), here.end(), [](const Label& a, const Label& b) { return a.anchor.y < b.anchor.y; });
    layout.left_out += make_room(here, bottom - top);
    for (PlacedLabel& label : place_column(here, top, bottom)) layout.placed.push_back(std::move(label));
  }
  return layout;
}

std::string labels_svg(const LabelLayout& layout) {
  std::string svg;
  for (const PlacedLabel& label : layout.placed) svg += leader(label);
  for (const PlacedLabel& label : layout.placed) svg += words(label);
  return svg;
}

}  // namespace yardworth::report
