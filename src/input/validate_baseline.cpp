#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "validate/baseline_rules.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

void check_column(const BaselineColumn& column, const ColumnKey& known, const Tell& tell) {
  const std::size_t rows = column.distance.size();
  check_count(rows, limits::fewest_rows, limits::most_rows, "[distance, strokes]", known.key, tell);
  if (column.strokes.size() != rows) {
    tell(known.key, fmt::format("{} strokes", column.strokes.size()), fmt::format("{}, one for each distance", rows));
  }
  double last = -std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < std::min(rows, column.strokes.size()); ++i) {
    const Tell row = below(tell, known.key, i);
    check_number(column.strokes[i], limits::baseline_strokes, "", row);
    if (!check_number(column.distance[i], known.distance, "", row)) continue;
    check_distance_rises(column.distance[i], last, row);
    last = std::max(last, column.distance[i]);
  }
}

}  // namespace

void check_distance_rises(double distance, double last, const Tell& tell) {
  if (distance > last) return;
  tell("", fmt::format("{}", distance), fmt::format("more than the {} of the row before", last));
}

std::vector<Diagnostic> validate(const BaselineTable& table) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "baseline");
  check_text(table.name, "name", tell);
  check_text(table.source, "source", tell);
  for (const ColumnKey& column : column_keys) check_column(table.*column.column, column, tell);
  return findings;
}

}  // namespace yardworth
