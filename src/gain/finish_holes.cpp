#include "gain/finish_holes.hpp"

#include <fmt/format.h>

#include <string>

#include "core/numerics.hpp"
#include "core/parallel.hpp"
#include "strategy/needed_carry.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

namespace {

// Empty, or why the hole cannot be finished.
std::string finish_or_say_why(const HolesAsked& asked, const Discretisation& search, std::size_t i,
                              const HoleWork& work) {
  const Hole& hole = *asked.holes[i];
  const HoleMap map(hole, asked.firmness);
  const Point tee = map.tee(hole.length_yd[asked.tee]);
  // Of few strikes from a place none may get away, though of more some do; and of states far apart some may lie where a
  // golfer never plays from and cannot play on.
  DiscretisationOptions more_strikes = search.options();
  more_strikes.equal_weight_rows = false;
  DiscretisationOptions closer = more_strikes;
  closer.arc_yd = held_out_options(closer).arc_yd;
  // A search looks at places where the habit never comes. Where it cannot be done on any grid, the best policy is the
  // habit: what one policy finishes the other does too.
  for (const bool start_is_enough : {false, true}) {
    for (const DiscretisationOptions& options : {search.options(), more_strikes, closer}) {
      try {
        HoleModels models(map, tee, asked.golfers, asked.baseline, search.with(options));
        models.start_is_enough = start_is_enough;
        work(i, models);
        return "";
      } catch (const CannotFinish&) {
        continue;
      }
    }
  }
  const double carry = needed_carry_yd(map, tee);
  return carry > 0.0 ? fmt::format("hole {} needs a carry of {:.0f} yards", hole.number, carry)
                     : fmt::format("hole {} leads nowhere with this plan", hole.number);
}

}  // namespace

void finish_holes(const HolesAsked& asked, const HoleWork& work) {
  const Discretisation search = search_grid();  // its lattices serve all holes
  std::vector<std::string> failures(asked.holes.size());
  std::vector<double> lengths;
  for (const Hole* hole : asked.holes) lengths.push_back(hole->length_yd[asked.tee]);
  work_in_parallel(asked.threads, lengths,
                   [&](std::size_t i) { failures[i] = finish_or_say_why(asked, search, i, work); });
  std::string all;
  for (const std::string& failure : failures) {
    if (!failure.empty()) all += (all.empty() ? "" : "; ") + failure;
  }
  if (all.empty()) return;
  throw CannotFinish(fmt::format("cannot be finished with these clubs in {:.0f} strokes a hole: {}",
                                 numerics::most_strokes_of_hole, all));
}

}  // namespace yardworth
