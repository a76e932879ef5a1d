#include "gain/strike_change.hpp"

namespace yardworth {

StrikeChange change_of_strike(const Delivery& before, const Delivery& after) {
  const ClubHead head = typical_club("driver")->head;
  return {{before, fly(before, head)}, {after, fly(after, head)}};
}

}  // namespace yardworth
