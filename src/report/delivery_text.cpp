#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "report/delivery_parts.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::yards_of;

using Cells = std::vector<std::string>;

constexpr double least_gain_yd = 0.5;  // less is told as nothing

std::string capitalised(std::string_view view) {
  std::string text(view);
  if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
  return text;
}

void add_rows(Table& table, const std::vector<report::DeliveryNumber>& numbers, const DeliveryResult& result) {
  for (const report::DeliveryNumber& number : numbers) {
    Cells row = {std::string(number.words), fixed(number.of(result.own), number.decimals)};
    if (result.after) row.push_back(fixed(number.of(*result.after), number.decimals));
    row.push_back(fixed(number.of(result.best), number.decimals));
    table.rows.push_back(std::move(row));
  }
}

std::string flights_section(const DeliveryResult& result, const Page& page) {
  Table table{{{"", Align::left}, {"now"}}, {}};
  if (result.after) table.columns.push_back({"after"});
  table.columns.push_back({"best"});
  add_rows(table, report::delivery_numbers(), result);
  table.rows.emplace_back();
  add_rows(table, report::flight_numbers(), result);
  return '\n' + page.table(table);
}

std::string losses_section(const DeliveryResult& result, const Page& page) {
  Table table{{{"yards of carry given away", Align::left}, {"now"}, {"best"}, {"alone"}, {"in turn"}}, {}};
  for (const Loss& loss : result.losses.losses) {
    table.rows.push_back({std::string(report::words_of(loss.of)), fixed(degrees(loss.own_rad), 1),
                          fixed(degrees(loss.best_rad), 1), fixed(yards_of(loss.alone_m), 1),
                          fixed(yards_of(loss.in_turn_m), 1)});
  }
  table.rows.emplace_back();
  table.rows.push_back({"together", "", "", "", fixed(yards_of(result.losses.together_m), 1)});
  std::string text = '\n' + page.table(table);
  if (report::has_side_wind(result)) {
    text += page.paragraph(fmt::format("Without the wind from the side: {} yards of carry now, {} at best.",
                                       fixed(yards_of(result.losses.own.flight.carry_m), 1),
                                       fixed(yards_of(result.losses.best.flight.carry_m), 1)));
  }
  return text;
}

std::string new_head_section(const DeliveryResult& result, const Page& page) {
  if (!result.new_head) return "";
  const NewHeadGain& gain = *result.new_head;
  return page.section("A new head") +
         page.bullet(
             fmt::format("From a face a little below what the rules allow (a restitution of {}) to one at it ({}): {} "
                         "yards of carry; a face at it already gains nothing by another.",
                         older_restitution, NewHead().restitution.at_rest, fixed(yards_of(gain.restitution_m), 1))) +
         page.bullet(
             fmt::format("Its loft fitted by up to {:.0f} degrees: {} yards. Both: {} yards, at a dynamic loft of {}.",
                         degrees(NewHead().most_fitting_rad), fixed(yards_of(gain.loft_m), 1),
                         fixed(yards_of(gain.together_m), 1), fixed(degrees(gain.dynamic_loft_rad), 1)));
}

std::string board_section(const DeliveryResult& result, const Page& page) {
  if (result.board.empty()) return "";
  Table table{{{"mph", Align::right}}, {}};
  for (const BoardCell& cell : result.board.front()) {
    table.columns.push_back({fmt::format("attack {}", signed_tenths(degrees(cell.attack_rad)))});
  }
  for (const auto& cells : result.board) {
    Cells row = {plain_number(to_mph(cells.front().club_speed_mps))};
    for (const BoardCell& cell : cells) {
      row.push_back(fmt::format("{} {} ({})", fixed(yards_of(cell.carry_m), 0), fixed(yards_of(cell.total_m), 0),
                                fixed(degrees(cell.dynamic_loft_rad), 1)));
    }
    table.rows.push_back(std::move(row));
  }
  return '\n' +
         page.paragraph(
             "Carry and total by club head speed and attack angle, straight, at the dynamic loft (in brackets) that "
             "carries furthest") +
         page.table_in_parts(table, 1);
}

