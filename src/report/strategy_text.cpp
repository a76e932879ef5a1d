#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "core/distance_words.hpp"
#include "core/telling.hpp"
#include "course/ground.hpp"
#include "report/basis_words.hpp"
#include "report/change_words.hpp"
#include "report/gain_parts.hpp"
#include "report/hole_words.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using Cells = std::vector<std::string>;

using telling::chance_worth_a_row;

// How the shots of a hole are told: in the course's units, and, where their marks differ, all from the line of play.
struct Telling {
  Units units;
  bool from_line = false;
};

bool is_told_by(const TeePlay& play, AimMark mark) {
  const auto is = [mark](const TeeOption& shot) { return shot.aim.mark == mark; };
  return is(play.tee_shot) || std::any_of(play.alternatives.begin(), play.alternatives.end(), is);
}

// How far beside the middle, and where at the edge of a fairway, are distances from two lines.
bool from_two_lines(const Aim& a, const Aim& b) {
  const auto beside_middle = [](const Aim& aim) { return aim.mark == AimMark::middle && aim.beside_yd > 0.0; };
  return (beside_middle(a) && b.mark == AimMark::fairway_edge) || (beside_middle(b) && a.mark == AimMark::fairway_edge);
}

Telling telling_of(const HoleStrategy& hole, Units units) {
  const auto any_by = [&](AimMark mark) {
    return is_told_by(hole.before, mark) || (hole.after && is_told_by(*hole.after, mark));
  };
  const bool mixed = any_by(AimMark::line_of_play) && (any_by(AimMark::middle) || any_by(AimMark::fairway_edge));
  return {units, mixed || (hole.after && from_two_lines(hole.before.tee_shot.aim, hole.after->tee_shot.aim))};
}

std::string shot_words(const TeeOption& shot, const Telling& telling) {
  const std::string aim = telling.from_line ? report::aim_from_line_words(shot.aim, telling.units)
                                            : report::aim_words(shot.aim, telling.units);
  return escape_control(shot.club + " " + aim);
}

std::string capitalised(std::string text) {
  if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
  return text;
}

std::string bold(std::string text, bool emphasis) {
  if (!emphasis) return text;
  text.pop_back();
  return "\x1b[1m" + text + "\x1b[0m\n";
}

void add_options(Table& table, const std::string& when, const TeePlay& policy, const Telling& telling) {
  table.rows.push_back({when, shot_words(policy.tee_shot, telling), strokes_text(policy.tee_shot.strokes), ""});
  for (const TeeOption& option : policy.alternatives) {
    table.rows.push_back({"", "or " + shot_words(option, telling), strokes_text(option.strokes),
                          (option.costs < 0.0 ? "" : "+") + strokes_text(option.costs)});
  }
}

std::string options_table(const HoleStrategy& hole, Units units, const Page& page) {
  Table table{{{"", Align::left},
               give_way({"tee shot", Align::left, 64}, 1, GivesWay::broken_between_words),
               {"strokes"},
               {"costs"}},
              {}};
  const Telling telling = telling_of(hole, units);
  add_options(table, hole.after ? "before" : "", hole.before, telling);
  if (hole.after) add_options(table, "after", *hole.after, telling);
  return page.table(table);
}

// "5-wood 43%, 4-hybrid 30%", the likeliest first.
std::string clubs_words(const ClubShares& shares) {
  std::vector<std::string> clubs = report::in_bag_order(shares);
  std::stable_sort(clubs.begin(), clubs.end(),
                   [&](const std::string& a, const std::string& b) { return shares.at(a) > shares.at(b); });
  std::string words;
  for (std::size_t i = 0; i < std::min(clubs.size(), telling::most_clubs_named); ++i) {
    const double share = shares.at(clubs[i]);
    if (i > 0 && share < telling::club_worth_naming) break;
    words +=
        fmt::format("{}{} {}", i > 0 ? ", " : "", report::short_club_name(escape_control(clubs[i])), percent(share));
  }
  return words;
}

