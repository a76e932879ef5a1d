#include "gain/finish_holes.hpp"

#include <utility>

#include "core/parallel.hpp"
#include "gain/better_policy.hpp"
#include "gain/solve_hole.hpp"
#include "strategy/most_strokes.hpp"
#include "strategy/needed_carry.hpp"

namespace yardworth {

std::optional<UnfinishedHole> finish_hole(const HoleAsked& asked, const std::function<void(const HoleModels&)>& work) {
  const Point tee = asked.map.tee(asked.hole.length_yd[asked.tee]);
  const DiscretisationOptions searched = options_for_hole(asked.search.options(), asked.hole.number);
  // What policies are worth is told on one grid, whichever they were found on: one verdict on the hole, and one number.
  const Discretisation held_out = held_out_grid(asked.search.with(searched));
  // Of few strikes from a place none may get away, though of more some do; and of states far apart some may lie where a
  // golfer never plays from and cannot play on.
  DiscretisationOptions more_strikes = searched;
  more_strikes.equal_weight_rows = false;
  DiscretisationOptions closer = more_strikes;
  closer.arc_yd = held_out_options(closer).arc_yd;
  std::vector<DiscretisationOptions> grids = {searched, more_strikes, closer};
  double most_strokes = 0.0;
  const auto unfinished = [&] {
    return UnfinishedHole{asked.hole.number, needed_carry_yd(asked.map, tee), most_strokes};
  };
  // A search looks at places where the habit never comes. Where it cannot be done on any grid, the best policy is the
  // habit: what one policy finishes the other does too. Where it was not the search that failed, that changes nothing.
  for (const bool start_is_enough : {false, true}) {
    std::vector<DiscretisationOptions> not_searched;
    for (const DiscretisationOptions& options : grids) {
      try {
        HoleModels models(asked.map, tee, asked.golfers, asked.baseline, {asked.search.with(options), held_out},
                          asked.kept_shots);
        most_strokes = most_strokes_of(models.before);
        models.start_is_enough = start_is_enough;
        work(models);
        return std::nullopt;
      } catch (const SearchCannotFinish&) {
        not_searched.push_back(options);
      } catch (const HabitCannotFinish&) {
        return unfinished();
      } catch (const CannotFinish&) {
        continue;
      }
    }
    grids = std::move(not_searched);
  }
  return unfinished();
}

void finish_holes(const HolesAsked& asked, const HoleWork& work) {
  const Discretisation& search = search_grid();
  std::vector<std::optional<UnfinishedHole>> tried(asked.holes.size());
  std::vector<double> lengths;
  for (const Hole* hole : asked.holes) lengths.push_back(hole->length_yd[asked.tee]);
  work_in_parallel(asked.threads, lengths, [&](std::size_t i) {
    const HoleMap map(*asked.holes[i], asked.firmness);
    tried[i] = finish_hole({*asked.holes[i], map, asked.tee, asked.golfers, asked.baseline, search},
                           [&](const HoleModels& models) { work(i, models); });
  });
  std::vector<UnfinishedHole> unfinished;
  for (const auto& hole : tried) {
    if (hole) unfinished.push_back(*hole);
  }
  if (!unfinished.empty()) throw CannotFinish(unfinished, asked.units);
}

}  // namespace yardworth
