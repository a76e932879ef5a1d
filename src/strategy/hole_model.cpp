#include "strategy/hole_model.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>
#include <optional>

#include "strategy/kept_shots.hpp"

namespace yardworth {

HoleModel::HoleModel(const HoleMap& map, Point tee, const Player& player, const Baseline& short_game,
                     const Discretisation& discretisation, KeptShots* kept_shots)
    : map_(&map),
      tee_(tee),
      short_game_(&short_game),
      grid_(short_game_radius_yd,
            std::max(numerics::least_grid_yd, distance_yd(tee, map.pin()) + numerics::grid_behind_tee_yd),
            discretisation.options()),
      discretisation_(discretisation),
      kept_shots_(kept_shots) {
  take_swings(player);
  take_short_game(short_game);
  choose_places();
}

HoleModel HoleModel::for_player(const Player& player) const {
  HoleModel model = *this;
  model.take_swings(player);
  return model;
}

HoleModel HoleModel::for_golfer(const Player& player, const Baseline& short_game) const {
  HoleModel model = for_player(player);
  if (&short_game != short_game_) model.take_short_game(short_game);
  return model;
}

HoleModel HoleModel::with_other_strikes() const {
  HoleModel model = *this;
  DiscretisationOptions options = discretisation_.options();
  options.lattice_offset += numerics::lattice_offsets / 4;
  model.discretisation_ = discretisation_.with(options);
  return model;
}

void HoleModel::take_short_game(const Baseline& short_game) {
  short_game_ = &short_game;
  for (const Lie lie : all_lies) {
    auto& on_rings = baseline_on_rings_[static_cast<std::size_t>(lie)];
    on_rings.clear();
    for (const double radius : grid_.radii()) on_rings.push_back(short_game.strokes(lie, radius));
  }
}

void HoleModel::take_swings(const Player& player) {
  has_direction_mean_ = false;
  for (const Lie lie : all_lies) {
    swings_[static_cast<std::size_t>(lie)] = full_swings(player, lie);
    for (const Swing& swing : swings(lie)) has_direction_mean_ |= swing.direction_mean_rad != 0.0;
  }
  if (kept_shots_ != nullptr) bag_number_ = kept_shots_->number_of(swings_);
}

namespace {

// Points of the line of play, close enough together to tell how far from it a place is to two yards.
std::vector<Point> along_line(const LineOfPlay& line) {
  std::vector<Point> points;
  for (double along = 0.0; along < line.length_yd(); along += numerics::corridor_step_yd)
    points.push_back(line.at(along));
  points.push_back(line.at(line.length_yd()));
  return points;
}

bool in_corridor(const std::vector<Point>& line, Point place) {
  return std::any_of(line.begin(), line.end(), [place](Point p) {
    const Point off = place - p;
    return off.x * off.x + off.y * off.y <= corridor_yd * corridor_yd;
  });
}

// Which of the vertices kept of a ring of so many (rising, not empty) is nearest to a vertex.
std::size_t nearest_kept(const std::vector<int>& kept, int vertex, int count) {
  const auto next = std::lower_bound(kept.begin(), kept.end(), vertex);
  const std::size_t after = next == kept.end() ? 0 : static_cast<std::size_t>(next - kept.begin());
  const std::size_t before = (after + kept.size() - 1) % kept.size();
  const auto steps_between = [count](int from, int to) { return (to - from + count) % count; };
  return steps_between(vertex, kept[after]) < steps_between(kept[before], vertex) ? after : before;
}

}  // namespace

void HoleModel::choose_places() {
  const std::vector<Point> line = along_line(map_->line());
  const std::vector<Point> offsets = grid_.offsets();
  std::vector<Point> places;
  place_at_.reserve(offsets.size());
  for (std::size_t ring = 0; ring < grid_.radii().size(); ++ring) {
    const int first = grid_.first_vertex(ring);
    const int count = grid_.first_vertex(ring + 1) - first;
    const int first_place = place_count();
    const auto place_of_vertex = [&](int vertex) { return pin() + offsets[static_cast<std::size_t>(first + vertex)]; };
    std::vector<int> kept;
    for (int vertex = 0; vertex < count; ++vertex) {
      if (in_corridor(line, place_of_vertex(vertex))) kept.push_back(vertex);
    }
    // A ring that nowhere comes near the line, far behind the tee, keeps all.
    if (kept.empty()) {
      kept.resize(static_cast<std::size_t>(count));
      std::iota(kept.begin(), kept.end(), 0);
    }
    for (const int vertex : kept) {
      vertices_.push_back(first + vertex);
      ring_at_.push_back(ring);
      places.push_back(place_of_vertex(vertex));
    }
    for (int vertex = 0; vertex < count; ++vertex) {
      place_at_.push_back(first_place + static_cast<int>(nearest_kept(kept, vertex, count)));
    }
  }
  places_.reserve(static_cast<std::size_t>(state_count()));
  for (std::size_t lie = 0; lie < lies_in_play.size(); ++lie)
    places_.insert(places_.end(), places.begin(), places.end());
  places_.push_back(tee_);
}

int HoleModel::longest_stride(StateId state) const {
  const bool equal_weight = has_equal_weight_rows() && state != tee_state();
  return equal_weight ? largest_lattice_stride * discretisation_.options().rows_finer
                      : fitting_stride(state, largest_lattice_stride);
}

int HoleModel::longer_stride(StateId state, int stride) const {
  const int longest = longest_stride(state);
  int longer = std::min(2 * stride, longest);
  while (longest % longer != 0) --longer;
  return longer;
}

// The longest stride that leaves as many equal-weight strikes as a state with so many visits deserves, or all or the
// fewest that there are.
int HoleModel::equal_weight_stride_for(double visits_here) const {
  const int finer = discretisation_.options().rows_finer;
  const int longest = finer * largest_lattice_stride;
  const double usual = numerics::usual_strikes_visits / (visits_here * sampling_density());
  const double wanted = finer * std::pow(usual, numerics::strikes_by_visits);
  int stride = static_cast<int>(std::clamp(wanted, 1.0, static_cast<double>(longest)));
  while (longest % stride != 0) --stride;
  return stride;
}

int HoleModel::stride_for(StateId state, double visits_here) const {
  if (state == tee_state()) return 1;
  if (has_equal_weight_rows() && discretisation_.options().rows_finer > 1) return equal_weight_stride_for(visits_here);
  const auto as_many_as = [&](double usual) { return visits_here >= usual / sampling_density(); };
  return fitting_stride(state, as_many_as(numerics::every_node_visits)     ? 1
                               : as_many_as(numerics::every_second_visits) ? 2
                               : as_many_as(numerics::every_third_visits)  ? 3
                                                                           : largest_lattice_stride);
}

int HoleModel::fitting_stride(StateId state, int wanted) const {
  const int solid = solid_steps_per_aim(solid_lattice(state));
  const int poor = poor_steps_per_aim(poor_lattice(state));
  const auto fits = [&](int stride) { return solid % stride == 0 && (poor % stride == 0 || stride % poor == 0); };
  int stride = wanted;
  while (!fits(stride)) --stride;
  return stride;
}

double HoleModel::baseline_at(StateId state) const {
  if (state == tee_state()) return short_game().strokes(Lie::tee, distance_yd(tee(), pin()));
  const auto [lie, place] = std::div(state, place_count());
  return baseline_at(lies_in_play[static_cast<std::size_t>(lie)], place);
}

Lie HoleModel::lie_of(StateId state) const {
  if (state == tee_state()) return Lie::tee;
  return lies_in_play[static_cast<std::size_t>(state / place_count())];
}

StateId HoleModel::nearest_state(Lie lie, Point place) const {
  if (lie == Lie::tee) return tee_state();
  const Point offset = place - pin();
  const RingGrid::Corners corners = grid_.corners(offset, distance_yd(place, pin()));
  const bool further = corners.ring_share > 0.5;
  const bool second = (further ? corners.far_share : corners.near_share) > 0.5;
  const int vertex = corners.vertex[(further ? 2U : 0U) + (second ? 1U : 0U)];
  return place_at(vertex) + first_state(lie);
}

double middle_heading(const HoleMap& map, Point from, double total_yd) {
  const std::optional<Point> there = map.line().furthest_at(from, total_yd);
  return heading_rad(from, there ? *there : map.pin());
}

}  // namespace yardworth
