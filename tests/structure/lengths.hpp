#pragma once

#include <string>
#include <vector>

namespace yardworth::test {

// A function of a file, from the line on which its signature begins to that of its closing brace.
struct FunctionLines {
  std::string signature;  // the beginning of it
  int first_line = 0;     // from 1
  int lines = 0;
};

// The functions with a body that a C++ text defines, members of classes among them, functions within functions not.
// Matches braces; of the grammar it knows what tells a function from a class, a namespace and a list of values.
std::vector<FunctionLines> functions_in(const std::string& text);

}  // namespace yardworth::test
