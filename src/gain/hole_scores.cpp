#include "gain/hole_scores.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "core/numerics.hpp"
#include "strategy/expected_visits.hpp"

namespace yardworth {

namespace {

// Balls by finish place.
using Finished = std::vector<double>;

// Balls of one lie that evaluation does not follow any further, and the strokes that they expect.
struct Left {
  double visits = 0.0;
  double strokes = 0.0;
};

// Balls that have taken the same number of strokes: where they are played from, and where the short game begins.
struct Level {
  Visits at;
  Finished finished = Finished(static_cast<std::size_t>(finish_places), 0.0);
};

// The finish place of a lie that is furthest from the hole.
int furthest_place(Lie lie) {
  const FinishPlace place = finish_place(lie, short_game_radius_yd);
  return place.share < 1.0 ? place.lower : place.lower + 1;
}

// A row that says what is still to come, and not how: evaluation stopped there (FollowedTo).
bool is_left_to_baseline(const Transition& row) {
  return row.to().empty() && row.finished().empty() && row.replay == 0.0;
}

// Plays one ball from the tee, by how many strokes it has taken.
class ScoresFollowed {
 public:
  ScoresFollowed(const HoleModel& model, const PolicyEvaluation& planned, const ScoresFollowedTo& followed_to)
      : planned_(planned), followed_to_(followed_to) {
    for (StateId state = 0; state < model.state_count(); ++state) {
      if (planned.rows[static_cast<std::size_t>(state)]) reached_.push_back(state);
    }
    for (Level& level : levels_) level.at = no_visits(model);
    levels_[0].at[static_cast<std::size_t>(model.tee_state())] = 1.0;
  }

  StrokeCounts follow(const HoleModel& model, const FinishStrokes& finish) {
    // What is played a stroke or two later comes from these two levels.
    double before = 1.0;
    double played = 1.0;
    while (before + played > followed_to_.left && strokes_ < numerics::most_strokes_followed) {
      before = std::exchange(played, play_level(model));
    }
    for (int later = 0; later < 3; ++later) {
      const Level& left = levels_[static_cast<std::size_t>(later)];
      for (const StateId state : reached_) {
        count_by_value(state, later, left.at[static_cast<std::size_t>(state)]);
      }
      finished_.push_back(left.finished);
    }
    for (int place = 0; place < finish_places; ++place) add_finish(place, finish.at(place));
    add_left(finish);
    return std::move(scores_);
  }

 private:
  // All strokes of those who have taken the fewest; how many visits that were.
  double play_level(const HoleModel& model) {
    left_.emplace_back();
    double played = 0.0;
    Level& here = levels_[0];
    for (const StateId state : reached_) {
      const double visits = std::exchange(here.at[static_cast<std::size_t>(state)], 0.0);
      if (visits <= followed_to_.followed) {
        count_by_value(state, 0, visits);
        continue;
      }
      played += visits;
      play(state, model.lie_of(state), visits);
    }
    finished_.push_back(here.finished);
    std::fill(here.finished.begin(), here.finished.end(), 0.0);
    std::rotate(levels_.begin(), levels_.begin() + 1, levels_.end());
    ++strokes_;
    return played;
  }

  // What is followed no further counts by what its state is worth, in whole strokes around it.
  void count_by_value(StateId state, int later, double visits) {
    if (visits <= 0.0) return;
    const auto index = static_cast<std::size_t>(state);
    const bool evaluated = !std::isnan(planned_.value[index]);
    const double worth = evaluated ? planned_.value[index] : planned_.rows[index]->cost;
    add_around(scores_, strokes_ + later + worth, visits);
  }

  void play(StateId state, Lie lie, double visits) {
    const Transition& row = *planned_.rows[static_cast<std::size_t>(state)];
    if (is_left_to_baseline(row)) {
      Left& left = left_.back()[static_cast<std::size_t>(lie)];
      left.visits += visits;
      left.strokes += visits * row.cost;
      return;
    }
    Visits& next = levels_[1].at;
    Visits& after_penalty = levels_[2].at;
    for (const auto& [to, share] : row.to()) next[static_cast<std::size_t>(to)] += visits * share;
    for (const auto& [to, share] : row.dropped()) {
      next[static_cast<std::size_t>(to)] -= visits * share;
      after_penalty[static_cast<std::size_t>(to)] += visits * share;
    }
    after_penalty[static_cast<std::size_t>(state)] += visits * row.replay;
    for (const auto& [place, share] : row.finished()) {
      Level& there = levels_[place < finish_places ? 1 : 2];
      there.finished[static_cast<std::size_t>(place % finish_places)] += visits * share;
    }
  }

  // Those who finish from a place, whatever they have taken before.
  void add_finish(int place, const StrokeCounts& strokes) {
    StrokeCounts arrivals;
    for (const Finished& finished : finished_) arrivals.push_back(finished[static_cast<std::size_t>(place)]);
    if (std::all_of(arrivals.begin(), arrivals.end(), [](double visits) { return visits == 0.0; })) return;
    add_scores(0, convolve(arrivals, strokes), 1.0);
  }

  // Those who were left to the baseline spread as the golfer does at the edge of the short game.
  void add_left(const FinishStrokes& finish) {
    for (std::size_t taken = 0; taken < left_.size(); ++taken) {
      for (const Lie lie : lies_in_play) {
        const Left& left = left_[taken][static_cast<std::size_t>(lie)];
        if (left.visits == 0.0) continue;
        add_scores(taken, with_mean(finish.at(furthest_place(lie)), left.strokes / left.visits), left.visits);
      }
    }
  }

  void add_scores(std::size_t taken, const StrokeCounts& more, double visits) {
    if (scores_.size() < taken + more.size()) scores_.resize(taken + more.size(), 0.0);
    for (std::size_t i = 0; i < more.size(); ++i) scores_[taken + i] += visits * more[i];
  }

  const PolicyEvaluation& planned_;
  ScoresFollowedTo followed_to_;
  std::vector<StateId> reached_;
  std::array<Level, 3> levels_;                          // of this many strokes, one and two more
  int strokes_ = 0;                                      // taken by those of the first level
  std::vector<Finished> finished_;                       // by strokes taken
  std::vector<std::array<Left, all_lies.size()>> left_;  // likewise, by lie
  StrokeCounts scores_;
};

}  // namespace

StrokeCounts scores_at_states(const HoleModel& model, const PolicyEvaluation& planned, const FinishStrokes& finish,
                              const ScoresFollowedTo& followed_to) {
  return ScoresFollowed(model, planned, followed_to).follow(model, finish);
}

StrokeCounts hole_scores(const HoleModel& model, const PolicyEvaluation& planned, const FinishStrokes& finish) {
  return with_mean(scores_at_states(model, planned, finish), planned.at_tee);
}

}  // namespace yardworth
