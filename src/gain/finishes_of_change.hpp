#pragma once

#include <optional>

#include "gain/golfers.hpp"
#include "shot/finish_strokes.hpp"

namespace yardworth {

// How often the golfers before and after a change take how many strokes in the short game.
struct FinishesOfChange {
  FinishesOfChange(const Golfers& golfers, const Baseline& baseline) : before(golfers.before.skill, baseline) {
    const Baseline& now = golfers.finish_after_all(baseline);
    if (&now != &baseline) changed.emplace(golfers.after().skill, now);
  }

  const FinishStrokes& after() const { return changed ? *changed : before; }

  FinishStrokes before;
  std::optional<FinishStrokes> changed;  // where the change is about them
};

}  // namespace yardworth
