#include "baseline/published.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "derive/derive_baseline.hpp"
#include "derive/drive_spread.hpp"
#include "derive/fit_skills.hpp"
#include "derive/published.hpp"
#include "derive/published_flight.hpp"
#include "derive/scores.hpp"
#include "input/derived_table.hpp"
#include "shot/putting.hpp"

namespace yardworth {

namespace {

using Checks = std::vector<PublishedCheck>;

constexpr const char* tour_table_source =
    "M. Broadie, Interfaces 42(2), 2012, and Every Shot Counts, 2014; from memory";
constexpr const char* putting_source = "M. Broadie, Every Shot Counts, 2014; averages from memory";
constexpr const char* rating_source = "USGA Course Rating System manual";
constexpr const char* rating_memory_source = "USGA Course Rating System manual; from memory";
constexpr const char* column_source = "M. Broadie, magazine column, 2018";
constexpr const char* half_source = "M. Broadie, as reported";
constexpr const char* direction_source = "M. Broadie, Every Shot Counts, fig. 6.3, as reported";
constexpr const char* average_golfer_source =
    "L. J. Riccio, Statistical analysis of the average golfer, Science and Golf, 1990, from a secondary table by "
    "average "
    "score; equipment of its time";
constexpr const char* tour_round_source = "common practice, no source";
constexpr const char* handicap_source = "Rules of Handicapping, World Handicap System";

bool is_one_of(const std::vector<double>& cells, double yards) {
  return std::find(cells.begin(), cells.end(), yards) != cells.end();
}

struct TableColumn {
  Lie lie;
  BaselineColumn BaselineTable::*column;
  std::vector<double> FittedCells::*fitted;
  double allowed;
};

// The tour table, cell by cell, and the mean of the differences over tee, fairway and rough.
void add_tour_table(Checks& checks) {
  const BaselineTable published = tour_table();
  const Baseline derived(derived_table(Band::tour, Gender::men));
  const FittedCells fitted;
  double sum = 0.0;
  int count = 0;
  for (const TableColumn& each : {TableColumn{Lie::tee, &BaselineTable::tee, &FittedCells::tee, 0.15},
                                  TableColumn{Lie::fairway, &BaselineTable::fairway, &FittedCells::fairway, 0.15},
                                  TableColumn{Lie::rough, &BaselineTable::rough, &FittedCells::rough, 0.15},
                                  TableColumn{Lie::bunker, &BaselineTable::bunker, &FittedCells::bunker, 0.25},
                                  TableColumn{Lie::recovery, &BaselineTable::recovery, &FittedCells::recovery, 0.25}}) {
    const BaselineColumn& column = published.*each.column;
    for (std::size_t i = 0; i < column.distance.size(); ++i) {
      const double yards = column.distance[i];
      if (yards < 100.0 || yards > 500.0) continue;
      PublishedCheck check{"Strokes to hole out, tour",
                           fmt::format("{}, {:.0f} yd", name(each.lie), yards),
                           tour_table_source,
                           column.strokes[i],
                           derived.strokes(each.lie, yards),
                           each.allowed,
                           2,
                           is_one_of(fitted.*each.fitted, yards)};
      if (each.allowed < 0.2 && !check.fitted) {
        sum += std::abs(check.difference());
        ++count;
      }
      checks.push_back(std::move(check));
    }
  }
  checks.push_back({"Strokes to hole out, tour", "mean absolute difference, tee, fairway and rough, cells not fitted",
                    tour_table_source, 0.0, sum / count, 0.05, 3, false});
}

void add_tour_putting(Checks& checks) {
  const Putting putting(skill_of(Band::tour, Gender::men).putting);
  const BaselineColumn averages = tour_table().green;
  for (std::size_t i = 0; i < averages.distance.size(); ++i) {
    const double feet = averages.distance[i];
    checks.push_back({"Putting, tour", fmt::format("average putts from {:.0f} ft", feet), putting_source,
                      averages.strokes[i], putting.putts(feet), 0.07, 2, feet == 40.0});
  }
  constexpr std::pair<double, double> one_putts[] = {{2, 99},  {3, 96}, {4, 88}, {5, 77},  {6, 66},
                                                     {7, 58},  {8, 50}, {9, 45}, {10, 40}, {15, 23},
                                                     {20, 15}, {30, 7}, {40, 4}, {50, 3},  {60, 2}};
  for (const auto& [feet, share] : one_putts) {
    checks.push_back({"Putting, tour", fmt::format("holed with the first putt from {:.0f} ft, %", feet), putting_source,
                      share, 100.0 * putting.one_putt(feet), 5.0, 0, feet == 8.0});
  }
}

// The length from which half of the putts are holed.
double half_holed_ft(double index) {
  const Putting putting(skill_of(index, Gender::men).putting);
  double low = 2.0;
  double high = 20.0;
  for (int halving = 0; halving < 40; ++halving) {
    const double middle = 0.5 * (low + high);
    (putting.one_putt(middle) > 0.5 ? low : high) = middle;
  }
  return low;
}

void add_half_putts(Checks& checks) {
  const std::tuple<const char*, double, double> golfers[] = {
      {"tour", -6.0, 8.0}, {"0-9 handicap (index 4.5)", 4.5, 6.0}, {"scores about 90 (index 17)", 17.0, 5.0}};
  for (const auto& [who, index, feet] : golfers) {
    checks.push_back({"Putting", fmt::format("half holed from, ft: {}", who), half_source, feet, half_holed_ft(index),
                      0.5, 1, true});
  }
}

void add_approach(Checks& checks) {
  const std::tuple<const char*, double, double, double> golfers[] = {{"tour", -6.0, 72.0, 23.0},
                                                                     {"scores about 90 (index 17)", 17.0, 35.0, 56.0}};
  for (const auto& [who, index, green, leave] : golfers) {
    Player golfer = standard_player(skill_of(index, Gender::men), Gender::men);
    golfer.band = index == typical_handicap_index(Band::tour, Gender::men) ? Band::tour : band_of(index);
    const ApproachResult found = approach_from(golfer, 150.0);
    checks.push_back({"From 150 yards, fairway", fmt::format("green hit, %: {}", who), column_source, green,
                      100.0 * found.green_hit, 4.0, 1, true});
    checks.push_back({"From 150 yards, fairway", fmt::format("half end within, ft: {}", who), column_source, leave,
                      found.median_leave_ft, 4.0, 1, true});
  }
}

// Degrees off line of all drives, poor strikes among them.
double drive_spread_deg(double index) {
  const Skill skill = skill_of(index, Gender::men);
  return degrees(all_drives_sd_rad(skill.driver_direction_sd_rad, skill.driver_poor_strike));
}

// The fit is given the middles of the ranges, or a little more; it is to stay within a tenth of them.
void add_drives(Checks& checks) {
  checks.push_back(
      {"Drives", "degrees off line, tour (3-4)", direction_source, 3.5, drive_spread_deg(-6.0), 0.5, 1, true});
  checks.push_back({"Drives", "degrees off line, scores about 80 (4-9; index 8)", direction_source, 6.5,
                    drive_spread_deg(8.0), 0.65, 1, true});
  checks.push_back({"Drives", "degrees off line, scores about 100 (5-11; index 26)", direction_source, 8.0,
                    drive_spread_deg(26.0), 0.8, 1, true});
}

// What a golfer reaches in two: a drive and the longest club from the fairway.
double reach_yd(Band band, Gender gender) {
  const Player player = standard_player(band, gender);
  const Club& driver = player.clubs[0];
  const Club& second = player.clubs[1];
  return driver.carry_yd + driver.roll_yd + second.carry_yd + second.roll_yd;
}

void add_reach(Checks& checks) {
  checks.push_back({"Reached in two, yd", "scratch man", rating_source, 470.0, reach_yd(Band::scratch, Gender::men),
                    20.0, 0, false});
  checks.push_back(
      {"Reached in two, yd", "bogey man", rating_source, 370.0, reach_yd(Band::bogey, Gender::men), 20.0, 0, false});
  checks.push_back({"Reached in two, yd", "scratch woman", rating_source, 400.0, reach_yd(Band::scratch, Gender::women),
                    20.0, 0, false});
  checks.push_back({"Reached in two, yd", "bogey woman", rating_source, 280.0, reach_yd(Band::bogey, Gender::women),
                    20.0, 0, false});
}

struct RatedGolfer {
  Band band;
  Gender gender;
  double short_yd, middle_yd, long_yd;
  const char* source;
};

ScoreSummary scores_of(const Player& golfer, const BaselineTable& near, double total_yd, int twenties) {
  constexpr std::uint64_t seed = 20;
  return simulate_scores(golfer, near, standard_lengths_yd(total_yd), twenties, seed);
}

void add_ratings(Checks& checks, int twenties) {
  const RatedGolfer golfers[] = {{Band::scratch, Gender::men, 5500.0, 6300.0, 7000.0, rating_source},
                                 {Band::bogey, Gender::men, 5500.0, 6300.0, 7000.0, rating_memory_source},
                                 {Band::scratch, Gender::women, 4700.0, 5350.0, 6000.0, rating_memory_source},
                                 {Band::bogey, Gender::women, 4700.0, 5350.0, 6000.0, rating_memory_source}};
  for (const RatedGolfer& golfer : golfers) {
    const Player player = standard_player(golfer.band, golfer.gender);
    const BaselineTable near = derived_table(golfer.band, golfer.gender);
    const YardageRating rating = yardage_rating(golfer.band, golfer.gender);
    const auto half = [&](double yards) { return scores_of(player, near, yards, twenties).better_half; };
    const double low = half(golfer.short_yd);
    const double middle = half(golfer.middle_yd);
    const double high = half(golfer.long_yd);
    // A per cent of the published slope: 15.
    const double slope = 1000.0 / rating.yards_per_stroke;
    checks.push_back({"Yardage rating (better half of scores)",
                      fmt::format("strokes for 1,000 yards, {}", player.label), golfer.source, slope,
                      1000.0 * (high - low) / (golfer.long_yd - golfer.short_yd), 0.15 * slope, 2, false});
    for (const auto& [yards, computed] :
         {std::pair{golfer.short_yd, low}, std::pair{golfer.middle_yd, middle}, std::pair{golfer.long_yd, high}}) {
      checks.push_back({"Yardage rating (better half of scores)", fmt::format("{}, {:.0f} yd", player.label, yards),
                        golfer.source, rating.strokes(yards), computed, 1.5, 1, yards == golfer.middle_yd});
    }
  }
}

// Rounds of men on the standard course.
constexpr double standard_total_yd = 6300.0;

struct BandScores {
  Band band;
  ScoreSummary scores;
};

std::vector<BandScores> scores_by_band(int twenties) {
  std::vector<BandScores> found;
  for (const Band band : {Band::scratch, Band::below_6, Band::from_6_to_12, Band::from_13_to_20, Band::from_21}) {
    const Player player = standard_player(band, Gender::men);
    found.push_back({band, scores_of(player, derived_table(band, Gender::men), standard_total_yd, twenties)});
  }
  return found;
}

// A golfer's Handicap Index from simulated rounds, rated by the published formulas.
void add_indexes(Checks& checks, const std::vector<BandScores>& bands) {
  const double rating = yardage_rating(Band::scratch, Gender::men).strokes(standard_total_yd);
  const double slope = 5.381 * (yardage_rating(Band::bogey, Gender::men).strokes(standard_total_yd) - rating);
  for (const auto& [band, scores] : bands) {
    if (band == Band::scratch) continue;
    checks.push_back({"Handicap Index of simulated rounds", fmt::format("band {}, men", name(band)), handicap_source,
                      typical_handicap_index(band, Gender::men), (scores.best_8_of_20 - rating) * 113.0 / slope, 2.0, 1,
                      false});
  }
}

// What golfers of an average score do in a round: straight lines between the bands, the first going on below scratch.
double by_average_score(const std::vector<BandScores>& bands, double ScoreSummary::*number, double score) {
  std::size_t upper = 1;
  while (upper + 1 < bands.size() && score > bands[upper].scores.mean) ++upper;
  const ScoreSummary& a = bands[upper - 1].scores;
  const ScoreSummary& b = bands[upper].scores;
  return std::lerp(a.*number, b.*number, (score - a.mean) / (b.mean - a.mean));
}

// The table's courses and clubs are not known, so no difference is called wrong.
void add_average_golfers(Checks& checks, const std::vector<BandScores>& bands) {
  struct AverageGolfer {
    double score, greens, fairways, putts;
  };
  constexpr AverageGolfer table[] = {{71, 12, 81, 29.0}, {75, 10, 71, 30.3}, {79, 8, 61, 31.7}, {81, 7, 56, 32.3},
                                     {85, 5, 46, 33.7},  {89, 3, 36, 35.0},  {91, 2, 31, 35.7}};
  const auto add = [&](const char* what, double AverageGolfer::*published, double ScoreSummary::*number, double unit,
                       int decimals) {
    for (const AverageGolfer& golfer : table) {
      checks.push_back({"A round by average score", fmt::format("{}, average score {:.0f}", what, golfer.score),
                        average_golfer_source, golfer.*published, unit * by_average_score(bands, number, golfer.score),
                        no_limit, decimals, false});
    }
  };
  add("greens in regulation of 18", &AverageGolfer::greens, &ScoreSummary::greens, 1.0, 1);
  add("fairways, %", &AverageGolfer::fairways, &ScoreSummary::fairway_share, 100.0, 0);
  add("putts", &AverageGolfer::putts, &ScoreSummary::putts, 1.0, 1);
}

// Tour on its own courses: championship holes, 7,200 yards in all (common practice, no source).
void add_tour_round(Checks& checks, int twenties) {
  constexpr double tour_total_yd = 7200.0;
  const ScoreSummary scores = scores_of(standard_player(Band::tour, Gender::men),
                                        derived_table(Band::tour, Gender::men), tour_total_yd, twenties);
  const auto add = [&](const char* fact, double published, double computed, int decimals) {
    checks.push_back({"A round of tour", fact, tour_round_source, published, computed, no_limit, decimals, false});
  };
  add("fairways, %, tour", 60.0, 100.0 * scores.fairway_share, 0);
  add("greens in regulation, %, tour", 65.0, 100.0 * scores.greens / 18.0, 0);
  add("putts, tour", 29.0, scores.putts, 1);
}

void add_added_yards(Checks& checks) {
  // Twenty yards on each of the 14 holes where a driver is hit, 280 yards in all, over the yards to a stroke.
  for (const Band band : {Band::scratch, Band::bogey}) {
    const Baseline derived(derived_table(band, Gender::men));
    double saved = 0.0;
    for (const double length : standard_lengths_yd(6300.0)) {
      if (length > 250.0) saved += derived.strokes(Lie::tee, length) - derived.strokes(Lie::tee, length - 20.0);
    }
    const double published = 280.0 / yardage_rating(band, Gender::men).yards_per_stroke;
    checks.push_back({"Shorter holes", fmt::format("{} men, 280 yd of tee column", name(band)), rating_source,
                      published, saved, 0.3 * published, 2, false});
  }
}

std::string row(const PublishedCheck& check) {
  const std::string limit = check.has_limit() ? fmt::format("{:.{}f}", check.allowed, check.decimals) : "";
  const char* verdict = !check.has_limit() ? "" : check.holds() ? "holds" : "**fails**";
  return fmt::format("| {} | {:.{}f} | {:.{}f} | {:+.{}f} | {} | {} |\n", check.fact, check.published, check.decimals,
                     check.computed, check.decimals, check.difference(), check.decimals, limit, verdict);
}

bool is_test(const PublishedCheck& check) { return !check.fitted && check.has_limit(); }
bool is_given(const PublishedCheck& check) { return check.fitted; }
bool is_beside(const PublishedCheck& check) { return !check.fitted && !check.has_limit(); }

std::string tables(const Checks& checks, bool (*of_table)(const PublishedCheck&)) {
  std::string text;
  std::string topic;
  for (const PublishedCheck& check : checks) {
    if (!of_table(check)) continue;
    if (check.topic + check.source != topic) {
      topic = check.topic + check.source;
      text += fmt::format(
          "\n### {}\n\nSource: {}.\n\n| fact | published | computed | difference | allowed | |\n"
          "|---|---|---|---|---|---|\n",
          check.topic, check.source);
    }
    text += row(check);
  }
  return text;
}

}  // namespace

std::vector<PublishedCheck> check_published(int twenties) {
  Checks checks;
  add_tour_table(checks);
  add_tour_putting(checks);
  if (twenties > 0) {
    add_ratings(checks, twenties);
    const std::vector<BandScores> bands = scores_by_band(twenties);
    add_indexes(checks, bands);
    add_average_golfers(checks, bands);
    add_tour_round(checks, twenties);
  }
  add_added_yards(checks);
  add_reach(checks);
  add_approach(checks);
  add_half_putts(checks);
  add_drives(checks);
  for (PublishedCheck& check : check_published_flight()) checks.push_back(std::move(check));
  return checks;
}

std::string write_validation(const std::vector<PublishedCheck>& checks) {
  const auto tests = std::count_if(checks.begin(), checks.end(), is_test);
  const auto held =
      std::count_if(checks.begin(), checks.end(), [](const auto& check) { return is_test(check) && check.holds(); });
  return fmt::format(
      "# Validation\n\nWhat the golfers, baselines and strikes of this project come to, beside what was published and "
      "measured. Of {} facts\nthat the fit was not given, {} hold. [bands.md](bands.md) says how the golfers were "
      "fitted, and why what fails does.\nWritten by `yardworth_rebuild --validation`; do not edit but for the last "
      "part.\n\n## Facts that the fit was "
      "not "
      "given\n{}\n## Figures set beside, without a limit\n\nNot given to the fit. The courses, the clubs or the "
      "golfers that they are of are not known well enough to say how far off\nwould be wrong; [bands.md](bands.md) "
      "says "
      "what to make of the differences.\n{}\n## Facts that the fit was given\n\nShown for the record: that they hold "
      "proves nothing.\n{}",
      tests, held, tables(checks, is_test), tables(checks, is_beside), tables(checks, is_given));
}

}  // namespace yardworth
