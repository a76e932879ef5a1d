// Writes anew what the library is shipped with: skills, derived baselines, the record of what was published against
// what comes out. Built when it is asked for; see DEVELOPERS.md.

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <fstream>
#include <iostream>
#include <iterator>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "derive/derive_baseline.hpp"
#include "derive/fit_skills.hpp"
#include "derive/published.hpp"
#include "yardworth/read.hpp"

namespace yardworth {

namespace {

void write(const std::string& path, const std::string& text) {
  std::ofstream file(path, std::ios::binary);
  file << text;
  file.close();
  if (!file) throw std::runtime_error("cannot write " + path);
  std::cout << "wrote " << path << "\n";
}

void rebuild_skills(const std::string& tree) {
  const FittedSkills skills = fit_skills([](const std::string& line) { std::cout << line << std::endl; });
  write(tree + "/src/player/skill_rows_men.inc", write_skill_rows(skills.men));
  write(tree + "/src/player/skill_rows_women.inc", write_skill_rows(skills.women));
}

// Four decimals: more are noise, and files stay the same where the last bits of a sum do not.
void round_off(BaselineTable& table) {
  for (const auto column : all_columns) {
    for (double& strokes : (table.*column).strokes) strokes = std::round(strokes * 1e4) / 1e4;
  }
}

BaselineTable derived(Band band, Gender gender) {
  BaselineTable table = derive_baseline(standard_player(band, gender), all_distances());
  table.name = std::string(name(band)) + " " + std::string(name(gender)) + ", derived";
  table.source =
      "derived from the band's own shots on reference holes; skills fitted to published measurements (docs/bands.md)";
  return table;
}

// Golfers of a lower index are nowhere worse. Where the derivation says otherwise (tour plays from deeper rough and
// sand than scratch) the other band is given what the better one needs, and a little more for the curves between the
// cells.
void keep_order(BaselineTable& worse, const BaselineTable& better) {
  for (const auto column : all_columns) {
    const double margin = column == &BaselineTable::green ? 0.0 : 0.015;
    for (std::size_t i = 0; i < (worse.*column).strokes.size(); ++i) {
      double& strokes = (worse.*column).strokes[i];
      strokes = std::max(strokes, (better.*column).strokes.at(i) + margin);
    }
  }
}

std::string file_name(Band band, Gender gender) {
  std::string file = std::string(name(gender)) + "-" + std::string(name(band)) + ".yaml";
  for (char& letter : file) letter = letter == ' ' ? '-' : letter;
  return file;
}

void rebuild_baselines(const std::string& tree) {
  for (const Gender gender : {Gender::men, Gender::women}) {
    std::vector<Band> bands(all_bands.begin(), all_bands.end());
    std::stable_sort(bands.begin(), bands.end(), [gender](Band a, Band b) {
      return typical_handicap_index(a, gender) < typical_handicap_index(b, gender);
    });
    std::optional<BaselineTable> better;
    for (const Band band : bands) {
      BaselineTable table = derived(band, gender);
      if (better) keep_order(table, *better);
      round_off(table);
      write(tree + "/src/baseline/derived/" + file_name(band, gender), write_baseline(table));
      better = table;
    }
  }
}

// What yardworth_agreement found stands below: it takes an hour of plays, and is written in by hand.
std::string kept_of(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  const std::size_t heading = text.find("\n## Against plays at the very place\n");
  if (heading == std::string::npos) throw std::runtime_error("no plays at the very place to keep in " + path);
  return text.substr(heading);
}

void rebuild_validation(const std::string& tree) {
  const std::string path = tree + "/docs/validation.md";
  const std::string kept = kept_of(path);
  write(path, write_validation(check_published(published_twenties)) + kept);
}

int run(int count, char** words) {
  CLI::App app("Write anew what yardworth is shipped with");
  std::string tree = YARDWORTH_SOURCE_DIR;
  app.add_option("--tree", tree, "Source tree to write into");
  bool fit = false;
  bool baselines = false;
  bool validation = false;
  app.add_flag("--fit", fit, "Fit the golfers (some minutes): src/player/skill_rows_*.inc");
  app.add_flag("--baselines", baselines, "Derive every band's table: src/baseline/derived");
  app.add_flag("--validation", validation, "Compare with what was published: docs/validation.md");
  CLI11_PARSE(app, count, words);
  // Each works with what is compiled in, so what one writes the next sees only after another build.
  if (fit + baselines + validation != 1) {
    std::cerr << "yardworth_rebuild: expected one of --fit, --baselines, --validation\n";
    return 2;
  }
  if (fit) rebuild_skills(tree);
  if (baselines) rebuild_baselines(tree);
  if (validation) rebuild_validation(tree);
  return 0;
}

}  // namespace

}  // namespace yardworth

int main(int count, char** words) {
  try {
    return yardworth::run(count, words);
  } catch (const std::exception& error) {
    std::cerr << "yardworth_rebuild: " << error.what() << "\n";
    return 1;
  }
}
