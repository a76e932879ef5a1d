#include "yardworth/flight.hpp"

namespace yardworth {

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
