#include "report/gain_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <string_view>
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

namespace {

// "1.3 clubs shorter"; as they were where that rounds to nothing.
std::string clubs_words(double clubs) {
  const std::string number = fixed(std::abs(clubs), 1);
  if (number == "0.0") return "as long as before";
  return fmt::format("{} club{} {}", number, number == "1.0" ? "" : "s", clubs < 0.0 ? "longer" : "shorter");
}

// The same behind other clubs that are as much shorter or longer: "0.2".
std::string more_clubs_words(double clubs, double said) {
  const std::string words = clubs_words(clubs);
  const bool same_way = (clubs < 0.0) == (said < 0.0) && fixed(std::abs(said), 1) != "0.0";
  return same_way && words != "as long as before" ? fixed(std::abs(clubs), 1) : words;
}

std::string where_words(const SecondShotChange& change) {
  if (!change.par_4) return clubs_words(change.par_5.value_or(*change.clubs_shorter)) + " on par 5s";
  const std::string par_4s = clubs_words(*change.par_4) + " on par 4s";
  if (!change.par_5) return par_4s;
  return fmt::format("{} and {} on par 5s", par_4s, more_clubs_words(*change.par_5, *change.par_4));
}

}  // namespace

double on_green(const TeePlay& play) {
  for (const NextShot& next : play.next) {
    if (next.finish == Ground::green && next.third.empty()) return next.probability;
  }
  return 0.0;
}

std::string second_shot_sentence(const GainResult& result) {
  const SecondShotChange& change = result.answer().second_shot;
  if (!change.clubs_shorter || is_nothing(result.change)) return "";
  const std::string text = "Second shots are " + where_words(change);
  if (!change.par_4) return text + ".";
  const std::string before = escape_control(change.typical_before);
  const std::string after = escape_control(change.typical_after);
  return fmt::format("{}; the typical one of a par 4: {}{}.", text, after,
                     before == after ? ", as before" : " instead of " + before);
}

std::string control_sentence(const GainReport& report) {
  if (!report.control_asked) return "";
  if (!report.control) return "Under the habit plan nothing is saved that a loss of control could cost.";
  const std::string wider =
      report.control->direction_sd_rad
          ? fmt::format("spreads {} degrees more in direction", fixed(degrees(*report.control->direction_sd_rad), 1))
          : "spreads as much in direction as a file may say";
  const std::string poorer = report.control->poor_strike ? fmt::format("is struck poorly {} times more in 100",
                                                                       fixed(100.0 * *report.control->poor_strike, 1))
                                                         : "is struck poorly as often as a file may say";
  return fmt::format("Under the habit plan all of it is lost where every club {}, or {}.", wider, poorer);
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
