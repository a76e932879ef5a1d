#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/bag.hpp"

namespace yardworth::report {

// What the reports of measured shots say alike.

// One number of a club, with its interval, in the units that its key names.
struct BagNumber {
  std::string_view key;    // for programs; of a length without its unit
  std::string_view words;  // for people
  int decimals = 0;
  bool length = false;    // in yards or metres
  bool share = false;     // a probability
  bool sign = false;      // told with a plus too
  double factor = 1.0;    // from what the library has to what the key names
  std::string_view unit;  // for people, where it is no length
  std::function<std::optional<Estimate>(const ClubMeasure&)> of;
};
std::vector<BagNumber> bag_numbers();

// A number as it is told, with a plus where it is above 0.
std::string with_plus(const std::string& number);

// "carry, yards".
std::string heading_of(std::string_view words, const BagNumber& number, Units units);

// "196 (190 to 202)", in the log's units; empty where there is nothing.
std::string estimate_words(const std::optional<Estimate>& estimate, const BagNumber& number, Units units);

// A number with its interval, which is that of a change: "+14 (+6 to +22)".
std::string change_words(const std::optional<Estimate>& change, const BagNumber& number, Units units);

std::string_view verdict_words(ClubChange::Verdict verdict);
std::vector<std::string> comparison_notes(const BagComparison& comparison);

std::string why_words(const OutlyingShot& shot, Units units);
std::vector<std::string> bag_notes(const BagResult& result);
std::vector<std::string> bag_cautions();

}  // namespace yardworth::report
