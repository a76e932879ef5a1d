#include <fmt/format.h>
#include <yaml-cpp/yaml.h>

#include <limits>
#include <utility>

#include "input/formats.hpp"
#include "validate/baseline_rules.hpp"

namespace yardworth::input {
namespace {

BaselineColumn column_from(const std::vector<Value>& rows, const Limits& distances, Findings& findings) {
  BaselineColumn column;
  double last = -std::numeric_limits<double>::infinity();
  for (const Value& row : rows) {
    const auto pair = read_list(row, 2, 2, "numbers: distance, strokes", findings);
    if (pair.size() != 2) continue;
    const auto distance = read_number(pair[0], distances, findings);
    const auto strokes = read_number(pair[1], limits::baseline_strokes, findings);
    if (!distance || !strokes) continue;
    check_distance_rises(*distance, last, at_value(pair[0], findings));
    last = std::max(last, *distance);
    column.distance.push_back(*distance);
    column.strokes.push_back(*strokes);
  }
  return column;
}

std::string quoted_scalar(const std::string& text) {
  YAML::Emitter emitter;
  emitter << YAML::DoubleQuoted << text;
  return emitter.c_str();
}

std::string rows_of(const BaselineColumn& column) {
  std::string rows;
  for (std::size_t i = 0; i < column.distance.size(); ++i) {
    rows += fmt::format("  - [{}, {}]\n", column.distance[i], column.strokes.at(i));
  }
  return rows;
}

}  // namespace

BaselineTable baseline_from(const Value& root, Findings& findings) {
  std::vector<std::string> known = {"format", "name", "source", "band", "gender"};
  for (const ColumnKey& column : column_keys) known.emplace_back(column.key);
  std::vector<std::string> bands;
  for (const Band band : all_bands) bands.emplace_back(name(band));

  Fields fields(root, known, findings);
  BaselineTable table;
  table.name = fields.words("name", Need::required).value_or("");
  table.source = fields.words("source", Need::required).value_or("");
  table.band = fields.choice<Band>("band", bands, band_named, Need::required).value_or(Band::tour);
  table.gender = fields.choice<Gender>("gender", {"men", "women"}, gender_named).value_or(Gender::men);
  for (const ColumnKey& column : column_keys) {
    const auto rows =
        fields.list(column.key, limits::fewest_rows, limits::most_rows, "[distance, strokes]", Need::required);
    table.*column.column = column_from(rows, column.distance, findings);
  }
  return table;
}

}  // namespace yardworth::input

namespace yardworth {

std::string write_baseline(const BaselineTable& table) {
  std::string text = fmt::format("format: {}\nname: {}\nsource: {}\nband: {}\ngender: {}\n", input::baseline_format,
                                 input::quoted_scalar(table.name), input::quoted_scalar(table.source), name(table.band),
                                 name(table.gender));
  for (const auto& column : column_keys) {
    text += fmt::format("{}:\n{}", column.key, input::rows_of(table.*column.column));
  }
  return text;
}

}  // namespace yardworth
