#pragma once

#include <string>
#include <vector>

namespace yardworth::report {

// HTML as text: pages that stand by themselves, with no script and nothing that is requested from elsewhere, and that
// are well-formed XML too. Words may come from files: each piece makes its own safe, as text of pictures is.

std::string html_paragraph(const std::string& words);
// Several, those that are not empty.
std::string html_paragraphs(const std::vector<std::string>& words);
std::string html_list(const std::vector<std::string>& items);
// A picture, whole on one printed page.
std::string html_figure(const std::string& svg);
// Nothing where the body is empty. kind: what the style of the page knows it by.
std::string html_section(const std::string& heading, const std::string& body, const std::string& kind = "");

// The whole file, for a telephone, a screen and A4 paper.
std::string html_page(const std::string& title, const std::string& body);

}  // namespace yardworth::report
