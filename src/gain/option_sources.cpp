#include <fmt/format.h>

#include <utility>

#include "core/message_text.hpp"
#include "core/spelling.hpp"
#include "gain/measured_change.hpp"
#include "gain/player_change.hpp"
#include "gain/strike_change.hpp"
#include "input/two_parts.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/options.hpp"
#include "yardworth/read.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {

namespace {

constexpr std::uint64_t draws_seed = 1;  // as of gain, unless it is told another

// Works out the change of one option; findings has all that is to be said.
class OptionWorkedOut {
 public:
  OptionWorkedOut(Option& option, Units units, const Player& player, const TextOfFile& text_of, int draws,
                  std::vector<Diagnostic>& findings)
      : option_(option),
        source_(*option.source),
        units_(units),
        player_(player),
        text_of_(text_of),
        draws_(draws),
        findings_(findings) {}

  void work_out() {
    if (!source_.after.empty()) {
      by_player();
    } else if (!source_.logs.empty()) {
      by_logs();
    } else {
      by_strikes();
    }
  }

 private:
  void fault(std::string key, std::string found, std::string expected) {
    Diagnostic finding = source_.place;
    if (!key.empty()) finding.path += "." + std::move(key);
    finding.found = std::move(found);
    finding.expected = std::move(expected);
    findings_.push_back(std::move(finding));
  }

  // What a reader makes of a file; nothing where anything of it is at fault.
  template <class Read>
  auto read(const std::string& name, std::size_t most_bytes, Read reader)
      -> decltype(reader(std::string_view(), name).value) {
    const Reading<std::string> text = text_of_(name, most_bytes);
    findings_.insert(findings_.end(), text.findings.begin(), text.findings.end());
    if (!text.ok()) return std::nullopt;
    auto reading = reader(*text.value, name);
    findings_.insert(findings_.end(), reading.findings.begin(), reading.findings.end());
    return std::move(reading.value);
  }

  void by_player() {
    const auto after =
        read(source_.after, largest_file_bytes, [](auto text, auto& name) { return read_player(text, name); });
    if (!after) return;
    Reading<Change> change = change_between(player_, *after, source_.after);
    findings_.insert(findings_.end(), change.findings.begin(), change.findings.end());
    if (change.ok()) option_.change = std::move(*change.value);
  }

  std::optional<ShotLog> read_log(const std::string& name) {
    const BadRows bad_rows = source_.skip_bad_rows ? BadRows::skipped : BadRows::refused;
    return read(name, largest_log_bytes,
                [bad_rows](auto text, auto& file) { return read_shot_log(text, file, bad_rows); });
  }

  std::optional<ShotLog> session(const ShotLog& log, const std::string& name) {
    std::optional<ShotLog> shots = shots_of_session(log, name);
    if (!shots) fault("sessions", quoted(name), one_of(name, log.sessions));
    return shots;
  }

  void by_logs() {
    const std::optional<ShotLog> first = read_log(source_.logs.front());
    if (source_.logs.size() == 2) {
      const std::optional<ShotLog> second = read_log(source_.logs.back());
      if (first && second) by_shots(*first, *second);
      return;
    }
    if (!first) return;
    if (const auto wrong = input::parts_fault(source_.sessions, first->sessions)) {
      fault("sessions", wrong->found, wrong->expected);
      return;
    }
    const std::optional<ShotLog> before = session(*first, source_.sessions.front());
    const std::optional<ShotLog> after = session(*first, source_.sessions.back());
    if (before && after) by_shots(*before, *after);
  }

  void by_shots(const ShotLog& before, const ShotLog& after) {
    const MeasuredChange measured = measured_change(compare_bags(before, after, {player_, true}), player_);
    if (measured.clubs.empty()) {
      fault("from_log", fmt::format("no club of the player with {} shots before and as many after", fewest_own_shots),
            "one at least");
      return;
    }
    option_.change = estimated_change(measured, player_);
    option_.draws = drawn_changes(measured, player_, draws_, draws_seed);
  }

  SaidStrike strike(const std::string& key, const std::map<std::string, double>& said, const SaidStrike& before) {
    SaidStrike strike = on_top_of(before);
    for (const auto& [of_field, number] : said) {
      if (const auto field = field_of_key(of_field)) say(strike, *field, number);
    }
    check_together(strike, before, [&](std::string_view of, const std::string& found, const std::string& expected) {
      fault(of.empty() ? key : fmt::format("{}.{}", key, of), found, expected);
    });
    return strike;
  }

  void by_strikes() {
    const std::size_t known = findings_.size();
    const SaidStrike before = strike("from_delivery", source_.from, own_driver_strike(player_));
    const SaidStrike after = strike("to", source_.to, before);
    if (findings_.size() > known) return;
    option_.change = Change::of(change_of_strike(before.delivery, after.delivery).in_yards(source_.irons, units_));
  }

  Option& option_;
  const ChangeSource& source_;
  Units units_;
  const Player& player_;
  const TextOfFile& text_of_;
  int draws_;
  std::vector<Diagnostic>& findings_;
};

}  // namespace

std::vector<Diagnostic> work_out_changes(OptionsFile& file, const Player& player, const TextOfFile& text_of,
                                         int draws) {
  std::vector<Diagnostic> findings;
  for (Option& option : file.options) {
    if (option.source) OptionWorkedOut(option, file.units, player, text_of, draws, findings).work_out();
  }
  return findings;
}

}  // namespace yardworth
