#include "derive/fit_skills.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>

#include "baseline/published.hpp"
#include "derive/derive_baseline.hpp"
#include "derive/drive_spread.hpp"
#include "derive/least_squares.hpp"
#include "derive/root.hpp"
#include "derive/scores.hpp"
#include "player/skill.hpp"
#include "shot/putting.hpp"
#include "shot/short_game.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

namespace {

constexpr double tour_index = -6.0;
// Golfers who score about 90: the Handicap Index at which the better half of scores on the standard course lies three
// strokes below 90, between the scratch and the bogey yardage rating.
constexpr double ninety_index = 17.0;

// Where golfers are set against the published yardage ratings: a length in the middle of common courses.
struct Rated {
  Gender gender;
  double length_yd;
};
constexpr Rated rated_men = {Gender::men, 6300.0};
constexpr Rated rated_women = {Gender::women, 5350.0};

struct Node {
  double index;
  double value;
};

// Straight lines between nodes, the first and the last going on.
double at(const std::vector<Node>& nodes, double index) {
  std::size_t upper = 1;
  while (upper + 1 < nodes.size() && index > nodes[upper].index) ++upper;
  const Node& a = nodes[upper - 1];
  const Node& b = nodes[upper];
  return a.value + (b.value - a.value) * (index - a.index) / (b.index - a.index);
}

// Driver distances: R&A / USGA, A Review of Driving Distance, 2016 data (below 6: 245 yd, 6-12: 225, 13-20: 199, 21 and
// over: 182); tour about 280 (Broadie, as reported in 2008); scratch men 250, women 210, bogey women 150 (USGA Course
// Rating System manual); amateur women 148 (R&A / USGA, 2018 data). Tour women, and 36: common practice, no source.
double driver_total_yd(double index, Gender gender) {
  return gender == Gender::men
             ? at({{tour_index, 280.0},
                   {0.0, 250.0},
                   {3.0, 245.0},
                   {9.0, 225.0},
                   {16.5, 199.0},
                   {26.0, 182.0},
                   {36.0, 172.0}},
                  index)
             : at({{tour_index, 250.0}, {0.0, 210.0}, {24.0, 150.0}, {26.0, 148.0}, {36.0, 140.0}}, index);
}

// The scratch golfer's 25 of 250 and the bogey golfer's 20 of 200 roll (USGA Course Rating System manual); on tour
// less, since the ball comes down more steeply (common practice, no source).
double driver_roll_share(double index) {
  return at({{tour_index, 0.07}, {0.0, 0.10}, {26.0, 0.10}}, std::min(index, 26.0));
}

// Degrees off line of a drive: tour 3-4, golfers around 80 4-9, around 100 5-11 (Broadie, Every Shot Counts, fig. 6.3,
// as reported): the middles, but for 100 a little more, since golfers around 90 would find too many fairways
// (docs/bands.md). Those who score 80 and 100 have indexes around 8 and 26, reckoned like ninety_index. Poor strikes
// are among those drives.
constexpr Node tour_drives_deg = {tour_index, 3.5};
constexpr Node eighty_drives_deg = {8.0, 6.5};
constexpr Node hundred_drives_deg = {26.0, 8.4};

// The line from scratch to eighty goes on to the next row of skill, so that golfers between rows are as wild as
// measured.
constexpr double bend_of_drives = 9.0;

double driver_direction_sd_rad(double index, double scratch_deg, double poor_strike) {
  const double at_bend = at({{0.0, scratch_deg}, eighty_drives_deg}, bend_of_drives);
  const double all = at({tour_drives_deg, {0.0, scratch_deg}, {bend_of_drives, at_bend}, hundred_drives_deg}, index);
  return solid_drives_sd_rad(radians(all), poor_strike);
}

// The length of putt of which half are holed: tour 8 ft, 0-9 handicap 6, golfers around 90 5 (Broadie, as reported).
struct PuttHalf {
  double index;
  double feet;
};
constexpr PuttHalf putt_halves[] = {{tour_index, 8.0}, {4.5, 6.0}, {ninety_index, 5.0}};

double direction_for_half(double feet, double distance_sd_share) {
  const auto over_half = [&](double degrees_sd) {
    return Putting({radians(degrees_sd), distance_sd_share}).one_putt(feet) - 0.5;
  };
  boost::math::tools::eps_tolerance<double> digits(20);
  std::uintmax_t most = 60;
  const auto bracket = boost::math::tools::toms748_solve(over_half, 0.3, 6.0, digits, most);
  return radians(0.5 * (bracket.first + bracket.second));
}

// Where the short game ends and full shots begin the same strokes must be asked by both: what it asks less what they
// do, at a distance that both can tell.
constexpr double seam_yd = 60.0;
constexpr std::array<Lie, 4> seam_lies = {Lie::fairway, Lie::rough, Lie::bunker, Lie::recovery};
constexpr std::array<Touch ShortGameSkill::*, 4> touches = {&ShortGameSkill::fairway, &ShortGameSkill::rough,
                                                            &ShortGameSkill::bunker, &ShortGameSkill::recovery};

// Where the numbers of a skill are set down.
constexpr std::array<double, 7> row_indexes = {tour_index, 0.0, 3.0, 9.0, 16.5, 26.0, 36.0};

std::array<std::vector<Node>, 4> begin_looseness() {
  std::vector<Node> nodes;
  for (const double index : row_indexes) nodes.push_back({index, 0.0});
  return {nodes, nodes, nodes, nodes};
}

// Everything that makes a skill of an index; filled stage by stage.
struct SkillModel {
  // From tour through scratch to a measured amateur.
  double between(double index, double tour_value, double amateur_index, double amateur_value) const {
    const double line = tour_value + (amateur_value - tour_value) * tour_index / (tour_index - amateur_index);
    const double scratch = std::lerp(tour_value, line, scratch_distance);
    return at({{tour_index, tour_value}, {0.0, scratch}, {amateur_index, amateur_value}}, index);
  }

