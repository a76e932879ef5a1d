// What the page calls of the library: the embedding function, over memory that both sides see.
#include <cstddef>
#include <cstdlib>
#include <cstring>
#include <string>
#include <string_view>

#include "yardworth/embed.hpp"

// The answer to the request, UTF-8 that ends with a zero byte, for the caller to free(); null where memory is short.
extern "C" char* yardworth_answer(const char* request, std::size_t bytes) {
  const std::string reply = yardworth::answer(std::string_view(request, bytes));
  char* const copy = static_cast<char*>(std::malloc(reply.size() + 1));
  if (copy != nullptr) std::memcpy(copy, reply.c_str(), reply.size() + 1);
  return copy;
}
