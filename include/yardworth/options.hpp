#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/change.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// A way to spend money and hours on one's golf, as an options file has it: docs/formats.md.
struct Option {
  std::string name;
  Change change;
  std::optional<std::string> tee;  // played from in place of the others
  // How sure the change is: in 9 cases of 10 it is no further from what is said than this share of itself.
  std::optional<double> doubt;
  double money = 0.0;  // in whatever money the file is written in
  double hours = 0.0;
};

// What a change is taken to be sure to where nothing is said (our assumption).
inline constexpr double assumed_doubt = 0.5;

struct OptionsFile {
  Units units = Units::yards;  // that its lengths are in; here they are yards
  std::vector<Option> options;
};

// As the readers of read.hpp.
Reading<OptionsFile> read_options(std::string_view text, const std::string& file);

}  // namespace yardworth
