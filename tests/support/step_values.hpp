#pragma once

#include "yardworth/change.hpp"

namespace yardworth::test {

// What a hole or a round is worth before a longer driver, after it, with longer irons too, and planned afresh.
inline StepValues of_carries(double before, double driver, double irons, double replanned) {
  return {before, {{ChangeStep::driver_carry, driver}, {ChangeStep::irons_carry, irons}}, replanned};
}

}  // namespace yardworth::test
