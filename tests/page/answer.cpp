// The embedding function as a program: a request on standard input, the reply on standard output. What the page's
// engine is compared with.
#include <iostream>
#include <iterator>
#include <string>

#include "yardworth/embed.hpp"

int main() {
  const std::string request{std::istreambuf_iterator<char>(std::cin), {}};
  std::cout << yardworth::answer(request);
  return std::cout.good() ? 0 : 1;
}
