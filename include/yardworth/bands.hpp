#pragma once

#include <optional>
#include <string>
#include <vector>

#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/player.hpp"
#include "yardworth/score.hpp"

namespace yardworth {

// What a change is worth to every band from every tee of a course, how each plays it, which tees suit whom, and what
// hazards do to whom. The golfer of a band is its standard_player. docs/model.md, "Bands on tees".

// The published length of a course for a golfer's driver distance (carry and roll): USGA / PGA of America tee
// guideline, recommended 18-hole lengths. Between its rows straight lines, beyond its ends the last row; 9 holes half.
struct RecommendedLength {
  double low_yd = 0.0;
  double high_yd = 0.0;
  bool beyond_table = false;  // the driver distance lies outside the rows of the guideline
};
struct BandsRequest {
  std::vector<Gender> genders = {Gender::men, Gender::women};
  std::vector<Band> bands{all_bands.begin(), all_bands.end()};
  std::vector<std::size_t> tees;  // indices into Course::tees; empty: all
  DistanceChange change = {20.0, 0.0};
  PolicyChoice policy = PolicyChoice::habit;    // habit or best
  std::optional<ChangedCourse> changed_course;  // what hazards moved or added do
  // Whether rounds are told of too; without them the holes that hazards change alone, which is many times faster.
  bool rounds = true;
  int threads = 0;  // 0: as many as there are cores; the result does not depend on it
};

// How a round is played, holes taken together.
struct RoundPlay {
  double green_in_regulation = 0.0;  // share of the holes
  double fairway = 0.0;              // share of the tee shots of holes longer than a par 3; greens count
  double penalty = 0.0;              // expected penalty strokes of the tee shots of a round
  // Clubs of the approach shots (HolePlay::approach) over all holes longer than a par 3; sums to 1 where there are any.
  ClubShares approach;
  // What is played second on the par 4s, and the middle of it; empty without par 4s.
  BagPlaces second_shots;
  std::string typical_second_shot;
};

struct BandHole {
  int number = 0;
  int par = 0;
  double length_yd = 0.0;
  StepValues strokes;
  HolePlay before, after;
};

// A hole whose hazards are changed: strokes and hazards without and with the change, in the same order as the course's.
struct ChangedHole {
  BandHole without, with;
};

struct BandOnTee {
  Band band = Band::scratch;
  Gender gender = Gender::men;
  std::size_t tee = 0;  // index into BandsResult::tees
  // The holes that this golfer cannot finish from this tee; where there are any, everything below is without meaning.
  std::vector<UnfinishedHole> cannot_finish;
  // Of this golfer down to holes only where rounds are told of (BandsResult::rounds).
  StepValues round;
  RoundPlay before, after;
  // The change of Handicap Index that the strokes saved lead to, negative for better; nothing where the tee is not
  // rated for the gender or has no slope.
  std::optional<double> index_change;
  // The second shots on par 4s against those of the scratch golfer of the same gender from the longest tees: how many
  // clubs apart they are, each against the one that is as likely to be longer, and how many longer on average; nothing
  // without par 4s.
  std::optional<double> clubs_apart, clubs_longer;
  // The whole score of a round; points and handicaps under the terms, where nothing is wanting for them.
  std::optional<PolicyScores> scores;
  std::optional<HandicapTerms> handicap;
  std::vector<HandicapNeed> handicap_needs;
  std::vector<BandHole> holes;
  std::vector<ChangedHole> changed;
};

struct TeeOfBands {
  std::string name;
  double length_yd = 0.0;
  std::optional<double> slope;
  Gender rated_for = Gender::men;
};

// Which of the tees looked at suits a band; nothing where only one was.
struct SuitingTee {
  Band band = Band::scratch;
  Gender gender = Gender::men;
  double driver_distance_yd = 0.0;  // carry and roll
  RecommendedLength recommended;
  std::optional<std::size_t> by_length;  // index into BandsResult::tees
  std::optional<std::size_t> by_clubs;
};

struct BandsResult {
  std::string course;
  Units units = Units::yards;
  std::vector<TeeOfBands> tees;
  std::string longest_tee;  // the name of the tees of the reference of BandOnTee::clubs_apart
  DistanceChange change;
  PolicyChoice policy = PolicyChoice::habit;
  bool replanning_computed = false;
  bool rounds = true;  // as asked for; without them suiting is empty too
  int holes = 0;
  std::vector<BandOnTee> golfers;  // by gender, band, tee, as asked
  std::vector<SuitingTee> suiting;
  std::vector<ChangedHazard> changed_hazards;
  std::vector<Note> notes;  // what the numbers rest on
  std::vector<Caution> cautions;
};

// Throws InvalidRequest when course or request have faults, and CannotFinish when none of the golfers can finish the
// course.
BandsResult compute_bands(const Course& course, const BandsRequest& request);

}  // namespace yardworth
