#include "yardworth/members.hpp"

#include <algorithm>
#include <map>
#include <mutex>
#include <numeric>
#include <tuple>
#include <utility>

#include "core/numerics.hpp"
#include "core/parallel.hpp"
#include "gain/bag_places.hpp"
#include "gain/golfer_family.hpp"
#include "gain/golfer_on_tees.hpp"
#include "gain/handicap.hpp"
#include "gain/request_rules.hpp"
#include "gain/round_scores.hpp"
#include "gain/tee_guideline.hpp"
#include "gain/tees_looked_at.hpp"
#include "gain/what_was_asked.hpp"
#include "input/derived_table.hpp"
#include "strategy/hole_model.hpp"
#include "yardworth/read.hpp"

namespace yardworth {

namespace {

// Tells how many holes are worked out.
class Count {
 public:
  explicit Count(std::function<void(std::size_t, std::size_t)> tell) : tell_(std::move(tell)) {}

  void expect(std::size_t holes) {
    const std::lock_guard<std::mutex> lock(mutex_);
    of_ += holes;
  }
  void add(std::size_t holes) {
    const std::lock_guard<std::mutex> lock(mutex_);
    done_ += holes;
    if (tell_) tell_(done_, of_);
  }
  std::size_t done() const { return done_; }

 private:
  std::function<void(std::size_t, std::size_t)> tell_;
  std::mutex mutex_;
  std::size_t done_ = 0;
  std::size_t of_ = 0;
};

using ByHole = std::vector<std::vector<HoleFromTee>>;  // by hole, by tee
using TeeShots = std::vector<std::vector<int>>;        // likewise: habit_tee_shots
using Wanted = std::vector<std::vector<bool>>;         // likewise: what is worked out

// Golfers who are worked out one beside the other, and what for.
struct Batch {
  std::vector<GolferOnTees> golfers;
  std::vector<Wanted> wanted;
  std::vector<ByHole> worked_out;
};

Wanted everything(const CourseOnTees& course) {
  return Wanted(course.maps.size(), std::vector<bool>(course.tees.size(), true));
}

std::size_t how_many(const Wanted& wanted) {
  std::size_t sum = 0;
  for (const std::vector<bool>& tees : wanted) {
    sum += static_cast<std::size_t>(std::count(tees.begin(), tees.end(), true));
  }
  return sum;
}

void for_every_hole(std::size_t golfers, std::size_t holes, int threads,
                    const std::function<void(std::size_t golfer, std::size_t hole)>& work) {
  work_in_parallel(threads, golfers * holes, [&](std::size_t piece) { work(piece / holes, piece % holes); });
}

// How golfers finish takes as long to work out as a hole: of those of whom nothing is wanted it is not.
void work_out(const CourseOnTees& course, int threads, Batch& batch, Count& count) {
  const std::size_t holes = course.maps.size();
  work_in_parallel(threads, batch.golfers.size(), [&](std::size_t i) {
    if (how_many(batch.wanted[i]) > 0) know_finish(batch.golfers[i]);
  });
  batch.worked_out.assign(batch.golfers.size(), ByHole(holes, std::vector<HoleFromTee>(course.tees.size())));
  for_every_hole(batch.golfers.size(), holes, threads, [&](std::size_t golfer, std::size_t hole) {
    const std::vector<bool>& wanted = batch.wanted[golfer][hole];
    const auto tees = static_cast<std::size_t>(std::count(wanted.begin(), wanted.end(), true));
    if (tees == 0) return;
    batch.worked_out[golfer][hole] = play_hole(course, batch.golfers[golfer], hole, wanted);
    count.add(tees);
  });
}

std::vector<GolferOnTees> golfers_of(const CourseOnTees& course, int threads, const std::vector<FamilyGolfer>& family) {
  std::vector<std::optional<GolferOnTees>> made(family.size());
  work_in_parallel(threads, family.size(), [&](std::size_t i) {
    const Player player = player_of(family[i]);
    made[i] = golfer_on_tees(player, default_baseline(player), course.change);
  });
  std::vector<GolferOnTees> golfers;
  for (auto& golfer : made) golfers.push_back(std::move(*golfer));
  return golfers;
}

std::vector<TeeShots> tee_shots_of(const CourseOnTees& course, int threads, const std::vector<GolferOnTees>& golfers) {
  std::vector<TeeShots> shots(golfers.size(), TeeShots(course.maps.size()));
  for_every_hole(golfers.size(), course.maps.size(), threads, [&](std::size_t golfer, std::size_t hole) {
    shots[golfer][hole] = habit_tee_shots(course, golfers[golfer], hole);
  });
  return shots;
}

// A corner of the grid, worked out.
struct Corner {
  TeeShots tee_shots;
  ByHole holes;
};
using Corners = std::map<FamilyGolfer, Corner>;

// Does work on golfers, few enough at a time for memory.
void in_batches(std::size_t count, const std::function<void(std::size_t first, std::size_t last)>& work) {
  for (std::size_t first = 0; first < count; first += numerics::golfers_at_a_time) {
    work(first, std::min(count, first + numerics::golfers_at_a_time));
  }
}

std::vector<FamilyGolfer> part_of(const std::vector<FamilyGolfer>& all, std::size_t first, std::size_t last) {
  return {all.begin() + static_cast<std::ptrdiff_t>(first), all.begin() + static_cast<std::ptrdiff_t>(last)};
}

// A change may leave the clubs of a corner no carry, though all members keep theirs: nobody is like that corner.
Corners work_out_corners(const CourseOnTees& course, int threads, std::vector<FamilyGolfer> asked, Count& count) {
  asked.erase(
      std::remove_if(asked.begin(), asked.end(),
                     [&](const FamilyGolfer& golfer) { return !keeps_carries(player_of(golfer), course.change); }),
      asked.end());
  Corners corners;
  in_batches(asked.size(), [&](std::size_t first, std::size_t last) {
    const std::vector<FamilyGolfer> here = part_of(asked, first, last);
    Batch batch{golfers_of(course, threads, here), std::vector<Wanted>(here.size(), everything(course)), {}};
    std::vector<TeeShots> shots = tee_shots_of(course, threads, batch.golfers);
    work_out(course, threads, batch, count);
    for (std::size_t i = 0; i < here.size(); ++i) {
      corners.emplace(here[i], Corner{std::move(shots[i]), std::move(batch.worked_out[i])});
    }
  });
  return corners;
}

// What the corners of a golfer's cell say of a hole from a tee; nothing where they are too unlike him.
std::optional<HoleOutcome> between_corners(const FamilyCell& cell, const Corners& corners, int tee_shot,
                                           std::size_t hole, std::size_t tee) {
  std::array<const HoleOutcome*, family_corners> outcomes{};
  std::array<bool, family_corners> alike{};
  for (std::size_t i = 0; i < family_corners; ++i) {
    const auto corner = corners.find(cell.corners[i]);
    if (corner == corners.end() || corner->second.tee_shots[hole][tee] != tee_shot) continue;
    const auto& outcome = corner->second.holes[hole][tee].outcome;
    outcomes[i] = outcome ? &*outcome : nullptr;
    alike[i] = outcome.has_value();
  }
  const auto weights = weights_of_corners(cell, alike);
  if (!weights) return std::nullopt;
  std::vector<WeightedOutcome> parts;
  for (std::size_t i = 0; i < family_corners; ++i) {
    if ((*weights)[i] > 0.0) parts.push_back({outcomes[i], (*weights)[i]});
  }
  return mix(parts);
}

// What corners say of the holes of a golfer, and what has to be worked out himself.
Wanted put_between(const CourseOnTees& course, const FamilyGolfer& golfer, const Corners& corners,
                   const TeeShots& tee_shots, ByHole& holes) {
  const FamilyCell cell = cell_of(golfer);
  Wanted wanted = everything(course);
  for (std::size_t hole = 0; hole < course.maps.size(); ++hole) {
    for (std::size_t tee = 0; tee < course.tees.size(); ++tee) {
      holes[hole][tee].outcome = between_corners(cell, corners, tee_shots[hole][tee], hole, tee);
      wanted[hole][tee] = !holes[hole][tee].outcome;
    }
  }
  return wanted;
}

void fill(const Wanted& wanted, ByHole& worked_out, ByHole& holes) {
  for (std::size_t hole = 0; hole < wanted.size(); ++hole) {
    for (std::size_t tee = 0; tee < wanted[hole].size(); ++tee) {
      if (wanted[hole][tee]) holes[hole][tee] = std::move(worked_out[hole][tee]);
    }
  }
}

// The round of a mixture or of a golfer, as gain has it.
PolicyGain round_of(const CourseOnTees& course, const ByHole& holes, std::size_t tee) {
  PolicyGain gain;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const HoleOutcome& outcome = *holes[i][tee].outcome;
    HoleGain hole;
    hole.number = course.course.holes[i].number;
    hole.par = course.course.holes[i].par;
    hole.strokes = outcome.strokes;
    hole.before.next_places = outcome.next_before;
    hole.after.next_places = outcome.next_after;
    if (!outcome.scores_before.probability.empty()) hole.scores_before = outcome.scores_before;
    if (!outcome.scores_after.probability.empty()) hole.scores_after = outcome.scores_after;
    gain.holes.push_back(std::move(hole));
    gain.round.add(outcome.strokes);
  }
  return gain;
}

std::vector<UnfinishedHole> unfinished_of(const ByHole& holes, std::size_t tee) {
  std::vector<UnfinishedHole> unfinished;
  for (const std::vector<HoleFromTee>& hole : holes) {
    if (hole[tee].unfinished) unfinished.push_back(*hole[tee].unfinished);
  }
  return unfinished;
}

std::optional<MemberScores> scores_from(const CourseOnTees& course, const PolicyGain& gain, const Player& player,
                                        std::size_t tee) {
  if (!handicap_needs(course.course, course.tees[tee], player, gain.holes.size()).empty()) return std::nullopt;
  const HandicapTerms terms = handicap_terms(course.course, course.tees[tee], player);
  const auto scores = scores_of(gain, course.course, {}, terms);
  if (!scores) return std::nullopt;
  return MemberScores{terms.course_handicap,
                      scores->before.handicap->net,
                      scores->after.handicap->net,
                      scores->before.handicap->stableford.mean(),
                      scores->after.handicap->stableford.mean(),
                      *scores->handicap_index_change};
}

// `scratch`: the second shots that clubs are measured against.
MemberOnTee member_on_tee(const CourseOnTees& course, const ByHole& holes, const Player& player,
                          const BagPlaces& scratch, std::size_t tee) {
  MemberOnTee on_tee;
  on_tee.cannot_finish = unfinished_of(holes, tee);
  if (!on_tee.cannot_finish.empty()) return on_tee;
  const PolicyGain gain = round_of(course, holes, tee);
  on_tee.round = gain.round;
  for (const HoleGain& hole : gain.holes) on_tee.dearest_hole = std::max(on_tee.dearest_hole, hole.strokes.before);
  on_tee.scores = scores_from(course, gain, player, tee);
  const BagPlaces before = second_shots_of_par_4s(gain.holes, &HoleGain::before);
  if (before.empty()) return on_tee;
  const BagPlaces after = second_shots_of_par_4s(gain.holes, &HoleGain::after);
  const BagOrder bag(player);
  on_tee.second_shot_before = bag.name_of(middle_place(before));
  on_tee.second_shot_after = bag.name_of(middle_place(after));
  if (scratch.empty()) return on_tee;
  on_tee.clubs_apart = places_apart(before, scratch);
  on_tee.clubs_longer = mean_place(scratch) - mean_place(before);
  return on_tee;
}

// The tees that a golfer of the gender plays where nothing is said, if they are looked at.
std::size_t usual_tee(const CourseOnTees& course, Gender gender) {
  const auto usual = std::find(course.tees.begin(), course.tees.end(), default_tee(course.course, gender));
  return usual == course.tees.end() ? 0 : static_cast<std::size_t>(usual - course.tees.begin());
}

// Everything but the member's own words: label and carry.
MemberResult member_of(const CourseOnTees& course, const std::vector<TeeOfBands>& tees, const Member& member,
                       const Player& player, const ByHole& holes, const BagPlaces& scratch) {
  MemberResult result;
  const Club& driver = player.clubs.front();
  result.driver_distance_yd = driver.carry_yd + driver.roll_yd;
  result.recommended = recommended_length(result.driver_distance_yd, holes.size());
  result.by_length = tee_by_length(result.recommended, tees);
  result.usual_tee = usual_tee(course, member.gender);
  Player asked = player;
  asked.handicap_index = member.handicap_index;
  std::vector<std::optional<double>> apart;
  for (std::size_t tee = 0; tee < course.tees.size(); ++tee) {
    result.from_tees.push_back(member_on_tee(course, holes, asked, scratch, tee));
    apart.push_back(result.from_tees.back().clubs_apart);
  }
  result.by_clubs = tee_by_clubs(apart);
  return result;
}

// The second shots of the scratch golfer of a gender from the longest tees; empty where he cannot finish.
BagPlaces scratch_second_shots(const Course& course, Gender gender, const MembersRequest& request) {
  const CourseOnTees there(course, {longest_tee}, {}, request.policy);
  Batch batch{
      {golfer_on_tees(standard_player(Band::scratch, gender), Baseline(derived_table(Band::scratch, gender)), {})},
      {everything(there)},
      {}};
  Count nobody({});
  work_out(there, request.threads, batch, nobody);
  if (!unfinished_of(batch.worked_out.front(), 0).empty()) return {};
  return second_shots_of_par_4s(round_of(there, batch.worked_out.front(), 0).holes, &HoleGain::before);
}

// Members who differ in nothing but their labels are one.
using Same = std::tuple<Gender, double, std::optional<double>>;
Same same_as(const Member& member) { return {member.gender, member.handicap_index, member.driver_carry_yd}; }

struct Distinct {
  std::vector<const Member*> members;  // the first of each
  std::vector<FamilyGolfer> family;
  std::vector<std::size_t> of;  // by member asked for: which of them
};

Distinct distinct_of(const std::vector<Member>& members) {
  Distinct distinct;
  std::map<Same, std::size_t> known;
  for (const Member& member : members) {
    const auto [same, is_new] = known.emplace(same_as(member), distinct.members.size());
    distinct.of.push_back(same->second);
    if (!is_new) continue;
    distinct.members.push_back(&member);
    distinct.family.push_back(family_golfer(member));
  }
  return distinct;
}

// The work on all distinct members, and what it comes to.
class MemberWork {
 public:
  MemberWork(const Course& course, const MembersRequest& request, const std::vector<TeeOfBands>& tees)
      : course_(course, tees_or_all(course, request.tees), request.change, request.policy),
        request_(request),
        tees_(tees),
        count_(request.progress) {
    for (const Member& member : request.members) {
      if (scratch_.count(member.gender) > 0) continue;
      scratch_.emplace(member.gender, scratch_second_shots(course, member.gender, request));
    }
  }

