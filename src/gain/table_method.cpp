#include "gain/table_method.hpp"

#include "gain/followed_policy.hpp"
#include "gain/tee_shot.hpp"
#include "strategy/follow.hpp"
#include "strategy/habit.hpp"
#include "strategy/most_strokes.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

namespace {

// One golfer of the change on the hole. Holds references.
struct OnHole {
  const HoleModel& model;
  const Baseline& baseline;
};

// A tee shot and what the table makes of it.
struct TableShot {
  Action action;
  double strokes = 0.0;
};

TableShot shot_by_table(const OnHole& on, const Action& action) {
  const double strokes = table_strokes(on.model, on.baseline, strike_tee_shot_alone(on.model, action, 1));
  require_finished(on.model, strokes);
  return {action, strokes};
}

bool is_struck_alike(const HoleModel& a, const Action& of_a, const HoleModel& b, const Action& of_b) {
  const Swing swing_a = a.swing_of(Lie::tee, of_a);
  const Swing swing_b = b.swing_of(Lie::tee, of_b);
  return swing_a == swing_b && of_a.allows_for_mean == of_b.allows_for_mean &&
         HoleModel::heading_of(swing_a, of_a) == HoleModel::heading_of(swing_b, of_b);
}

// The tee shot of a policy followed with other clubs: where the table likes it better, the one played before.
TableShot follow_by_table(const OnHole& on, const HoleModel& before_model, const TableShot& before) {
  const HoleModel& model = on.model;
  const Action now = follow_action(model, before_model, Lie::tee, model.tee(), before.action);
  // Most steps of a change are of other clubs than the one played here.
  if (is_struck_alike(model, now, before_model, before.action)) return {now, before.strokes};
  const TableShot fits = shot_by_table(on, now);
  const auto earlier = same_shot(model, before_model, Lie::tee, before.action);
  if (!earlier || difference_of(model, Lie::tee, model.tee(), now, *earlier) != Difference::other) return fits;
  const TableShot stays = shot_by_table(on, *earlier);
  return stays.strokes < fits.strokes ? stays : fits;
}

}  // namespace

TableAnswer answer_by_table(const HoleModels& models, const Baseline& baseline) {
  const Golfers& golfers = models.golfers;
  const HoleModel& model = models.before;
  const TableShot before = shot_by_table({model, baseline}, habit_action(model, Lie::tee, model.tee()));
  StepValues strokes{before.strokes};
  TableShot last = before;
  const HoleModel* earlier = &model;
  double left_out = 0.0;  // by steps that do not count, where the tee shot is none of the driver's
  for (std::size_t i = 0; i < models.steps.size(); ++i) {
    const GolferAfterStep& golfer = golfers.steps[i];
    const TableShot shot = follow_by_table({models.steps[i], baseline}, *earlier, last);
    if (is_counted(Method::table, golfer.step)) {
      strokes.steps.push_back({golfer.step, shot.strokes - left_out});
    } else {
      left_out += shot.strokes - last.strokes;
    }
    last = shot;
    earlier = &models.steps[i];
  }
  strokes.replanned = strokes.followed();
  return {before.action, last.action, strokes};
}

}  // namespace yardworth
