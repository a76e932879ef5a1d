#include "results/figures.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <sstream>

namespace yardworth::test {
namespace {

constexpr std::array<const char*, 3> what = {"before", "after", "saved"};

void compare(const Figures& stored, const Figures& computed, double tolerance, Moves& moved) {
  for (std::size_t i = 0; i < what.size(); ++i) {
    const double was = stored.values.at(i);
    const double is = computed.values.at(i);
    const double by = is - was;
    if (!std::isnan(by)) moved.largest = std::max(moved.largest, std::abs(by));
    if (std::abs(by) <= tolerance) continue;  // a number that is none is never within
    moved.lines.push_back(
        fmt::format("{:<44} {:<6} {:15.9f} -> {:15.9f}   {:+.3g}", computed.name, what[i], was, is, by));
  }
}

}  // namespace

std::string write_figures(const std::vector<Figures>& all) {
  std::string text;
  for (const Figures& figures : all) {
    text += fmt::format("{:<44}", figures.name);
    for (const double value : figures.values) text += fmt::format(" {:17.12f}", value);
    text += "\n";
  }
  return text;
}

std::vector<Figures> read_figures(const std::string& text) {
  std::vector<Figures> all;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) {
    if (line.starts_with("#")) continue;
    std::istringstream words(line);
    Figures figures;
    words >> figures.name;
    for (double value = 0.0; words >> value;) figures.values.push_back(value);
    all.push_back(std::move(figures));
  }
  return all;
}

Moves moves(const std::vector<Figures>& stored, const std::vector<Figures>& computed, double tolerance,
            bool all_computed) {
  std::map<std::string, const Figures*> left;
  for (const Figures& figures : stored) left[figures.name] = &figures;
  Moves moved;
  for (const Figures& figures : computed) {
    const auto found = left.find(figures.name);
    if (found == left.end()) {
      moved.lines.push_back(figures.name + ": not stored");
      continue;
    }
    compare(*found->second, figures, tolerance, moved);
    left.erase(found);
  }
  if (!all_computed) return moved;
  for (const auto& [name, figures] : left) moved.lines.push_back(name + ": stored, and not computed");
  return moved;
}

}  // namespace yardworth::test
