#include <cmath>

#include "yardworth/flight.hpp"

namespace yardworth {

void ask_for_usual_board(DeliveryRequest& request) {
  const double speed_mph = to_mph(request.delivery.club_speed_mps);
  const double middle_mph = std::round(speed_mph / usual_board_step_mph) * usual_board_step_mph;
  for (int step = -usual_board_steps_either_way; step <= usual_board_steps_either_way; ++step) {
    const double mph = middle_mph + step * usual_board_step_mph;
    if (mph >= limits::club_speed.low && mph <= limits::club_speed.high) {
      request.board_speeds_mps.push_back(from_mph(mph));
    }
  }
  const Limits attacks = attainable(request.club).attack;
  for (int i = 0; i < usual_board_attacks; ++i) {
    request.board_attacks_rad.push_back(attacks.low + (attacks.high - attacks.low) * i / (usual_board_attacks - 1));
  }
}

DeliveryResult compute_delivery(const DeliveryRequest& request) {
  DeliveryResult result;
  result.club = request.club;
  result.conditions = request.conditions;
  result.limits = attainable(request.club);
  const ClubHead& head = request.club.head;
  result.losses = losses_of(request.delivery, head, request.conditions, result.limits);
  result.own = {request.delivery, fly(request.delivery, head, request.conditions)};
  const Delivery& best = result.losses.best.delivery;
  result.best = {best, fly(best, head, request.conditions)};
  if (request.after) result.after = DeliveryFlight{*request.after, fly(*request.after, head, request.conditions)};
  if (request.club.teed) {
    ClubHead older = head;
    older.restitution.at_rest = older_restitution;
    result.new_head = new_head_gain(request.delivery, older, request.conditions);
  }
  if (!request.board_speeds_mps.empty() && !request.board_attacks_rad.empty()) {
    result.board = board(request.board_speeds_mps, request.board_attacks_rad, head, request.conditions,
                         result.limits.dynamic_loft);
  }
  return result;
}

}  // namespace yardworth
