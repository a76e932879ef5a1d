#include <fmt/format.h>

#include <functional>
#include <vector>

#include "report/score_parts.hpp"
#include "report/sentence_words.hpp"

namespace yardworth::report {

namespace {

// Of 100 rounds, as a golfer counts them.
std::string of_100(double probability) {
  const std::string rounds = fixed(100.0 * probability, 0);
  if (rounds == "0") return "under 1";
  return rounds == "100" ? "more than 99" : rounds;
}

const BrokenMark* broken(const RoundScores& scores, int mark) {
  for (const BrokenMark& here : scores.breaks) {
    if (here.mark == mark) return &here;
  }
  return nullptr;
}

// A row of the table: what of a round's scores, in words.
struct Row {
  std::string heading;
  std::function<std::string(const RoundScores&)> words;
};

std::vector<Row> rows_of(const PolicyScores& scores) {
  std::vector<Row> rows;
  for (std::size_t i = 0; i < scores.before.breaks.size(); ++i) {
    rows.push_back({fmt::format("breaks {}", scores.before.breaks[i].mark),
                    [i](const RoundScores& round) { return percent(round.breaks[i].probability); }});
  }
  const auto holes = [](double HolesByPar::*which) {
    return [which](const RoundScores& round) { return fixed(round.holes.*which, 1); };
  };
  rows.push_back({"birdies or better", holes(&HolesByPar::birdies_or_better)});
  rows.push_back({"pars", holes(&HolesByPar::pars)});
  rows.push_back({"bogeys", holes(&HolesByPar::bogeys)});
  rows.push_back({"doubles or worse", holes(&HolesByPar::doubles_or_worse)});
  if (!scores.before.handicap) return rows;
  rows.push_back({"net score", [](const RoundScores& round) { return fixed(round.handicap->net, 1); }});
  rows.push_back(
      {"Stableford points", [](const RoundScores& round) { return fixed(round.handicap->stableford.mean(), 1); }});
  rows.push_back({"Handicap Index", [](const RoundScores& round) { return fixed(round.handicap->handicap_index, 1); }});
  return rows;
}

std::string cell(const PolicyScores& scores, const Row& row) {
  return before_after(row.words(scores.before), row.words(scores.after));
}

std::string need_words(HandicapNeed need) {
  switch (need) {
    case HandicapNeed::whole_round:
      return "a round of all 18 holes";
    case HandicapNeed::handicap_index:
      return "the player's Handicap Index";
    case HandicapNeed::course_rating:
      return "a course rating of these tees";
    case HandicapNeed::slope:
      return "a slope of these tees";
    case HandicapNeed::rated_for_gender:
      return "tees that are rated for the player's gender";
    case HandicapNeed::stroke_indexes:
      return "a stroke index of every hole";
  }
  return "";
}

std::string terms_words(const HandicapTerms& terms) {
  return fmt::format(
      "Net score and points under a Course Handicap of {}; the Handicap Index that such scores alone would give.",
      terms.course_handicap);
}

}  // namespace

std::string scores_sentence(const GainResult& result) {
  const auto& scores = result.answer().scores;
  if (!scores || !result.mark) return "";
  const BrokenMark* before = broken(scores->before, *result.mark);
  const BrokenMark* after = broken(scores->after, *result.mark);
  if (before == nullptr || after == nullptr) return "";
  const std::string was = of_100(before->probability);
  const std::string is = of_100(after->probability);
  const std::string instead = was == is ? "" : " instead of " + was;
  return fmt::format("Breaks {} in {} round{} of 100{}.", *result.mark, is, is == "1" || is == "under 1" ? "" : "s",
                     instead);
}

std::string handicap_needs_words(const std::vector<HandicapNeed>& needs) {
  if (needs.empty()) return "";
  std::vector<std::string> words;
  for (const HandicapNeed need : needs) words.push_back(need_words(need));
  return fmt::format("Points and handicaps were not worked out; they need {}.", fmt::join(words, ", "));
}

std::string scores_section(const GainResult& result, const Page& page) {
  const auto& answer = result.answer().scores;
  if (!answer) return "";
  const bool both = result.best && result.habit && result.habit->scores;
  Table table{{{"", Align::left}, {result.best ? "best plan" : "habit plan"}}, {}};
  if (both) table.columns.push_back(give_way({"habit plan"}, 1, GivesWay::left_out));
  for (const Row& row : rows_of(*answer)) {
    table.rows.push_back({row.heading, cell(*answer, row)});
    if (both) table.rows.back().push_back(cell(*result.habit->scores, row));
  }
  const std::string terms =
      result.handicap ? terms_words(*result.handicap) : handicap_needs_words(result.handicap_needs);
  return page.section("What is scored in a round") + page.table(table) +
         page.paragraph(terms + " Wind and good and bad days are not counted: real scores vary more.");
}

}  // namespace yardworth::report
