#include <fmt/format.h>

#include "yardworth/core/diagnostics.hpp"
#include "yardworth/report/gain_report.hpp"
#include "yardworth/report/text.hpp"

namespace yardworth {
namespace {

using Cells = std::vector<std::string>;

// As many digits as it takes to read the same number back.
std::string number(double value) { return fmt::format("{}", value); }

// One line for one row, whatever a name holds: control characters are shown, not written.
std::string text(const std::string& words) { return csv_text(escape_control(words)); }

void put_strokes(Cells& cells, const FourValues& values) {
  for (const double value : {values.before, values.replanned, values.strokes_saved(), values.from_tee(),
                             values.from_irons(), values.from_replanning()}) {
    cells.push_back(number(value));
  }
}

Cells strokes_headings() {
  return {"strokes_before", "strokes_after", "strokes_saved", "from_tee", "from_irons", "from_replanning"};
}

Cells join(Cells first, const Cells& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}

Cells shot_headings() {
  return {"tee_club_before",
          "tee_club_after",
          "left_before_yd",
          "left_after_yd",
          "next_club_before",
          "next_club_before_probability",
          "next_club_after",
          "next_club_after_probability",
          "next_club_changed_probability",
          "fairway_before_probability",
          "fairway_after_probability",
          "penalty_before_probability",
          "penalty_after_probability"};
}

std::string share_of_next(const TeeShotResult& shot) {
  const auto share = shot.next_shares.find(shot.next_club);
  return share == shot.next_shares.end() ? "" : number(share->second);
}

Cells shot_cells(const HoleGain& hole) {
  return {text(hole.before.club),      text(hole.after.club),       number(hole.before.left_yd),
          number(hole.after.left_yd),  text(hole.before.next_club), share_of_next(hole.before),
          text(hole.after.next_club),  share_of_next(hole.after),   number(hole.next_club_changed),
          number(hole.before.fairway), number(hole.after.fairway),  number(hole.before.penalty),
          number(hole.after.penalty)};
}

Cells hole_cells(const HoleGain& hole) {
  Cells cells = {std::to_string(hole.number), std::to_string(hole.par), number(hole.length_yd)};
  put_strokes(cells, hole.strokes);
  return join(std::move(cells), shot_cells(hole));
}

Cells round_cells(const PlanGain& plan) {
  int par = 0;
  double length_yd = 0.0;
  for (const HoleGain& hole : plan.holes) {
    par += hole.par;
    length_yd += hole.length_yd;
  }
  Cells cells = {"round", std::to_string(par), number(length_yd)};
  put_strokes(cells, plan.round);
  cells.resize(cells.size() + shot_headings().size());
  return cells;
}

// What the row is about, on every row, so that the rows of several answers can be put together.
Cells about_headings() { return {"course", "tee", "player", "method", "plan"}; }

Cells about_cells(const GainResult& result) {
  return {text(result.course), text(result.tee), text(result.player), std::string(name(result.method)),
          std::string(result.best ? name(PlanChoice::best) : name(PlanChoice::habit))};
}

}  // namespace

std::string gain_csv(const GainReport& report) {
  const PlanGain& plan = report.result.answer();
  const Cells about = about_cells(report.result);
  const Cells headings = join({"hole", "par", "length_yd"}, join(strokes_headings(), shot_headings()));
  std::string csv = csv_row(join(headings, about_headings()));
  for (const HoleGain& hole : plan.holes) csv += csv_row(join(hole_cells(hole), about));
  return csv + csv_row(join(round_cells(plan), about));
}

std::string gain_curve_csv(const GainReport& report) {
  const Cells about = about_cells(report.result);
  std::string csv = csv_row(join(join({"driver_carry_yd", "irons_carry_yd"}, strokes_headings()), about_headings()));
  for (const CurvePoint& point : report.curve) {
    Cells cells = {number(point.change.driver_carry_yd), number(point.change.irons_carry_yd)};
    put_strokes(cells, point.round);
    csv += csv_row(join(std::move(cells), about));
  }
  return csv;
}

}  // namespace yardworth
