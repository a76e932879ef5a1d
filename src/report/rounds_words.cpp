#include "report/rounds_words.hpp"

#include <fmt/format.h>

#include <cmath>

#include "core/distance_words.hpp"
#include "core/telling.hpp"
#include "report/text.hpp"

namespace yardworth::report {
namespace {

// A number of rounds, rounded up: half a round tells nothing.
std::string rounds_words(double rounds) {
  using telling::countless_rounds;
  if (rounds > countless_rounds) return fmt::format("more than {:.0f} rounds", countless_rounds);
  const double whole_rounds = std::ceil(rounds);
  return fmt::format("{:.0f} round{}", whole_rounds, whole_rounds == 1.0 ? "" : "s");
}

std::string scores_words(const RoundsToShow& show, double saved) {
  if (!show.rounds_for_scores) return "There is nothing to see in the scores.";
  const std::string spread = fmt::format(
      "Scores here vary by {} strokes from round to round (one standard deviation), before wind and good and bad "
      "days. ",
      fixed(show.score_sd, 1));
  const std::string rounds = rounds_words(*show.rounds_for_scores);
  if (*show.rounds_for_scores > telling::rounds_ever_seen) {
    return spread + fmt::format(
                        "Scores alone will not show {} strokes a round: it would take {} before the change and as many "
                        "after it, more than a keen golfer plays in two seasons.",
                        strokes_text(std::abs(saved)), rounds);
  }
  return spread + fmt::format(
                      "The {} strokes a round are likely to be seen in them after {} before the change and as many "
                      "after it.",
                      strokes_text(std::abs(saved)), rounds);
}

std::string left_words(const RoundsToShow& show, Units units) {
  if (!show.rounds_for_left) return "";
  const bool never = *show.rounds_for_left > telling::rounds_ever_seen;
  const bool scores_show = show.rounds_for_scores && *show.rounds_for_scores <= telling::rounds_ever_seen;
  const bool sooner = show.rounds_for_scores && *show.rounds_for_left < *show.rounds_for_scores;
  return fmt::format(
      " What the tee shot leaves to the hole {}: {} {} on average, {} {} of noting it, {} hole{} each, "
      "before and after.",
      never    ? (scores_show ? "shows later" : "will not show it either")
      : sooner ? "shows sooner"
               : "shows it too",
      distance_words(std::abs(show.left_change_yd), units), show.left_change_yd < 0.0 ? "less" : "more",
      never ? "which takes" : "seen after", rounds_words(*show.rounds_for_left), show.holes,
      show.holes == 1 ? "" : "s");
}

}  // namespace

std::string shows_sentence(const GainResult& result) {
  const auto show = rounds_to_show(result);
  if (!show || !show->rounds_for_scores) return "";
  return fmt::format("It takes {} before and as many after until the scores show it.",
                     rounds_words(*show->rounds_for_scores));
}

std::string until_it_shows_words(const GainResult& result) {
  const auto show = rounds_to_show(result);
  if (!show) return "";
  return scores_words(*show, result.answer().round.strokes_saved()) + left_words(*show, result.units) +
         " Likely: 80 times in 100, with 5 false alarms in 100.";
}

}  // namespace yardworth::report
