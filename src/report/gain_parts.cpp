#include "report/gain_parts.hpp"

#include <algorithm>
#include <cctype>
#include <tuple>

#include "player/skill.hpp"
#include "report/text.hpp"

namespace yardworth::report {
namespace {

constexpr std::size_t short_name_width = 10;

int first_number(const std::string& text) {
  const auto digit = std::find_if(text.begin(), text.end(), [](unsigned char c) { return std::isdigit(c) != 0; });
  int number = 0;
  for (auto at = digit; at != text.end() && std::isdigit(static_cast<unsigned char>(*at)) && number < 1000; ++at) {
    number = 10 * number + (*at - '0');
  }
  return number;
}

bool says(const std::string& text, std::string_view word) { return text.find(word) != std::string::npos; }

// Degrees. Common practice, no source.
int wedge_loft(const std::string& club) {
  if (const int number = first_number(club)) return number;
  if (says(club, "pitching") || says(club, "pw")) return 46;
  if (says(club, "sand") || says(club, "sw")) return 56;
  if (says(club, "lob") || says(club, "lw")) return 60;
  return 50;
}

using BagPlace = std::tuple<int, int, std::string>;

BagPlace bag_place(const std::string& club) {
  if (club == "short game") return {7, 0, club};
  if (club == "putter") return {8, 0, club};
  const ClubName parsed = parse_club_name(club);
  const int kind = parsed.kind == ClubKind::other ? 6 : static_cast<int>(parsed.kind);
  return {kind, parsed.kind == ClubKind::wedge ? wedge_loft(club) : parsed.number, club};
}

bool before_in_bag(const std::string& a, const std::string& b) { return bag_place(a) < bag_place(b); }

}  // namespace

ComputedParts computed_parts(const GainResult& result) {
  return {result.method == Method::play, result.replanning_computed};
}

std::vector<std::string> in_bag_order(const ClubShares& shares) {
  std::vector<std::string> clubs;
  for (const auto& [club, share] : shares) clubs.push_back(club);
  std::sort(clubs.begin(), clubs.end(), before_in_bag);
  return clubs;
}

std::vector<ClubShare> in_bag_order(const ClubShares& before, const ClubShares& after) {
  ClubShares all = before;
  all.insert(after.begin(), after.end());
  const auto share_in = [](const ClubShares& shares, const std::string& club) {
    const auto found = shares.find(club);
    return found == shares.end() ? 0.0 : found->second;
  };
  std::vector<ClubShare> clubs;
  for (const std::string& club : in_bag_order(all)) {
    clubs.push_back({club, share_in(before, club), share_in(after, club)});
  }
  return clubs;
}

SecondShots second_shots(const PolicyGain& policy) {
  SecondShots shots;
  ClubShares before;
  ClubShares after;
  const auto longer_holes =
      std::count_if(policy.holes.begin(), policy.holes.end(), [](const HoleGain& hole) { return hole.par > 3; });
  shots.holes = static_cast<int>(longer_holes);
  const double weight = longer_holes > 0 ? 1.0 / static_cast<double>(longer_holes) : 0.0;
  for (const HoleGain& hole : policy.holes) {
    if (hole.par <= 3) continue;
    for (const auto& [club, share] : hole.before.next_shares) before[club] += weight * share;
    for (const auto& [club, share] : hole.after.next_shares) after[club] += weight * share;
    shots.fairway_before += weight * hole.before.fairway;
    shots.fairway_after += weight * hole.after.fairway;
    shots.penalty_before += weight * hole.before.penalty;
    shots.penalty_after += weight * hole.after.penalty;
  }
  shots.clubs = in_bag_order(before, after);
  return shots;
}

std::string short_club_name(const std::string& club) {
  if (display_width(club) <= short_name_width) return club;
  if (parse_club_name(club).kind == ClubKind::wedge) {
    if (const int loft = first_number(club)) return std::to_string(loft) + " wedge";
    if (club == "pitching wedge") return "PW";
    if (club == "approach wedge") return "AW";
  }
  return shorten(club, short_name_width);
}

}  // namespace yardworth::report
