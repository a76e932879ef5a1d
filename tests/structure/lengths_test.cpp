#include "structure/lengths.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "structure/source_files.hpp"

// What can be seen whole: no function longer than a screen, no file of the solver longer than a sitting.

namespace yardworth::test {
namespace {

constexpr int longest_function = 60;
constexpr std::size_t longest_file_of_strategy = 400;

std::vector<std::string> long_functions(const std::vector<SourceFile>& files) {
  std::vector<std::string> found;
  for (const SourceFile& file : files) {
    for (const FunctionLines& function : functions_in(file.text)) {
      if (function.lines <= longest_function) continue;
      found.push_back(
          fmt::format("{}:{}: {} lines: {}", file.path, function.first_line, function.lines, function.signature));
    }
  }
  return found;
}

// A function of as many lines.
std::string function_of(const std::string& signature, int lines) {
  std::string text = signature + " {\n";
  for (int line = 2; line < lines; ++line) text += "  // }\n";
  return text + "}\n";
}

}  // namespace

TEST_CASE("no function is longer than a screen") {
  std::size_t functions = 0;
  for (const char* folder : {"src", "include"}) {
    const std::vector<SourceFile> files = source_files(folder);
    for (const SourceFile& file : files) functions += functions_in(file.text).size();
    const auto found = long_functions(files);
    CHECK_MESSAGE(found.empty(), listed(found));
  }
  CHECK(functions > 600);
}

TEST_CASE("no file of the solver is longer than 400 lines") {
  for (const SourceFile& file : source_files("src/strategy")) {
    const std::size_t lines = lines_of(file.text).size();
    CHECK_MESSAGE(lines <= longest_file_of_strategy, file.path << ": " << lines << " lines");
  }
}

TEST_CASE("a function that is too long is found, whatever its form") {
  for (const char* signature :
       {"int f(int a)", "template <typename T>\nauto f(T a) -> int", "static const auto f = [](int a)",
        "X::X(int a) : a_(a), b_{a}", "bool X::operator==(const X& x) const noexcept",
        "void f(std::vector<int> a = {})", "namespace a {\nstruct X : Y {\n public:\n  // {\n  X()\n      : a_({1, 2})",
        "enum class E { one, two };\nint f()", "const int list[] = {1, 2};\nconst char* text = \"{\";\nint f()",
        "constexpr int many = 1'000;\nvoid f(char a = '{')", "#define OPEN {\nvoid f()",
        "const char* raw = R\"--({)\")--\";\nvoid f()"}) {
    const std::string text(signature);
    CAPTURE(text);
    const int before = static_cast<int>(std::count(text.begin(), text.end(), '\n'));
    const auto fits = functions_in(function_of(text, longest_function - before));
    REQUIRE(fits.size() == 1);
    CHECK(fits.front().lines <= longest_function);
    CHECK(long_functions({{"a.cpp", function_of(text, longest_function - before)}}).empty());
    CHECK(long_functions({{"a.cpp", function_of(text, longest_function + before + 1)}}).size() == 1);
  }
}

TEST_CASE("functions are counted one by one, and values are none") {
  const auto functions = functions_in(
      "struct A {\n  int f() const { return 1; }\n  int b = 2;\n  std::vector<int> c{1, 2};\n};\n\nint g() {\n"
      "  const auto inner = [] { return A{}; };\n  if (true) {\n    return 1;\n  }\n  return 2;\n}\n");
  REQUIRE(functions.size() == 2);
  CHECK(functions[0].signature == "int f() const ");
  CHECK(functions[0].first_line == 2);
  CHECK(functions[0].lines == 1);
  CHECK(functions[1].first_line == 7);
  CHECK(functions[1].lines == 7);
}

}  // namespace yardworth::test