  Skill tour;
  std::vector<Node> putt_direction_sd;
  // Spreads of ninety over those of tour: of carry, and of the direction of wedges, irons and hybrids. The two facts
  // from 150 yards hardly tell the one from the other.
  double ninety_spread = 1.95;
  double ninety_poor = 0.18;
  // Of the short game over tour's, by seam_lies: spreads 1 + looseness times as wide.
  std::array<std::vector<Node>, 4> looseness = begin_looseness();
  // How far scratch stands from tour in all that is not a published measurement, as a share of how far a straight line
  // in the Handicap Index from tour to the amateurs who were measured would put it.
  double scratch_distance = 0.1;

  Skill of(double index, Gender gender) const;
  Skill rated(Band band, Gender gender) const;
};

// What a lie does at an index: to scratch golfers what it does to tour, whose effect is fitted; to others more, by what
// is added at 20 in proportion to the index (common practice, no source).
LieEffect effect_at(const LieEffect& tour, const LieEffect& added_at_20, double index) {
  const double share = std::max(0.0, index) / 20.0;
  return {tour.carry_factor + share * added_at_20.carry_factor,
          tour.carry_sd_factor + share * added_at_20.carry_sd_factor,
          tour.direction_sd_factor + share * added_at_20.direction_sd_factor,
          tour.poor_strike_added + share * added_at_20.poor_strike_added};
}

// A tour golfer's touch with spreads 1 + looseness times as wide; of the strokes that tour strikes well, some more are
// poor.
Touch loosened(const Touch& tour, double looseness, double poor_strike_added) {
  return {tour.spread_floor_yd * (1.0 + looseness), tour.spread_share * (1.0 + looseness),
          tour.poor_strike + (1.0 - tour.poor_strike) * poor_strike_added};
}

Skill SkillModel::of(double index, Gender gender) const {
  Skill skill = tour;
  const double total = driver_total_yd(index, gender);
  skill.driver_roll_yd = total * driver_roll_share(index);
  skill.driver_carry_yd = total - skill.driver_roll_yd;
  const double spread = between(index, 1.0, ninety_index, ninety_spread);
  skill.carry_sd_floor_yd *= spread;
  skill.carry_sd_share *= spread;
  skill.wedge_direction_sd_rad *= spread;
  skill.hybrid_direction_sd_rad *= spread;
  skill.driver_poor_strike = between(index, tour.driver_poor_strike, ninety_index, ninety_poor);
  skill.wedge_poor_strike = between(index, tour.wedge_poor_strike, ninety_index, ninety_poor);
  const double scratch_deg = between(0.0, tour_drives_deg.value, eighty_drives_deg.index, eighty_drives_deg.value);
  skill.driver_direction_sd_rad = driver_direction_sd_rad(index, scratch_deg, skill.driver_poor_strike);
  skill.rough = effect_at(tour.rough, {-0.04, 0.05, 0.05, 0.04}, index);
  skill.bunker = effect_at(tour.bunker, {-0.06, 0.1, 0.05, 0.09}, index);
  skill.recovery = effect_at(tour.recovery, {-0.1, 0.0, 0.0, 0.05}, index);
  // Who strikes six in a hundred more wedges poorly does so with chips: common practice, no source.
  const double poor_added = skill.wedge_poor_strike - tour.wedge_poor_strike;
  for (std::size_t i = 0; i < seam_lies.size(); ++i) {
    skill.short_game.*touches[i] = loosened(tour.short_game.*touches[i], at(looseness[i], index), poor_added);
  }
  skill.putting.direction_sd_rad = at(putt_direction_sd, index);
  skill.putting.distance_sd_share *= skill.putting.direction_sd_rad / tour.putting.direction_sd_rad;
  return skill;
}

// Stage 1. Tour putts: half holed at 8 ft, 2.06 on average from 40 ft (Broadie, Every Shot Counts, from memory).
void fit_putting(SkillModel& model) {
  constexpr double far_ft = 40.0;
  constexpr double far_putts = 2.06;
  const auto over = [&](double distance_sd) {
    return Putting({direction_for_half(putt_halves[0].feet, distance_sd), distance_sd}).putts(far_ft) - far_putts;
  };
  boost::math::tools::eps_tolerance<double> digits(16);
  std::uintmax_t most = 40;
  const auto bracket = boost::math::tools::toms748_solve(over, 0.03, 0.16, digits, most);
  const double distance_sd = 0.5 * (bracket.first + bracket.second);
  const double tour_direction = direction_for_half(putt_halves[0].feet, distance_sd);
  model.tour.putting = {tour_direction, distance_sd};
  for (const PuttHalf& half : putt_halves) {
    // Who starts putts twice as widely strikes them twice as unevenly: common practice, no source.
    double direction = tour_direction;
    for (int round = 0; round < 12; ++round) {
      direction = direction_for_half(half.feet, distance_sd * direction / tour_direction);
    }
    model.putt_direction_sd.push_back({half.index, direction});
  }
}

// As derived, by seam_lies; the table has a cell there.
std::array<double, 4> full_shots_at_seam(const BaselineTable& derived) {
  std::array<double, 4> strokes{};
  const std::array<const BaselineColumn*, 4> columns = {&derived.fairway, &derived.rough, &derived.bunker,
                                                        &derived.recovery};
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const std::vector<double>& distance = columns[i]->distance;
    const auto cell = std::find(distance.begin(), distance.end(), seam_yd) - distance.begin();
    strokes[i] = columns[i]->strokes.at(static_cast<std::size_t>(cell));
  }
  return strokes;
}

