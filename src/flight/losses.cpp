#include <algorithm>
#include <array>
#include <boost/math/tools/minima.hpp>
#include <functional>

#include "core/numerics.hpp"
#include "flight/flown.hpp"
#include "flight/rules.hpp"
#include "yardworth/flight.hpp"

namespace yardworth {
namespace {

constexpr std::array<DeliveryAngle, 4> all_angles = {DeliveryAngle::dynamic_loft, DeliveryAngle::attack,
                                                     DeliveryAngle::path, DeliveryAngle::face};

// What is told of an angle, in the order of DeliveryAngle.
struct AngleFacts {
  std::string_view name;
  double Delivery::*own;
  Limits Attainable::*attainable;
};
constexpr std::array<AngleFacts, all_angles.size()> angle_facts = {{
    {"dynamic_loft", &Delivery::dynamic_loft_rad, &Attainable::dynamic_loft},
    {"attack", &Delivery::attack_rad, &Attainable::attack},
    {"path", &Delivery::path_rad, &Attainable::path},
    {"face", &Delivery::face_rad, &Attainable::face},
}};

const AngleFacts& facts_of(DeliveryAngle angle) { return angle_facts[static_cast<std::size_t>(angle)]; }
double& angle_in(Delivery& delivery, DeliveryAngle angle) { return delivery.*facts_of(angle).own; }
const Limits& limits_of(const Attainable& limits, DeliveryAngle angle) { return limits.*facts_of(angle).attainable; }

void widen(Limits& limits, double to_hold) {
  limits.low = std::min(limits.low, to_hold);
  limits.high = std::max(limits.high, to_hold);
}

Attainable widened(Attainable limits, const Delivery& to_hold) {
  for (const AngleFacts& angle : angle_facts) widen(limits.*angle.attainable, to_hold.*angle.own);
  return limits;
}

double straight(const Limits& limits) { return std::clamp(0.0, limits.low, limits.high); }

// Strikes of one club at one speed, and how far they carry.
class Search {
 public:
  Search(const ClubHead& head, const FlightConditions& conditions) : head_(head), conditions_(conditions) {}

  Flight flight(const Delivery& delivery) const { return flown(delivery, head_, conditions_); }
  double carry(const Delivery& delivery) const { return flight(delivery).carry_m; }

  // The delivery with one angle where it carries furthest. No face lies back less than the head comes up.
  Delivery best(Delivery delivery, DeliveryAngle angle, Limits limits) const {
    if (angle == DeliveryAngle::dynamic_loft) limits.low = std::max(limits.low, delivery.attack_rad);
    if (angle == DeliveryAngle::attack) limits.high = std::min(limits.high, delivery.dynamic_loft_rad);
    const auto shortness = [&](double value) {
      angle_in(delivery, angle) = value;
      return -carry(delivery);
    };
    angle_in(delivery, angle) = furthest(shortness, limits);
    return delivery;
  }

  // The most carry within limits: of straight deliveries, and in wind of bent ones too, which may carry further there.
  // Of two that carry as far, the one that bends as the golfer's own does.
  Delivery best(double club_speed_mps, const Attainable& limits, const Delivery& own) const {
    const Delivery straightest = best_straight(club_speed_mps, limits);
    Delivery most = straightest;
    if (conditions_.wind.speed_mps == 0.0) return most;
    std::array<double, 2> faces = {limits.face.high, limits.face.low};
    if (own.face_rad < own.path_rad) std::swap(faces[0], faces[1]);
    for (const double face : faces) {
      Delivery bent = straightest;
      bent.face_rad = face;
      bent = climbed(bent, limits);
      if (beats(bent, most)) most = bent;
    }
    return most;
  }

  // The best so far, or what another one climbs to where that carries further already.
  Delivery better(const Delivery& best_so_far, const Delivery& other, const Attainable& limits) const {
    return beats(other, best_so_far) ? climbed(other, limits) : best_so_far;
  }

 private:
  // Straight, with the loft fitted anew to each attack.
  Delivery best_straight(double club_speed_mps, const Attainable& limits) const {
    Delivery delivery{club_speed_mps, 0.0, 0.0, straight(limits.path), straight(limits.face)};
    const auto fitted = [&](double attack) {
      delivery.attack_rad = attack;
      return best(delivery, DeliveryAngle::dynamic_loft, limits.dynamic_loft);
    };
    Limits attacks = limits.attack;
    attacks.high = std::min(attacks.high, limits.dynamic_loft.high);
    return fitted(furthest([&](double attack) { return -carry(fitted(attack)); }, attacks));
  }

  // By more than hardly anything.
  bool beats(const Delivery& one, const Delivery& other) const {
    return carry(one) > carry(other) + numerics::least_climb_m;
  }

  // One angle after another where it carries furthest, round after round, until a round gains hardly anything.
  Delivery climbed(Delivery delivery, const Attainable& limits) const {
    constexpr std::array order = {DeliveryAngle::path, DeliveryAngle::face, DeliveryAngle::dynamic_loft,
                                  DeliveryAngle::attack};
    double carried = carry(delivery);
    for (int round = 0; round < numerics::most_climbs; ++round) {
      const double before = carried;
      for (const DeliveryAngle angle : order) {
        const Delivery turned = best(delivery, angle, limits_of(limits, angle));
        const double there = carry(turned);
        if (there <= carried) continue;
        delivery = turned;
        carried = there;
      }
      if (carried - before < numerics::least_climb_m) break;
    }
    return delivery;
  }

  // Where a value is least; a minimum at an end is not left to what comes near it.
  template <class Value>
  static double furthest(const Value& value, const Limits& limits) {
    if (limits.high <= limits.low) return limits.low;
    auto best = boost::math::tools::brent_find_minima(value, limits.low, limits.high, numerics::best_angle_bits);
    for (const double end : {limits.low, limits.high}) {
      const double there = value(end);
      if (there <= best.second) best = {end, there};
    }
    return best.first;
  }

