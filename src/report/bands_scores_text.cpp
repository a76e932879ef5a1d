#include <fmt/format.h>

#include <string>
#include <vector>

#include "report/bands_parts.hpp"
#include "report/score_parts.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::report {

namespace {

std::vector<std::string> score_row(const BandOnTee& golfer, const std::string& who, const std::string& tee) {
  const RoundScores& before = golfer.scores->before;
  const RoundScores& after = golfer.scores->after;
  const auto number = [](double value) { return fixed(value, 1); };
  return {who,
          tee,
          std::to_string(golfer.handicap->course_handicap),
          before_after(number(before.handicap->net), number(after.handicap->net)),
          before_after(number(before.handicap->stableford.mean()), number(after.handicap->stableford.mean())),
          before_after(number(before.holes.birdies_or_better), number(after.holes.birdies_or_better)),
          before_after(number(before.holes.doubles_or_worse), number(after.holes.doubles_or_worse))};
}

Table scores_table() {
  return {{{"", Align::left},
           {"tees", Align::left},
           {"Course\nHandicap"},
           {"net\nscore"},
           {"Stableford\npoints"},
           give_way({"birdies\nor better"}, 1, GivesWay::left_out),
           give_way({"doubles\nor worse"}, 2, GivesWay::left_out)},
          {}};
}

// What is wanting for the first golfer of whom something is; nothing where nobody wants anything.
std::vector<HandicapNeed> first_needs(const BandsResult& result) {
  for (const BandOnTee& golfer : result.golfers) {
    if (!golfer.handicap_needs.empty()) return golfer.handicap_needs;
  }
  return {};
}

}  // namespace

std::string bands_scores_section(const BandsResult& result, const Page& page) {
  Table table = scores_table();
  std::string last;
  for (const BandOnTee& golfer : result.golfers) {
    if (!golfer.cannot_finish.empty() || !golfer.scores || !golfer.handicap) continue;
    const std::string who = fmt::format("{} {}", name(golfer.band), name(golfer.gender));
    const std::string tee = shorten(escape_control(result.tees[golfer.tee].name), 12);
    table.rows.push_back(score_row(golfer, who == last ? "" : who, tee));
    last = who;
  }
  const std::string title = page.section("Net scores and points");
  if (table.rows.empty()) {
    const std::string needs = handicap_needs_words(first_needs(result));
    return needs.empty() ? "" : title + page.paragraph(needs);
  }
  return title + page.table(table) +
         page.paragraph(
             "Expected in a round under the Course Handicap of the band's index, the same before and after, from the "
             "tees that are rated for those who play them. Wind and good and bad days are not counted: real scores "
             "vary more.");
}

}  // namespace yardworth::report
