#include "gain/strike_change.hpp"

#include "player/skill.hpp"

namespace yardworth {

SaidStrike own_driver_strike(const Player& player) {
  SaidStrike strike = usual_strike(*typical_club("driver"));
  for (const StruckClub& struck : player.strikes) {
    if (parse_club_name(struck.club).kind != ClubKind::driver) continue;
    for (const StruckClub::Number& number : struck.numbers) {
      if (const auto field = field_of_key(number.key)) say(strike, *field, number.value);
    }
  }
  return strike;
}

StrikeChange change_of_strike(const Delivery& before, const Delivery& after) {
  const ClubHead head = typical_club("driver")->head;
  return {{before, fly(before, head)}, {after, fly(after, head)}};
}

DeliveryResult losses_before(const StrikeChange& change) {
  DeliveryRequest request;
  request.club = *typical_club("driver");
  request.delivery = change.before.delivery;
  request.after = change.after.delivery;
  return compute_delivery(request);
}

}  // namespace yardworth
