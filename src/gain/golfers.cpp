#include "gain/golfers.hpp"

#include <algorithm>
#include <utility>

#include "gain/changed_finish.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {

namespace {

auto place_of_club(auto& clubs, std::string_view name) {
  return std::find_if(clubs.begin(), clubs.end(),
                      [plain = plain_name(name)](const Club& club) { return plain_name(club.name) == plain; });
}

Club* own_club(Player& player, std::string_view name) {
  const auto found = place_of_club(player.clubs, name);
  return found == player.clubs.end() ? nullptr : &*found;
}

// What changes of all clubs, and then what changes of single ones.
template <class Apply>
void to_clubs(Player& player, const Change& change, double of_all, double OwnChange::*of_one, Apply apply) {
  for (Club& club : player.clubs) apply(club, of_all);
  for (const OwnChange& own : change.clubs) {
    if (Club* club = own_club(player, own.club)) apply(*club, own.*of_one);
  }
}

void spread_carry(Club& club, double share) {
  club.carry_sd_yd *= 1.0 + share;
  club.carry_sd_floor_yd *= 1.0 + share;
}

void spread_direction(Club& club, double share) { club.direction_sd_rad *= 1.0 + share; }

void turn(Club& club, double angle_rad) { club.direction_mean_rad += angle_rad; }

// Nobody strikes poorly less often than never.
void strike_poorly(Club& club, double added) { club.poor_strike = std::max(0.0, club.poor_strike + added); }

void change_carries(Player& player, const Change& change) {
  for (const OwnChange& own : change.clubs) {
    Club* club = own_club(player, own.club);
    if (club == nullptr) continue;
    *club = lengthen(*club, own.carry_yd);
    club->roll_yd += own.roll_yd;
  }
}

void spread_short_game(ShortGameSkill& skill, double share) {
  for (Touch* touch : {&skill.fairway, &skill.rough, &skill.bunker, &skill.recovery}) {
    touch->spread_floor_yd *= 1.0 + share;
    touch->spread_share *= 1.0 + share;
  }
}

void spread_putting(PuttingSkill& skill, double share) {
  skill.direction_sd_rad *= 1.0 + share;
  skill.distance_sd_share *= 1.0 + share;
}

void take_step(Player& player, const Change& change, ChangeStep step) {
  switch (step) {
    case ChangeStep::driver_carry:
      player = lengthen(player, change.driver_carry_yd, 0.0);
      break;
    case ChangeStep::irons_carry:
      break;
    case ChangeStep::club_carry:
      change_carries(player, change);
      break;
    case ChangeStep::carry_spread:
      to_clubs(player, change, change.carry_sd_share, &OwnChange::carry_sd_share, spread_carry);
      break;
    case ChangeStep::direction_spread:
      to_clubs(player, change, change.direction_sd_share, &OwnChange::direction_sd_share, spread_direction);
      break;
    case ChangeStep::mean_direction:
      to_clubs(player, change, change.direction_mean_rad, &OwnChange::direction_mean_rad, turn);
      break;
    case ChangeStep::poor_strikes:
      to_clubs(player, change, change.poor_strike, &OwnChange::poor_strike, strike_poorly);
      break;
    case ChangeStep::short_game:
      spread_short_game(player.skill.short_game, change.short_game_share);
      break;
    case ChangeStep::putting:
      spread_putting(player.skill.putting, change.putting_share);
      break;
  }
}

// Of what a step can move.
bool same_club(const Club& a, const Club& b) {
  return a.carry_yd == b.carry_yd && a.roll_yd == b.roll_yd && a.carry_sd_yd == b.carry_sd_yd &&
         a.direction_sd_rad == b.direction_sd_rad && a.direction_mean_rad == b.direction_mean_rad &&
         a.poor_strike == b.poor_strike;
}

bool same_touch(const Touch& a, const Touch& b) {
  return a.spread_floor_yd == b.spread_floor_yd && a.spread_share == b.spread_share;
}

bool same_finish(const Skill& a, const Skill& b) {
  return same_touch(a.short_game.fairway, b.short_game.fairway) && same_touch(a.short_game.rough, b.short_game.rough) &&
         same_touch(a.short_game.bunker, b.short_game.bunker) &&
         same_touch(a.short_game.recovery, b.short_game.recovery) &&
         a.putting.direction_sd_rad == b.putting.direction_sd_rad &&
         a.putting.distance_sd_share == b.putting.distance_sd_share;
}

bool same_golfer(const Player& a, const Player& b) {
  return same_finish(a.skill, b.skill) &&
         std::equal(a.clubs.begin(), a.clubs.end(), b.clubs.begin(), b.clubs.end(), same_club);
}

// The golfer after each step that is asked for.
std::vector<std::pair<ChangeStep, Player>> golfers_by_step(const Player& player, const Change& change) {
  std::vector<std::pair<ChangeStep, Player>> golfers;
  for (const ChangeStep step : steps_asked(change)) golfers.emplace_back(step, golfer_after(player, change, step));
  return golfers;
}

}  // namespace

Player golfer_after(const Player& player, const Change& change, ChangeStep last) {
  // Which iron the change is about is told by the bag before.
  Player golfer =
      last < ChangeStep::irons_carry ? player : lengthen(player, change.driver_carry_yd, change.irons_carry_yd);
  for (const ChangeStep step : all_change_steps) {
    const bool with_irons = step <= ChangeStep::irons_carry && last >= ChangeStep::irons_carry;
    if (step <= last && !with_irons) take_step(golfer, change, step);
  }
  return golfer;
}

Golfers golfers_of(const Player& player, const Baseline& baseline, const Change& change) {
  Golfers golfers{player};
  for (auto& [step, golfer] : golfers_by_step(player, change)) {
    if (same_golfer(golfers.after(), golfer)) continue;
    GolferAfterStep after{step, std::move(golfer)};
    if (!same_finish(player.skill, after.player.skill)) {
      after.finish = std::make_shared<const Baseline>(changed_finish(baseline, player.skill, after.player.skill));
    }
    golfers.steps.push_back(std::move(after));
  }
  return golfers;
}

std::vector<ChangeStep> steps_without_effect(const Player& player, const Change& change) {
  std::vector<ChangeStep> without;
  Player earlier = player;
  for (auto& [step, golfer] : golfers_by_step(player, change)) {
    if (same_golfer(earlier, golfer)) without.push_back(step);
    earlier = std::move(golfer);
  }
  return without;
}

const Club* club_named(const Player& player, std::string_view name) {
  const auto found = place_of_club(player.clubs, name);
  return found == player.clubs.end() ? nullptr : &*found;
}

}  // namespace yardworth
