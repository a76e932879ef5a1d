#include <fmt/format.h>

#include <cctype>

#include "report/delivery_parts.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::yards_of;

using Cells = std::vector<std::string>;

// "+5.2"; what rounds to nothing has no sign.
std::string signed_tenths(double value) {
  const std::string number = fixed(value, 1);
  return value > 0.0 && number != "0.0" ? "+" + number : number;
}

std::string section(const std::string& title) { return fmt::format("\n{}\n", title); }

std::string bullet(const std::string& words) { return wrap("- " + escape_control(words), report_width, 2); }

std::string capitalised(std::string_view view) {
  std::string text(view);
  if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
  return text;
}

void add_rows(Table& table, const std::vector<report::DeliveryNumber>& numbers, const DeliveryResult& result) {
  for (const report::DeliveryNumber& number : numbers) {
    Cells row = {std::string(number.words), fixed(number.of(result.losses.own), number.decimals)};
    if (result.after) row.push_back(fixed(number.of(*result.after), number.decimals));
    row.push_back(fixed(number.of(result.losses.best), number.decimals));
    table.rows.push_back(std::move(row));
  }
}

std::string flights_section(const DeliveryResult& result) {
  Table table{{{"", Align::left}, {"now"}}, {}};
  if (result.after) table.columns.push_back({"after"});
  table.columns.push_back({"best"});
  add_rows(table, report::delivery_numbers(), result);
  table.rows.emplace_back();
  add_rows(table, report::flight_numbers(), result);
  return '\n' + format_table(table);
}

std::string losses_section(const DeliveryResult& result) {
  Table table{{{"yards of carry given away", Align::left}, {"now"}, {"best"}, {"alone"}, {"in turn"}}, {}};
  for (const Loss& loss : result.losses.losses) {
    table.rows.push_back({std::string(report::words_of(loss.of)), fixed(degrees(loss.own_rad), 1),
                          fixed(degrees(loss.best_rad), 1), fixed(yards_of(loss.alone_m), 1),
                          fixed(yards_of(loss.in_turn_m), 1)});
  }
  table.rows.emplace_back();
  table.rows.push_back({"together", "", "", "", fixed(yards_of(result.losses.together_m), 1)});
  return '\n' + format_table(table);
}

std::string new_head_section(const DeliveryResult& result) {
  if (!result.new_head) return "";
  const NewHeadGain& gain = *result.new_head;
  return section("A new head") +
         bullet(
             fmt::format("From a face a little below what the rules allow (a restitution of {}) to one at it ({}): {} "
                         "yards of carry; a face at it already gains nothing by another.",
                         older_restitution, NewHead().restitution.at_rest, fixed(yards_of(gain.restitution_m), 1))) +
         bullet(
             fmt::format("Its loft fitted by up to {:.0f} degrees: {} yards. Both: {} yards, at a dynamic loft of {}.",
                         degrees(NewHead().most_fitting_rad), fixed(yards_of(gain.loft_m), 1),
                         fixed(yards_of(gain.together_m), 1), fixed(degrees(gain.dynamic_loft_rad), 1)));
}

std::string board_section(const DeliveryResult& result) {
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
         wrap(
             "Carry and total by club head speed and attack angle, straight, at the dynamic loft (in brackets) that "
             "carries furthest",
             report_width) +
         format_table(table);
}

std::string answer(const DeliveryResult& result, bool emphasis) {
  std::string text = wrap(delivery_sentence(result), report_width);
  if (!emphasis) return text;
  text.pop_back();
  return "\x1b[1m" + text + "\x1b[0m\n";
}

}  // namespace

std::string delivery_sentence(const DeliveryResult& result) {
  const Losses& losses = result.losses;
  const Flight& own = losses.own.flight;
  std::string text = fmt::format("{} at {} mph: {} yards of carry, {} in all", capitalised(result.club.name),
                                 plain_number(to_mph(losses.own.delivery.club_speed_mps)),
                                 fixed(yards_of(own.carry_m), 0), fixed(yards_of(own.total_m), 0));
  if (result.after) {
    text += fmt::format("; {} and {} after", fixed(yards_of(result.after->flight.carry_m), 0),
                        fixed(yards_of(result.after->flight.total_m), 0));
  }
  const Loss& first = losses.losses.front();
  if (yards_of(losses.together_m) < 0.5) return text + "; at this speed there is no more to gain.";
  return text +
         fmt::format("; up to {} yards of carry more at the same speed, {} of them by the {}, which comes first.",
                     fixed(yards_of(losses.together_m), 1), fixed(yards_of(first.in_turn_m), 1),
                     report::words_of(first.of));
}

std::string delivery_text(const DeliveryReport& report, bool emphasis) {
  const DeliveryResult& result = report.result;
  std::string text;
  for (const std::string& line : report.opening) text += wrap(escape_control(line), report_width);
  if (!text.empty()) text += '\n';
  text += answer(result, emphasis) + flights_section(result) + losses_section(result) + new_head_section(result) +
          board_section(result) + section("What it rests on");
  for (const std::string& line : report::delivery_basis(result)) text += bullet(line);
  text += section("Cautions");
  for (const std::string& line : report::delivery_cautions()) text += bullet(line);
  return text;
}

}  // namespace yardworth