// How many of the angles, from the first in turn, are to be named together: up to the one that gives away most in its
// turn, or alone. Where that is not the first, what it is worth depends on the angles before it.
std::size_t named_together(const std::array<Loss, 4>& losses) {
  std::size_t last = 0;
  for (std::size_t i = 1; i < losses.size(); ++i) {
    const bool more_in_turn = losses[i].in_turn_m > losses[last].in_turn_m;
    const bool more_alone = fixed(yards_of(losses[i].alone_m), 1) != fixed(yards_of(losses[last].alone_m), 1) &&
                            losses[i].alone_m > losses[last].alone_m;
    if (more_in_turn || more_alone) last = i;
  }
  return last + 1;
}

// "5.0 of them by the attack angle, which comes first", or "9.3 of them by dynamic loft and attack angle together".
std::string share_words(const Losses& all) {
  const auto& losses = all.losses;
  const std::size_t named = named_together(losses);
  double gained_m = 0.0;
  std::string names;
  for (std::size_t i = 0; i < named; ++i) {
    gained_m += losses[i].in_turn_m;
    if (i > 0) names += i + 1 == named ? " and " : ", ";
    names += report::words_of(losses[i].of);
  }
  std::string yards = fixed(yards_of(gained_m), 1);
  if (yards == fixed(yards_of(all.together_m), 1)) yards = "all";
  if (named == 1) return fmt::format("{} of them by the {}, which comes first", yards, names);
  return fmt::format("{} of them by {} together", yards, names);
}

// What could be gained at the same speed.
std::string gain_words(const DeliveryResult& result) {
  const Losses& losses = result.losses;
  const char* in_air = report::has_side_wind(result) ? "without the wind from the side " : "";
  const auto& most = *std::max_element(losses.losses.begin(), losses.losses.end(),
                                       [](const Loss& a, const Loss& b) { return a.alone_m < b.alone_m; });
  if (yards_of(losses.together_m) >= least_gain_yd) {
    return fmt::format("{}up to {} yards of carry more at the same speed, {}.", in_air,
                       fixed(yards_of(losses.together_m), 1), share_words(losses));
  }
  if (yards_of(most.alone_m) >= least_gain_yd) {
    return fmt::format("{}up to {} yards of carry more at the same speed, by the {} alone.", in_air,
                       fixed(yards_of(most.alone_m), 1), report::words_of(most.of));
  }
  return fmt::format("{}at this speed there is no more to gain.", in_air);
}

std::string answer(const DeliveryResult& result, bool emphasis, const Page& page) {
  std::string text = page.paragraph(delivery_sentence(result));
  if (!emphasis) return text;
  text.pop_back();
  return "\x1b[1m" + text + "\x1b[0m\n";
}

}  // namespace

std::string delivery_sentence(const DeliveryResult& result) {
  const Flight& own = result.own.flight;
  std::string text = fmt::format("{} at {} mph: {} yards of carry, {} in all", capitalised(result.club.name),
                                 plain_number(to_mph(result.own.delivery.club_speed_mps)),
                                 fixed(yards_of(own.carry_m), 0), fixed(yards_of(own.total_m), 0));
  if (result.after) {
    text += fmt::format("; {} and {} after", fixed(yards_of(result.after->flight.carry_m), 0),
                        fixed(yards_of(result.after->flight.total_m), 0));
  }
  return text + "; " + gain_words(result);
}

std::string delivery_text(const DeliveryReport& report, bool emphasis, std::size_t columns) {
  const DeliveryResult& result = report.result;
  const Page page(columns);
  std::string text;
  for (const std::string& line : report.opening) text += page.paragraph(escape_control(line));
  if (!text.empty()) text += '\n';
  text += answer(result, emphasis, page) + flights_section(result, page) + losses_section(result, page) +
          new_head_section(result, page) + board_section(result, page) + page.section("What it rests on");
  for (const std::string& line : report::delivery_basis(result)) text += page.bullet(line);
  text += page.section("Cautions");
  for (const std::string& line : report::delivery_cautions()) text += page.bullet(line);
  return text;
}

}  // namespace yardworth
