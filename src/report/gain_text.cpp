#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/distance_words.hpp"
#include "core/telling.hpp"
#include "report/basis_words.hpp"
#include "report/change_words.hpp"
#include "report/gain_basis.hpp"
#include "report/gain_parts.hpp"
#include "report/hole_words.hpp"
#include "report/holes_bars.hpp"
#include "report/measured_words.hpp"
#include "report/reach_words.hpp"
#include "report/rounds_words.hpp"
#include "report/score_parts.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using Cells = std::vector<std::string>;

// The strokes of a round under one policy. A policy that was kept has nothing from replanning.
Cells round_row(const std::string& policy, const StepValues& round, bool replanned) {
  return {policy,
          strokes_text(round.before),
          strokes_text(round.replanned),
          strokes_text(round.strokes_saved()),
          strokes_text(round.from_tee()),
          strokes_text(round.from_irons()),
          replanned ? strokes_text(round.from_replanning()) : "-"};
}

// What each step of a change of more than carry saves, under each policy.
std::string steps_section(const GainResult& result, const Page& page) {
  Table table{{{"strokes saved by", Align::left}}, {}};
  std::vector<const StepValues*> plans;
  const auto add_plan = [&](const char* heading, const std::optional<PolicyGain>& gain) {
    if (!gain) return;
    table.columns.push_back({heading});
    plans.push_back(&gain->round);
  };
  add_plan("best\nplan", result.best);
  add_plan("habit\nplan", result.habit);
  const auto row = [&](const std::string& words, auto saved) {
    Cells cells = {words};
    for (const StepValues* round : plans) cells.push_back(strokes_text(saved(*round)));
    return cells;
  };
  for (const ChangeStep step : steps_asked(result.change)) {
    if (!is_counted(result.method, step)) continue;
    table.rows.push_back(
        row(report::step_source(result.change, step), [&](const StepValues& round) { return round.from(step); }));
  }
  if (result.replanning_computed) {
    // Only the best plan is planned afresh.
    Cells cells = {"playing differently", strokes_text(plans.front()->from_replanning())};
    if (result.habit) cells.emplace_back("-");
    table.rows.push_back(std::move(cells));
  }
  table.rows.emplace_back();
  table.rows.push_back(row("all of it", [](const StepValues& round) { return round.strokes_saved(); }));
  return page.section("Where it comes from") + page.table(table);
}

// Of a change of more than carry the parts have a table of their own.
std::string wide_round_section(const GainResult& result, const Page& page) {
  Table table{{{"", Align::left}, {"strokes\nbefore"}, {"strokes\nafter"}, {"\nsaved"}}, {}};
  const auto add = [&](const char* plan, const std::optional<PolicyGain>& gain) {
    if (!gain) return;
    Cells cells = round_row(plan, gain->round, false);
    cells.resize(table.columns.size());
    table.rows.push_back(std::move(cells));
  };
  add("best plan", result.best);
  add("habit plan", result.habit);
  return page.section("The round") + page.table(table) + steps_section(result, page);
}

std::string round_section(const GainResult& result, const Page& page) {
  if (!is_carry_alone(result.change)) return wide_round_section(result, page);
  constexpr std::size_t room_for_whole_words = 61;
  Table table{{{"", Align::left},
               {"strokes\nbefore"},
               {"strokes\nafter"},
               {"\nsaved"},
               {"from the\ntee shot"},
               {"from the\nirons"},
               {page.columns() < room_for_whole_words ? "from re-\nplanning" : "from\nreplanning"}},
              {}};
  if (result.best) table.rows.push_back(round_row("best plan", result.best->round, result.replanning_computed));
  if (result.habit) table.rows.push_back(round_row("habit plan", result.habit->round, false));
  return page.section("The round") + page.table(table);
}

// Of a par 3 the next shot says nothing of the clubs.
std::string next_club_change(const HoleGain& hole) {
  if (!hole.clubs_shorter) return "";
  const auto club = [](const TeeShotResult& shot) { return report::short_club_name(escape_control(shot.next_club)); };
  return before_after(club(hole.before), club(hole.after));
}

