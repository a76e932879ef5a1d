#include "gain/request_rules.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/message_text.hpp"
#include "core/numerics.hpp"
#include "core/spelling.hpp"
#include "gain/golfer_family.hpp"
#include "gain/golfers.hpp"
#include "validate/tell.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {
namespace {

// Findings while they are gathered.
class Faults {
 public:
  Tell tell() { return tell_into(findings_, "request"); }
  void add(std::vector<Diagnostic> findings) { findings_.insert(findings_.end(), findings.begin(), findings.end()); }
  bool none() const { return findings_.empty(); }
  void throw_any() const {
    if (!findings_.empty()) throw InvalidRequest(findings_);
  }

 private:
  std::vector<Diagnostic> findings_;
};

void check_tee(const Course& course, std::size_t tee, std::string_view key, const Tell& tell) {
  if (tee < course.tees.size()) return;
  tell(key, fmt::format("{}", tee), fmt::format("a tee of the course, from 0 to {}", course.tees.size() - 1));
}

void check_holes(const Course& course, const std::vector<int>& holes, const Tell& tell) {
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const auto is_it = [&](const Hole& hole) { return hole.number == holes[i]; };
    if (std::none_of(course.holes.begin(), course.holes.end(), is_it)) {
      tell(fmt::format("holes[{}]", i), fmt::format("{}", holes[i]),
           fmt::format("a hole of {}, {} to {}", course.name, course.holes.front().number, course.holes.back().number));
    }
    if (std::count(holes.begin(), holes.begin() + static_cast<std::ptrdiff_t>(i), holes[i]) > 0) {
      tell(fmt::format("holes[{}]", i), fmt::format("{} again", holes[i]), "each hole once");
    }
  }
}

void check_threads(int threads, const Tell& tell) { check_whole(threads, 0, limits::most_threads, "threads", tell); }

void check_mark(const GainRequest& request, const Tell& tell) {
  if (!request.mark) return;
  check_whole(*request.mark, static_cast<int>(limits::mark.low), static_cast<int>(limits::mark.high), "mark", tell);
  if (request.method == Method::table) {
    tell("mark", "method table beside it", "method play: the table method does not know how scores vary");
  }
}

Limits change_limits(Units units) {
  return {to_yards(limits::carry_change.low, units), to_yards(limits::carry_change.high, units)};
}

bool check_carry_change(const DistanceChange& change, Units units, const Tell& tell) {
  const Limits limits = change_limits(units);
  bool fits = check_length(change.driver_carry_yd, limits, units, "change.driver_carry_yd", tell);
  return check_length(change.irons_carry_yd, limits, units, "change.irons_carry_yd", tell) && fits;
}

// What may change of all clubs as of single ones.
struct SpreadChange {
  double carry_sd_share, direction_sd_share, direction_mean_rad, poor_strike;
};

bool check_spreads(const SpreadChange& change, const Tell& tell) {
  bool fits = check_number(100.0 * change.carry_sd_share, limits::spread_change, "carry_sd_share", tell);
  fits &= check_number(100.0 * change.direction_sd_share, limits::spread_change, "direction_sd_share", tell);
  fits &= check_number(degrees(change.direction_mean_rad), limits::direction_mean_change, "direction_mean_rad", tell);
  return check_number(100.0 * change.poor_strike, limits::poor_strike_change, "poor_strike", tell) && fits;
}

bool check_own_change(const OwnChange& own, Units units, const Tell& tell) {
  bool fits = check_length(own.carry_yd, change_limits(units), units, "carry_yd", tell);
  fits &= check_length(own.roll_yd, change_limits(units), units, "roll_yd", tell);
  return check_spreads({own.carry_sd_share, own.direction_sd_share, own.direction_mean_rad, own.poor_strike}, tell) &&
         fits;
}

bool check_change(const Change& change, Units units, const Tell& tell) {
  bool fits = check_carry_change(change.carry(), units, tell);
  const Tell of_all = below(tell, "change");
  fits &= check_spreads(
      {change.carry_sd_share, change.direction_sd_share, change.direction_mean_rad, change.poor_strike}, of_all);
  fits &= check_number(100.0 * change.short_game_share, limits::spread_change, "short_game_share", of_all);
  fits &= check_number(100.0 * change.putting_share, limits::spread_change, "putting_share", of_all);
  for (std::size_t i = 0; i < change.clubs.size(); ++i) {
    fits &= check_own_change(change.clubs[i], units, below(of_all, "clubs", i));
  }
  return fits;
}

