#include "report/picture/charts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/picture/labels.hpp"
#include "report/text.hpp"

namespace yardworth::report {
namespace {

constexpr double chart_side = 8.0;
constexpr double chart_words_width = picture_width - 2.0 * chart_side;
constexpr double chart_words = 11.0;
constexpr double row_name_width = 104.0;  // of the names of rows
constexpr double value_width = 84.0;      // of the words behind rows
constexpr double row_height = 18.0;
constexpr double bar_left = chart_side + row_name_width + 6.0;
constexpr double bar_right = picture_width - chart_side - value_width - 6.0;
constexpr const char* ink = "#1b2a49";

// Numbers as places along a line of pixels.
struct Scale {
  double low, high;
  double from, to;

  double at(double value) const { return from + (to - from) * (value - low) / (high - low); }
};

Scale scale_of(double low, double high, double from, double to) {
  return {low, high > low ? high : low + 1.0, from, to};
}

std::string row_words(const std::string& name, const std::string& value, double base, bool bold) {
  return text_line({chart_side, base}, row_name_width, name, {chart_words, bold}) +
         text_line({picture_width - chart_side, base}, value_width, value, {chart_words, bold, Anchor::end});
}

std::string vertical(double x, double top, double bottom, const char* look) {
  return fmt::format("<path d=\"M{},{}V{}\" fill=\"none\" {}/>\n", px(x), px(top), px(bottom), look);
}

std::string hatching(const std::string& prefix) {
  return fmt::format(
      "<defs><pattern id=\"{}-down\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\"><rect width=\"5\" "
      "height=\"5\" fill=\"#fff\"/><path d=\"M-1,6L6,-1M-1,1L1,-1M4,6L6,4\" stroke=\"{}\"/></pattern></defs>\n",
      prefix, ink);
}

std::string bar_svg(const Bar& bar, const Scale& scale, double top, const std::string& prefix) {
  const double left = scale.at(std::min(bar.from, bar.to));
  const double right = scale.at(std::max(bar.from, bar.to));
  const std::string fill = bar.total           ? "#b8beb0"
                           : bar.to < bar.from ? fmt::format("url(#{}-down)", prefix)
                                               : std::string(ink);
  return fmt::format(
      "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"{}\" stroke=\"{}\" stroke-width=\"0.8\"/>\n", px(left),
      px(top + 3.0), px(std::max(0.5, right - left)), px(row_height - 6.0), fill, ink);
}

Scale scale_of_bars(const std::vector<Bar>& bars) {
  double low = 0.0;
  double high = 0.0;
  for (const Bar& bar : bars) {
    low = std::min({low, bar.from, bar.to});
    high = std::max({high, bar.from, bar.to});
  }
  return scale_of(low, high, bar_left, bar_right);
}

std::string line_path(const Line& line, const Scale& x, const Scale& y) {
  std::vector<Point> pixels;
  for (std::size_t i = 0; i < line.points.size(); ++i) {
    const Point p = line.points[i];
    if (!line.stepped) {
      pixels.push_back({x.at(p.x), y.at(p.y)});
      continue;
    }
    pixels.push_back({x.at(p.x - 0.5), y.at(p.y)});
    pixels.push_back({x.at(p.x + 0.5), y.at(p.y)});
  }
  return fmt::format("<path d=\"{}\" fill=\"none\" stroke=\"{}\" stroke-width=\"1.8\"{}/>\n", open_path(pixels), ink,
                     line.dashed ? " stroke-dasharray=\"4 3\"" : "");
}

struct Axes {
  Scale x, y;
};

Axes axes_of(const LineChart& chart, double top, double height) {
  Point low = {chart.lines.front().points.front().x, 0.0};
  Point high = {low.x, 0.0};
  const auto hold = [&](Point p) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  };
  for (const Line& line : chart.lines) {
    for (const Point p : line.points) hold(p);
  }
  for (const Span& span : chart.spans) {
    hold({span.x, span.low});
    hold({span.x, span.high});
  }
  return {scale_of(low.x, high.x, 44.0, picture_width - 20.0), scale_of(low.y, high.y, top + height, top)};
}

// Few decimals, as many as tell steps apart.
std::string axis_number(double value, double step) {
  return fixed(value, std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9))));
}