std::string clubs_shorter(const std::optional<double>& clubs) { return clubs ? fixed(*clubs, 1) : ""; }

Cells hole_row(const HoleGain& hole, Units units) {
  const auto tee_club = [](const TeeShotResult& shot) { return report::short_club_name(escape_control(shot.club)); };
  return {std::to_string(hole.number),
          std::to_string(hole.par),
          length_text(hole.length_yd, units),
          before_after(tee_club(hole.before), tee_club(hole.after)),
          before_after(length_text(hole.before.left_yd, units), length_text(hole.after.left_yd, units)),
          clubs_shorter(hole.clubs_shorter),
          next_club_change(hole),
          strokes_text(hole.strokes.before),
          strokes_text(hole.strokes.replanned),
          strokes_text(hole.strokes.strokes_saved())};
}

Cells total_row(const PolicyGain& policy, Units units) {
  int par = 0;
  double length_yd = 0.0;
  for (const HoleGain& hole : policy.holes) {
    par += hole.par;
    length_yd += hole.length_yd;
  }
  return {"all",
          std::to_string(par),
          length_text(length_yd, units),
          "",
          "",
          clubs_shorter(policy.second_shot.clubs_shorter),
          "",
          strokes_text(policy.round.before),
          strokes_text(policy.round.replanned),
          strokes_text(policy.round.strokes_saved())};
}

std::string holes_section(const GainResult& result, const Page& page) {
  const std::string unit = name(result.units);
  Table table{{{"hole"},
               give_way({"par"}, 6, GivesWay::left_out),
               give_way({unit}, 3, GivesWay::left_out),
               give_way({"tee club", Align::left}, 2, GivesWay::broken_between_parts),
               give_way({unit + "\nleft"}, 4, GivesWay::left_out),
               give_way({"clubs\nshorter"}, 5, GivesWay::left_out),
               give_way({"typical next club", Align::left}, 1, GivesWay::broken_between_parts),
               {"strokes\nbefore"},
               {"strokes\nafter"},
               {"saved"}},
              {}};
  const PolicyGain& policy = result.answer();
  for (const HoleGain& hole : policy.holes) table.rows.push_back(hole_row(hole, result.units));
  table.rows.emplace_back();
  table.rows.push_back(total_row(policy, result.units));
  const std::string left =
      page.shows(table, unit + "\nleft") ? "Left: expected distance to the hole after the tee shot. " : "";
  const std::string shorter =
      page.shows(table, "clubs\nshorter") ? "Clubs shorter: the next shot, on average, along the bag. " : "";
  const std::string legend = page.paragraph(
      left + shorter +
      "Typical next club: half of the shots after the tee shot ask for a longer one or a lay-up, half for a shorter.");
  return page.section(result.best ? "The holes, best plan" : "The holes, habit plan") + page.table(table) + legend;
}

std::string plan_changes_section(const GainResult& result, const Page& page) {
  std::string text;
  for (const HoleGain& hole : result.answer().holes) {
    const std::string words = report::policy_change_words(hole.policy_change, result.units);
    if (!words.empty()) text += page.bullet(fmt::format("hole {}: {}", hole.number, words));
  }
  return text.empty() ? text : page.section("Where the plan changed") + text;
}

// Percentage points, "+12"; nothing where it rounds to no change.
std::string points(double difference) {
  const std::string number = fixed(100.0 * difference, 0);
  if (number == "0") return "";
  return difference > 0.0 ? "+" + number : number;
}

std::string second_shots_section(const GainResult& result, const Page& page) {
  const report::SecondShots shots = report::second_shots(result.answer());
  if (shots.holes == 0) return "";
  Table table{{{"second shot", Align::left, 24}, {"before"}, {"after"}, {"percentage\npoints"}}, {}};
  report::ClubShare others{"others", 0.0, 0.0};
  for (const report::ClubShare& share : shots.clubs) {
    if (std::max(share.before, share.after) < telling::club_worth_a_row) {
      others.before += share.before;
      others.after += share.after;
      continue;
    }
    table.rows.push_back(
        {escape_control(share.club), percent(share.before), percent(share.after), points(share.after - share.before)});
  }
  if (others.before + others.after > 0.0) {
    table.rows.push_back({others.club, percent(others.before), percent(others.after), ""});
  }
  const std::string title =
      shots.holes == 1
          ? "What is played after the tee shot on the one hole longer than a par 3"
          : fmt::format("What is played after the tee shot on the {} holes longer than a par 3", shots.holes);
  return page.section(title) + page.table(table) +
         page.paragraph(fmt::format("Of these tee shots {} finish on the fairway and {} cost a penalty stroke.",
                                    before_after(percent(shots.fairway_before), percent(shots.fairway_after)),
                                    before_after(percent(shots.penalty_before), percent(shots.penalty_after))));
}

