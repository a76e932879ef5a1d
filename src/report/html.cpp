#include "report/html.hpp"

#include <fmt/format.h>

#include "report/picture/svg.hpp"

namespace yardworth::report {
namespace {

// Pictures are drawn in dark ink: they keep their paper where the page around them is dark.
constexpr const char* page_style = R"(
/* Light and dark. */
:root { color-scheme: light dark; --paper: #fbfaf5; --ink: #1f2420; --faint: #5b6459; --rule: #c9cdbf; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #1c211d; --ink: #eceee4; --faint: #a9b3a5; --rule: #4a5348; }
}
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 sans-serif; overflow-wrap: anywhere; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.15rem; margin: 0; }
h2 { font-size: 1.25rem; line-height: 1.3; margin: 2rem 0 .5rem; padding-top: .75rem; }
h2 { border-top: 1px solid var(--rule); }
h3 { font-size: 1.05rem; margin: 0 0 .25rem; }
p, ul { margin: .5rem 0; max-width: 42rem; }
p, li, h1, h2, h3 { unicode-bidi: isolate; }
ul { padding-left: 1.2rem; }
figure { margin: .75rem 0; padding: .5rem; max-width: 34rem; background: #fff; border: 1px solid var(--rule); }
svg { display: block; width: 100%; height: auto; }
.whose, .assumed, .basis { color: var(--faint); }
.whose { margin: 0 0 1rem; }
.answer p:first-child { font-size: 1.4rem; line-height: 1.35; font-weight: bold; max-width: none; }
.most .hole { margin: 1.5rem 0; }
.all .small { display: grid; grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr)); gap: .5rem; }
.all .small { align-items: start; }
.all figure { margin: 0; padding: .25rem; }
table { border-collapse: collapse; margin: .75rem 0; font-size: .9rem; line-height: 1.35; }
caption { text-align: left; font-weight: bold; padding: .25rem 0; }
th, td { padding: .2rem .4rem; border-bottom: 1px solid var(--rule); text-align: right; vertical-align: top; }
th { font-weight: normal; unicode-bidi: isolate; }
th:first-child, .words th, .words td { text-align: left; }
td, thead th { overflow-wrap: normal; }
td { white-space: nowrap; }
tbody th { min-width: 4.5rem; }
thead th { vertical-align: bottom; color: var(--faint); }
.many th + th { writing-mode: vertical-rl; text-align: left; white-space: nowrap; }
.pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(18rem, 1fr)); gap: 0 1.5rem; }
.pair > div { min-width: 0; }
@media (min-width: 48rem) {
  .most .hole { display: grid; grid-template-columns: 1fr 24rem; gap: 0 1.5rem; align-items: start; }
  .most figure { margin: 0; }
}
@media screen and (min-width: 75rem) {
  main { max-width: 76rem; }
  .most .large { display: grid; grid-template-columns: repeat(3, 1fr); gap: 1.5rem; }
  .most .hole { display: block; margin: .5rem 0; }
  .most .hole div { min-height: 10rem; }
}
@media print {
  @page { size: A4; margin: 14mm; }
  :root { --paper: #fff; --ink: #000; --faint: #333; --rule: #999; }
  body { font-size: 10pt; }
  main { max-width: none; padding: 0; }
  figure, .hole, p, li, tr, .pair > div { break-inside: avoid; }
  h2, h3, caption, .most > p, .all > p, h2 + p:not(:last-child) { break-after: avoid; }
  .pair { grid-template-columns: 1fr 1fr; }
  figure { max-width: 110mm; }
  .most .hole { display: grid; grid-template-columns: 1fr 105mm; gap: 0 6mm; margin: 4mm 0; }
  .most svg { max-height: 225mm; }
  .all .small { grid-template-columns: repeat(5, 1fr); }
}
)";

}  // namespace

std::string html_paragraph(const std::string& words) { return "<p>" + svg_text(words) + "</p>\n"; }

std::string html_paragraphs(const std::vector<std::string>& words) {
  std::string html;
  for (const std::string& paragraph : words) {
    if (!paragraph.empty()) html += html_paragraph(paragraph);
  }
  return html;
}

std::string html_list(const std::vector<std::string>& items) {
  if (items.empty()) return "";
  std::string html = "<ul>\n";
  for (const std::string& item : items) html += "<li>" + svg_text(item) + "</li>\n";
  return html + "</ul>\n";
}

std::string html_figure(const std::string& svg) { return "<figure>\n" + svg + "</figure>\n"; }

std::string html_section(const std::string& heading, const std::string& body, const std::string& kind) {
  if (body.empty()) return "";
  const std::string of_kind = kind.empty() ? "" : fmt::format(" class=\"{}\"", kind);
  return fmt::format("<section{}>\n<h2>{}</h2>\n{}</section>\n", of_kind, svg_text(heading), body);
}

std::string html_page(const std::string& title, const std::string& body) {
  // The policy has the browser hold the page to what it promises: nothing is fetched, nothing runs.
  return fmt::format(
      "<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n<meta charset=\"utf-8\"/>\n"
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n"
      "<title>{}</title>\n<style>{}</style>\n</head>\n<body>\n<main>\n{}</main>\n</body>\n</html>\n",
      svg_text(title), page_style, body);
}

}  // namespace yardworth::report
