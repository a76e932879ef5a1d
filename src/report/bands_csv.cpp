#include <fmt/format.h>

#include <algorithm>

#include "core/cannot_finish_words.hpp"
#include "report/bands_parts.hpp"
#include "report/csv_parts.hpp"
#include "report/gain_parts.hpp"
#include "report/hole_words.hpp"
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

Cells golfer_headings() { return {"band", "gender", "tee", "course", "plan"}; }

// "6 to 12": a spreadsheet makes a date of 6-12.
std::string band_cell(Band band) {
  std::string words(name(band));
  const std::size_t dash = words.find('-');
  if (dash != std::string::npos) words.replace(dash, 1, " to ");
  return words;
}

Cells golfer_cells(const BandsResult& result, const BandOnTee& golfer) {
  return {band_cell(golfer.band), std::string(name(golfer.gender)), text(result.tees[golfer.tee].name),
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

// "approach_pitching_wedge_before_share".
Cells approach_headings(const std::vector<std::string>& clubs, const char* when) {
  Cells headings;
  for (const std::string& club : clubs) {
    std::string word = club;
    std::replace_if(
        word.begin(), word.end(), [](char c) { return c == ' ' || c == '-'; }, '_');
    headings.push_back(text(fmt::format("approach_{}_{}_share", word, when)));
  }
  return headings;
}

// A golfer without approach shots has no shares of them.
Cells approach_cells(const std::vector<std::string>& clubs, const RoundPlay& play) {
  Cells cells;
  for (const std::string& club : clubs) {
    const auto share = play.approach.find(club);
    cells.push_back(number_if(!play.approach.empty(), share == play.approach.end() ? 0.0 : share->second));
  }
  return cells;
}

Cells golfer_score_headings() {
  return {"course_handicap", "net_before", "net_after", "stableford_before", "stableford_after"};
}

// Nothing where the tees are not rated for the golfer.
Cells score_cells(const BandOnTee& golfer) {
  if (!golfer.scores || !golfer.handicap) return Cells(golfer_score_headings().size());
  const HandicapScores& before = *golfer.scores->before.handicap;
  const HandicapScores& after = *golfer.scores->after.handicap;
  return {std::to_string(golfer.handicap->course_handicap), number(before.net), number(after.net),
          number(before.stableford.mean()), number(after.stableford.mean())};
}

Cells play_cells(const BandOnTee& golfer) {
  const bool has_fairways = report::has_fairways(golfer);
  return {number(golfer.index_change),
          number(golfer.before.green_in_regulation),
          number(golfer.after.green_in_regulation),
          number_if(has_fairways, golfer.before.fairway),
          number_if(has_fairways, golfer.after.fairway),
          number(golfer.before.penalty),
          number(golfer.after.penalty),
          text(golfer.before.typical_second_shot),
          text(golfer.after.typical_second_shot),
          number(golfer.clubs_apart),
          number(golfer.clubs_longer)};
}

Cells hazard_headings(Units units) {
  return {"hole",
          "hazards",
          "hazard_number",
          "hazard_words",
          length_heading("hazard_from", units),
          length_heading("hazard_to", units),
          "found_before_probability",
          "found_after_probability",
          "reached_before_probability",
          "reached_after_probability",
          "cleared_before_probability",
          "cleared_after_probability"};
}

Cells hazard_cells(const BandHole& hole, const char* hazards, std::size_t i, Units units) {
  const HazardView& hazard = hole.before.hazards[i].hazard;
  const HazardMet& before = hole.before.hazards[i];
  const HazardMet& after = hole.after.hazards[i];
  return {std::to_string(hole.number),
          hazards,
          std::to_string(hazard.hazard + 1),
          text(report::hazard_words(hazard, units)),
          length(hazard.from_yd, units),
          length(hazard.to_yd, units),
          number(before.found),
          number(after.found),
          number(before.reached),
          number(after.reached),
          number(before.cleared),
          number(after.cleared)};
}

std::string hazard_rows(const BandsResult& result, const BandHole& hole, const char* hazards, const Cells& golfer) {
  std::string csv;
  for (std::size_t i = 0; i < hole.before.hazards.size(); ++i) {
    csv += csv_row(join(golfer, join(hazard_cells(hole, hazards, i, result.units),
                                     strokes_cells(hole.strokes, computed_parts(result)))));
  }
  return csv;
}

std::string cannot_finish_cell(const BandsResult& result, const BandOnTee& golfer) {
  return golfer.cannot_finish.empty() ? "" : text(cannot_finish_words(golfer.cannot_finish, result.units));
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
                               "typical_second_shot_before",
                               "typical_second_shot_after",
                               "clubs_apart_from_scratch",
                               "clubs_longer_than_scratch"};
  Cells headings = join(golfer_headings(), {"cannot_finish", length_heading("length", result.units)});
  headings = join(join(join(headings, strokes_headings()), play_headings), golfer_score_headings());
  headings = join(join(headings, approach_headings(clubs, "before")), approach_headings(clubs, "after"));
  std::string csv = csv_row(headings);
  for (const BandOnTee& golfer : result.golfers) {
    const bool finishes = golfer.cannot_finish.empty();
    Cells cells = join(golfer_cells(result, golfer),
                       {cannot_finish_cell(result, golfer), length(result.tees[golfer.tee].length_yd, result.units)});
    if (finishes) {
      cells = join(join(cells, strokes_cells(golfer.round, computed_parts(result))), play_cells(golfer));
      cells = join(cells, score_cells(golfer));
      cells = join(join(cells, approach_cells(clubs, golfer.before)), approach_cells(clubs, golfer.after));
    }
    cells.resize(headings.size());
    csv += csv_row(cells);
  }
  return csv;
}

std::string bands_hazards_csv(const BandsReport& report) {
  const BandsResult& result = report.result;
  const Cells headings =
      join(join(join(golfer_headings(), {"cannot_finish"}), hazard_headings(result.units)), strokes_headings());
  std::string csv = csv_row(headings);
  for (const BandOnTee& golfer : result.golfers) {
    Cells about = join(golfer_cells(result, golfer), {cannot_finish_cell(result, golfer)});
    if (!golfer.cannot_finish.empty()) {
      about.resize(headings.size());
      csv += csv_row(about);
      continue;
    }
    for (const ChangedHole& hole : golfer.changed) {
      csv += hazard_rows(result, hole.without, "as they are", about) + hazard_rows(result, hole.with, "changed", about);
    }
    if (!golfer.changed.empty()) continue;
    for (const BandHole& hole : golfer.holes) {
      if (hole.number == report.hole) csv += hazard_rows(result, hole, "as they are", about);
    }
  }
  return csv;
}

}  // namespace yardworth
