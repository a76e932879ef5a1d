#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <tuple>

#include "core/distance_words.hpp"
#include "report/bag_parts.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

constexpr std::size_t widest_club = 24;
constexpr std::size_t most_outliers_told = 20;

// Some of the numbers, a column each; columns that no club has are left out.
std::string clubs_table(const BagResult& result, const std::vector<report::BagNumber>& numbers, bool with_shots,
                        const Page& page) {
  Table table{{{"club", Align::left, widest_club}}, {}};
  if (with_shots) table.columns.push_back({"shots"});
  for (const ClubMeasure& club : result.clubs) {
    table.rows.push_back({escape_control(club.club)});
    if (with_shots) table.rows.back().push_back(fmt::format("{}", club.shots));
  }
  bool any = with_shots;
  int turn = static_cast<int>(numbers.size());
  for (const report::BagNumber& number : numbers) {
    std::vector<std::string> cells;
    bool said = false;
    for (const ClubMeasure& club : result.clubs) {
      cells.push_back(report::estimate_words(number.of(club), number, result.units));
      said = said || !cells.back().empty();
    }
    if (!said) continue;
    any = true;
    table.columns.push_back(
        give_way({report::heading_of(number.words, number, result.units)}, turn--, GivesWay::broken_between_words));
    for (std::size_t i = 0; i < cells.size(); ++i) table.rows[i].push_back(cells[i]);
  }
  return any ? '\n' + page.table_in_parts(table, 1) : "";
}

std::string clubs_section(const BagResult& result, const Page& page) {
  const std::vector<report::BagNumber> numbers = report::bag_numbers();
  constexpr std::ptrdiff_t first = 4;  // distances and poor strikes, then what tells how they spread
  return clubs_table(result, {numbers.begin(), numbers.begin() + first}, true, page) +
         clubs_table(result, {numbers.begin() + first, numbers.end()}, false, page);
}

std::string outliers_section(const BagResult& result, const std::string& title, const Page& page) {
  if (result.outliers.empty()) return "";
  std::string text = page.section(title);
  for (std::size_t i = 0; i < std::min(result.outliers.size(), most_outliers_told); ++i) {
    const OutlyingShot& shot = result.outliers[i];
    text += page.bullet(fmt::format("line {}: {}", shot.line, report::why_words(shot, result.units)));
  }
  if (result.outliers.size() > most_outliers_told) {
    text += page.bullet(fmt::format("and {} more; --format json has all", result.outliers.size() - most_outliers_told));
  }
  return text;
}

// What changed, a column each; columns that no club has are left out.
std::string changes_table(const BagComparison& comparison, Units units, const Page& page) {
  using Of = std::function<std::optional<Estimate>(const ClubChange&)>;
  const report::BagNumber yards{"", "", 0, true, false, true, 1.0, {}, {}};
  const report::BagNumber speed{"", "", 1, false, false, true, to_mph(1.0), "mph", {}};
  const report::BagNumber share{"", "", 0, false, true, true, 1.0, "percentage points", {}};
  const report::BagNumber ratio{"", "", 2, false, false, false, 1.0, {}, {}};
  const std::vector<std::tuple<std::string, report::BagNumber, Of>> columns = {
      {"carry", yards, [](const ClubChange& change) { return std::optional(change.carry_yd); }},
      {"at same speed", yards, [](const ClubChange& change) { return change.at_equal_club_speed_yd; }},
      {"club head speed", speed, [](const ClubChange& change) { return change.club_speed_mps; }},
      {"poor strikes", share, [](const ClubChange& change) { return change.poor_strike; }},
      {"spread of carry", ratio, [](const ClubChange& change) { return change.carry_sd_ratio; }},
      {"spread of direction", ratio, [](const ClubChange& change) { return change.direction_sd_ratio; }}};
  Table table{{{"change", Align::left, widest_club}, {"shots"}}, {}};
  for (const ClubChange& change : comparison.changes) {
    table.rows.push_back(
        {escape_control(change.club), fmt::format("{} -> {}", change.before.shots, change.after.shots)});
  }
  int turn = static_cast<int>(columns.size());
  for (const auto& [heading, number, of] : columns) {
    std::vector<std::string> cells;
    for (const ClubChange& change : comparison.changes)
      cells.push_back(report::change_words(of(change), number, units));
    if (std::all_of(cells.begin(), cells.end(), [](const std::string& cell) { return cell.empty(); })) continue;
    table.columns.push_back(
        give_way({report::heading_of(heading, number, units)}, turn--, GivesWay::broken_between_words));
    for (std::size_t i = 0; i < cells.size(); ++i) table.rows[i].push_back(cells[i]);
  }
  return '\n' + page.table_in_parts(table, 1) +
         page.paragraph("Spreads are told as after over before: less than 1 is tighter.");
}