std::string finish_words(const NextShot& next) {
  if (!next.third.empty()) return fmt::format("  {} third", next.third);
  const std::string ground(name(next.finish));
  switch (penalty_on(next.finish)) {
    case Penalty::drop:
      return ground + ", dropped";
    case Penalty::stroke_and_distance:
      return ground + ", again";
    case Penalty::none:
      break;
  }
  return ground;
}

void add_next(Table& table, std::string when, const TeePlay& policy, Units units) {
  bool shown = true;
  for (const NextShot& next : policy.next) {
    if (next.third.empty()) shown = next.probability >= chance_worth_a_row;
    if (!shown) continue;
    table.rows.push_back({when, finish_words(next), next.third.empty() ? percent(next.probability) : "",
                          length_text(next.left_yd, units), clubs_words(next.clubs)});
    when.clear();
  }
}

std::string next_table(const HoleStrategy& hole, Units units, const Page& page) {
  Table table{{{"", Align::left},
               give_way({"it finishes", Align::left}, 1, GivesWay::broken_between_parts),
               {"chance"},
               {std::string(name(units)) + " left"},
               give_way({"then", Align::left}, 2, GivesWay::broken_between_parts)},
              {}};
  add_next(table, hole.after ? "before" : "", hole.before, units);
  if (hole.after) add_next(table, "after", *hole.after, units);
  return page.table(table);
}

std::string hazards_table(const HoleStrategy& hole, Units units, const Page& page) {
  Table table{
      {give_way({"hazard", Align::left}, 1, GivesWay::broken_between_words), {hole.after ? "before" : "chance"}}, {}};
  if (hole.after) table.columns.push_back({"after"});
  for (const HazardChance& chance : hole.hazards) {
    if (std::max(chance.before, chance.after.value_or(0.0)) < chance_worth_a_row) continue;
    Cells row = {report::hazard_words(chance.hazard, units), percent(chance.before)};
    if (chance.after) row.push_back(percent(*chance.after));
    table.rows.push_back(std::move(row));
  }
  if (table.rows.empty()) return "The tee shot hardly ever finds a hazard.\n";
  return page.table(table);
}

std::string proof_words(const HoleStrategy& hole, const Page& page) {
  const auto words = [](const OptimalityProof& proof) {
    return fmt::format(
        "nothing played from any of {} places beats the plan by more than {:.1e} strokes, and at most {:.4f} strokes "
        "of "
        "what it is worth rest on the baseline outside the short game",
        proof.states, proof.largest_residual, proof.baseline_bound);
  };
  if (!hole.proof_before) return "";
  std::string text = "Proof: " + words(*hole.proof_before);
  if (hole.proof_after) text += "; after the change " + words(*hole.proof_after);
  return page.paragraph(text + ".");
}

std::string hole_section(const HoleStrategy& hole, Units units, bool emphasis, const Page& page) {
  return fmt::format("\nHole {}, par {}, {} {}\n", hole.number, hole.par, length_text(hole.length_yd, units),
                     name(units)) +
         bold(page.paragraph(strategy_sentence(hole, units)), emphasis) + '\n' + options_table(hole, units, page) +
         '\n' + next_table(hole, units, page) + '\n' + hazards_table(hole, units, page) + proof_words(hole, page);
}

std::string change_words(const StrategyResult& result) {
  if (!is_carry_alone(*result.change)) return report::change_subject(*result.change, result.units).text;
  const auto amount = [&](double yards) {
    return fmt::format("{}{}", yards < 0.0 ? "" : "+", plain_number(from_yards(yards, result.units)));
  };
  const std::string driver = amount(result.change->driver_carry_yd);
  return fmt::format("{} {} of driver carry and {} in the irons", driver, unit_after(driver, result.units),
                     amount(result.change->irons_carry_yd));
}

