#pragma once

#include <CLI/CLI.hpp>
#include <optional>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "cli/hazard_text.hpp"
#include "cli/options.hpp"
#include "gain/said_change.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/player.hpp"

namespace yardworth::cli {

// What commands share that ask about bands on tees.

struct BandsOptions {
  std::string course;
  std::vector<std::string> tees;
  std::string members;  // a list of them in place of the bands
  std::vector<Band> bands;
  std::optional<std::vector<Gender>> genders;
  SaidChange change;
  HazardTexts hazards;
  PolicyChoice policy = PolicyChoice::habit;
  int hole = 0;  // 0: none
  int threads = 0;
  OutputOptions output;
  std::string svg;
};

// Whom it is about: tees (several); members, bands, gender. where_members: what the help says of members last.
void add_tees_option(CLI::App& command, std::vector<std::string>& tees);
void add_whom_options(CLI::App& command, BandsOptions& options, const std::string& where_members);
void add_changed_hazard_options(CLI::App& command, HazardTexts& hazards);

// The page for a club, with the members beside the bands where there is a list of them, written where the options say.
Outcome run_club_page(const BandsOptions& options, const Surroundings& surroundings);

}  // namespace yardworth::cli
