#pragma once

#include <optional>
#include <string>
#include <vector>

#include "embed/members.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::embed {

// What a request asks of measured shots.
struct BagQuestion {
  std::optional<ShotLog> log, after;  // with after a comparison
  bool two_clubs = false;             // the logs have the shots of one club each
  BagRequest request;
};

std::vector<std::string> bag_options();

// The texts of logs and their names in findings; player: the one that the request gives.
struct BagTexts {
  std::optional<std::string> log, after;
  std::string log_name, after_name;
  std::optional<Player> player;
};

// The logs that a request compares, before and after: two texts, or two sessions or clubs of one. Every fault goes to
// findings.
BagQuestion read_logs(const BagTexts& texts, const Members& options, const Tell& tell_of_request,
                      const Tell& tell_of_options, std::vector<Diagnostic>& findings);

// The same, and whom clubs are borrowed from.
BagQuestion read_bag(const BagTexts& texts, const Members& options, const Tell& tell_of_request,
                     const Tell& tell_of_options, std::vector<Diagnostic>& findings);

}  // namespace yardworth::embed