// Stage 2. The numbers of a tour golfer that the tour table pins, as factors of a first guess.
Skill tour_skill(const Skill& warm_start, const std::vector<double>& x) {
  Skill skill = warm_start;
  skill.driver_roll_yd = driver_total_yd(tour_index, Gender::men) * driver_roll_share(tour_index);
  skill.driver_carry_yd = driver_total_yd(tour_index, Gender::men) - skill.driver_roll_yd;
  skill.wedge_direction_sd_rad = radians(2.1 * x[0]);
  skill.carry_sd_share = 0.04 * x[1];
  skill.carry_sd_floor_yd = 2.0 * x[17];
  skill.driver_poor_strike = skill.wedge_poor_strike = 0.0275 * x[2];
  skill.driver_direction_sd_rad = solid_drives_sd_rad(radians(tour_drives_deg.value), skill.driver_poor_strike);
  // The tour table asks for no bend.
  skill.hybrid_direction_sd_rad =
      std::lerp(skill.wedge_direction_sd_rad, skill.driver_direction_sd_rad, hybrid_place());
  skill.fairway = {1.0, 1.0 + 0.06 * x[3], 1.0 + 0.06 * x[3], 0.02};
  skill.rough = {0.95, 1.0 + 0.34 * x[4], 1.0 + 0.2 * x[4], 0.125 * x[5]};
  skill.bunker = {0.72 * x[6], 1.0 + 0.68 * x[7], 1.0 + 0.34 * x[7], 0.18 * x[8]};
  skill.recovery = {0.86, 3.5, 2.6, 0.6 * x[9]};
  skill.short_game.fairway = {1.12 * x[10], 0.0726 * x[11], 0.01};
  skill.short_game.rough = {1.78 * x[12], 0.112 * x[13], 0.02};
  skill.short_game.bunker = {0.224 * x[14], 0.159 * x[15], 0.03};
  const Touch& rough = skill.short_game.rough;
  skill.short_game.recovery = {1.5 * rough.spread_floor_yd, 1.5 * rough.spread_share, 0.35 * x[16]};
  return skill;
}
constexpr std::size_t tour_parameters = 18;