  std::vector<MemberResult> work_out_all(const Distinct& distinct) {
    const bool together = request_.together && request_.policy == PolicyChoice::habit;
    FamilyPlan plan = plan_family(distinct.family);
    if (!together) plan = {{}, std::vector<bool>(distinct.family.size(), false)};
    const std::size_t round = course_.maps.size() * course_.tees.size();
    const auto alone = static_cast<std::size_t>(std::count(plan.between.begin(), plan.between.end(), false));
    count_.expect(round * (plan.corners.size() + alone));
    const Corners corners = work_out_corners(course_, request_.threads, plan.corners, count_);
    std::vector<MemberResult> results;
    in_batches(distinct.family.size(), [&](std::size_t first, std::size_t last) {
      for (MemberResult& result : work_out_part(distinct, plan, corners, first, last)) {
        results.push_back(std::move(result));
      }
    });
    return results;
  }

  // Rounds, parts of them added up.
  std::size_t golfers_worked_out() const {
    const std::size_t round = course_.maps.size() * course_.tees.size();
    return (count_.done() + round - 1) / round;
  }

 private:
  std::vector<MemberResult> work_out_part(const Distinct& distinct, const FamilyPlan& plan, const Corners& corners,
                                          std::size_t first, std::size_t last) {
    const std::vector<FamilyGolfer> family = part_of(distinct.family, first, last);
    Batch batch{golfers_of(course_, request_.threads, family), {}, {}};
    const std::vector<TeeShots> shots = tee_shots_of(course_, request_.threads, batch.golfers);
    std::vector<ByHole> holes(family.size(),
                              ByHole(course_.maps.size(), std::vector<HoleFromTee>(course_.tees.size())));
    for (std::size_t i = 0; i < family.size(); ++i) {
      const bool between = plan.between[first + i];
      batch.wanted.push_back(between ? put_between(course_, family[i], corners, shots[i], holes[i])
                                     : everything(course_));
      if (between) count_.expect(how_many(batch.wanted.back()));
    }
    work_out(course_, request_.threads, batch, count_);
    std::vector<MemberResult> results(family.size());
    work_in_parallel(request_.threads, family.size(), [&](std::size_t i) {
      const Member& member = *distinct.members[first + i];
      fill(batch.wanted[i], batch.worked_out[i], holes[i]);
      results[i] = member_of(course_, tees_, member, batch.golfers[i].player, holes[i], scratch_.at(member.gender));
    });
    return results;
  }

