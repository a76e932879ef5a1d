#include "report/basis_words.hpp"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "core/distance_words.hpp"
#include "core/numerics.hpp"
#include "report/text.hpp"

namespace yardworth::report {

std::string miss_words(const std::vector<SideMiss>& misses) {
  std::string words;
  for (const SideMiss& miss : misses) {
    const std::string amount = plain_number(std::abs(degrees(miss.direction_mean_rad)));
    const std::string who = miss.club.empty() ? "every club" : "the " + miss.club;
    words += fmt::format("{}{} {}{} {} to the {}{}", words.empty() ? "" : ", ", who, words.empty() ? "misses " : "",
                         amount, amount == "1" ? "degree" : "degrees", miss.direction_mean_rad < 0.0 ? "left" : "right",
                         words.empty() ? " on average" : "");
  }
  return words;
}

std::string note_words(const Note& note, Units units) {
  switch (note.kind) {
    case Note::Kind::own_shots_then_baseline:
      return fmt::format(
          "The player's own shots are played until the ball lies within {} of the hole; from there the baseline "
          "counts.",
          distance_words(note.radius_yd, units));
    case Note::Kind::tee_shot_then_baseline:
      return "One tee shot is played, and the baseline counts from where it finishes.";
    case Note::Kind::typical_spreads:
      return "Spreads and poor strikes that the player's file does not give are typical of the Handicap Index.";
    case Note::Kind::no_driver_to_change:
      return "The player has no driver, so the change of its carry moves no club.";
    case Note::Kind::no_irons_to_change:
      return "The player has no club but the driver, so the change of the irons moves no club.";
    case Note::Kind::step_without_effect:
      return fmt::format("The change of {} moves nothing of this player.", name(note.step));
    case Note::Kind::golfers_invented:
      return "The golfer of a band is invented from its measured facts: a standard bag, spreads and poor strikes of "
             "its Handicap Index. No golfer of the club is any of them.";
    case Note::Kind::band_shots_then_baseline:
      return fmt::format(
          "Own shots are played until the ball lies within {} of the hole; from there the band's baseline counts.",
          distance_words(note.radius_yd, units));
    case Note::Kind::slope_only_for_whom_it_rates:
      return "Women's bands are shown on every tee; a tee's slope is used only for those it is rated for.";
    case Note::Kind::misses_to_one_side: {
      std::string words = miss_words(note.misses) + ": the best plan aims off for it, the habit does not.";
      words.front() = words.starts_with("every") ? 'E' : 'T';
      return words;
    }
    case Note::Kind::members_have_standard_bags:
      return "A member is a golfer of the Handicap Index: its spreads and poor strikes, and a standard bag that is as "
             "long as the driver, where the list says how far that carries, or else as is typical.";
    case Note::Kind::members_taken_together:
      return "Members who are alike were worked out together: strokes saved in a round are within about 0.04 of those "
             "of the member alone.";
  }
  return "";
}

std::string caution_words(const Caution& caution) {
  switch (caution.kind) {
    case Caution::Kind::swing_changes_load_the_body:
      return "Swing changes and speed work load the back, the wrists and the elbows: make them with a qualified coach, "
             "and ask a medical professional about any pain.";
    case Caution::Kind::ratings_are_the_associations:
      return "Course ratings and handicaps are for the authorised golf association; nothing here stands in for them.";
    case Caution::Kind::index_change_supposes_the_mean:
      return "The change of Handicap Index supposes that every score falls by the mean and that all are played here; "
             "what an index is, the authorised golf association decides.";
    case Caution::Kind::many_strokes:
      return fmt::format(
          "A hole here takes {:.0f} strokes. Beyond {:.0f} no golfer plays on: look at the carries and spreads of the "
          "player, and at the hazards of the hole, before any number is used.",
          caution.strokes, numerics::strokes_with_caution);
  }
  return "";
}

std::vector<std::string> all_note_words(const std::vector<Note>& notes, Units units) {
  std::vector<std::string> words;
  for (const Note& note : notes) words.push_back(note_words(note, units));
  return words;
}

std::vector<std::string> opening_and_notes(std::vector<std::string> opening, const std::vector<Note>& notes,
                                           Units units) {
  for (std::string& words : all_note_words(notes, units)) opening.push_back(std::move(words));
  return opening;
}

std::vector<std::string> all_caution_words(const std::vector<Caution>& cautions) {
  std::vector<std::string> words;
  for (const Caution& caution : cautions) words.push_back(caution_words(caution));
  return words;
}

}  // namespace yardworth::report