void add_cells(const Baseline& derived, const Baseline& published, Lie lie, const std::vector<double>& distances,
               double weight, std::vector<double>& residuals) {
  for (const double yards : distances) {
    residuals.push_back(weight * (derived.strokes(lie, yards) - published.strokes(lie, yards)));
  }
}

std::size_t tour_residual_count() {
  const FittedCells cells;
  return cells.tee.size() + cells.fairway.size() + cells.rough.size() + cells.bunker.size() + cells.recovery.size() +
         3 * cells.short_game.size() + seam_lies.size() + 2 + tour_parameters;
}

std::vector<double> tour_residuals(const Skill& warm_start, const std::vector<double>& x) {
  const FittedCells cells;
  const Baseline published(tour_table());
  DeriveOptions options;
  options.near = tour_table();
  for (double yards = 60.0; yards <= 500.0; yards += 20.0) options.distances_yd.push_back(yards);
  options.tee_lengths_yd = cells.tee;
  Player golfer = standard_player(tour_skill(warm_start, x), Gender::men);
  golfer.band = Band::tour;
  BaselineTable found;
  try {
    found = derive_baseline(golfer, options);
  } catch (const CannotFinish&) {
    // A step too far: a golfer who never gets out of the trees.
    return std::vector<double>(tour_residual_count(), 100.0);
  }
  const Baseline derived(found);
  const ApproachResult from_150 = approach_from(golfer, 150.0);
  // One is what a difference may well be: 0.05 strokes, 0.1 from sand and trees.
  constexpr double by_stroke = 20.0;
  constexpr double from_trouble = 10.0;
  std::vector<double> residuals;
  add_cells(derived, published, Lie::tee, cells.tee, by_stroke, residuals);
  add_cells(derived, published, Lie::fairway, cells.fairway, by_stroke, residuals);
  add_cells(derived, published, Lie::rough, cells.rough, by_stroke, residuals);
  add_cells(derived, published, Lie::bunker, cells.bunker, from_trouble, residuals);
  add_cells(derived, published, Lie::recovery, cells.recovery, from_trouble, residuals);
  for (const Lie lie : {Lie::fairway, Lie::rough, Lie::bunker}) {
    add_cells(derived, published, lie, cells.short_game, by_stroke, residuals);
  }
  const Putting putting(golfer.skill.putting);
  const ShortGame short_game(golfer.skill.short_game, putting);
  const std::array<double, 4> full_shots = full_shots_at_seam(found);
  for (std::size_t i = 0; i < seam_lies.size(); ++i) {
    // More closely than cells of sand and trees are: a step would be seen by every shot that comes near it.
    const bool trouble = seam_lies[i] == Lie::bunker || seam_lies[i] == Lie::recovery;
    const double weight = trouble ? 1.5 * from_trouble : by_stroke;
    residuals.push_back(weight * (short_game.strokes(seam_lies[i], seam_yd) - full_shots[i]));
  }
  // From 150 yards: 72% of greens, half within 23 ft (Broadie, magazine column, 2018).
  residuals.push_back((from_150.green_hit - 0.72) / 0.03);
  residuals.push_back((from_150.median_leave_ft - 23.0) / 3.0);
  for (const double factor : x) {
    constexpr double hold = 1.0;  // what the facts leave open stays near the guess
    constexpr double least = 0.05;
    residuals.push_back(hold * (factor - 1.0) + 50.0 * std::max(0.0, least - factor));
  }
  return residuals;
}