  const ClubHead& head_;
  const FlightConditions& conditions_;
};

// Brings one angle after another to the best delivery's, first the one that gains most. The sum of the gains is the
// whole difference, since each begins where the last ended.
std::array<Loss, 4> in_turn(const Search& search, const Losses& losses) {
  Delivery here = losses.own.delivery;
  Delivery best = losses.best.delivery;
  double carried = losses.own.flight.carry_m;
  std::array<DeliveryAngle, 4> left = all_angles;
  std::array<Loss, 4> turns;
  for (std::size_t turn = 0; turn < turns.size(); ++turn) {
    std::size_t most = turn;
    double furthest = 0.0;
    for (std::size_t i = turn; i < left.size(); ++i) {
      Delivery tried = here;
      angle_in(tried, left[i]) = angle_in(best, left[i]);
      const double there = search.carry(tried);
      if (i > turn && there <= furthest) continue;
      most = i;
      furthest = there;
    }
    std::swap(left[turn], left[most]);
    turns[turn].of = left[turn];
    turns[turn].in_turn_m = furthest - carried;
    angle_in(here, left[turn]) = angle_in(best, left[turn]);
    carried = furthest;
  }
  return turns;
}

}  // namespace

std::string_view name(DeliveryAngle angle) { return facts_of(angle).name; }

DeliveryFlight most_carry(double club_speed_mps, const ClubHead& head, const FlightConditions& conditions,
                          const Attainable& limits) {
  refuse_faults(validate(limits));
  const Search search(head, conditions);
  refuse_faults({club_speed_mps, limits.attack.low, limits.dynamic_loft.high, 0.0, 0.0}, head, conditions);
  const Delivery delivery = search.best(club_speed_mps, limits, {});
  return {delivery, search.flight(delivery)};
}

DeliveryFlight best_loft(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions,
                         const Limits& dynamic_loft) {
  refuse_faults(validate(Attainable{{}, dynamic_loft, {}, {}}));
  Delivery fitted = delivery;
  for (const double end : {dynamic_loft.high, std::max(dynamic_loft.low, delivery.attack_rad)}) {
    fitted.dynamic_loft_rad = end;
    refuse_faults(fitted, head, conditions);
  }
  const Search search(head, conditions);
  fitted = search.best(delivery, DeliveryAngle::dynamic_loft, dynamic_loft);
  return {fitted, search.flight(fitted)};
}

Losses losses_of(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions,
                 const Attainable& limits) {
  refuse_faults(delivery, head, conditions);
  refuse_faults(validate(limits));
  const Attainable wide = widened(limits, delivery);
  FlightConditions along = conditions;
  along.wind = without_side_wind(conditions.wind);
  const Search search(head, along);
  std::array<Delivery, all_angles.size()> alone;
  Delivery most = search.better(search.best(delivery.club_speed_mps, wide, delivery), delivery, wide);
  for (std::size_t i = 0; i < alone.size(); ++i) {
    alone[i] = search.best(delivery, all_angles[i], limits_of(wide, all_angles[i]));
    most = search.better(most, alone[i], wide);
  }
  Losses losses;
  losses.own = {delivery, search.flight(delivery)};
  losses.best = {most, search.flight(most)};
  losses.losses = in_turn(search, losses);
  losses.together_m = losses.best.flight.carry_m - losses.own.flight.carry_m;
  for (Loss& loss : losses.losses) {
    loss.own_rad = angle_in(losses.own.delivery, loss.of);
    loss.best_rad = angle_in(losses.best.delivery, loss.of);
    const Delivery& turned = alone[static_cast<std::size_t>(loss.of)];
    loss.alone_m = std::max(0.0, search.carry(turned) - losses.own.flight.carry_m);
  }
  return losses;
}

NewHeadGain new_head_gain(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions,
                          const NewHead& new_head) {
  ClubHead livelier = head;
  livelier.restitution = new_head.restitution;
  refuse_faults(delivery, head, conditions);
  refuse_faults(validate(new_head));
  const Search old_search(head, conditions);
  const Search new_search(livelier, conditions);
  const double loft = delivery.dynamic_loft_rad;
  const Limits fitting{std::max(loft - new_head.most_fitting_rad, radians(limits::dynamic_loft.low)),
                       std::min(loft + new_head.most_fitting_rad, radians(limits::dynamic_loft.high))};
  const Delivery fitted = new_search.best(delivery, DeliveryAngle::dynamic_loft, fitting);
  const double own = old_search.carry(delivery);
  NewHeadGain gain;
  gain.restitution_m = new_search.carry(delivery) - own;
  gain.loft_m = old_search.carry(old_search.best(delivery, DeliveryAngle::dynamic_loft, fitting)) - own;
  gain.together_m = new_search.carry(fitted) - own;
  gain.dynamic_loft_rad = fitted.dynamic_loft_rad;
  return gain;
}

std::vector<std::vector<BoardCell>> board(const std::vector<double>& club_speeds_mps,
                                          const std::vector<double>& attacks_rad, const ClubHead& head,
                                          const FlightConditions& conditions, const Limits& dynamic_loft) {
  std::vector<std::vector<BoardCell>> rows;
  for (const double speed : club_speeds_mps) {
    std::vector<BoardCell> row;
    for (const double attack : attacks_rad) {
      const DeliveryFlight best =
          best_loft({speed, attack, dynamic_loft.high, 0.0, 0.0}, head, conditions, dynamic_loft);
      row.push_back({speed, attack, best.delivery.dynamic_loft_rad, best.flight.carry_m, best.flight.total_m});
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace yardworth
