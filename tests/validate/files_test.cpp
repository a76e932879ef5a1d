#include <doctest/doctest.h>
#include <fmt/format.h>

#include <filesystem>
#include <string>
#include <variant>
#include <vector>

#include "support/random_player.hpp"
#include "support/scenario.hpp"
#include "yardworth/read.hpp"

// What a reader accepts has no faults: files of the tree, and files made at random.

namespace yardworth {
namespace {

std::string lines_of(const std::vector<Diagnostic>& findings) {
  std::string lines;
  for (const Diagnostic& finding : findings) lines += to_line(finding) + "\n";
  return lines;
}

template <class T>
void check_valid(const T& thing, const std::string& text) {
  const std::string faults = lines_of(validate(thing));
  CHECK_MESSAGE(faults.empty(), faults << text);
}

std::size_t check_files_below(const std::string& folder) {
  namespace fs = std::filesystem;
  std::size_t files = 0;
  for (const auto& entry : fs::recursive_directory_iterator(std::string(YARDWORTH_SOURCE_DIR) + "/" + folder)) {
    if (entry.path().extension() != ".yaml") continue;
    CAPTURE(entry.path().string());
    const Reading<AnyFile> read = read_any(*read_text(entry.path().string()).value, "f");
    REQUIRE(read.ok());
    // Options by themselves have no rules beyond those of the reader: compute_weigh holds them against a golfer.
    std::visit(
        [](const auto& thing) {
          if constexpr (requires { validate(thing); }) check_valid(thing, "");
        },
        *read.value);
    ++files;
  }
  return files;
}

using test::uniform;

bool perhaps(RandomEngine& engine, double probability) { return uniform(engine, 0.0, 1.0) < probability; }

std::string random_units(RandomEngine& engine) { return perhaps(engine, 0.5) ? "yards" : "metres"; }

// Clubs from 5 yards, the least that a reader takes, with everything else said or left out.
std::string random_player_file(RandomEngine& engine) {
  std::string text =
      fmt::format("format: yardworth/player/1\nlabel: random\nhandicap_index: {:.1f}\nunits: {}\nclubs:\n",
                  uniform(engine, -10.0, 54.0), random_units(engine));
  double carry = uniform(engine, 6.0, 380.0);
  for (int i = 0; i < 12 && carry >= 5.5; ++i) {
    text += fmt::format("  - {{club: c{}, carry: {:.2f}", i, carry);
    if (perhaps(engine, 0.3)) text += fmt::format(", roll: {:.2f}", uniform(engine, 0.0, 130.0));
    if (perhaps(engine, 0.3)) text += fmt::format(", carry_sd: {:.3f}", carry * uniform(engine, 0.05, 0.24));
    if (perhaps(engine, 0.3)) text += fmt::format(", direction_sd: {:.3f}", uniform(engine, 0.1, 30.0));
    if (perhaps(engine, 0.3)) text += fmt::format(", direction_mean: {:.3f}", uniform(engine, -20.0, 20.0));
    if (perhaps(engine, 0.3)) text += fmt::format(", poor_strike: {:.3f}", uniform(engine, 0.0, 0.9));
    text += "}\n";
    carry *= uniform(engine, 0.5, 1.0);
  }
  return text;
}

std::string random_hazard(RandomEngine& engine, double length) {
  const char* kinds[] = {"bunker", "penalty_area", "out_of_bounds", "trees"};
  const std::string kind = kinds[static_cast<std::size_t>(uniform(engine, 0.0, 3.999))];
  const double from = uniform(engine, -60.0, length);
  if (perhaps(engine, 0.3)) {
    const double right = uniform(engine, -150.0, 120.0);
    return fmt::format("{{kind: {}, polygon: [[{:.1f}, {:.1f}], [{:.1f}, {:.1f}], [{:.1f}, {:.1f}]]}}", kind, right,
                       from, right + 20.0, from, right + 5.0, from + uniform(engine, 0.0, 40.0));
  }
  const char* side = perhaps(engine, 0.3) ? "across" : perhaps(engine, 0.5) ? "left" : "right";
  std::string text = fmt::format("{{kind: {}, side: {}, from: {:.1f}, to: {:.1f}", kind, side, from,
                                 from + uniform(engine, -2.0, 60.0));
  if (side != std::string("across") && perhaps(engine, 0.5))
    text += fmt::format(", near: {:.1f}", uniform(engine, 0.0, 90.0));
  if (side != std::string("across") && perhaps(engine, 0.5))
    text += fmt::format(", far: {:.1f}", uniform(engine, 20.0, 190.0));
  return text + "}";
}

std::string random_course_file(RandomEngine& engine) {
  std::string text =
      fmt::format("format: yardworth/course/1\nname: random\nunits: {}\ntees: [{{name: a}}, {{name: b}}]\nholes:\n",
                  random_units(engine));
  for (int number = 1; number <= 9; ++number) {
    const double length = uniform(engine, 120.0, 600.0);
    text +=
        fmt::format("  - number: {}\n    par: 4\n    length: {{a: {:.1f}, b: {:.1f}}}\n", number, length, length * 0.9);
    if (perhaps(engine, 0.3)) {
      text += fmt::format("    dogleg: [{{at: {:.1f}, turn: {:.1f}}}]\n", length * uniform(engine, 0.3, 0.7),
                          uniform(engine, -60.0, 60.0));
    }
    if (perhaps(engine, 0.5)) text += fmt::format("    hazards: [{}]\n", random_hazard(engine, length));
  }
  return text;
}

}  // namespace

TEST_CASE("every file of the tree that is read has no faults") { CHECK(check_files_below("courses") >= 10); }

TEST_CASE("nor has any standard player") {
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (const Band band : all_bands) check_valid(standard_player(band, gender), "");
  }
}

TEST_CASE("nor has any player or course that is read from a file made at random") {
  RandomEngine engine(11);
  int players = 0;
  int courses = 0;
  for (int i = 0; i < 300; ++i) {
    const std::string player_text = random_player_file(engine);
    if (const auto player = read_player(player_text, "f"); player.ok()) {
      ++players;
      check_valid(*player.value, player_text);
    }
    const std::string course_text = random_course_file(engine);
    if (const auto course = read_course(course_text, "f"); course.ok()) {
      ++courses;
      check_valid(*course.value, course_text);
    }
  }
  CHECK(players > 100);
  CHECK(courses > 100);
}

}  // namespace yardworth
