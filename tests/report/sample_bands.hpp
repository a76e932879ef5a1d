#pragma once

#include "support/step_values.hpp"
#include "yardworth/report.hpp"

namespace yardworth::test {

inline BandHole sample_band_hole(double strokes_before) {
  BandHole hole;
  hole.number = 4;
  hole.par = 4;
  hole.length_yd = 385.0;
  hole.strokes = of_carries(strokes_before, strokes_before - 0.25, strokes_before - 0.25, strokes_before - 0.25);
  hole.before.green_in_regulation = 0.25;
  hole.after.green_in_regulation = 0.5;
  hole.before.approach = {{"7-iron", 0.5}, {"driver", 0.25}};
  hole.after.approach = {{"8-iron", 0.75}};
  const HazardView bunker{1, Ground::bunker, HazardSide::right, 209.0, 229.0, false};
  hole.before.hazards = {{bunker, 0.125, 0.5, 0.25}};
  hole.after.hazards = {{bunker, 0.0625, 0.75, 0.5}};
  return hole;
}

inline BandOnTee sample_golfer(Band band, Gender gender, double strokes_before, double saved) {
  BandOnTee golfer;
  golfer.band = band;
  golfer.gender = gender;
  golfer.round = of_carries(strokes_before, strokes_before - saved, strokes_before - saved, strokes_before - saved);
  golfer.before = {0.25, 0.5, 0.75, {{"7-iron", 0.5}, {"driver", 0.5}}, {1.0}, "6-iron"};
  golfer.after = {0.375, 0.5, 1.0, {{"8-iron", 1.0}}, {1.0}, "8-iron"};
  golfer.index_change = -saved;
  golfer.clubs_apart = 1.5;
  golfer.clubs_longer = -1.25;
  const auto scores = [](double net, int points) {
    RoundScores round;
    round.gross = {90, {0.5, 0.5}};
    round.handicap = HandicapScores{net, {points, {1.0}}, {90, {0.5, 0.5}}, 16.0};
    return round;
  };
  golfer.scores = PolicyScores{scores(72.0, 30), scores(72.0 - saved, 32), -saved};
  golfer.handicap = HandicapTerms{16.5, 69.3, 124.0, 72, 18};
  golfer.holes = {sample_band_hole(5.0)};
  return golfer;
}

// Two golfers of each gender on one tee.
inline BandsReport sample_bands() {
  BandsResult result;
  result.course = "Heron Ferry Municipal";
  result.tees = {{"middle", 6013.0, 124.0, Gender::men}};
  result.longest_tee = "back";
  result.change = {20.0, 0.0};
  result.holes = 18;
  result.golfers = {
      sample_golfer(Band::scratch, Gender::men, 72.0, 1.0), sample_golfer(Band::bogey, Gender::men, 91.0, 1.5),
      sample_golfer(Band::scratch, Gender::women, 76.0, 1.25), sample_golfer(Band::bogey, Gender::women, 101.0, 2.0)};
  for (BandOnTee& golfer : result.golfers) {
    if (golfer.gender == Gender::women) {
      golfer.index_change.reset();
      golfer.handicap.reset();
      golfer.handicap_needs = {HandicapNeed::rated_for_gender};
      for (RoundScores* round : {&golfer.scores->before, &golfer.scores->after}) round->handicap.reset();
    }
    result.suiting.push_back({golfer.band, golfer.gender, 250.0, {6200.0, 6400.0, false}, {}, {}});
  }
  result.notes = {{Note::Kind::band_shots_then_baseline, 50.0}};
  result.cautions = {{Caution::Kind::index_change_supposes_the_mean}};
  return {result, {}, {}, {}};
}

// The same with the bunker of hole 4 moved, which costs the first golfer a quarter of a stroke and the others nothing.
inline BandsReport sample_changed_bands() {
  BandsReport report = sample_bands();
  report.result.changed_hazards = {{4, 1, false}};
  for (BandOnTee& golfer : report.result.golfers) {
    golfer.changed = {{sample_band_hole(5.0), sample_band_hole(&golfer == &report.result.golfers[0] ? 5.25 : 5.0)}};
  }
  return report;
}

}  // namespace yardworth::test
