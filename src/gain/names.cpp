#include "yardworth/gain.hpp"
#include "yardworth/strategy.hpp"

// What the enumerations of requests and results are called, in options, in JSON and CSV and in words.

namespace yardworth {

std::string_view name(Method method) { return method == Method::table ? "table" : "play"; }

std::string_view name(PolicyChoice policy) {
  return policy == PolicyChoice::habit ? "habit" : policy == PolicyChoice::best ? "best" : "both";
}

std::string_view name(ChangeStep step) {
  constexpr std::string_view names[] = {"driver carry", "irons carry",      "club carry",
                                        "carry spread", "direction spread", "mean direction",
                                        "poor strikes", "short game",       "putting"};
  return names[static_cast<std::size_t>(step)];
}

std::string_view name(HazardSide side) {
  constexpr std::string_view names[] = {"left", "right", "across", "in the middle", "behind the green"};
  return names[static_cast<std::size_t>(side)];
}

}  // namespace yardworth
