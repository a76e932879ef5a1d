#include "bag/shots_by_club.hpp"

namespace yardworth {

std::vector<std::vector<const Shot*>> shots_by_club(const ShotLog& log) {
  std::vector<std::vector<const Shot*>> by_club(log.clubs.size());
  for (const Shot& shot : log.shots) by_club[shot.club].push_back(&shot);
  return by_club;
}

}  // namespace yardworth
