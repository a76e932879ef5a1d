#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <variant>
#include <vector>

#include "course/hazard_kind.hpp"
#include "report/basis_words.hpp"
#include "report/opening.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string lengths_of(const Course& course) {
  std::vector<std::string> lengths;
  for (std::size_t tee = 0; tee < course.tees.size(); ++tee) {
    lengths.push_back(
        fmt::format("{} {:.0f}", course.tees[tee].name, from_yards(total_length_yd(course, tee), course.units)));
  }
  return fmt::format("{} {}", fmt::join(lengths, ", "), name(course.units));
}

std::string hazards_of(const Course& course) {
  std::array<std::size_t, hazard_kind_count> counts{};
  for (const Hole& hole : course.holes) {
    for (const Hazard& hazard : hole.hazards) ++counts[static_cast<std::size_t>(hazard.kind)];
  }
  std::vector<std::string> parts;
  for (const HazardKind kind : all_hazard_kinds) {
    const std::size_t count = counts[static_cast<std::size_t>(kind)];
    std::string one(name(kind));
    std::replace(one.begin(), one.end(), '_', ' ');
    if (count > 0) parts.push_back(counted(count, one, facts_of(kind).plural));
  }
  return parts.empty() ? "no hazards" : fmt::format("{}", fmt::join(parts, ", "));
}

std::string summary_of(const Course& course) {
  int par = 0;
  std::size_t doglegs = 0;
  for (const Hole& hole : course.holes) {
    par += hole.par;
    doglegs += hole.doglegs.size();
  }
  return fmt::format("course \"{}\": {} holes, par {}; {}; {}; {}", course.name, course.holes.size(), par,
                     lengths_of(course), hazards_of(course), counted(doglegs, "dogleg", "doglegs"));
}

std::string widest_gap(const Player& player) {
  std::size_t widest = 0;
  double gap_yd = 0.0;
  for (std::size_t i = 1; i < player.clubs.size(); ++i) {
    const double here_yd = player.clubs[i - 1].carry_yd - player.clubs[i].carry_yd;
    if (here_yd <= gap_yd) continue;
    gap_yd = here_yd;
    widest = i;
  }
  if (widest == 0) return "";
  return fmt::format("; widest gap {:.0f} between {} and {}", from_yards(gap_yd, player.units),
                     player.clubs[widest - 1].name, player.clubs[widest].name);
}

// A plus handicap as golfers write it.
std::string index_of(const Player& player) {
  if (!player.handicap_index) return "";
  const double index = *player.handicap_index;
  return index < 0.0 ? fmt::format("Handicap Index +{:.1f}, ", -index) : fmt::format("Handicap Index {:.1f}, ", index);
}

std::string summary_of(const Player& player) {
  std::string carries;
  if (!player.clubs.empty()) {
    carries = fmt::format(", carry {:.0f} to {:.0f} {}", from_yards(player.clubs.front().carry_yd, player.units),
                          from_yards(player.clubs.back().carry_yd, player.units), name(player.units));
  }
  std::string strikes;
  for (const std::string& carry : report::struck_carries(player)) strikes += "; by the strike: " + carry;
  const std::vector<SideMiss> misses = side_misses(player);
  const std::string to_one_side = misses.empty() ? "" : "; " + report::miss_words(misses);
  return fmt::format("player \"{}\": {}band {}, {}; {}{}{}{}{}", player.label, index_of(player), name(player.band),
                     name(player.gender), counted(player.clubs.size(), "club", "clubs"), carries, widest_gap(player),
                     to_one_side, strikes);
}

std::string range_of(std::string_view label, const BaselineColumn& column) {
  if (column.distance.empty()) return fmt::format("{} empty", label);
  return fmt::format("{} {:.4g} to {:.4g}", label, column.distance.front(), column.distance.back());
}

std::string summary_of(const BaselineTable& table) {
  return fmt::format("baseline \"{}\": band {}, {}; {}, {}, {}, {}, {} yards; {} feet; source: {}", table.name,
                     name(table.band), name(table.gender), range_of("tee", table.tee),
                     range_of("fairway", table.fairway), range_of("rough", table.rough),
                     range_of("bunker", table.bunker), range_of("recovery", table.recovery),
                     range_of("green", table.green), table.source);
}

std::string summary_of(const OptionsFile& file) {
  std::vector<std::string> names;
  for (const Option& option : file.options) names.push_back(fmt::format("\"{}\"", option.name));
  return fmt::format("{}: {}", counted(names.size(), "option", "options"), fmt::join(names, ", "));
}

}  // namespace

std::string summarise(const AnyFile& file) {
  return escape_control(std::visit([](const auto& read) { return summary_of(read); }, file));
}

}  // namespace yardworth
