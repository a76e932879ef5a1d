#include "gain/strike_change.hpp"

#include "player/skill.hpp"

namespace yardworth {

SaidStrike own_driver_strike(const Player& player) {
  SaidStrike strike = usual_strike(*typical_club("driver"));
  for (const StruckClub& struck : player.strikes) {
    if (parse_club_name(struck.club).kind != ClubKind::driver) continue;
    for (const StruckClub::Number& number : struck.numbers) {
      for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
        if (delivery_fields[i].key == number.key) say(strike, i, number.value);
      }
    }
  }
  return strike;
}

StrikeChange change_of_strike(const Delivery& before, const Delivery& after) {
  const ClubHead head = typical_club("driver")->head;
  return {{before, fly(before, head)}, {after, fly(after, head)}};
}

}  // namespace yardworth
