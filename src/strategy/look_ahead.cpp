#include "strategy/look_ahead.hpp"

#include <algorithm>
#include <array>
#include <boost/container/static_vector.hpp>
#include <limits>
#include <utility>

#include "core/numerics.hpp"
#include "player/lies_in_play.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

BallsAround::BallsAround(const HoleModel& model, const DiscretisationOptions& vertices)
    : pin_(model.pin()),
      grid_(short_game_radius_yd, distance_yd(model.tee(), model.pin()) + numerics::grid_behind_tee_yd, vertices),
      vertices_(static_cast<std::size_t>(grid_.size())),
      weight_(lies_in_play.size() * vertices_, 0.0) {}

std::size_t BallsAround::index_of(Lie lie, int vertex) const {
  return index_in_play(lie) * vertices_ + static_cast<std::size_t>(vertex);
}

void BallsAround::add(Lie lie, Point at, double weight) {
  const double left = distance_yd(at, pin_);
  if (lie == Lie::green || left <= short_game_radius_yd) return;
  const RingGrid::Corners corners = grid_.corners(at - pin_, left);
  const std::array<double, 4> shares = corners.weights();
  for (std::size_t i = 0; i < shares.size(); ++i) weight_[index_of(lie, corners.vertex[i])] += weight * shares[i];
}

BallsAround balls_around(const EvaluatedPolicy& evaluated, const DiscretisationOptions& searched) {
  const HoleModel& model = evaluated.model;
  DiscretisationOptions vertices = searched;
  vertices.ring_yd /= numerics::look_ahead_closer;
  vertices.arc_yd /= numerics::look_ahead_closer;
  BallsAround balls(model, vertices);
  for (StateId state = 0; state < model.state_count(); ++state) {
    const double here = evaluated.policy.visits[static_cast<std::size_t>(state)];
    if (here > 0.0 && state != model.tee_state()) balls.add(model.lie_of(state), model.place_of(state), here);
  }
  return balls;
}

double strokes_ahead(const LookedAt& at, const Action& action, const std::vector<double>& value) {
  const HoleModel& model = at.model;
  const Swing swing = model.swing_of(at.lie, action);
  std::array<Stratum, 2> strata = strata_of(model, model.nearest_state(at.lie, at.from), swing, at.stride);
  for (Stratum& stratum : strata) {
    stratum.lattice_offset = model.discretisation().options().lattice_offset % numerics::lattice_offsets;
  }
  double strokes = 1.0;
  double replay = 0.0;
  for_each_equal_weight_strike(model, at.from, swing, strata, HoleModel::struck_heading_of(swing, action),
                               [&](const Rest& rest, double weight) {
                                 const Continuation continuation = model.continuation(rest);
                                 if (continuation.kind == Continuation::Kind::replay) replay += weight;
                                 strokes += weight * continuation.worth(value);
                               });
  return until_away(strokes, replay);
}

namespace {

// Of equal-weight strikes, more where more balls come to.
int stride_of(double visits) {
  if (visits >= numerics::look_ahead_every_second_visits) return 2;
  return visits >= numerics::look_ahead_every_fourth_visits ? 4 : 12;
}

// The shots that came near the best, that first.
std::vector<SearchedShot> promising(std::vector<SearchedShot> shots) {
  std::stable_sort(shots.begin(), shots.end(),
                   [](const SearchedShot& a, const SearchedShot& b) { return a.strokes < b.strokes; });
  const auto is_behind = [&](const SearchedShot& shot) {
    return shot.strokes > shots.front().strokes + numerics::look_ahead_margin;
  };
  shots.erase(std::find_if(shots.begin(), shots.end(), is_behind), shots.end());
  return shots;
}

}  // namespace

LookAhead::LookAhead(const Searched& searched, const HoleModel& model, const std::vector<double>& value,
                     BallsAround around)
    : pin_(model.pin()), around_(std::move(around)), clubs_(lies_in_play.size() * around_.vertices()) {
  const std::vector<Point> offsets = around_.grid().offsets();
  for (const Lie lie : lies_in_play) {
    for (std::size_t vertex = 0; vertex < around_.vertices(); ++vertex) {
      const std::size_t index = around_.index_of(lie, static_cast<int>(vertex));
      const double here = around_.at(index);
      if (here < numerics::look_ahead_visits) continue;
      const LookedAt at{model, lie, pin_ + offsets[vertex], stride_of(here)};
      const std::vector<SearchedShot> shots = promising(shots_between(searched, lie, at.from));
      for (const SearchedShot& shot : shots) {
        const Action action = action_of(searched.model, lie, at.from, shot);
        clubs_[index].push_back({shot.swing, shots.size() > 1 ? strokes_ahead(at, action, value) : shot.strokes});
      }
    }
  }
}

// A club that did not come near the best at a vertex is taken to be as far behind there as that asks for.
double LookAhead::strokes_with(const Clubs& clubs, int swing) {
  double least = std::numeric_limits<double>::infinity();
  for (const Club& club : clubs) {
    if (club.swing == swing) return club.strokes;
    least = std::min(least, club.strokes);
  }
  return least + numerics::look_ahead_margin;
}

std::optional<Action> action_ahead(const Searched& searched, const LookAhead& ahead, Lie lie, Point from) {
  if (!is_between_states(searched.model, lie, from)) return std::nullopt;
  const std::optional<int> swing = ahead.swing(lie, from);
  return swing ? action_with(searched, *swing, lie, from) : std::nullopt;
}

std::optional<int> LookAhead::swing(Lie lie, Point from) const {
  const RingGrid::Corners corners = around_.grid().corners(from - pin_, distance_yd(from, pin_));
  const std::array<double, 4> shares = corners.weights();
  boost::container::static_vector<std::pair<const Clubs*, double>, 4> known;
  double known_share = 0.0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    const Clubs& clubs = clubs_[around_.index_of(lie, corners.vertex[i])];
    if (shares[i] <= numerics::rounding_share || clubs.empty()) continue;
    known.emplace_back(&clubs, shares[i]);
    known_share += shares[i];
  }
  if (known_share < numerics::look_ahead_known_share) return std::nullopt;
  std::optional<int> best;
  double least = std::numeric_limits<double>::infinity();
  for (const auto& [candidates, of_them] : known) {
    for (const Club& club : *candidates) {
      double strokes = 0.0;
      for (const auto& [clubs, share] : known) strokes += share * strokes_with(*clubs, club.swing);
      if (strokes >= least - numerics::as_good_strokes) continue;
      least = strokes;
      best = club.swing;
    }
  }
  return best;
}

}  // namespace yardworth
