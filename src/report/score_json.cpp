#include <cmath>

#include "report/score_parts.hpp"

namespace yardworth::report {

namespace {

void put_handicap(Json& json, const HandicapScores& scores, const HandicapTerms& terms) {
  json["net"] = scores.net;
  json["stableford_mean"] = scores.stableford.mean();
  json["stableford"] = distribution_json(scores.stableford);
  json["adjusted_mean"] = scores.adjusted.mean();
  json["adjusted"] = distribution_json(scores.adjusted);
  double mean = 0.0;
  double squares = 0.0;
  for (std::size_t i = 0; i < scores.adjusted.probability.size(); ++i) {
    const double differential = terms.differential(scores.adjusted.lowest + static_cast<int>(i));
    mean += scores.adjusted.probability[i] * differential;
    squares += scores.adjusted.probability[i] * differential * differential;
  }
  json["differential_mean"] = mean;
  json["differential_sd"] = std::sqrt(std::max(0.0, squares - mean * mean));
  json["handicap_index"] = scores.handicap_index;
}

Json round_json(const RoundScores& scores, const std::optional<HandicapTerms>& terms) {
  Json json;
  json["sd"] = std::sqrt(scores.gross.variance());
  json["gross"] = distribution_json(scores.gross);
  json["breaks"] = Json::array();
  for (const BrokenMark& broken : scores.breaks) {
    json["breaks"].push_back({{"mark", broken.mark}, {"probability", broken.probability}});
  }
  json["holes_by_par"] = {{"birdies_or_better", scores.holes.birdies_or_better},
                          {"pars", scores.holes.pars},
                          {"bogeys", scores.holes.bogeys},
                          {"doubles_or_worse", scores.holes.doubles_or_worse}};
  if (scores.handicap && terms) put_handicap(json, *scores.handicap, *terms);
  return json;
}

}  // namespace

Json distribution_json(const ScoreDistribution& distribution) {
  return {{"lowest", distribution.lowest}, {"probabilities", distribution.probability}};
}

Json scores_json(const PolicyScores& scores, const std::optional<HandicapTerms>& terms) {
  Json json = before_after_json(round_json(scores.before, terms), round_json(scores.after, terms));
  json["handicap_index_change"] = or_null(scores.handicap_index_change);
  return json;
}

Json terms_json(const HandicapTerms& terms) {
  return {{"handicap_index", terms.handicap_index},
          {"course_rating", terms.course_rating},
          {"slope", terms.slope},
          {"par", terms.par},
          {"course_handicap", terms.course_handicap}};
}

}  // namespace yardworth::report
