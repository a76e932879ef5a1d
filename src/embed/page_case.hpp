#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace yardworth::embed {

// What a page is about: the texts of files by the members that a request has for them ("course", "log"), each with the
// name that the page calls it by.
struct CaseText {
  std::string member, name, text;
};

// "yardworth/case/1": one line, in printable ASCII without <, so that no text of it ends what it stands in.
std::string case_json(const std::vector<CaseText>& texts);

// The page with that case in the place of its own; nothing where it has no place for one.
std::optional<std::string> page_with_case(std::string_view page, const std::vector<CaseText>& texts);

}  // namespace yardworth::embed