std::string head_words(const StrategyResult& result, const Page& page) {
  double before = 0.0;
  double after = 0.0;
  for (const HoleStrategy& hole : result.holes) {
    before += hole.before.tee_shot.strokes;
    if (hole.after) after += hole.after->tee_shot.strokes;
  }
  std::string text = fmt::format("The best plan of {} on {} from the {} tees", escape_control(result.player),
                                 escape_control(result.course), escape_control(result.tee));
  if (result.holes.size() > 1) {
    text += fmt::format(" takes {} strokes on {} holes", fixed(before, 1), result.holes.size());
    if (result.change) text += fmt::format(", and {} with {}", fixed(after, 1), change_words(result));
  } else if (result.change) {
    text += fmt::format(", before and after {}", change_words(result));
  }
  return page.paragraph(text + ".");
}

// Nothing on a page of one hole.
std::string overview(const StrategyResult& result, const Page& page) {
  if (result.holes.size() < 2) return "";
  Table table{{{"hole"},
               {"par"},
               {name(result.units)},
               give_way({"tee shot", Align::left, 60}, 1, GivesWay::broken_between_words),
               {"strokes"}},
              {}};
  if (result.change) table.columns.push_back({"before"});
  for (const HoleStrategy& hole : result.holes) {
    const TeePlay& policy = hole.after ? *hole.after : hole.before;
    Cells row = {std::to_string(hole.number), std::to_string(hole.par), length_text(hole.length_yd, result.units),
                 shot_words(policy.tee_shot, telling_of(hole, result.units)), strokes_text(policy.tee_shot.strokes)};
    if (hole.after) row.push_back(strokes_text(hole.before.tee_shot.strokes));
    table.rows.push_back(std::move(row));
  }
  return '\n' + page.table(table);
}

std::string basis(const StrategyResult& result, const Page& page) {
  std::string text = "\nWhat it rests on\n";
  text += page.bullet(
      "Strokes are expected for the whole hole with the best play behind the tee shot. An aim is where a straight, "
      "solid ball would finish on fairway, told from the line of play there.");
  text += page.bullet(fmt::format(
      "Thirds are of the balls that finish there, by the {} left; a chance under 1% has no row.", name(result.units)));
  text += page.bullet(fmt::format("Band {}. Baseline: {}; source: {}", name(result.band), result.baseline_name,
                                  result.baseline_source));
  for (const Note& note : result.notes) text += page.bullet(escape_control(report::note_words(note, result.units)));
  if (result.cautions.empty()) return text;
  text += "\nCautions\n";
  for (const Caution& caution : result.cautions) text += page.bullet(report::caution_words(caution));
  return text;
}

}  // namespace

std::string strategy_sentence(const HoleStrategy& hole, Units units) {
  const Telling telling = telling_of(hole, units);
  const TeeOption& before = hole.before.tee_shot;
  const std::string shot_before = shot_words(before, telling);
  if (!hole.after) return fmt::format("{}: {} strokes.", capitalised(shot_before), strokes_text(before.strokes));
  const TeeOption& after = hole.after->tee_shot;
  const std::string shot_after = shot_words(after, telling);
  std::string text = shot_before == shot_after ? fmt::format("{}, as before", capitalised(shot_after))
                                               : fmt::format("{} instead of {}", capitalised(shot_after), shot_before);
  text += fmt::format(": {} strokes become {}", strokes_text(before.strokes), strokes_text(after.strokes));
  const std::string change = report::policy_change_words(hole.policy_change, units);
  if (!change.empty()) text += "; " + escape_control(change);
  return text + ".";
}

std::string strategy_text(const StrategyReport& report, bool emphasis, std::size_t columns) {
  const StrategyResult& result = report.result;
  const Page page(columns);
  std::string text;
  for (const std::string& line : report.opening) text += page.paragraph(escape_control(line));
  if (!text.empty()) text += '\n';
  text += head_words(result, page) + overview(result, page);
  for (const HoleStrategy& hole : result.holes) text += hole_section(hole, result.units, emphasis, page);
  return text + basis(result, page);
}

}  // namespace yardworth
