#include "yardworth/bands.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>
#include <utility>

#include "core/full_round.hpp"
#include "core/parallel.hpp"
#include "gain/bag_places.hpp"
#include "gain/finishes_of_change.hpp"
#include "gain/request_rules.hpp"
#include "gain/round_gain.hpp"
#include "gain/tee_guideline.hpp"
#include "gain/tees_looked_at.hpp"
#include "gain/what_was_asked.hpp"
#include "input/derived_table.hpp"
#include "strategy/kept_shots.hpp"

namespace yardworth {

namespace {

// A band's golfer with what the short game is worth to such golfers.
struct Golfer {
  Band band;
  Gender gender;
  Player player;
  Baseline baseline;
  std::optional<FinishesOfChange> finish = std::nullopt;  // of those whose whole scores are told
};

Golfer golfer_of(Band band, Gender gender) {
  return {band, gender, standard_player(band, gender), Baseline(derived_table(band, gender))};
}

// One round to be reckoned, and its gain once it is, or the holes that cannot be finished. Of one with neither, none
// has been reckoned.
struct Round {
  const Golfer* golfer = nullptr;
  const Course* course = nullptr;
  std::size_t tee = 0;
  DistanceChange change;
  const FinishesOfChange* finish = nullptr;  // where the whole score is told
  std::optional<GainResult> gain = std::nullopt;
  std::vector<UnfinishedHole> unfinished = {};
};

GainRequest request_of(const Round& round, PolicyChoice policy) {
  GainRequest request;
  request.tee = round.tee;
  request.change = Change::of(round.change);
  request.policy = policy;
  request.describe_play = true;
  return request;
}

// The rounds of one golfer on one course, one after the other, with one change, and what of them is reckoned. A hole is
// played from all their tees together: only the tee shot differs.
struct Rounds {
  std::vector<Round*> from_tees;
  std::vector<std::vector<HoleGains>> holes;                           // by tee, by hole
  std::vector<std::vector<std::optional<UnfinishedHole>>> unfinished;  // likewise

