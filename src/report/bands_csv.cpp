#include <fmt/format.h>

#include <algorithm>

#include "core/cannot_finish_words.hpp"
#include "report/csv_parts.hpp"
#include "report/gain_parts.hpp"
#include "report/hole_words.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Cells;
using report::join;
using report::number;
using report::strokes_cells;
using report::strokes_headings;
using report::text;

std::string number(const std::optional<double>& value) { return value ? report::number(*value) : ""; }

Cells golfer_headings() { return {"band", "gender", "tee", "course", "plan"}; }

Cells golfer_cells(const BandsResult& result, const BandOnTee& golfer) {
  return {std::string(name(golfer.band)), std::string(name(golfer.gender)), text(result.tees[golfer.tee].name),
          text(result.course), std::string(name(result.policy))};
}

// Every club that any of the golfers plays at a green.
std::vector<std::string> approach_clubs(const BandsResult& result) {
  ClubShares all;
  for (const BandOnTee& golfer : result.golfers) {
    for (const RoundPlay* play : {&golfer.before, &golfer.after}) {
      for (const auto& [club, share] : play->approach) all[club] += share;
    }
  }
  return report::in_bag_order(all);
}

Cells approach_headings(const std::vector<std::string>& clubs, const char* when) {
  Cells headings;
  for (const std::string& club : clubs) headings.push_back(text(fmt::format("approach {} {}", club, when)));
  return headings;
}

Cells approach_cells(const std::vector<std::string>& clubs, const RoundPlay& play) {
  Cells cells;
  for (const std::string& club : clubs) {
    const auto share = play.approach.find(club);
    cells.push_back(number(share == play.approach.end() ? 0.0 : share->second));
  }
  return cells;
}

Cells play_cells(const BandOnTee& golfer) {
  return {number(golfer.index_change),
          number(golfer.before.green_in_regulation),
          number(golfer.after.green_in_regulation),
          number(golfer.before.fairway),
          number(golfer.after.fairway),
          number(golfer.before.penalty),
          number(golfer.after.penalty),
          number(golfer.clubs_apart),
          number(golfer.clubs_longer)};
}

Cells hazard_headings() {
  return {"hole",
          "hazard",
          "words",
          "from_yd",
          "to_yd",
          "found_before_probability",
          "found_after_probability",
          "reached_before_probability",
          "reached_after_probability",
          "cleared_before_probability",
          "cleared_after_probability"};
}

Cells hazard_cells(const BandHole& hole, std::size_t i, Units units) {
  const HazardView& hazard = hole.before.hazards[i].hazard;
  const HazardMet& before = hole.before.hazards[i];
  const HazardMet& after = hole.after.hazards[i];
  return {std::to_string(hole.number),
          std::to_string(hazard.hazard + 1),
          text(report::hazard_words(hazard, units)),
          number(hazard.from_yd),
          number(hazard.to_yd),
          number(before.found),
          number(after.found),
          number(before.reached),
          number(after.reached),
          number(before.cleared),
          number(after.cleared)};
}

std::string hazard_rows(const BandHole& hole, const char* hazards, const Cells& golfer, Units units) {
  std::string csv;
  for (std::size_t i = 0; i < hole.before.hazards.size(); ++i) {
    Cells cells = join(hazard_cells(hole, i, units), strokes_cells(hole.strokes));
    cells.emplace_back(hazards);
    csv += csv_row(join(golfer, cells));
  }
  return csv;
}

}  // namespace

std::string bands_csv(const BandsReport& report) {
  const BandsResult& result = report.result;
  const std::vector<std::string> clubs = approach_clubs(result);
  const Cells play_headings = {"handicap_index_change",
                               "green_in_regulation_before_share",
                               "green_in_regulation_after_share",
                               "fairway_before_share",
                               "fairway_after_share",
                               "tee_shot_penalty_strokes_before",
                               "tee_shot_penalty_strokes_after",
                               "clubs_apart_from_scratch",
                               "clubs_longer_than_scratch"};
  Cells headings = join(golfer_headings(), {"length_yd", "cannot_finish"});
  headings = join(join(headings, strokes_headings()), play_headings);
  headings = join(join(headings, approach_headings(clubs, "before")), approach_headings(clubs, "after"));
  std::string csv = csv_row(headings);
  for (const BandOnTee& golfer : result.golfers) {
    const bool finishes = golfer.cannot_finish.empty();
    const std::string cannot_finish = finishes ? "" : cannot_finish_words(golfer.cannot_finish, result.units);
    Cells cells = join(golfer_cells(result, golfer), {number(result.tees[golfer.tee].length_yd), text(cannot_finish)});
    if (finishes) {
      cells = join(join(cells, strokes_cells(golfer.round)), play_cells(golfer));
      cells = join(join(cells, approach_cells(clubs, golfer.before)), approach_cells(clubs, golfer.after));
    }
    cells.resize(headings.size());
    csv += csv_row(cells);
  }
  return csv;
}

std::string bands_hazards_csv(const BandsReport& report) {
  const BandsResult& result = report.result;
  std::string csv = csv_row(join(join(join(golfer_headings(), hazard_headings()), strokes_headings()), {"hazards"}));
  for (const BandOnTee& golfer : result.golfers) {
    const Cells about = golfer_cells(result, golfer);
    for (const ChangedHole& hole : golfer.changed) {
      csv += hazard_rows(hole.without, "as they are", about, result.units) +
             hazard_rows(hole.with, "changed", about, result.units);
    }
    if (!golfer.changed.empty()) continue;
    for (const BandHole& hole : golfer.holes) {
      if (hole.number == report.hole) csv += hazard_rows(hole, "as they are", about, result.units);
    }
  }
  return csv;
}

}  // namespace yardworth
