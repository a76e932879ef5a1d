#include <fmt/format.h>
#include <yaml-cpp/yaml.h>

#include <limits>
#include <utility>

#include "input/formats.hpp"

namespace yardworth::input {
namespace {

constexpr Range distance_yd{0.0, 1000.0, "yards"};
constexpr Range distance_ft{0.0, 300.0, "feet"};
constexpr Range strokes_range{0.0, 20.0, "strokes"};
constexpr std::size_t fewest_rows = 2;
constexpr std::size_t most_rows = 2000;

// The columns of a table by the keys they have in a file.
struct ColumnKey {
  const char* key;
  BaselineColumn BaselineTable::*column;
  const Range& distance;
};
constexpr ColumnKey column_keys[] = {
    {"tee", &BaselineTable::tee, distance_yd},           {"fairway", &BaselineTable::fairway, distance_yd},
    {"rough", &BaselineTable::rough, distance_yd},       {"bunker", &BaselineTable::bunker, distance_yd},
    {"recovery", &BaselineTable::recovery, distance_yd}, {"green", &BaselineTable::green, distance_ft},
};

BaselineColumn column_from(const std::vector<Value>& rows, const Range& distance_range, Findings& findings) {
  BaselineColumn column;
  double last = -std::numeric_limits<double>::infinity();
  for (const Value& row : rows) {
    const auto pair = read_list(row, 2, 2, "numbers: distance, strokes", findings);
    if (pair.size() != 2) continue;
    const auto distance = read_number(pair[0], distance_range, findings);
    const auto strokes = read_number(pair[1], strokes_range, findings);
    if (!distance || !strokes) continue;
    if (*distance <= last) {
      findings.fault(pair[0], fmt::format("{}", *distance), fmt::format("more than the {} of the row before", last));
    }
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
    const auto rows = fields.list(column.key, fewest_rows, most_rows, "[distance, strokes]", Need::required);
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
  for (const auto& column : input::column_keys) {
    text += fmt::format("{}:\n{}", column.key, input::rows_of(table.*column.column));
  }
  return text;
}

}  // namespace yardworth