std::string rounds_section(const GainResult& result, const Page& page) {
  const std::string words = report::until_it_shows_words(result);
  return words.empty() ? "" : page.section("How long until it shows") + page.paragraph(words);
}

std::string into_reach_lines(const GainReport& report, const Page& page) {
  const std::vector<std::string> reached = report::into_reach_words(report.curve, report.result.units);
  std::string text;
  for (const std::string& words : reached) text += page.bullet(words);
  return text.empty() ? "" : "\n" + page.paragraph("Hazards that come into reach of one tee shot in ten:") + text;
}

std::string curve_section(const GainReport& report, const Page& page) {
  if (report.curve.empty()) return "";
  const GainResult& result = report.result;
  const std::string unit = name(result.units);
  Table table{{{unit + "\ndriver"},
               {unit + "\nirons"},
               {"strokes\nsaved"},
               {"from the\ntee shot"},
               {"from the\nirons"},
               {"from\nreplanning"}},
              {}};
  for (const CurvePoint& point : report.curve) {
    table.rows.push_back({plain_number(from_yards(point.change.driver_carry_yd, result.units)),
                          plain_number(from_yards(point.change.irons_carry_yd, result.units)),
                          strokes_text(point.round.strokes_saved()), strokes_text(point.round.from_tee()),
                          strokes_text(point.round.from_irons()),
                          result.replanning_computed ? strokes_text(point.round.from_replanning()) : "-"});
  }
  return page.section("Strokes saved a round against added carry") + page.table(table) + into_reach_lines(report, page);
}

std::string basis_section(const GainResult& result, const Page& page) {
  std::string text = page.section("What it rests on");
  for (const std::string& words : report::gain_basis(result)) text += page.bullet(words);
  return text;
}

std::string cautions_section(const GainResult& result, const Page& page) {
  if (result.cautions.empty()) return "";
  std::string text = page.section("Cautions");
  for (const Caution& caution : result.cautions) text += page.bullet(report::caution_words(caution));
  return text;
}

std::string opening_lines(const std::vector<std::string>& opening, const Page& page) {
  std::string text;
  for (const std::string& line : opening) text += page.paragraph(escape_control(line));
  return text.empty() ? text : text + '\n';
}

std::string answer_lines(const GainReport& report, bool emphasis, const Page& page) {
  const GainResult& result = report.result;
  std::string text = page.paragraph(gain_sentence(result));
  const std::string scores = report::scores_sentence(result);
  std::string below;
  for (const std::string& sentence : {report::interval_sentence(result), report::second_shot_sentence(result), scores,
                                      report::control_sentence(report), report::shows_sentence(result)}) {
    if (!sentence.empty()) below += page.paragraph(sentence);
  }
  if (!emphasis) return text + below;
  text.pop_back();
  return "\x1b[1m" + text + "\x1b[0m\n" + below;
}

}  // namespace

std::string gain_text(const GainReport& report, bool emphasis, std::size_t columns, BarCharacters bars) {
  const GainResult& result = report.result;
  const Page page(columns);
  return opening_lines(report.opening, page) + answer_lines(report, emphasis, page) + round_section(result, page) +
         report::scores_section(result, page) + holes_section(result, page) +
         report::holes_bars_section(result.answer(), page, bars, emphasis) + plan_changes_section(result, page) +
         second_shots_section(result, page) + rounds_section(result, page) + curve_section(report, page) +
         basis_section(result, page) + cautions_section(result, page);
}

}  // namespace yardworth