LeastSquares fit_tour(SkillModel& model) {
  const Skill warm_start = model.tour;
  LeastSquares found = least_squares([&](const std::vector<double>& x) { return tour_residuals(warm_start, x); },
                                     std::vector<double>(tour_parameters, 1.0), 0.05, 300);
  model.tour = tour_skill(warm_start, found.parameters);
  return found;
}

ApproachResult approach_of(const Skill& skill) { return approach_from(standard_player(skill, Gender::men), 150.0); }

// Stage 3. Golfers around 90 from 150 yards: 35% of greens, half within 56 ft (Broadie, magazine column, 2018).
ApproachResult fit_ninety(SkillModel& model) {
  const auto missed = [&](double spread) {
    model.ninety_spread = spread;
    const ApproachResult found = approach_of(model.of(ninety_index, Gender::men));
    return std::hypot((found.green_hit - 0.35) / 0.02, (found.median_leave_ft - 56.0) / 2.0);
  };
  constexpr int bits = 10;  // more is noise: of two neighbouring strikes one is the median
  model.ninety_spread = boost::math::tools::brent_find_minima(missed, 1.5, 2.6, bits).first;
  return approach_of(model.of(ninety_index, Gender::men));
}

// The mean of the better half of scores on the standard course.
double better_half(const Skill& skill, const Rated& rated) {
  constexpr int twenties = 200;
  constexpr std::uint64_t seed = 1;
  const Player golfer = standard_player(skill, rated.gender);
  DeriveOptions options = all_distances();
  options.held_out_offsets = 1;
  options.tee_lengths_yd.clear();
  const BaselineTable near = derive_baseline(golfer, options);
  return simulate_scores(golfer, near, standard_lengths_yd(rated.length_yd), twenties, seed).better_half;
}

// The golfer of course rating; the bogey golfer has a drive of his or her own there.
Skill SkillModel::rated(Band band, Gender gender) const {
  Skill skill = of(typical_handicap_index(band, gender), gender);
  if (band == Band::bogey) {
    const Drive drive = bogey_drive(gender);
    skill.driver_carry_yd = drive.carry_yd;
    skill.driver_roll_yd = drive.roll_yd;
  }
  return skill;
}

