#include "embed/page_case.hpp"

#include <nlohmann/json.hpp>

namespace yardworth::embed {

std::string case_json(const std::vector<CaseText>& texts) {
  nlohmann::ordered_json json = {{"format", "yardworth/case/1"}};
  for (const CaseText& one : texts) json[one.member] = one.text;
  json["names"] = nlohmann::ordered_json::object();
  for (const CaseText& one : texts) json["names"][one.member] = one.name;
  std::string line = json.dump(-1, ' ', true, nlohmann::ordered_json::error_handler_t::replace);
  // Outside of strings JSON knows no <.
  for (std::size_t at = line.find('<'); at != std::string::npos; at = line.find('<', at))
    line.replace(at, 1, "\\u003c");
  return line;
}

std::optional<std::string> page_with_case(std::string_view page, const std::vector<CaseText>& texts) {
  constexpr std::string_view opens = "\n<script type=\"application/json\" id=\"case\">";
  constexpr std::string_view closes = "</script>";
  const std::size_t start = page.find(opens);
  if (start == std::string_view::npos) return std::nullopt;
  const std::size_t inside = start + opens.size();
  const std::size_t end = page.find(closes, inside);
  if (end == std::string_view::npos) return std::nullopt;
  return std::string(page.substr(0, inside)) + case_json(texts) + std::string(page.substr(end));
}

}  // namespace yardworth::embed
