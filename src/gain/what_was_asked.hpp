#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

std::vector<Caution> common_cautions();

// Adds a caution where the strokes of a hole, of the dearest that is told of, are more than a golfer plays.
void add_caution_of_many_strokes(double strokes, std::vector<Caution>& cautions);

// Adds a note where the player's clubs miss to one side on average.
void add_note_of_misses(const Player& player, std::vector<Note>& notes);

// The tees that are played from where a request says them or not.
std::size_t tee_of(const Course& course, const Player& player, std::optional<std::size_t> asked);

// Those of the course with these numbers, or all where none is said, in the course's order.
std::vector<const Hole*> holes_wanted(const Course& course, const std::vector<int>& numbers);

// What every result of these questions says of what was asked.
template <class Result>
void say_what_was_asked(Result& result, const Course& course, std::size_t tee, const Player& player,
                        const Baseline& baseline) {
  result.course = course.name;
  result.tee = course.tees[tee].name;
  result.player = player.label;
  result.band = player.band;
  result.units = course.units;
  result.baseline_name = baseline.name();
  result.baseline_source = baseline.source();
  result.cautions = common_cautions();
}

}  // namespace yardworth
