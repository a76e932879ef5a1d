#include "gain/finish_holes.hpp"

#include <optional>

#include "core/parallel.hpp"
#include "strategy/needed_carry.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

namespace {

// Nothing where the work is done; else what is wanting.
std::optional<UnfinishedHole> finish_hole(const HolesAsked& asked, const Discretisation& search, std::size_t i,
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
        return std::nullopt;
      } catch (const CannotFinish&) {
        continue;
      }
    }
  }
  return UnfinishedHole{hole.number, needed_carry_yd(map, tee)};
}

}  // namespace

void finish_holes(const HolesAsked& asked, const HoleWork& work) {
  const Discretisation search = search_grid();  // its lattices serve all holes
  std::vector<std::optional<UnfinishedHole>> tried(asked.holes.size());
  std::vector<double> lengths;
  for (const Hole* hole : asked.holes) lengths.push_back(hole->length_yd[asked.tee]);
  work_in_parallel(asked.threads, lengths, [&](std::size_t i) { tried[i] = finish_hole(asked, search, i, work); });
  std::vector<UnfinishedHole> unfinished;
  for (const auto& hole : tried) {
    if (hole) unfinished.push_back(*hole);
  }
  if (!unfinished.empty()) throw CannotFinish(unfinished, asked.units);
}

}  // namespace yardworth
