#include "report/picture/svg.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <sstream>

#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::report {
namespace {

// Thousandths of the size, from the space on: DejaVu Sans, the widest of the usual fonts.
constexpr std::array<int, 95> ascii_widths = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361,  318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635,  611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352,  635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592,  525, 636, 337, 636, 838};
constexpr double wide_character = 1.0;  // of what takes one column on a terminal, beyond ASCII
constexpr double bold_factor = 1.2;

bool is_ascii(char c) { return static_cast<unsigned char>(c) < 0x80; }
bool is_ascii(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return is_ascii(c); });
}

// U+FFFE and U+FFFF in UTF-8.
std::string without_non_characters(std::string text) {
  for (const auto& [bytes, shown] : {std::pair{"\xEF\xBF\xBE", "\\xFFFE"}, std::pair{"\xEF\xBF\xBF", "\\xFFFF"}}) {
    for (std::size_t at = text.find(bytes); at != std::string::npos; at = text.find(bytes, at)) {
      text.replace(at, 3, shown);
    }
  }
  return text;
}

std::string shown(const std::string& text) { return without_non_characters(escape_control(text)); }

// Where the character that begins at `at` ends.
std::size_t next_character(std::string_view text, std::size_t at) {
  ++at;
  while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80) ++at;
  return at;
}

double ems(std::string_view character) {
  const auto byte = static_cast<unsigned char>(character.front());
  if (byte >= 0x20 && byte < 0x7f) return ascii_widths[byte - 0x20u] / 1000.0;
  return wide_character * static_cast<double>(display_width(character));
}

double per_em(double size, bool bold) { return bold ? size * bold_factor : size; }

}  // namespace

std::string px(double value) {
  std::string text = fmt::format("{:.1f}", value);
  return text == "-0.0" ? "0.0" : text;
}
std::string px(Point p) { return px(p.x) + ',' + px(p.y); }

std::string svg_text(const std::string& text) { return escape_html(shown(text)); }

double text_width(std::string_view text, double size, bool bold) {
  double sum = 0.0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t next = next_character(text, at);
    sum += ems(text.substr(at, next - at));
    at = next;
  }
  return sum * per_em(size, bold);
}

std::string fit_text(const std::string& text, double width, double size, bool bold) {
  const std::string safe = shown(text);
  if (text_width(safe, size, bold) <= width) return safe;
  const std::string dots = "...";
  const double room = width - text_width(dots, size, bold);
  std::size_t kept = 0;
  for (double sum = 0.0; kept < safe.size();) {
    const std::size_t next = next_character(safe, kept);
    sum += ems(std::string_view(safe).substr(kept, next - kept)) * per_em(size, bold);
    if (sum > room) break;
    kept = next;
  }
  return safe.substr(0, kept) + dots;
}

std::vector<std::string> wrap_text(const std::string& text, double width, double size, bool bold) {
  std::vector<std::string> lines;
  std::istringstream words(shown(text));
  for (std::string word; words >> word;) {
    const std::string longer = lines.empty() ? word : lines.back() + ' ' + word;
    if (!lines.empty() && text_width(longer, size, bold) <= width) {
      lines.back() = longer;
    } else {
      lines.push_back(fit_text(word, width, size, bold));
    }
  }
  return lines;
}

std::string text_line(Point at, double width, const std::string& text, const TextStyle& style) {
  const std::string fitted = fit_text(text, width, style.size, style.bold);
  const bool ends = style.anchor == Anchor::end;
  const std::string look = fmt::format("font-size=\"{}\"{}{}", px(style.size),
                                       style.bold ? " font-weight=\"bold\"" : "", ends ? " text-anchor=\"end\"" : "");
  const std::string words = svg_text(fitted);
  if (is_ascii(fitted)) return fmt::format("<text x=\"{}\" y=\"{}\" {}>{}</text>\n", px(at.x), px(at.y), look, words);
  // A picture in the picture, with a frame that cuts off what does not fit.
  const double left = ends ? at.x - width : at.x;
  return fmt::format("<svg x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"><text x=\"{}\" y=\"{}\" {}>{}</text></svg>\n",
                     px(left), px(at.y - style.size), px(width), px(1.35 * style.size), ends ? px(width) : "0",
                     px(style.size), look, words);
}

std::string open_path(const std::vector<Point>& points) {
  std::string path;
  for (const Point p : points) path += (path.empty() ? 'M' : 'L') + px(p);
  return path;
}

std::string path_of(const std::vector<Polygon>& polygons) {
  std::string path;
  for (const Polygon& polygon : polygons) path += open_path(polygon) + 'Z';
  return path;
}

std::string svg_file(const std::vector<Panel>& panels, const std::string& title, const std::string& description) {
  double height = 0.0;
  std::string body;
  for (const Panel& panel : panels) {
    body += fmt::format("<g transform=\"translate(0,{})\">\n{}</g>\n", px(height), panel.svg);
    height += panel.height;
  }
  // One piece fills whatever it is shown in; a column of them is shown as wide as it is drawn, and scrolled.
  const std::string size =
      panels.size() > 1 ? fmt::format(" width=\"{}\" height=\"{}\"", px(picture_width), px(height)) : "";
  return fmt::format(
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {} {}\"{} role=\"img\" font-family=\"sans-serif\" "
      "fill=\"#1f2420\">\n<title>{}</title>\n<desc>{}</desc>\n{}</svg>\n",
      px(picture_width), px(height), size, svg_text(title), svg_text(description), body);
}

}  // namespace yardworth::report