std::string axes_svg(const Axes& axes, double top, double bottom) {
  std::string svg;
  const double y_step = axis_step(axes.y.high - axes.y.low, 5);
  for (double k = std::ceil(axes.y.low / y_step - 1e-9); k * y_step <= axes.y.high + 1e-9; k += 1.0) {
    const double y = axes.y.at(k * y_step);
    svg += fmt::format("<path d=\"M{},{}H{}\" stroke=\"{}\" stroke-width=\"{}\"/>\n", px(axes.x.from), px(y),
                       px(axes.x.to), k == 0.0 ? ink : "#c9cec2", k == 0.0 ? "1" : "0.6");
    svg += text_line({axes.x.from - 4.0, y + 3.5}, 36.0, axis_number(k * y_step, y_step),
                     {label_size, false, Anchor::end});
  }
  const double x_step = axis_step(axes.x.high - axes.x.low, 7);
  for (double k = std::ceil(axes.x.low / x_step - 1e-9); k * x_step <= axes.x.high + 1e-9; k += 1.0) {
    const double x = axes.x.at(k * x_step);
    const std::string words = axis_number(k * x_step, x_step);
    svg += vertical(x, bottom, bottom + 4.0, "stroke=\"#1b2a49\"");
    svg += text_line({x - text_width(words, label_size) / 2.0, bottom + 15.0}, 40.0, words, {label_size});
  }
  return svg + vertical(axes.x.from, top, bottom, "stroke=\"#1b2a49\"");
}

std::string mark_line(const Mark& mark, const Axes& axes, double base, double bottom) {
  return vertical(axes.x.at(mark.x), base - 8.0, bottom,
                  "stroke=\"#6b7265\" stroke-width=\"0.9\" stroke-dasharray=\"1.5 2.5\"");
}

// Words of marks stand above the chart, a line each, on white, so that neither words nor lines cross them.
std::string mark_words(const Mark& mark, const Axes& axes, double base) {
  constexpr double most_width = 170.0;
  const std::string words = fit_text(mark.words, most_width, label_size);
  const double width = text_width(words, label_size);
  const double x = axes.x.at(mark.x);
  const double left = x > picture_width / 2.0 ? x - 4.0 - width : x + 4.0;
  return fmt::format("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"13\" fill=\"#fff\"/>\n", px(left), px(base - 10.0),
                     px(width)) +
         text_line({left, base}, width + 1.0, words, {label_size});
}

}  // namespace

void Sheet::heading(const std::string& words) {
  constexpr double size = 14.0;
  top += 2.0;
  for (const std::string& line : wrap_text(words, chart_words_width, size, true)) {
    top += size + 2.0;
    svg += text_line({chart_side, top}, chart_words_width, line, {size, true});
  }
  top += 3.0;
}

void Sheet::paragraph(const std::string& words) {
  for (const std::string& line : wrap_text(words, chart_words_width, chart_words)) {
    top += chart_words + 3.0;
    svg += text_line({chart_side, top}, chart_words_width, line, {chart_words});
  }
  top += 4.0;
}

double axis_step(double range, int most) {
  const double least = range / most;
  const double power = std::pow(10.0, std::floor(std::log10(least)));
  for (const double times : {1.0, 2.0, 5.0}) {
    if (times * power >= least * (1.0 - 1e-9)) return times * power;
  }
  return 10.0 * power;
}

void add_bars(Sheet& sheet, const std::vector<Bar>& bars, Joined joined, const std::string& prefix) {
  const Scale scale = scale_of_bars(bars);
  const double top = sheet.top;
  sheet.svg += hatching(prefix);
  for (const Bar& bar : bars) {
    sheet.svg += row_words(bar.name, bar.value, sheet.top + 13.0, bar.total);
    sheet.svg += bar_svg(bar, scale, sheet.top, prefix);
    sheet.top += row_height;
    if (joined == Joined::yes && &bar != &bars.back()) {
      sheet.svg +=
          vertical(scale.at(bar.to), sheet.top - 3.0, sheet.top + 3.0, "stroke=\"#1b2a49\" stroke-width=\"0.8\"");
    }
  }
  sheet.svg += vertical(scale.at(0.0), top, sheet.top, "stroke=\"#1b2a49\" stroke-width=\"1\"");
}

