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

}  // namespace

void add_change_options(CLI::App& command, SaidChange& change, const std::string& unless_given) {
  add_number(command, "--driver", change.driver, limits::carry_change,
             "Carry added to the driver, +N or -N in the course's units; " + unless_given);
  add_number(command, "--irons", change.irons, limits::carry_change,
             "Carry added to the 7-iron or the iron nearest to it; every club below the driver in proportion to its "
             "carry; " +
                 unless_given);
}

void add_strike_before_option(CLI::App& command, AskedChange& change) {
  add_keys_option(command, "--from-delivery", change.from,
                  "In place of --driver: how the driver is struck now, such as club-speed-mph=94 attack-deg=-1, with "
                  "the keys of the command delivery; --to says what changes");
}

void add_strike_after_option(CLI::App& command, AskedChange& change) {
  add_keys_option(command, "--to", change.to, "What is different of --from-delivery afterwards, such as attack-deg=2");
}

std::string conflict(const AskedChange& change) {
  if (change.from.empty() && !change.to.empty()) {
    return "--to " + change.to.front() + " needs --from-delivery, how the driver is struck now";
  }
  if (change.from.empty()) return "";
  if (change.carry.driver) return "--from-delivery and --driver both say what the driver gains; give one of them";
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
  change.by_strike = strikes.in_yards(change.carry.irons, units);
  change.strikes = strikes;
  for (std::string& sentence : report::opening_of_strikes(driver, either(before.said, own.said), strikes,
                                                          change.carry.irons.has_value(), units)) {
    opening.push_back(std::move(sentence));
  }
  return true;
}

}  // namespace yardworth::cli
