#include "report/csv_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Cells;
using report::join;
using report::number;
using report::strokes_cells;
using report::strokes_headings;
using report::text;

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
  return join(join(std::move(cells), strokes_cells(hole.strokes)), shot_cells(hole));
}

Cells round_cells(const PolicyGain& policy) {
  int par = 0;
  double length_yd = 0.0;
  for (const HoleGain& hole : policy.holes) {
    par += hole.par;
    length_yd += hole.length_yd;
  }
  Cells cells = join({"round", std::to_string(par), number(length_yd)}, strokes_cells(policy.round));
  cells.resize(cells.size() + shot_headings().size());
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
  const PolicyGain& policy = report.result.answer();
  const Cells about = about_cells(report.result);
  const Cells headings = join({"hole", "par", "length_yd"}, join(strokes_headings(), shot_headings()));
  std::string csv = csv_row(join(headings, about_headings()));
  for (const HoleGain& hole : policy.holes) csv += csv_row(join(hole_cells(hole), about));
  return csv + csv_row(join(round_cells(policy), about));
}

std::string gain_curve_csv(const GainReport& report) {
  const Cells about = about_cells(report.result);
  std::string csv = csv_row(join(join({"driver_carry_yd", "irons_carry_yd"}, strokes_headings()), about_headings()));
  for (const CurvePoint& point : report.curve) {
    const Cells change = {number(point.change.driver_carry_yd), number(point.change.irons_carry_yd)};
    csv += csv_row(join(join(change, strokes_cells(point.round)), about));
  }
  return csv;
}

}  // namespace yardworth