// A change of single clubs is about clubs of the bag, each once.
void check_clubs_named(const Player& player, const Change& change, const Tell& tell) {
  std::vector<std::string> names;
  for (const Club& club : player.clubs) names.push_back(club.name);
  std::set<std::string> seen;
  for (std::size_t i = 0; i < change.clubs.size(); ++i) {
    const std::string& club = change.clubs[i].club;
    const std::string key = fmt::format("change.clubs[{}]", i);
    if (club_named(player, club) == nullptr) {
      const auto nearest = nearest_word(small_letters(club), names);
      tell(key, quoted(club),
           fmt::format("a club of {}: {}{}", player.label, fmt::join(names, ", "),
                       nearest ? "; the nearest is " + *nearest : ""));
    } else if (!seen.insert(plain_name(club)).second) {
      tell(key, quoted(club) + " again", "each club once");
    }
  }
}

// A change has to leave every club something to carry. `whose`: the golfer, where there are several.
void check_carries(const Player& player, const Change& change, Units units, const std::string& whose,
                   const Tell& tell) {
  const Player longer = golfer_after(player, change, ChangeStep::irons_carry);
  bool told_irons = false;
  for (const Club& club : longer.clubs) {
    if (club.carry_yd >= limits::least_carry_yd) continue;
    const bool driver = club.kind == ClubKind::driver;
    if (!driver && std::exchange(told_irons, true)) continue;
    const double asked = driver ? change.driver_carry_yd : change.irons_carry_yd;
    tell(driver ? "change.driver_carry_yd" : "change.irons_carry_yd",
         fmt::format("{}, which leaves the {}{} no carry", spoken(asked, units), club.name, whose),
         "a change that leaves every club something to carry");
  }
}

// What a change may leave of one club: its key, what the number is, and what it has to be.
struct LeftOfClub {
  std::string_view key;
  double number = 0.0;
  Limits fits;
};

std::vector<LeftOfClub> left_of(const Club& club, Units units) {
  const auto length = [&](double yards, Limits limits_yd) {
    const Limits limits = in_units(limits_yd, units);
    return std::pair(from_yards(yards, units), Limits{limits.low, limits.high, name(units)});
  };
  const auto [carry, carries] = length(club.carry_yd, {limits::least_carry_yd, limits::longest_carry_yd});
  const auto [roll, rolls] = length(club.roll_yd, limits::roll);
  const auto [sd, sds] = length(club.carry_sd_yd, {limits::least_carry_sd_yd, limits::carry_sd.high});
  return {{"change.clubs", carry, carries},
          {"change.clubs", roll, rolls},
          {"change.carry_sd_share", sd, sds},
          {"change.direction_sd_share",
           degrees(club.direction_sd_rad),
           {limits::least_direction_sd_deg, limits::direction_sd.high, "degrees"}},
          {"change.direction_mean_rad", degrees(club.direction_mean_rad), limits::direction_mean},
          {"change.poor_strike", 100.0 * club.poor_strike, {0.0, 100.0 * limits::poor_strike.high, "in 100 strikes"}}};
}

// A change has to leave golfers that play golf: of every number the first club is told that does not.
void check_golfer_after(const Player& player, const Change& change, Units units, const Tell& tell) {
  if (is_carry_alone(change)) return;
  std::set<std::string_view> told;
  for (const Club& club : golfer_after(player, change).clubs) {
    for (const LeftOfClub& left : left_of(club, units)) {
      if (left.number >= left.fits.low && left.number <= left.fits.high) continue;
      if (!told.insert(left.key).second) continue;
      tell(left.key, fmt::format("a change that leaves the {} {:.6g} {}", club.name, left.number, left.fits.unit),
           bounds(left.fits));
    }
  }
}

// What is common to the questions about one player; whether course and player are sound, so that a request can be held
// against them.
bool check_nouns(const Course& course, const Player& player, Faults& faults) {
  faults.add(validate(course));
  faults.add(validate(player));
  return faults.none();
}

}  // namespace

void require_valid(const Course& course, const Player& player, const GainRequest& request) {
  Faults faults;
  const Tell tell = faults.tell();
  const bool sound = check_nouns(course, player, faults);
  check_threads(request.threads, tell);
  check_mark(request, tell);
  const bool fits = check_change(request.change, course.units, tell);
  if (sound && request.tee) check_tee(course, *request.tee, "tee", tell);
  if (sound) check_holes(course, request.holes, tell);
  if (sound) check_clubs_named(player, request.change, tell);
  if (sound && fits) check_carries(player, request.change, course.units, "", tell);
  if (sound && fits) check_golfer_after(player, request.change, course.units, tell);
  faults.throw_any();
}

