#include "cli/change.hpp"

#include "cli/options.hpp"
#include "cli/said_delivery.hpp"
#include "report/opening.hpp"

namespace yardworth::cli {
namespace {

void add_keys_option(CLI::App& command, const std::string& name, std::vector<std::string>& target,
                     const std::string& help) {
  const auto store = [&target](const std::vector<std::string>& said) { target = said; };
  command.add_option_function<std::vector<std::string>>(name, store, help)->type_name("KEY=VALUE ...");
}

// "9-iron=+5"
SaidClub read_club(const std::string& said) {
  const std::size_t equals = said.rfind('=');
  if (equals == std::string::npos || equals == 0)
    throw misfit("--club", said, "a club and its carry, such as 9-iron=+5");
  return {said.substr(0, equals),
          number_within("--club", said.substr(equals + 1), limits::carry_change, "a number behind the =,")};
}

}  // namespace

Change AskedChange::in_yards(Units units) const {
  if (by_files) return *by_files;
  const Change change = said.in_yards(units);
  return by_strike ? with_carry(change, *by_strike) : change;
}

void add_carry_options(CLI::App& command, SaidChange& change, const std::string& unless_given) {
  add_number(command, "--driver", change.driver, limits::carry_change,
             "Carry added to the driver, +N or -N in the course's units; " + unless_given);
  add_number(command, "--irons", change.irons, limits::carry_change,
             "Carry added to the 7-iron or the iron nearest to it; every club below the driver in proportion to its "
             "carry; " +
                 unless_given);
}

void add_wider_change_options(CLI::App& command, SaidChange& change) {
  const auto store = [&change](const std::vector<std::string>& all) {
    for (const std::string& said : all) change.clubs.push_back(read_club(said));
  };
  command
      .add_option_function<std::vector<std::string>>(
          "--club", store, "Carry added to one club by its name, such as 9-iron=+5, in the course's units; any number")
      ->type_name("CLUB=N ...");
  add_percent(command, "--carry-sd", change.carry_sd, limits::spread_change,
              "Spread of carry of every club, in percent of itself: -10% is a tenth less");
  add_percent(command, "--direction-sd", change.direction_sd, limits::spread_change,
              "Spread of direction of every club, likewise");
  add_number(command, "--direction-mean", change.direction_mean, limits::direction_mean_change,
             "Degrees by which every club's shots start further right on average, or with a minus further left");
  add_percent(command, "--poor-strike", change.poor_strike, limits::poor_strike_change,
              "Poor strikes of every club, in percentage points: -3% is 3 of 100 strikes fewer, but none below 0");
  add_percent(command, "--short-game", change.short_game, limits::spread_change,
              "Spreads of the strokes near the green, in percent of themselves");
  add_percent(command, "--putting", change.putting, limits::spread_change, "Spreads of the putts, likewise");
}

void add_strike_before_option(CLI::App& command, AskedChange& change) {
  add_keys_option(command, "--from-delivery", change.from,
                  "In place of --driver: how the driver is struck now, such as club-speed-mph=94 attack-deg=-1, with "
                  "the keys of the command delivery; --to says what changes");
}

void add_strike_after_option(CLI::App& command, AskedChange& change) {
  add_keys_option(command, "--to", change.to, "What is different of --from-delivery afterwards, such as attack-deg=2");
}

void add_change_file_options(CLI::App& command, AskedChange& change) {
  add_words(command, "--after", change.after, "FILE",
            "A second player file with the same clubs, in the place of what changes: the golfer afterwards");
  command
      .add_option_function<std::vector<std::string>>(
          "--from-log", [&change](const std::vector<std::string>& logs) { change.logs = logs; },
          "Shot logs before and after, in the place of what changes: what was measured of the player's clubs")
      ->type_name("BEFORE.csv AFTER.csv")
      ->expected(1, 2);
  command
      .add_option_function<std::vector<std::string>>(
          "--sessions", [&change](const std::vector<std::string>& names) { change.sessions = names; },
          "With one log: two sessions of it, before and after")
      ->type_name("BEFORE AFTER")
      ->expected(2);
  command.add_flag("--skip-bad-rows", change.skip_bad_rows, "Use logs without the rows that cannot be read");
}

std::vector<std::string> AskedChange::files() const {
  std::vector<std::string> all = logs;
  if (!after.empty()) all.push_back(after);
  return all;
}

namespace {

std::string conflict_of_files(const AskedChange& change) {
  const std::string option = change.after.empty() ? "--from-log" : "--after";
  if (!change.has_files()) {
    if (!change.sessions.empty()) return "--sessions needs --from-log, the log that they are of";
    return change.skip_bad_rows ? "--skip-bad-rows needs --from-log, the logs that are read" : "";
  }
  if (!change.after.empty() && !change.logs.empty()) return "--after and --from-log both say what changes; give one";
  if (change.said.given() || !change.from.empty()) {
    return option + " says all that changes; leave out what else says so, or " + option;
  }
  if (change.logs.empty()) return "";
  if (change.logs.size() == 1 && change.sessions.empty()) {
    return "--from-log needs two logs, before and after, or --sessions of one";
  }
  return change.logs.size() == 2 && !change.sessions.empty() ? "--sessions are of one log; give one, or leave them out"
                                                             : "";
}

}  // namespace

std::string conflict(const AskedChange& change) {
  if (std::string why = conflict_of_files(change); !why.empty()) return why;
  if (change.from.empty() && !change.to.empty()) {
    return "--to " + change.to.front() + " needs --from-delivery, how the driver is struck now";
  }
  if (change.from.empty()) return "";
  if (change.said.driver) return "--from-delivery and --driver both say what the driver gains; give one of them";
  if (change.to.empty()) return "--from-delivery needs --to KEY=VALUE, what changes of that strike";
  return "";
}

bool fly_strikes(AskedChange& change, const Player& player, Units units, std::vector<std::string>& opening,
                 std::string& complaints) {
  if (change.from.empty()) return true;
  const TypicalClub driver = *typical_club("driver");
  const SaidStrike own = own_driver_strike(player);
  const SaidStrike before = read_strike("--from-delivery", change.from, own, complaints);
  const SaidStrike after = read_strike("--to", change.to, before, complaints);
  if (!complaints.empty()) return false;
  const StrikeChange strikes = change_of_strike(before.delivery, after.delivery);
  change.by_strike = strikes.in_yards(change.said.irons, units);
  change.strikes = strikes;
  for (std::string& sentence : report::opening_of_strikes(driver, either(before.said, own.said), strikes,
                                                          change.said.irons.has_value(), units)) {
    opening.push_back(std::move(sentence));
  }
  return true;
}

}  // namespace yardworth::cli