  const Round& any() const { return *from_tees.front(); }
};

std::vector<Rounds> by_golfer(std::vector<Round>& rounds) {
  std::vector<Rounds> together;
  for (Round& round : rounds) {
    const bool goes_on = !together.empty() && together.back().any().golfer == round.golfer &&
                         together.back().any().course == round.course;
    if (!goes_on) together.emplace_back();
    Rounds& of_golfer = together.back();
    of_golfer.from_tees.push_back(&round);
    of_golfer.holes.emplace_back(round.course->holes.size());
    of_golfer.unfinished.emplace_back(round.course->holes.size());
  }
  return together;
}

// One hole of the rounds of a golfer. The maps are those of its course.
void reckon_hole(Rounds& rounds, std::size_t hole, const HoleMap& map, const Discretisation& search,
                 PolicyChoice policy) {
  const Golfer& golfer = *rounds.any().golfer;
  const Golfers golfers = golfers_of(golfer.player, golfer.baseline, Change::of(rounds.any().change));
  KeptShots shots;
  for (std::size_t i = 0; i < rounds.from_tees.size(); ++i) {
    const Round& round = *rounds.from_tees[i];
    const HoleAsked asked{round.course->holes[hole], map,    round.tee, golfers,
                          golfer.baseline,           search, &shots,    round.finish};
    rounds.unfinished[i][hole] = compute_hole_gain(asked, request_of(round, policy), rounds.holes[i][hole]);
  }
}

void gather(Rounds& rounds, PolicyChoice policy) {
  for (std::size_t i = 0; i < rounds.from_tees.size(); ++i) {
    Round& round = *rounds.from_tees[i];
    for (const auto& hole : rounds.unfinished[i]) {
      if (hole) round.unfinished.push_back(*hole);
    }
    if (!round.unfinished.empty()) continue;
    round.gain = put_together(*round.course, round.golfer->player, round.golfer->baseline, request_of(round, policy),
                              rounds.holes[i]);
  }
}

// A hole of one golfer's rounds at a time is reckoned in parallel with others, each by itself, so that nothing depends
// on how many are at a time.
void reckon_all(std::vector<Round>& rounds, const BandsRequest& request) {
  for (const Round& round : rounds) {
    require_valid(*round.course, round.golfer->player, request_of(round, request.policy));
  }
  const Discretisation& search = search_grid();
  std::map<const Course*, std::vector<HoleMap>> maps;
  std::vector<Rounds> together = by_golfer(rounds);
  std::vector<std::pair<std::size_t, std::size_t>> pieces;  // whose rounds, and which hole of them
  std::vector<double> sizes;
  for (std::size_t i = 0; i < together.size(); ++i) {
    const Round& round = together[i].any();
    auto [maps_of_course, is_new] = maps.try_emplace(round.course);
    for (std::size_t hole = 0; hole < round.course->holes.size(); ++hole) {
      const Hole& here = round.course->holes[hole];
      if (is_new) maps_of_course->second.emplace_back(here, round.course->firmness);
      pieces.emplace_back(i, hole);
      sizes.push_back(here.length_yd.front() * static_cast<double>(together[i].from_tees.size()));
    }
  }
  work_in_parallel(request.threads, sizes, [&](std::size_t piece) {
    const auto [whose, hole] = pieces[piece];
    reckon_hole(together[whose], hole, maps.at(together[whose].any().course)[hole], search, request.policy);
  });
  for (Rounds& of_golfer : together) gather(of_golfer, request.policy);
}

void scale_to_one(ClubShares& shares) {
  const double sum = std::accumulate(shares.begin(), shares.end(), 0.0,
                                     [](double total, const auto& share) { return total + share.second; });
  if (sum <= 0.0) return;
  for (auto& [club, share] : shares) share /= sum;
}

RoundPlay round_play(const Player& player, const PolicyGain& gain, TeeShotResult HoleGain::*tee_shot,
                     std::optional<HolePlay> HoleGain::*hole_play) {
  RoundPlay play;
  double longer_holes = 0.0;
  for (const HoleGain& hole : gain.holes) {
    const TeeShotResult& shot = hole.*tee_shot;
    const HolePlay& here = *(hole.*hole_play);
    play.green_in_regulation += here.green_in_regulation / static_cast<double>(gain.holes.size());
    play.penalty += shot.penalty;
    for (const auto& [club, share] : here.approach) play.approach[club] += share;
    if (hole.par > 3) play.fairway += shot.fairway;
    if (hole.par > 3) longer_holes += 1.0;
  }
  if (longer_holes > 0.0) play.fairway /= longer_holes;
  scale_to_one(play.approach);
  play.second_shots = second_shots_of_par_4s(gain.holes, tee_shot);
  if (!play.second_shots.empty()) {
    play.typical_second_shot = BagOrder(player).name_of(middle_place(play.second_shots));
  }
  return play;
}

BandHole hole_of(const HoleGain& gain) {
  return {gain.number, gain.par, gain.length_yd, gain.strokes, *gain.play_before, *gain.play_after};
}

const BandHole& hole_numbered(const std::vector<BandHole>& holes, int number) {
  return *std::find_if(holes.begin(), holes.end(), [&](const BandHole& hole) { return hole.number == number; });
}

std::optional<double> index_change_on(const TeeOfBands& tee, Gender gender, int holes, double strokes_saved) {
  if (!tee.slope || tee.rated_for != gender || holes != full_round_holes) return std::nullopt;
  return handicap_index_change(strokes_saved, *tee.slope);
}

BandOnTee band_on_tee(const Round& round, const Round* with_change, const BagPlaces& reference) {
  BandOnTee on_tee;
  on_tee.band = round.golfer->band;
  on_tee.gender = round.golfer->gender;
  on_tee.cannot_finish = round.unfinished;
  if (with_change != nullptr && on_tee.cannot_finish.empty()) on_tee.cannot_finish = with_change->unfinished;
  if (!on_tee.cannot_finish.empty()) return on_tee;
  const PolicyGain& gain = round.gain->answer();
  const Player& player = round.golfer->player;
  on_tee.before = round_play(player, gain, &HoleGain::before, &HoleGain::play_before);
  on_tee.after = round_play(player, gain, &HoleGain::after, &HoleGain::play_after);
  on_tee.round = gain.round;
  on_tee.scores = gain.scores;
  on_tee.handicap = round.gain->handicap;
  on_tee.handicap_needs = round.gain->handicap_needs;
  const BagPlaces& second = on_tee.before.second_shots;
  if (!second.empty() && !reference.empty()) {
    on_tee.clubs_apart = places_apart(second, reference);
    on_tee.clubs_longer = mean_place(reference) - mean_place(second);
  }
  for (const HoleGain& hole : gain.holes) on_tee.holes.push_back(hole_of(hole));
  if (with_change == nullptr) return on_tee;
  for (const HoleGain& hole : with_change->gain->answer().holes) {
    on_tee.changed.push_back({hole_numbered(on_tee.holes, hole.number), hole_of(hole)});
  }
  return on_tee;
}

// A course with none but the holes whose hazards are changed.
Course changed_holes(Course course, const std::vector<ChangedHazard>& hazards) {
  std::set<int> numbers;
  for (const ChangedHazard& hazard : hazards) numbers.insert(hazard.hole);
  course.holes.erase(std::remove_if(course.holes.begin(), course.holes.end(),
                                    [&](const Hole& hole) { return numbers.count(hole.number) == 0; }),
                     course.holes.end());
  return course;
}

// `on_tees`: the golfer on every tee looked at, in their order.
SuitingTee suiting_tee(const Golfer& golfer, const std::vector<TeeOfBands>& tees, std::size_t holes,
                       const BandOnTee* on_tees) {
  const Club& driver = golfer.player.clubs.front();
  SuitingTee suits;
  suits.band = golfer.band;
  suits.gender = golfer.gender;
  suits.driver_distance_yd = driver.carry_yd + driver.roll_yd;
  suits.recommended = recommended_length(suits.driver_distance_yd, holes);
  suits.by_length = tee_by_length(suits.recommended, tees);
  std::vector<std::optional<double>> apart;
  for (std::size_t i = 0; i < tees.size(); ++i) apart.push_back(on_tees[i].clubs_apart);
  suits.by_clubs = tee_by_clubs(apart);
  return suits;
}

std::vector<Note> notes_of() {
  return {{Note::Kind::golfers_invented},
          {Note::Kind::band_shots_then_baseline, short_game_radius_yd},
          {Note::Kind::slope_only_for_whom_it_rates}};
}

std::vector<Caution> cautions_of() {
  std::vector<Caution> cautions = common_cautions();
  cautions.push_back({Caution::Kind::index_change_supposes_the_mean});
  return cautions;
}

}  // namespace

double handicap_index_change(double strokes_saved, double slope) {
  constexpr double standard_slope = 113.0;
  return strokes_saved == 0.0 ? 0.0 : -strokes_saved * standard_slope / slope;
}

namespace {

// Everything that has to be reckoned, in the order: the golfers asked for on every tee, scratch golfers from the
// longest tee where rounds are told of, and, where hazards change, the first ones again on the holes that differ.
struct Work {
  std::vector<std::size_t> tees;
  std::vector<Golfer> golfers;
  std::vector<Golfer> scratch;  // by gender, as asked
  Course as_it_is;              // all of it, or, where no rounds are told of, the holes that differ
  Course changed;               // none but the holes that differ
  std::vector<Round> rounds;
  std::size_t own = 0;  // rounds of the golfers asked for