void add_pairs(Sheet& sheet, const std::vector<Pair>& pairs) {
  double most = 0.0;
  for (const Pair& pair : pairs) most = std::max({most, pair.before, pair.after});
  const Scale scale = scale_of(0.0, most, bar_left, bar_right);
  const double top = sheet.top;
  for (const Pair& pair : pairs) {
    sheet.svg += row_words(pair.name, pair.value, sheet.top + 13.0, false);
    const double widths[] = {scale.at(pair.before) - bar_left, scale.at(pair.after) - bar_left};
    for (int i = 0; i < 2; ++i) {
      sheet.svg += fmt::format("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"5\" fill=\"{}\" stroke=\"{}\"{}/>\n",
                               px(bar_left), px(sheet.top + 3.0 + 7.0 * i), px(widths[i]), i == 0 ? "#fff" : ink, ink,
                               i == 0 ? " stroke-dasharray=\"2.5 1.5\"" : "");
    }
    sheet.top += row_height;
  }
  sheet.svg += vertical(bar_left, top, sheet.top, "stroke=\"#1b2a49\"");
}

void add_intervals(Sheet& sheet, const std::vector<Interval>& intervals) {
  if (intervals.empty()) return;
  double low = intervals.front().value;
  double high = low;
  for (const Interval& interval : intervals) {
    // An end that nothing is known of reaches the end of the chart.
    for (const double end : {interval.value, interval.low, interval.high}) {
      if (!std::isfinite(end)) continue;
      low = std::min(low, end);
      high = std::max(high, end);
    }
  }
  const Scale scale = scale_of(low, high, bar_left + 6.0, bar_right - 6.0);
  for (const Interval& interval : intervals) {
    const double y = sheet.top + 9.0;
    const double from = std::isfinite(interval.low) ? scale.at(interval.low) : bar_left;
    const double to = std::isfinite(interval.high) ? scale.at(interval.high) : bar_right;
    sheet.svg += row_words(interval.name, interval.words, sheet.top + 13.0, false);
    sheet.svg += fmt::format(
        "<path d=\"M{},{}H{}\" stroke=\"#c9cec2\"/><path d=\"M{},{}H{}\" fill=\"none\" stroke=\"{}\"{}/>"
        "<path d=\"M{},{}v8M{},{}v8\" fill=\"none\" stroke=\"{}\"/>"
        "<circle cx=\"{}\" cy=\"{}\" r=\"3.2\" fill=\"{}\" stroke=\"{}\"/>\n",
        px(bar_left), px(y), px(bar_right), px(from), px(y), px(to), ink,
        interval.before ? " stroke-dasharray=\"3 2.5\"" : "", px(from), px(y - 4.0), px(to), px(y - 4.0), ink,
        px(scale.at(interval.value)), px(y), interval.before ? "#fff" : ink, ink);
    sheet.top += row_height;
  }
}

