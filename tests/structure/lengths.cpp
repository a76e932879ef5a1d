#include "structure/lengths.hpp"

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <regex>

namespace yardworth::test {
namespace {

bool is_word(char letter) { return std::isalnum(static_cast<unsigned char>(letter)) != 0 || letter == '_'; }

// One past the end of the comment, literal or directive that begins at `at`; `at` itself where none does.
std::size_t past_no_code(const std::string& text, std::size_t at) {
  const auto past = [&text](std::size_t found, std::size_t length) {
    return found == std::string::npos ? text.size() : found + length;
  };
  if (text.compare(at, 2, "//") == 0) return past(text.find('\n', at), 0);
  if (text.compare(at, 2, "/*") == 0) return past(text.find("*/", at + 2), 2);
  if (text.compare(at, 2, "R\"") == 0) {
    const std::size_t bracket = text.find('(', at);
    const std::string end = ")" + text.substr(at + 2, bracket - at - 2) + "\"";
    return past(text.find(end, bracket), end.size());
  }
  const bool within_number = at > 0 && is_word(text[at - 1]);  // 1'000
  if (text[at] == '"' || (text[at] == '\'' && !within_number)) {
    std::size_t end = at + 1;
    while (end < text.size() && text[end] != text[at]) end += text[end] == '\\' ? 2 : 1;
    return std::min(end + 1, text.size());
  }
  const std::size_t line = at == 0 ? 0 : text.find_last_of('\n', at - 1) + 1;
  if (text[at] == '#' && text.find_first_not_of(" \t", line) == at) {
    std::size_t end = text.find('\n', at);
    while (end != std::string::npos && text[end - 1] == '\\') end = text.find('\n', end + 1);
    return past(end, 0);
  }
  return at;
}

// The text with spaces for comments, literals and directives.
std::string code_of(const std::string& text) {
  std::string code = text;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = past_no_code(text, at);
    for (std::size_t i = at; i < end; ++i) code[i] = text[i] == '\n' ? '\n' : ' ';
    at = std::max(end, at + 1);
  }
  return code;
}

// One past the brace that closes the one at `open`.
std::size_t past_braces(const std::string& code, std::size_t open) {
  int depth = 0;
  for (std::size_t at = open; at < code.size(); ++at) {
    if (code[at] == '{') ++depth;
    if (code[at] == '}' && --depth == 0) return at + 1;
  }
  return code.size();
}

// What stands before a brace, without what is in round brackets; an opening one that is not closed stays.
std::string without_brackets(const std::string& head) {
  std::string kept;
  std::vector<std::size_t> open;
  for (const char letter : head) {
    if (letter == '(') open.push_back(kept.size());
    kept += letter;
    if (letter == ')' && !open.empty()) {
      kept.resize(open.back());
      open.pop_back();
      if (open.empty()) kept += "()";
    }
  }
  return kept;
}

enum class Brace { scope, body, value };

// What a brace opens, by what stands before it since the last statement or scope.
Brace opens(const std::string& head) {
  static const std::regex scope("(^|[^\\w])(namespace|class|struct|union|enum|extern)[^\\w]");
  static const std::regex operator_name("operator\\s*[^\\s\\w(]+");
  static const std::regex initialisers("\\)\\s*(noexcept\\s*)?:[^:]");
  const std::string kept = std::regex_replace(without_brackets(head), operator_name, "operator");
  static const std::regex unclosed("\\((?!\\))");
  const bool within_brackets = std::regex_search(kept, unclosed);
  if (within_brackets) return Brace::value;
  // A macro called at the scope's own level may stand before it without a semicolon.
  const std::size_t called = kept.rfind("()");
  const std::string after = called == std::string::npos ? kept : kept.substr(called + 2);
  if (std::regex_search(after + " ", scope)) return Brace::scope;
  if (called == std::string::npos) return Brace::value;
  const std::size_t equals = kept.find('=');
  const bool lambda = equals != std::string::npos && kept.find('[', equals) != std::string::npos;
  if (equals != std::string::npos && !lambda) return Brace::value;
  const std::size_t last = kept.find_last_not_of(" \t\n");
  const bool member_value = std::regex_search(kept, initialisers) && (is_word(kept[last]) || kept[last] == '>');
  return member_value ? Brace::value : Brace::body;
}

// From `begin` without leading space.
std::string trimmed(const std::string& code, std::size_t begin, std::size_t end) {
  const std::size_t first = std::min(code.find_first_not_of(" \t\n", begin), end);
  return code.substr(first, end - first);
}

FunctionLines lines_between(const std::string& code, std::size_t head, std::size_t brace, std::size_t end) {
  const auto line_at = [&code](std::size_t at) {
    return 1 + static_cast<int>(std::count(code.begin(), code.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
  };
  const std::string signature = trimmed(code, head, brace);
  const int first = line_at(brace - signature.size());
  return {signature.substr(0, signature.find('\n')), first, line_at(end - 1) - first + 1};
}

bool is_access(const std::string& head) { return head == "public" || head == "private" || head == "protected"; }

}  // namespace

std::vector<FunctionLines> functions_in(const std::string& text) {
  const std::string code = code_of(text);
  std::vector<FunctionLines> functions;
  std::size_t head = 0;  // where what stands before the next brace begins
  std::size_t at = 0;
  while (at < code.size()) {
    const std::size_t here = at++;
    if (code[here] == ';' || code[here] == '}') head = at;
    if (code[here] == ':' && is_access(trimmed(code, head, here))) head = at;
    if (code[here] != '{') continue;
    const Brace brace = opens(code.substr(head, here - head));
    if (brace != Brace::scope) at = past_braces(code, here);
    if (brace == Brace::body) functions.push_back(lines_between(code, head, here, at));
    if (brace != Brace::value) head = at;
  }
  return functions;
}

}  // namespace yardworth::test
