#include "strategy/kept_shots.hpp"

#include <algorithm>
#include <boost/container_hash/hash.hpp>

namespace yardworth {

std::size_t KeptShots::number_of(const Bag& bag) {
  const auto known = std::find(bags_.begin(), bags_.end(), bag);
  const auto number = static_cast<std::size_t>(known - bags_.begin());
  if (known == bags_.end()) bags_.push_back(bag);
  return number;
}

void KeptShots::forget_strikes() {
  shots_.clear();
  strikes_.clear();
}

// Shots from one place that differ in nothing that is hashed are few.
std::size_t KeptShots::Hash::operator()(const PlacedShot& shot) const {
  std::size_t seed = 0;
  boost::hash_combine(seed, shot.from.x);
  boost::hash_combine(seed, shot.from.y);
  boost::hash_combine(seed, shot.swing.carry_yd);
  boost::hash_combine(seed, shot.swing.direction_scale_rad);
  boost::hash_combine(seed, shot.stride);
  return seed;
}

std::size_t KeptShots::Hash::operator()(const Place& place) const {
  std::size_t seed = place.bag;
  boost::hash_combine(seed, place.at.x);
  boost::hash_combine(seed, place.at.y);
  boost::hash_combine(seed, static_cast<int>(place.lie));
  return seed;
}

}  // namespace yardworth