namespace {

constexpr double mark_row = 14.0;  // of the words of a mark
constexpr double ring_radius = 7.0;
constexpr double pin_row = 2.0 * ring_radius + 2.0;

// Rings that would touch stand in rows below each other; the row of each.
std::vector<std::size_t> pin_rows(const std::vector<Point>& pins, const Scale& x) {
  std::vector<std::size_t> rows;
  std::vector<double> ends;  // of the rows: the last ring of each
  for (const Point pin : pins) {
    const double at = x.at(pin.x);
    std::size_t row = 0;
    while (row < ends.size() && at - ends[row] < 2.0 * ring_radius + 1.0) ++row;
    if (row == ends.size()) ends.push_back(at);
    ends[row] = at;
    rows.push_back(row);
  }
  return rows;
}

std::string pin_svg(std::size_t number, Point ring, double place) {
  const std::string words = std::to_string(number);
  constexpr double letters = 9.5;
  return vertical(ring.x, ring.y + ring_radius, place, "stroke=\"#6b7265\" stroke-width=\"0.9\"") +
         fmt::format(
             "<circle cx=\"{}\" cy=\"{}\" r=\"{}\" fill=\"#fff\" stroke=\"{}\" stroke-width=\"1.1\"/>"
             "<path d=\"M{},{}l-3.5,-6h7z\" fill=\"{}\"/>\n",
             px(ring.x), px(ring.y), px(ring_radius), ink, px(ring.x), px(place), ink) +
         text_line({ring.x - text_width(words, letters) / 2.0, ring.y + 3.4}, 20.0, words, {letters});
}

std::string span_svg(const Span& span, const Axes& axes) {
  const double x = axes.x.at(span.x);
  return fmt::format(
      "<path d=\"M{},{}h8M{},{}V{}M{},{}h8\" fill=\"none\" stroke=\"{}\" stroke-width=\"1.6\"/>"
      "<circle cx=\"{}\" cy=\"{}\" r=\"3.4\" fill=\"#fff\" stroke=\"{}\" stroke-width=\"1.6\"/>\n",
      px(x - 4.0), px(axes.y.at(span.high)), px(x), px(axes.y.at(span.high)), px(axes.y.at(span.low)), px(x - 4.0),
      px(axes.y.at(span.low)), ink, px(x), px(axes.y.at(span.value)), ink);
}

std::string marks_svg(const std::vector<Mark>& marks, const Axes& axes, double top, double bottom) {
  std::string svg;
  const auto base = [&](std::size_t i) { return top + 11.0 + mark_row * static_cast<double>(i); };
  for (std::size_t i = 0; i < marks.size(); ++i) svg += mark_line(marks[i], axes, base(i), bottom);
  for (std::size_t i = 0; i < marks.size(); ++i) svg += mark_words(marks[i], axes, base(i));
  return svg;
}

std::string line_svg(const Line& line, const Axes& axes) {
  std::string svg = line_path(line, axes.x, axes.y);
  if (!line.dotted_points) return svg;
  for (const Point p : line.points) {
    svg += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"2.6\" fill=\"{}\"/>\n", px(axes.x.at(p.x)), px(axes.y.at(p.y)),
                       ink);
  }
  return svg;
}

}  // namespace

void add_lines(Sheet& sheet, const LineChart& chart) {
  constexpr double height = 170.0;
  const double pins_top = sheet.top + mark_row * static_cast<double>(chart.marks.size()) + 2.0;
  // Across, places do not depend on how far down the chart begins.
  const std::vector<std::size_t> rows = pin_rows(chart.pins, axes_of(chart, 0.0, height).x);
  const std::size_t row_count = rows.empty() ? 0 : *std::max_element(rows.begin(), rows.end()) + 1;
  const double top = pins_top + pin_row * static_cast<double>(row_count) + 4.0;
  const double bottom = top + height;
  const Axes axes = axes_of(chart, top, height);
  sheet.svg += axes_svg(axes, top, bottom) + marks_svg(chart.marks, axes, sheet.top, bottom);
  for (const Line& line : chart.lines) sheet.svg += line_svg(line, axes);
  for (const Span& span : chart.spans) sheet.svg += span_svg(span, axes);
  for (std::size_t i = 0; i < chart.pins.size(); ++i) {
    const Point ring = {axes.x.at(chart.pins[i].x), pins_top + ring_radius + pin_row * static_cast<double>(rows[i])};
    sheet.svg += pin_svg(i + 1, ring, axes.y.at(chart.pins[i].y) - 4.0);
  }
  sheet.svg += text_line({picture_width - 20.0, bottom + 29.0}, 300.0, chart.x_words, {label_size, false, Anchor::end});
  sheet.top = bottom + 34.0;
}

}  // namespace yardworth::report
