#include "report/html_table.hpp"

#include <fmt/format.h>

#include <sstream>

#include "report/picture/svg.hpp"

namespace yardworth::report {
namespace {

std::string lines_of_cell(const std::string& words) {
  std::string html;
  std::istringstream lines(words);
  for (std::string line; std::getline(lines, line);) html += (html.empty() ? "" : "<br/>") + svg_text(line);
  return html;
}

std::string cell_html(const HtmlCell& cell, bool of_row) {
  const std::string words = cell.strong ? "<b>" + lines_of_cell(cell.words) + "</b>" : lines_of_cell(cell.words);
  return of_row ? "<th scope=\"row\">" + words + "</th>" : "<td>" + words + "</td>";
}

}  // namespace

std::string html_table(const HtmlTable& table) {
  if (table.rows.empty()) return "";
  std::string html = table.kind.empty() ? "<table>\n" : fmt::format("<table class=\"{}\">\n", table.kind);
  if (!table.caption.empty()) html += "<caption>" + svg_text(table.caption) + "</caption>\n";
  html += "<thead><tr>";
  for (const std::string& column : table.columns) html += "<th scope=\"col\">" + lines_of_cell(column) + "</th>";
  html += "</tr></thead>\n<tbody>\n";
  for (const HtmlRow& row : table.rows) {
    html += "<tr>";
    for (const HtmlCell& cell : row) html += cell_html(cell, &cell == &row.front());
    html += "</tr>\n";
  }
  return html + "</tbody>\n</table>\n";
}

}  // namespace yardworth::report
