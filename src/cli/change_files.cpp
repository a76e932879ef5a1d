#include <fmt/format.h>

#include "cli/change.hpp"
#include "cli/inputs.hpp"
#include "cli/shot_logs.hpp"
#include "gain/player_change.hpp"
#include "report/measured_words.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/read.hpp"

namespace yardworth::cli {
namespace {

bool read_after(AskedChange& change, const Player& player, std::vector<std::string>& opening, std::string& complaints) {
  const Reading<Player> after = read_file(change.after, read_player);
  std::string of_no_account;
  sort_findings(after.findings, complaints, of_no_account);
  if (!after.ok()) return false;
  Reading<Change> between = change_between(player, *after.value, change.after);
  sort_findings(between.findings, complaints, of_no_account);
  if (!between.ok()) return false;
  change.by_files = std::move(between.value);
  opening.push_back(report::after_words(after.value->label));
  return true;
}

TwoLogs read_two_logs(const AskedChange& change, std::string& complaints, std::string& advice) {
  const BadRows bad_rows = change.skip_bad_rows ? BadRows::skipped : BadRows::refused;
  TwoLogs logs;
  logs.one = read_log(change.logs.front(), bad_rows, complaints, advice);
  if (change.logs.size() > 1) {
    logs.after = read_log(change.logs.back(), bad_rows, complaints, advice);
  } else if (logs.one) {
    const ShotLog log = *logs.one;
    return parts_of(log, "--sessions", change.sessions, shots_of_session, log.sessions, complaints);
  }
  return logs;
}

bool read_logs(AskedChange& change, const Player& player, Units units, std::vector<std::string>& opening,
               std::string& complaints, std::string& advice) {
  const TwoLogs logs = read_two_logs(change, complaints, advice);
  if (!logs.one || !logs.after) return false;
  change.measured = measured_change(compare_bags(*logs.one, *logs.after, {player, true}), player);
  if (change.measured->clubs.empty()) {
    complaints += fmt::format(
        "yardworth: --from-log: found no club of the player with {} shots before and as many after, expected one at "
        "least\n",
        fewest_own_shots);
    return false;
  }
  change.by_files = estimated_change(*change.measured, player);
  for (std::string& sentence : report::measured_words(*change.measured, player, units)) {
    opening.push_back(std::move(sentence));
  }
  return true;
}

}  // namespace

bool read_change_files(AskedChange& change, const Player& player, Units units, std::vector<std::string>& opening,
                       std::string& complaints, std::string& advice) {
  if (!change.after.empty()) return read_after(change, player, opening, complaints);
  if (!change.logs.empty()) return read_logs(change, player, units, opening, complaints, advice);
  return true;
}

}  // namespace yardworth::cli
