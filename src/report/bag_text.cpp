#include <fmt/format.h>

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
    table.columns.push_back(give_way({std::string(number.words)}, turn--, GivesWay::broken_between_words));
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

std::string outliers_section(const BagResult& result, const Page& page) {
  if (result.outliers.empty()) return "";
  std::string text = page.section("Outliers");
  for (std::size_t i = 0; i < std::min(result.outliers.size(), most_outliers_told); ++i) {
    const OutlyingShot& shot = result.outliers[i];
    text += page.bullet(fmt::format("line {}: {}", shot.line, report::why_words(shot, result.units)));
  }
  if (result.outliers.size() > most_outliers_told) {
    text += page.bullet(fmt::format("and {} more; --format json has all", result.outliers.size() - most_outliers_told));
  }
  return text;
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
  std::string answer = page.paragraph(bag_sentence(result));
  if (emphasis) {
    answer.pop_back();
    answer = "\x1b[1m" + answer + "\x1b[0m\n";
  }
  text += answer + clubs_section(result, page) + outliers_section(result, page) + page.section("What it rests on");
  for (const std::string& line : report::bag_notes(result)) text += page.bullet(line);
  text += page.section("Cautions");
  for (const std::string& line : report::bag_cautions()) text += page.bullet(line);
  return text;
}

}  // namespace yardworth