  CourseOnTees course_;
  const MembersRequest& request_;
  const std::vector<TeeOfBands>& tees_;
  std::map<Gender, BagPlaces> scratch_;
  Count count_;
};

std::vector<Note> notes_of(bool together) {
  std::vector<Note> notes = {{Note::Kind::members_have_standard_bags},
                             {Note::Kind::own_shots_then_baseline, short_game_radius_yd}};
  if (together) notes.push_back({Note::Kind::members_taken_together});
  return notes;
}

void require_some_finish(const MembersResult& result) {
  const std::vector<UnfinishedHole>* unfinished = nullptr;
  for (const MemberResult& member : result.members) {
    for (const MemberOnTee& on_tee : member.from_tees) {
      if (on_tee.cannot_finish.empty()) return;
      if (unfinished == nullptr) unfinished = &on_tee.cannot_finish;
    }
  }
  if (unfinished != nullptr) throw CannotFinish(*unfinished, result.units);
}

double dearest_hole(const MembersResult& result) {
  double most = 0.0;
  for (const MemberResult& member : result.members) {
    for (const MemberOnTee& on_tee : member.from_tees) most = std::max(most, on_tee.dearest_hole);
  }
  return most;
}

}  // namespace

MembersResult compute_members(const Course& course, const MembersRequest& request) {
  require_valid(course, request);
  MembersResult result;
  result.course = course.name;
  result.units = course.units;
  result.tees = describe_tees(course, tees_or_all(course, request.tees));
  result.longest_tee = course.tees[longest_tee].name;
  result.change = request.change;
  result.policy = request.policy;
  result.replanning_computed = request.policy != PolicyChoice::habit;
  result.holes = static_cast<int>(course.holes.size());
  const Distinct distinct = distinct_of(request.members);
  MemberWork work(course, request, result.tees);
  const std::vector<MemberResult> results = work.work_out_all(distinct);
  for (std::size_t i = 0; i < request.members.size(); ++i) {
    result.members.push_back(results[distinct.of[i]]);
    result.members.back().member = request.members[i];
  }
  require_some_finish(result);
  result.golfers_worked_out = work.golfers_worked_out();
  result.notes = notes_of(result.golfers_worked_out < distinct.members.size());
  result.cautions = common_cautions();
  add_caution_of_many_strokes(dearest_hole(result), result.cautions);
  return result;
}

}  // namespace yardworth