// Stage 4. The short game of an index, such that it meets its full shots; full shots end near the green, so the two are
// worked out by turns.
void fit_seam(SkillModel& model, Gender gender, std::size_t row) {
  DeriveOptions options;
  options.distances_yd = {seam_yd, 300.0};
  options.held_out_offsets = 1;
  const double index = row_indexes[row];
  const Skill skill = model.of(index, gender);
  const Putting putting(skill.putting);
  Player golfer = standard_player(skill, gender);
  if (index == tour_index) golfer.band = Band::tour;
  const std::array<double, 4> full_shots = full_shots_at_seam(derive_baseline(golfer, options));
  for (std::size_t i = 0; i < seam_lies.size(); ++i) {
    const auto over = [&](double looseness) {
      model.looseness[i][row].value = looseness;
      return ShortGame(model.of(index, gender).short_game, putting).strokes(seam_lies[i], seam_yd) - full_shots[i];
    };
    // No short game is better than that of a better golfer; but tour's is of championship rough, sand and greens.
    const double least = row <= 1 ? -0.5 : model.looseness[i][row - 1].value;
    model.looseness[i][row].value = root_of(over, least, 4.0);
  }
}

void fit_seams(SkillModel& model, Gender gender, std::initializer_list<std::size_t> rows) {
  for (const std::size_t row : rows) fit_seam(model, gender, row);
}

// Where what a number is fitted for lies within reach, and how near to the published level is near enough, strokes.
struct FitRange {
  double SkillModel::*number;
  double low, high;
};
// Scratch golfers between tour and the line to the measured amateurs; poor strikes from hardly any to one in four.
constexpr FitRange scratch_range = {&SkillModel::scratch_distance, 0.0, 1.0};
constexpr FitRange ninety_range = {&SkillModel::ninety_poor, 0.005, 0.25};
constexpr double near_enough = 0.05;

// Stage 5. What a number of scratch or bogey golfers must be for the level of the published yardage rating;
// `continuation` fits again what depends on it. How far it is missed.
double fit_to_rating(SkillModel& model, const FitRange& range, Band band, const Rated& rated,
                     const std::function<void()>& continuation) {
  const double rating = yardage_rating(band, rated.gender).strokes(rated.length_yd);
  double missed = 0.0;
  const auto over = [&](double value) {
    model.*range.number = value;
    continuation();
    missed = better_half(model.rated(band, rated.gender), rated) - rating;
    return std::abs(missed) <= near_enough ? 0.0 : missed;  // a root finder stops at a root
  };
  const double found = root_of(over, range.low, range.high);
  if (model.*range.number != found) over(found);
  return missed;
}

// By how many strokes ratings are missed.
struct Amateurs {
  double scratch = 0.0;
  double bogey = 0.0;
};

// Scratch golfers lie between tour and bogey golfers, who lean on them little: first those, then these, and those
// again; in the end the short game of every row.
Amateurs fit_amateurs(SkillModel& model, const Rated& rated, const std::function<void()>& settle_ninety) {
  const auto settle_scratch = [&] { fit_seams(model, rated.gender, {1}); };
  const auto settle_bogey = [&] {
    settle_ninety();
    fit_seams(model, rated.gender, {4, 5});
  };
  fit_to_rating(model, scratch_range, Band::scratch, rated, settle_scratch);
  Amateurs missed;
  missed.bogey = fit_to_rating(model, ninety_range, Band::bogey, rated, settle_bogey);
  missed.scratch = fit_to_rating(model, scratch_range, Band::scratch, rated, settle_scratch);
  for (int round = 0; round < 2; ++round) {
    for (std::size_t row = 1; row < row_indexes.size(); ++row) fit_seam(model, rated.gender, row);
  }
  return missed;
}

std::vector<SkillRow> rows_of(const SkillModel& model, Gender gender) {
  std::vector<SkillRow> rows;
  for (const double index : row_indexes) rows.push_back({index, model.of(index, gender)});
  return rows;
}

std::string words(const LieEffect& effect) {
  return fmt::format("{{{:.4g}, {:.4g}, {:.4g}, {:.4g}}}", effect.carry_factor, effect.carry_sd_factor,
                     effect.direction_sd_factor, effect.poor_strike_added);
}

