#include "core/cannot_finish_words.hpp"
#include "report/csv_parts.hpp"
#include "report/gain_parts.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Cells;
using report::join;
using report::length;
using report::length_heading;
using report::number;
using report::text;

Cells headings_of(Units units) {
  const Cells about = {"member", "index", "gender", length_heading("driver", units), "tee", "course", "plan"};
  const Cells suits = {"usual_tee", "tee_by_length", "tee_by_clubs", "cannot_finish"};
  const Cells play = {"course_handicap",
                      "net_before",
                      "net_after",
                      "stableford_before",
                      "stableford_after",
                      "handicap_index_change",
                      "typical_second_shot_before",
                      "typical_second_shot_after",
                      "clubs_apart_from_scratch",
                      "clubs_longer_than_scratch"};
  return join(join(join(about, suits), report::strokes_headings()), play);
}

Cells about_cells(const MembersResult& result, const MemberResult& member, std::size_t tee) {
  const auto name_of = [&](const std::optional<std::size_t>& suits) {
    return suits ? text(result.tees[*suits].name) : std::string();
  };
  const MemberOnTee& on_tee = member.from_tees[tee];
  return {text(member.member.label),
          number(member.member.handicap_index),
          std::string(name(member.member.gender)),
          length(member.driver_distance_yd, result.units),
          text(result.tees[tee].name),
          text(result.course),
          std::string(name(result.policy)),
          text(result.tees[member.usual_tee].name),
          name_of(member.by_length),
          name_of(member.by_clubs),
          on_tee.cannot_finish.empty() ? "" : text(cannot_finish_words(on_tee.cannot_finish, result.units))};
}

Cells score_cells(const std::optional<MemberScores>& scores) {
  if (!scores) return Cells(6);
  return {
      std::to_string(scores->course_handicap), number(scores->net_before),       number(scores->net_after),
      number(scores->stableford_before),       number(scores->stableford_after), number(scores->handicap_index_change)};
}

Cells play_cells(const MembersResult& result, const MemberOnTee& on_tee) {
  const Cells second = {text(on_tee.second_shot_before), text(on_tee.second_shot_after), number(on_tee.clubs_apart),
                        number(on_tee.clubs_longer)};
  return join(join(report::strokes_cells(on_tee.round, {true, result.replanning_computed}), score_cells(on_tee.scores)),
              second);
}

}  // namespace

std::string members_csv(const MembersReport& report) {
  const MembersResult& result = report.result;
  const Cells headings = headings_of(result.units);
  std::string csv = csv_row(headings);
  for (const MemberResult& member : result.members) {
    for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
      Cells cells = about_cells(result, member, tee);
      const MemberOnTee& on_tee = member.from_tees[tee];
      if (on_tee.cannot_finish.empty()) cells = join(std::move(cells), play_cells(result, on_tee));
      cells.resize(headings.size());
      csv += csv_row(cells);
    }
  }
  return csv;
}

}  // namespace yardworth