std::string in_bold(std::string paragraph) {
  paragraph.pop_back();
  return "\x1b[1m" + paragraph + "\x1b[0m\n";
}

// The answer: what changed, club by club, or the clubs in one sentence.
std::string answer_of(const BagReport& report, bool emphasis, const Page& page) {
  const auto told = [&](const std::string& sentence) {
    const std::string paragraph = page.paragraph(sentence);
    return emphasis ? in_bold(paragraph) : paragraph;
  };
  if (!report.comparison) return told(bag_sentence(report.result));
  std::string text;
  for (const ClubChange& change : report.comparison->changes)
    text += told(change_sentence(change, report.result.units));
  if (text.empty()) text = told("No club is on both sides: there is nothing to compare.");
  return text;
}

std::string comparison_section(const BagReport& report, const Page& page) {
  if (!report.comparison) return "";
  const BagComparison& comparison = *report.comparison;
  std::string text;
  if (!comparison.changes.empty()) text = changes_table(comparison, report.result.units, page);
  return text + page.section("Before: " + report::shown_name(comparison.before)) +
         clubs_section(comparison.measured_before, page) +
         outliers_section(comparison.measured_before, "Outliers before", page) +
         page.section("After: " + report::shown_name(comparison.after));
}

std::string carry_words(const ClubMeasure& club, bool with_unit, Units units) {
  const report::BagNumber carry = report::bag_numbers().front();
  const std::string number = fixed(from_yards(club.carry_yd.value, units), 0);
  const std::string all = report::estimate_words(club.carry_yd, carry, units);
  const std::string unit = with_unit ? " " + unit_after(number, units) : "";
  return report::shown_name(club.club) + " " + number + unit + all.substr(number.size());
}

}  // namespace

std::string bag_sentence(const BagResult& result) {
  const auto many = [](std::size_t count, const char* what) {
    return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
  };
  std::string text =
      fmt::format("{} from {}: {}", many(result.clubs.size(), "club"), many(result.shots, "shot"),
                  result.clubs.empty() ? "" : carry_words(result.clubs.front(), true, result.units) + " of carry");
  if (result.clubs.size() > 1) text += " down to " + carry_words(result.clubs.back(), false, result.units);
  return text + ".";
}

std::string bag_text(const BagReport& report, bool emphasis, std::size_t columns) {
  const BagResult& result = report.result;
  const Page page(columns);
  std::string text;
  for (const std::string& line : report.opening) text += page.paragraph(escape_control(line));
  if (!text.empty()) text += '\n';
  text += answer_of(report, emphasis, page) + comparison_section(report, page) + clubs_section(result, page) +
          outliers_section(result, report.comparison ? "Outliers after" : "Outliers", page) +
          page.section("What it rests on");
  if (report.comparison) {
    for (const std::string& line : report::comparison_notes(*report.comparison)) text += page.bullet(line);
  }
  for (const std::string& line : report::bag_notes(result)) text += page.bullet(line);
  text += page.section("Cautions");
  for (const std::string& line : report::bag_cautions()) text += page.bullet(line);
  return text;
}

}  // namespace yardworth