std::string words(const Touch& touch) {
  return fmt::format("{{{:.4g}, {:.4g}, {:.4g}}}", touch.spread_floor_yd, touch.spread_share, touch.poor_strike);
}

using Tell = std::function<void(const std::string&)>;

void tell_of(const SkillModel& model, Gender gender, const Amateurs& missed, const Tell& tell) {
  tell(fmt::format(
      "{}: poor strikes around 90 {:.4f} (bogey rating missed by {:+.2f}), spread {:.3f} times tour's; "
      "scratch stands {:.3f} of the way ({:+.2f})",
      name(gender), model.ninety_poor, missed.bogey, model.ninety_spread, model.scratch_distance, missed.scratch));
  for (std::size_t i = 0; i < seam_lies.size(); ++i) {
    std::vector<double> looser;
    for (const Node& node : model.looseness[i]) looser.push_back(node.value);
    tell(fmt::format("  short game looser than tour's, {}: {:.3f}", name(seam_lies[i]), fmt::join(looser, " ")));
  }
}

}  // namespace

FittedSkills fit_skills(const std::function<void(const std::string&)>& tell) {
  SkillModel model;
  fit_putting(model);
  tell(fmt::format("putting: tour starts putts {:.3f} degrees wide, strikes them {:.1f}% uneven",
                   degrees(model.tour.putting.direction_sd_rad), 100.0 * model.tour.putting.distance_sd_share));
  const LeastSquares tour = fit_tour(model);
  tell(fmt::format("tour: sum of squares {:.2f} after {} evaluations; factors {:.3f}", tour.sum_of_squares,
                   tour.evaluations, fmt::join(tour.parameters, " ")));
  const ApproachResult ninety = fit_ninety(model);
  tell(fmt::format("around 90: spread {:.3f} times tour's, poor strikes {:.3f}; from 150 yd {:.1f}% greens, {:.1f} ft",
                   model.ninety_spread, model.ninety_poor, 100.0 * ninety.green_hit, ninety.median_leave_ft));
  const Amateurs men = fit_amateurs(model, rated_men, [&] { fit_ninety(model); });
  tell_of(model, Gender::men, men, tell);
  // Women's poor strikes are their own, their spreads those of men of their index.
  SkillModel women_model = model;
  const Amateurs women = fit_amateurs(women_model, rated_women, [] {});
  // On tour men's short game is what the tour table pins; women have shorter full shots.
  for (int round = 0; round < 2; ++round) fit_seam(women_model, Gender::women, 0);
  tell_of(women_model, Gender::women, women, tell);
  return {rows_of(model, Gender::men), rows_of(women_model, Gender::women)};
}

std::string write_skill_rows(const std::vector<SkillRow>& rows) {
  std::string text = "// Written by yardworth_rebuild --fit; docs/bands.md says what pins each number.\n";
  for (const SkillRow& row : rows) {
    const Skill& s = row.skill;
    text += fmt::format(
        "{{{:.4g},\n {{{:.5g}, {:.4g}, {:.4g}, {:.4g}, {:.5g}, {:.5g}, {:.5g}, {:.4g}, {:.4g},  // full swings\n"
        "  {}, {}, {}, {},  // fairway, rough, bunker, recovery\n  {{{}, {}, {}, {}}},  // short game\n"
        "  {{{:.5g}, {:.4g}}}}}}},  // putting\n",
        row.handicap_index, s.driver_carry_yd, s.driver_roll_yd, s.carry_sd_floor_yd, s.carry_sd_share,
        s.driver_direction_sd_rad, s.hybrid_direction_sd_rad, s.wedge_direction_sd_rad, s.driver_poor_strike,
        s.wedge_poor_strike, words(s.fairway), words(s.rough), words(s.bunker), words(s.recovery),
        words(s.short_game.fairway), words(s.short_game.rough), words(s.short_game.bunker),
        words(s.short_game.recovery), s.putting.direction_sd_rad, s.putting.distance_sd_share);
  }
  return text;
}

}  // namespace yardworth
