#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/change_words.hpp"
#include "report/text.hpp"
#include "report/weigh_parts.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

constexpr std::size_t longest_name = 40;

std::string name_of(const WeighedOption& weighed) { return shorten(escape_control(weighed.option.name), longest_name); }

std::string or_dash(const std::optional<double>& value, int decimals) { return value ? fixed(*value, decimals) : "-"; }

std::string in_hundred(double probability) {
  const int times = static_cast<int>(std::lround(100.0 * probability));
  if (times == 0) return "<1";
  return times == 100 && probability < 1.0 ? ">99" : fmt::format("{}", times);
}

std::string cost_words(const Option& option) {
  return fmt::format("{} of money and {} hours", plain_number(option.money), plain_number(option.hours));
}

std::string options_section(const WeighResult& result, const Page& page) {
  Table table{{{"option", Align::left},
               {"strokes\nsaved"},
               {"in 9 of\n10 cases"},
               {"best in\n100 cases"},
               give_way({"money"}, 3, GivesWay::left_out),
               give_way({"hours"}, 4, GivesWay::left_out),
               give_way({"money\na stroke"}, 2, GivesWay::left_out),
               give_way({"hours\na stroke"}, 1, GivesWay::left_out)},
              {}};
  if (result.stroke_worth) table.columns.push_back({"pays after\nrounds"});
  for (const WeighedOption& weighed : result.options) {
    std::vector<std::string> row = {
        name_of(weighed),
        strokes_text(weighed.saved.value),
        fmt::format("{} to {}", strokes_text(weighed.saved.low), strokes_text(weighed.saved.high)),
        weighed.best_probability ? in_hundred(*weighed.best_probability) : "-",
        plain_number(weighed.option.money),
        plain_number(weighed.option.hours),
        or_dash(weighed.money_per_stroke, 0),
        or_dash(weighed.hours_per_stroke, 0)};
    if (result.stroke_worth) row.push_back(or_dash(weighed.break_even_rounds, 0));
    table.rows.push_back(std::move(row));
  }
  return '\n' + page.table(table);
}

std::string changes_section(const WeighResult& result, const Page& page) {
  std::string text = page.section("What each changes");
  for (const WeighedOption& weighed : result.options) {
    std::string what = is_nothing(weighed.option.change)
                           ? std::string()
                           : report::change_subject(weighed.option.change, result.units).text;
    while (what.ends_with(',')) what.pop_back();
    if (weighed.option.tee) what += (what.empty() ? "" : ", ") + fmt::format("from the {} tees", *weighed.option.tee);
    text += page.bullet(fmt::format("{}: {}", shorten(weighed.option.name, longest_name), what));
  }
  return text;
}

// "15 yards of driver carry, 9% less spread of direction, or 12% less spread of putts"
std::string equivalent_words(const Equivalents& equal, Units units) {
  std::vector<std::string> parts;
  if (equal.driver_carry_yd) {
    parts.push_back(
        fmt::format("{} {} of driver carry", fixed(from_yards(*equal.driver_carry_yd, units), 0), name(units)));
  }
  if (equal.direction_share) parts.push_back(fmt::format("shots {:.0f}% straighter", 100.0 * *equal.direction_share));
  if (equal.putting_share) parts.push_back(fmt::format("putts {:.0f}% surer", 100.0 * *equal.putting_share));
  std::string words;
  for (std::size_t i = 0; i < parts.size(); ++i)
    words += (i == 0 ? "" : i + 1 == parts.size() ? " or " : ", ") + parts[i];
  return words;
}

// A putt is a stroke.
std::string putts_words(double strokes) { return strokes_text(strokes) + (strokes < 1.0 ? " of a putt" : " putts"); }

std::string equivalents_section(const WeighResult& result, const Page& page) {
  std::string text = page.section("What else would save as much");
  bool any = false;
  for (const WeighedOption& weighed : result.options) {
    if (weighed.saved.value <= 0.0 || weighed.option.tee) continue;
    const std::string words = equivalent_words(weighed.equivalents, result.units);
    text += page.bullet(fmt::format("{}: {} a round{}{}", shorten(weighed.option.name, longest_name),
                                    putts_words(weighed.saved.value), words.empty() ? "" : "; or ", words));
    any = true;
  }
  return any ? text : "";
}

std::string sensitivity_section(const WeighResult& result, const Page& page) {
  if (result.sensitivity.empty()) return "";
  constexpr int decimals = 3;
  Table table{{{"strokes a round", Align::left}, {"now"}, {"after the best"}}, {}};
  for (const Sensitivity& one : result.sensitivity) {
    table.rows.push_back({report::unit_words(one.step, result.units),
                          fixed(report::per_unit(one.step, one.before, result.units), decimals),
                          fixed(report::per_unit(one.step, one.after, result.units), decimals)});
  }
  return page.section("What a little of everything is worth") + page.table(table);
}

}  // namespace

std::string weigh_sentence(const WeighResult& result) {
  const WeighedOption& most = result.options[result.most];
  const std::string name = shorten(escape_control(most.option.name), longest_name);
  if (most.saved.value <= 0.0) {
    return result.options.size() == 1 ? fmt::format("{} saves no strokes.", name)
                                      : "None of the options saves strokes.";
  }
  std::string text = fmt::format("{} saves {} strokes a round ({} to {}) for {}", name, strokes_text(most.saved.value),
                                 strokes_text(most.saved.low), strokes_text(most.saved.high), cost_words(most.option));
  const auto compared = std::count_if(result.options.begin(), result.options.end(),
                                      [](const WeighedOption& option) { return option.best_probability.has_value(); });
  if (compared > 1) {
    text += fmt::format(", and is the best of {} in {} cases of 100", compared, in_hundred(*most.best_probability));
  }
  if (most.break_even_rounds) {
    text += fmt::format("; at {} a stroke it pays after {:.0f} rounds", plain_number(*result.stroke_worth),
                        std::ceil(*most.break_even_rounds));
  }
  return text + ".";
}

std::string weigh_text(const WeighReport& report, bool emphasis, std::size_t columns) {
  const WeighResult& result = report.result;
  const Page page(columns);
  std::string text;
  for (const std::string& line : report.opening) text += page.paragraph(escape_control(line));
  if (!text.empty()) text += '\n';
  std::string answer = page.paragraph(weigh_sentence(result));
  if (emphasis) answer = "\x1b[1m" + answer.substr(0, answer.size() - 1) + "\x1b[0m\n";
  text += answer + options_section(result, page) + changes_section(result, page) + equivalents_section(result, page) +
          sensitivity_section(result, page) + page.section("What it rests on");
  for (const std::string& line : report::weigh_basis(result)) text += page.bullet(line);
  text += page.section("Cautions");
  for (const std::string& line : report::weigh_cautions(result)) text += page.bullet(line);
  return text;
}

}  // namespace yardworth
