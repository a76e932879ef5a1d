#pragma once

#include <optional>
#include <string>
#include <vector>

#include "yardworth/gain/bands.hpp"

namespace yardworth {

// What a report of bands on tees is made of. Whatever text it holds may come from files and is made safe for each
// format.
struct BandsReport {
  BandsResult result;
  std::optional<int> hole;           // whose hazards are told, band by band
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
};

// The answer in one sentence: whom the change of distance helps most and least, or, where hazards are changed, whom
// they cost most and least.
std::string bands_sentence(const BandsResult& result);

// For a terminal: the answer, then either the bands and the tees that suit them, or what the changed hazards do; the
// clubs of approach shots where no more than two tables of them are needed; the hazards of the hole asked for.
// Distances in the course's units; emphasis makes the answer bold.
std::string bands_text(const BandsReport& report, bool emphasis = false);

// The formats for programs: all distances in yards, nothing rounded.

// "yardworth/bands/1", in printable ASCII only; bytes that are not UTF-8 become U+FFFD.
std::string bands_json(const BandsReport& report);
// One row for each band and tee.
std::string bands_csv(const BandsReport& report);
// One row for each band, tee and hazard: of the hole asked for, or of the changed holes without and with the change.
std::string bands_hazards_csv(const BandsReport& report);

}  // namespace yardworth
