#include <algorithm>

#include "report/csv_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Cells;
using report::computed_parts;
using report::join;
using report::length;
using report::length_heading;
using report::number;
using report::number_if;
using report::strokes_cells;
using report::strokes_headings;
using report::text;

Cells shot_headings(Units units) {
  return {"tee_club_before",
          "tee_club_after",
          length_heading("left_before", units),
          length_heading("left_after", units),
          "clubs_shorter",
          "next_club_before",
          "next_club_after",
          "next_club_changed_probability",
          "fairway_before_probability",
          "fairway_after_probability",
          "penalty_before_probability",
          "penalty_after_probability"};
}

// Of a hole how it stands to par; of the round the mark, points and the change of Handicap Index.
Cells score_headings() {
  Cells headings;
  for (const char* when : {"before", "after"}) {
    for (const char* what : {"birdie_or_better", "par", "bogey", "double_or_worse"}) {
      headings.push_back(std::string(what) + "_" + when + "_probability");
    }
  }
  return join(std::move(headings), {"mark", "breaks_before_probability", "breaks_after_probability",
                                    "stableford_before", "stableford_after", "handicap_index_change"});
}

Cells by_par_cells(const std::optional<ScoreDistribution>& scores, int par) {
  if (!scores) return Cells(4);
  const double under = scores->at_most(par - 1);
  const double at_par = scores->at_most(par);
  const double bogey = scores->at_most(par + 1);
  return {number(under), number(at_par - under), number(bogey - at_par), number(1.0 - bogey)};
}

Cells hole_score_cells(const HoleGain& hole) {
  Cells cells = join(by_par_cells(hole.scores_before, hole.par), by_par_cells(hole.scores_after, hole.par));
  cells.resize(score_headings().size());
  return cells;
}

Cells round_score_cells(const GainResult& result) {
  Cells cells(8);
  const auto& scores = result.answer().scores;
  const auto breaks = [&](const RoundScores& round) -> std::string {
    for (const BrokenMark& broken : round.breaks) {
      if (broken.mark == result.mark) return number(broken.probability);
    }
    return "";
  };
  const auto points = [](const RoundScores& round) {
    return round.handicap ? number(round.handicap->stableford.mean()) : std::string();
  };
  if (scores) {
    cells = join(std::move(cells),
                 {result.mark ? std::to_string(*result.mark) : "", breaks(scores->before), breaks(scores->after),
                  points(scores->before), points(scores->after), number(scores->handicap_index_change)});
  }
  cells.resize(score_headings().size());
  return cells;
}

Cells shot_cells(const HoleGain& hole, Units units) {
  return {text(hole.before.club),
          text(hole.after.club),
          length(hole.before.left_yd, units),
          length(hole.after.left_yd, units),
          number(hole.clubs_shorter),
          text(hole.before.next_club),
          text(hole.after.next_club),
          number(hole.next_club_changed),
          number(hole.before.fairway),
          number(hole.after.fairway),
          number(hole.before.penalty),
          number(hole.after.penalty)};
}

Cells hole_cells(const GainResult& result, const HoleGain& hole) {
  Cells cells = {std::to_string(hole.number), std::to_string(hole.par), length(hole.length_yd, result.units)};
  cells = join(std::move(cells), strokes_cells(hole.strokes, computed_parts(result)));
  return join(join(std::move(cells), shot_cells(hole, result.units)), hole_score_cells(hole));
}

Cells round_cells(const GainResult& result) {
  const PolicyGain& policy = result.answer();
  int par = 0;
  double length_yd = 0.0;
  for (const HoleGain& hole : policy.holes) {
    par += hole.par;
    length_yd += hole.length_yd;
  }
  Cells shots(shot_headings(result.units).size());
  constexpr std::size_t clubs_shorter = 4;
  shots[clubs_shorter] = number(policy.second_shot.clubs_shorter);
  Cells cells = join({"round", std::to_string(par), length(length_yd, result.units)},
                     strokes_cells(policy.round, computed_parts(result)));
  cells = join(std::move(cells), shots);
  return join(std::move(cells), round_score_cells(result));
}

// What the further steps of a change save.
constexpr ChangeStep first_further_step = ChangeStep::club_carry;

Cells step_headings() {
  Cells headings;
  for (const ChangeStep step : all_change_steps) {
    if (step < first_further_step) continue;
    std::string word(name(step));
    std::replace(word.begin(), word.end(), ' ', '_');
    headings.push_back("from_" + word);
  }
  return headings;
}

Cells step_cells(const GainResult& result, const StepValues& values) {
  Cells cells;
  for (const ChangeStep step : all_change_steps) {
    if (step >= first_further_step) cells.push_back(number_if(is_counted(result.method, step), values.from(step)));
  }
  return cells;
}

// What the row is about, on every row, so that the rows of several answers can be put together.
Cells about_headings() { return {"course", "tee", "player", "method", "plan"}; }

Cells about_cells(const GainResult& result) {
  return {text(result.course), text(result.tee), text(result.player), std::string(name(result.method)),
          std::string(result.best ? name(PolicyChoice::best) : name(PolicyChoice::habit))};
}

}  // namespace

std::string gain_csv(const GainReport& report) {
  const GainResult& result = report.result;
  const Cells about = about_cells(result);
  const Cells about_hole = {"hole", "par", length_heading("length", result.units)};
  const Cells headings =
      join(about_hole, join(join(strokes_headings(), shot_headings(result.units)), score_headings()));
  const auto row = [&](const Cells& cells, const StepValues& strokes) {
    return csv_row(join(join(cells, about), step_cells(result, strokes)));
  };
  std::string csv = csv_row(join(join(headings, about_headings()), step_headings()));
  for (const HoleGain& hole : result.answer().holes) csv += row(hole_cells(result, hole), hole.strokes);
  return csv + row(round_cells(result), result.answer().round);
}

std::string gain_curve_csv(const GainReport& report) {
  const GainResult& result = report.result;
  const Cells about = about_cells(result);
  const Cells change_headings = {length_heading("driver_carry", result.units),
                                 length_heading("irons_carry", result.units)};
  std::string csv = csv_row(join(join(change_headings, strokes_headings()), about_headings()));
  for (const CurvePoint& point : report.curve) {
    const Cells change = {length(point.change.driver_carry_yd, result.units),
                          length(point.change.irons_carry_yd, result.units)};
    csv += csv_row(join(join(change, strokes_cells(point.round, computed_parts(result))), about));
  }
  return csv;
}

}  // namespace yardworth
