#include "gain/request_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/numerics.hpp"
#include "gain/golfer_family.hpp"
#include "validate/tell.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"

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

bool check_change(const DistanceChange& change, Units units, const Tell& tell) {
  const Limits limits = change_limits(units);
  bool fits = check_length(change.driver_carry_yd, limits, units, "change.driver_carry_yd", tell);
  return check_length(change.irons_carry_yd, limits, units, "change.irons_carry_yd", tell) && fits;
}

// A change has to leave every club something to carry. `whose`: the golfer, where there are several.
void check_carries(const Player& player, const DistanceChange& change, Units units, const std::string& whose,
                   const Tell& tell) {
  const Player longer = lengthen(player, change.driver_carry_yd, change.irons_carry_yd);
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
  if (sound && fits) check_carries(player, request.change, course.units, "", tell);
  faults.throw_any();
}

void require_valid(const Course& course, const Player& player, const StrategyRequest& request) {
  GainRequest same;
  same.tee = request.tee;
  same.change = request.change.value_or(DistanceChange{});
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
  const bool fits = check_change(request.change, course.units, tell);
  if (sound) {
    for (std::size_t i = 0; i < request.tees.size(); ++i)
      check_tee(course, request.tees[i], fmt::format("tees[{}]", i), tell);
  }
  if (fits) {
    for (const Gender gender : request.genders) {
      for (const Band band : request.bands) {
        const Player player = standard_player(band, gender);
        check_carries(player, request.change, course.units, " of " + player.label, tell);
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
  const bool fits = check_change(request.change, course.units, tell);
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
      check_carries(player_of(family_golfer(member)), request.change, course.units, " of " + member.label, tell);
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
  if (request.change.driver_carry_yd == 0.0 && request.change.irons_carry_yd != 0.0) {
    tell("change.driver_carry_yd", "0", "a change of the driver, since the irons keep their proportion to it");
  }
  faults.throw_any();
}

}  // namespace yardworth
