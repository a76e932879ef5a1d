#include "gain/what_was_asked.hpp"

namespace yardworth {

std::vector<std::string> common_cautions() {
  return {
      "Swing changes and speed work load the back, the wrists and the elbows: make them with a qualified coach, and "
      "ask a medical professional about any pain.",
      "Course ratings and handicaps are for the authorised golf association; nothing here stands in for them."};
}

}  // namespace yardworth