void require_valid(const Course& course, const Player& player, const StrategyRequest& request) {
  GainRequest same;
  same.tee = request.tee;
  same.change = request.change.value_or(Change{});
  same.holes = request.holes;
  same.threads = request.threads;
  require_valid(course, player, same);
}

void require_valid(const Course& course, const BandsRequest& request) {
  Faults faults;
  const Tell tell = faults.tell();
  faults.add(validate(course));
  if (request.changed_course) faults.add(validate(request.changed_course->course));
  const bool sound = faults.none();
  check_threads(request.threads, tell);
  check_count(request.genders.size(), 1, 2, "genders", "genders", tell);
  check_count(request.bands.size(), 1, all_bands.size(), "bands", "bands", tell);
  if (request.policy == PolicyChoice::both) tell("policy", "both", "habit or best");
  if (!request.rounds && !request.changed_course) tell("rounds", "none, and no changed course", "one or the other");
  const bool fits = check_carry_change(request.change, course.units, tell);
  if (sound) {
    for (std::size_t i = 0; i < request.tees.size(); ++i)
      check_tee(course, request.tees[i], fmt::format("tees[{}]", i), tell);
  }
  if (fits) {
    for (const Gender gender : request.genders) {
      for (const Band band : request.bands) {
        const Player player = standard_player(band, gender);
        check_carries(player, Change::of(request.change), course.units, " of " + player.label, tell);
      }
    }
  }
  faults.throw_any();
}

void require_valid(const Course& course, const MembersRequest& request) {
  Faults faults;
  const Tell tell = faults.tell();
  faults.add(validate(course));
  const bool sound = faults.none();
  check_threads(request.threads, tell);
  check_count(request.members.size(), 1, limits::most_members, "members", "members", tell);
  if (request.policy == PolicyChoice::both) tell("policy", "both", "habit or best");
  const bool fits = check_carry_change(request.change, course.units, tell);
  if (sound) {
    for (std::size_t i = 0; i < request.tees.size(); ++i)
      check_tee(course, request.tees[i], fmt::format("tees[{}]", i), tell);
  }
  for (std::size_t i = 0; i < request.members.size(); ++i) {
    const Member& member = request.members[i];
    const Tell tell_of = below(tell, "members", i);
    bool is_golfer = check_text(member.label, "label", tell_of);
    is_golfer = check_number(member.handicap_index, limits::handicap_index, "handicap_index", tell_of) && is_golfer;
    if (member.driver_carry_yd) {
      is_golfer = check_length(*member.driver_carry_yd, limits::member_driver_carry, course.units, "driver_carry_yd",
                               tell_of) &&
                  is_golfer;
    }
    if (is_golfer && fits) {
      check_carries(player_of(family_golfer(member)), Change::of(request.change), course.units, " of " + member.label,
                    tell);
    }
  }
  faults.throw_any();
}

void require_valid_curve(const Course& course, const GainRequest& request, double limit_yd, double step_yd) {
  Faults faults;
  const Tell tell = faults.tell();
  const Units units = course.units;
  const Limits step{to_yards(limits::curve_step.low, units), to_yards(limits::curve_step.high, units)};
  const bool fits = check_length(step_yd, step, units, "step_yd", tell);
  if (check_length(limit_yd, {0.0, change_limits(units).high}, units, "limit_yd", tell) && fits &&
      limit_yd > limits::most_curve_steps * step_yd * (1.0 + numerics::curve_rounding)) {
    tell("step_yd", spoken(step_yd, units), fmt::format("at most {} steps to limit_yd", limits::most_curve_steps));
  }
  const double steps = limit_yd / step_yd;
  if (fits && !(steps > 0.5 && std::abs(steps - std::round(steps)) <= numerics::curve_rounding * steps)) {
    tell("limit_yd", spoken(limit_yd, units), fmt::format("a multiple of the step, {}", spoken(step_yd, units)));
  }
  if (!is_carry_alone(request.change)) {
    tell("change", "more than the carry of driver and irons", "these alone: a curve is of added carry");
  }
  if (request.change.driver_carry_yd == 0.0 && request.change.irons_carry_yd != 0.0) {
    tell("change.driver_carry_yd", "0", "a change of the driver, since the irons keep their proportion to it");
  }
  faults.throw_any();
}

}  // namespace yardworth
