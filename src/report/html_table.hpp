#pragma once

#include <string>
#include <vector>

namespace yardworth::report {

// A table of a page. Words may come from files: they are made safe.

struct HtmlCell {
  std::string words;    // lines divided by '\n'
  bool strong = false;  // what a reader is to see first
};

using HtmlRow = std::vector<HtmlCell>;

struct HtmlTable {
  std::string caption;
  std::vector<std::string> columns;  // the first stands over what the rows are about
  std::vector<HtmlRow> rows;         // as many cells as there are columns
  // How the style of the page knows it: "words" of names, "many" of narrow columns, whose headings stand upright.
  std::string kind;
};

// Nothing where there are no rows.
std::string html_table(const HtmlTable& table);

}  // namespace yardworth::report
