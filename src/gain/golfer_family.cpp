#include "gain/golfer_family.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/numerics.hpp"
#include "player/skill.hpp"

namespace yardworth {

namespace {

// The indexes of the grid: the rows of skill, at which golfers bend, and what divides the stretches between them
// evenly.
std::vector<double> index_axis(Gender gender) {
  std::vector<double> axis;
  for (const SkillRow& row : skill_rows(gender)) {
    if (!axis.empty()) {
      const double from = axis.back();
      const double stretch = row.handicap_index - from;
      const double pieces = std::ceil(stretch / numerics::family_index_step);
      for (double piece = 1.0; piece < pieces; piece += 1.0) axis.push_back(from + stretch * piece / pieces);
    }
    axis.push_back(row.handicap_index);
  }
  return axis;
}

// The carries of the grid stand in a fixed proportion.
double carry_on_axis(double step) {
  return numerics::family_first_carry_yd * std::pow(numerics::family_carry_ratio, step);
}

double step_below(double carry_yd) {
  double step =
      std::floor(std::log(carry_yd / numerics::family_first_carry_yd) / std::log(numerics::family_carry_ratio));
  while (carry_on_axis(step) > carry_yd) step -= 1.0;
  while (carry_on_axis(step + 1.0) <= carry_yd) step += 1.0;
  return step;
}

// In this number strokes are nearly straight: with the carry itself they bend.
double straightened(double carry_yd) { return 1.0 / (carry_yd * carry_yd); }

double share_between(double value, double from, double to) { return (value - from) / (to - from); }

constexpr bool has_upper_index(std::size_t corner) { return corner >= 2; }
constexpr bool has_longer_drive(std::size_t corner) { return corner % 2 == 1; }

CornerWeights bilinear(double along_index, double along_carry) {
  return {(1.0 - along_index) * (1.0 - along_carry), (1.0 - along_index) * along_carry,
          along_index * (1.0 - along_carry), along_index * along_carry};
}

// Without one corner, from which the shares are measured.
std::optional<CornerWeights> in_triangle(const FamilyCell& cell, std::size_t missing) {
  const double to_other_index = has_upper_index(missing) ? 1.0 - cell.along_index : cell.along_index;
  const double to_other_carry = has_longer_drive(missing) ? 1.0 - cell.along_carry : cell.along_carry;
  const double opposite = to_other_index + to_other_carry - 1.0;
  if (opposite < 0.0) return std::nullopt;
  CornerWeights weights{};
  weights[missing ^ 3U] = opposite;
  weights[missing ^ 2U] = 1.0 - to_other_carry;
  weights[missing ^ 1U] = 1.0 - to_other_index;
  return weights;
}

// What uses a corner: the cells of golfers who are mixtures.
struct CellInUse {
  std::array<FamilyGolfer, family_corners> corners;
  std::vector<std::size_t> golfers;
};

using Uses = std::map<FamilyGolfer, std::size_t>;

// Whether as many golfers as it has corners of its own, or fewer, lie in a cell: they are then worked out themselves.
bool is_dear(const CellInUse& cell, const Uses& uses) {
  const auto own = std::count_if(cell.corners.begin(), cell.corners.end(),
                                 [&](const FamilyGolfer& corner) { return uses.at(corner) == 1; });
  return cell.golfers.size() <= static_cast<std::size_t>(own);
}

// Gives dear cells up, which makes others dear, until none is.
void give_up_dear_cells(std::vector<CellInUse>& cells, Uses& uses) {
  for (bool again = true; again;) {
    again = false;
    for (CellInUse& cell : cells) {
      if (cell.golfers.empty() || !is_dear(cell, uses)) continue;
      for (const FamilyGolfer& corner : cell.corners) --uses.at(corner);
      cell.golfers.clear();
      again = true;
    }
  }
}

std::vector<CellInUse> cells_of(const std::vector<FamilyGolfer>& golfers) {
  std::map<FamilyGolfer, CellInUse> by_first_corner;
  for (std::size_t i = 0; i < golfers.size(); ++i) {
    const FamilyCell cell = cell_of(golfers[i]);
    CellInUse& in_use = by_first_corner[cell.corners.front()];
    in_use.corners = cell.corners;
    in_use.golfers.push_back(i);
  }
  std::vector<CellInUse> cells;
  for (auto& [corner, cell] : by_first_corner) cells.push_back(std::move(cell));
  return cells;
}

}  // namespace

FamilyGolfer family_golfer(const Member& member) {
  const std::vector<SkillRow> rows = skill_rows(member.gender);
  const double index = std::clamp(member.handicap_index, rows.front().handicap_index, rows.back().handicap_index);
  const double typical_yd = skill_of(index, member.gender).driver_carry_yd;
  return {member.gender, index, member.driver_carry_yd.value_or(typical_yd)};
}

Player player_of(const FamilyGolfer& golfer) {
  Player player =
      standard_player(skill_of(golfer.handicap_index, golfer.gender), golfer.gender, golfer.driver_carry_yd);
  player.label = "member";
  player.handicap_index = golfer.handicap_index;
  player.band = band_of(golfer.handicap_index);
  return player;
}

FamilyCell cell_of(const FamilyGolfer& golfer) {
  const std::vector<double> axis = index_axis(golfer.gender);
  std::size_t upper = 1;
  while (upper + 1 < axis.size() && golfer.handicap_index >= axis[upper]) ++upper;
  const double step = step_below(golfer.driver_carry_yd);
  const std::array<double, 2> indexes = {axis[upper - 1], axis[upper]};
  const std::array<double, 2> carries = {carry_on_axis(step), carry_on_axis(step + 1.0)};
  FamilyCell cell;
  for (std::size_t corner = 0; corner < family_corners; ++corner) {
    cell.corners[corner] = {golfer.gender, indexes[has_upper_index(corner) ? 1 : 0],
                            carries[has_longer_drive(corner) ? 1 : 0]};
  }
  cell.along_index = share_between(golfer.handicap_index, indexes[0], indexes[1]);
  cell.along_carry =
      share_between(straightened(golfer.driver_carry_yd), straightened(carries[0]), straightened(carries[1]));
  return cell;
}

std::optional<CornerWeights> weights_of_corners(const FamilyCell& cell, const std::array<bool, family_corners>& alike) {
  const CornerWeights all = bilinear(cell.along_index, cell.along_carry);
  std::optional<std::size_t> missing;
  for (std::size_t corner = 0; corner < family_corners; ++corner) {
    if (alike[corner] || all[corner] == 0.0) continue;
    if (missing) return std::nullopt;
    missing = corner;
  }
  return missing ? in_triangle(cell, *missing) : all;
}

FamilyPlan plan_family(const std::vector<FamilyGolfer>& golfers) {
  std::vector<CellInUse> cells = cells_of(golfers);
  Uses uses;
  for (const CellInUse& cell : cells) {
    for (const FamilyGolfer& corner : cell.corners) ++uses[corner];
  }
  give_up_dear_cells(cells, uses);
  FamilyPlan plan;
  plan.between.resize(golfers.size(), false);
  std::size_t between = 0;
  for (const CellInUse& cell : cells) between += cell.golfers.size();
  for (const auto& [corner, cells_there] : uses) {
    if (cells_there > 0) plan.corners.push_back(corner);
  }
  if (between <= plan.corners.size()) return {{}, std::move(plan.between)};
  for (const CellInUse& cell : cells) {
    for (const std::size_t golfer : cell.golfers) plan.between[golfer] = true;
  }
  return plan;
}

}  // namespace yardworth