  const Round& reference(Gender gender) const {
    const auto is_of = [gender](const Golfer& golfer) { return golfer.gender == gender; };
    return rounds[own +
                  static_cast<std::size_t>(std::find_if(scratch.begin(), scratch.end(), is_of) - scratch.begin())];
  }
  const Round* with_change(std::size_t round) const {
    const std::size_t at = own + scratch.size() + round;
    return at < rounds.size() ? &rounds[at] : nullptr;
  }
};

void add_golfers(const BandsRequest& request, Work& work) {
  for (const Gender gender : request.genders) {
    if (request.rounds) work.scratch.push_back(golfer_of(Band::scratch, gender));
    for (const Band band : request.bands) work.golfers.push_back(golfer_of(band, gender));
  }
  if (!request.rounds) return;
  work_in_parallel(request.threads, work.golfers.size(), [&](std::size_t i) {
    Golfer& golfer = work.golfers[i];
    golfer.finish.emplace(Golfers{golfer.player}, golfer.baseline);
  });
}

void add_rounds(const BandsRequest& request, Work& work) {
  for (const Golfer& golfer : work.golfers) {
    const FinishesOfChange* finish = golfer.finish ? &*golfer.finish : nullptr;
    for (const std::size_t tee : work.tees) {
      work.rounds.push_back({&golfer, &work.as_it_is, tee, request.change, finish});
    }
  }
  work.own = work.rounds.size();
  for (const Golfer& golfer : work.scratch) work.rounds.push_back({&golfer, &work.as_it_is, longest_tee, {}});
  if (!request.changed_course) return;
  for (std::size_t i = 0; i < work.own; ++i) {
    work.rounds.push_back({work.rounds[i].golfer, &work.changed, work.rounds[i].tee, request.change});
  }
}

BagPlaces second_shots_of(const Round& round) {
  if (!round.gain) return {};
  return round_play(round.golfer->player, round.gain->answer(), &HoleGain::before, &HoleGain::play_before).second_shots;
}

void put_golfers(const Work& work, BandsResult& result) {
  for (std::size_t i = 0; i < work.own; ++i) {
    const Round& round = work.rounds[i];
    const BagPlaces reference = result.rounds ? second_shots_of(work.reference(round.golfer->gender)) : BagPlaces{};
    BandOnTee on_tee = band_on_tee(round, work.with_change(i), reference);
    on_tee.tee = i % work.tees.size();
    on_tee.index_change =
        index_change_on(result.tees[on_tee.tee], on_tee.gender, result.holes, on_tee.round.strokes_saved());
    result.golfers.push_back(std::move(on_tee));
  }
  const bool none_finishes = std::all_of(result.golfers.begin(), result.golfers.end(),
                                         [](const BandOnTee& golfer) { return !golfer.cannot_finish.empty(); });
  if (none_finishes) throw CannotFinish(result.golfers.front().cannot_finish, result.units);
}

}  // namespace

BandsResult compute_bands(const Course& course, const BandsRequest& request) {
  require_valid(course, request);
  Work work;
  work.tees = tees_or_all(course, request.tees);
  if (request.changed_course) {
    work.changed = changed_holes(request.changed_course->course, request.changed_course->hazards);
  }
  work.as_it_is = request.rounds ? course : changed_holes(course, request.changed_course->hazards);
  add_golfers(request, work);
  add_rounds(request, work);
  reckon_all(work.rounds, request);

  BandsResult result;
  result.course = course.name;
  result.units = course.units;
  result.tees = describe_tees(course, work.tees);
  result.longest_tee = course.tees[longest_tee].name;
  result.change = request.change;
  result.policy = request.policy;
  result.replanning_computed = request.policy != PolicyChoice::habit;
  result.rounds = request.rounds;
  result.holes = static_cast<int>(course.holes.size());
  put_golfers(work, result);
  for (std::size_t i = 0; request.rounds && i < work.golfers.size(); ++i) {
    result.suiting.push_back(
        suiting_tee(work.golfers[i], result.tees, course.holes.size(), &result.golfers[i * work.tees.size()]));
  }
  if (request.changed_course) result.changed_hazards = request.changed_course->hazards;
  result.notes = notes_of();
  result.cautions = cautions_of();
  double most = 0.0;
  for (const BandOnTee& golfer : result.golfers) {
    for (const BandHole& hole : golfer.holes) most = std::max(most, hole.strokes.before);
  }
  add_caution_of_many_strokes(most, result.cautions);
  return result;
}

}  // namespace yardworth
