#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "yardworth/bands.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// What a change is worth to the members of a club from every tee of a course, and which tees suit whom. A member has
// the skill of the Handicap Index and a standard bag, as long as the driver where its carry is known. Members who are
// alike are taken together: docs/model.md, "Members".

struct MembersRequest {
  std::vector<Member> members;
  std::vector<std::size_t> tees;  // indices into Course::tees; empty: all
  DistanceChange change = {20.0, 0.0};
  PolicyChoice policy = PolicyChoice::habit;  // habit or best; under the best policy each member is worked out alone
  int threads = 0;                            // 0: as many as there are cores; the result does not depend on it
  bool together = true;                       // whether members who are alike may be taken together
  // Told from time to time, on any thread and never on two at once, how many holes are worked out, of how many so far.
  std::function<void(std::size_t done, std::size_t of)> progress = {};
};

// Net scores and points of a round under the Course Handicap of the member's index, the same before and after.
struct MemberScores {
  int course_handicap = 0;
  double net_before = 0.0, net_after = 0.0;                // expected
  double stableford_before = 0.0, stableford_after = 0.0;  // expected points
  double handicap_index_change = 0.0;                      // PolicyScores::handicap_index_change
};

struct MemberOnTee {
  // The holes that this member cannot finish from this tee; where there are any, everything below is without meaning.
  std::vector<UnfinishedHole> cannot_finish;
  StepValues round;
  double dearest_hole = 0.0;                          // strokes of the hole that takes most, before
  std::string second_shot_before, second_shot_after;  // the typical ones of the par 4s; empty without
  std::optional<double> clubs_apart, clubs_longer;    // as of BandOnTee
  std::optional<MemberScores> scores;                 // where nothing is wanting for them
};

struct MemberResult {
  Member member;
  double driver_distance_yd = 0.0;  // carry and roll
  RecommendedLength recommended;
  // Which tees suit; indices into MembersResult::tees, nothing where only one was looked at.
  std::optional<std::size_t> by_length, by_clubs;
  std::size_t usual_tee = 0;           // the default of the gender where that is looked at, else the first of all
  std::vector<MemberOnTee> from_tees;  // by MembersResult::tees
};

struct MembersResult {
  std::string course;
  Units units = Units::yards;
  std::vector<TeeOfBands> tees;
  std::string longest_tee;
  DistanceChange change;
  PolicyChoice policy = PolicyChoice::habit;
  bool replanning_computed = false;
  int holes = 0;
  std::vector<MemberResult> members;   // as asked
  std::size_t golfers_worked_out = 0;  // whole rounds; the fewer, the more members were taken together
  std::vector<Note> notes;
  std::vector<Caution> cautions;
};

// Throws InvalidRequest when course or request have faults, and CannotFinish when no member can finish the course.
MembersResult compute_members(const Course& course, const MembersRequest& request);

}  // namespace yardworth
