#include "gain/player_change.hpp"

#include <fmt/format.h>

#include <cmath>

#include "core/message_text.hpp"
#include "core/numerics.hpp"
#include "gain/golfers.hpp"
#include "player/skill.hpp"

namespace yardworth {

namespace {

Club typical_club_like(const Player& player, const Club& club) {
  ClubEntry entry;
  entry.name = club.name;
  entry.carry_yd = club.carry_yd;
  return complete_club(entry, player.clubs.front().carry_yd, player.skill);
}

// Two clubs of one name, and their typical likes.
class ClubPair {
 public:
  ClubPair(const Player& before, const Club& was, const Player& after, const Club& is)
      : was_(was), is_(is), usual_before_(typical_club_like(before, was)), usual_after_(typical_club_like(after, is)) {}

  OwnChange change() const {
    OwnChange own;
    own.club = was_.name;
    own.carry_yd = more(was_.carry_yd, is_.carry_yd);
    if (is_said(&Club::roll_yd)) own.roll_yd = more(was_.roll_yd, is_.roll_yd);
    const Club longer = lengthen(was_, own.carry_yd);
    if (is_said(&Club::carry_sd_yd)) own.carry_sd_share = share(longer.carry_sd_yd, is_.carry_sd_yd);
    if (is_said(&Club::direction_sd_rad)) own.direction_sd_share = share(was_.direction_sd_rad, is_.direction_sd_rad);
    if (is_said(&Club::poor_strike)) own.poor_strike = more(was_.poor_strike, is_.poor_strike);
    own.direction_mean_rad = more(was_.direction_mean_rad, is_.direction_mean_rad);
    return own;
  }

 private:
  // Whether a file says the number: typical of both, it would move with the golfers' indexes and with places in the
  // bag alone.
  bool is_said(double Club::*number) const {
    return was_.*number != usual_before_.*number || is_.*number != usual_after_.*number;
  }
  // What is less than rounding is none.
  static double more(double before, double after) {
    const double added = after - before;
    return std::abs(added) > numerics::rounding_share * std::abs(before) ? added : 0.0;
  }
  static double share(double before, double after) { return more(before, after) / before; }

  const Club& was_;
  const Club& is_;
  Club usual_before_, usual_after_;
};

void tell_of_lone_clubs(const Player& one, const Player& other, const std::string& file, const char* found,
                        std::vector<Diagnostic>& findings) {
  for (const Club& club : one.clubs) {
    if (club_named(other, club.name) != nullptr) continue;
    findings.push_back(file_fault(file, fmt::format("{} {}", found, quoted(club.name)),
                                  "the same clubs before and after: what others are worth is not a change of these"));
    findings.back().path = "clubs";
  }
}

bool changes(const OwnChange& own) {
  return own.carry_yd != 0.0 || own.roll_yd != 0.0 || own.carry_sd_share != 0.0 || own.direction_sd_share != 0.0 ||
         own.direction_mean_rad != 0.0 || own.poor_strike != 0.0;
}

}  // namespace

Reading<Change> change_between(const Player& before, const Player& after, const std::string& after_file) {
  Reading<Change> reading;
  tell_of_lone_clubs(before, after, after_file, "nothing of the player's", reading.findings);
  tell_of_lone_clubs(after, before, after_file, "what the player does not have:", reading.findings);
  if (!reading.findings.empty()) return reading;
  reading.value.emplace();
  for (const Club& was : before.clubs) {
    OwnChange own = ClubPair(before, was, after, *club_named(after, was.name)).change();
    if (was.kind == ClubKind::driver) {
      reading.value->driver_carry_yd = own.carry_yd;
      own.carry_yd = 0.0;
    }
    if (changes(own)) reading.value->clubs.push_back(own);
  }
  return reading;
}

}  // namespace yardworth
