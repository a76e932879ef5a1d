#include <doctest/doctest.h>
#include <fmt/format.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/words.hpp"
#include "yardworth/embed.hpp"
#include "yardworth/read.hpp"

// A player whose clubs have strikes in place of carries, for every command that takes a player.

namespace {

using yardworth::cli::Outcome;
using yardworth::test::says;

// In a file of its own.
struct PlayerFile {
  PlayerFile(const std::string& name, std::string words)
      : text(std::move(words)),
        path(
            fmt::format("{}/yardworth-{}-{}.yaml", std::filesystem::temp_directory_path().string(), name, ::getpid())) {
    std::ofstream(path) << text;
  }
  ~PlayerFile() { std::filesystem::remove(path); }
  std::string text, path;
};

const std::string head = "format: yardworth/player/1\nlabel: by speed\nhandicap_index: 16.2\nclubs:\n";

std::string struck_text() {
  return head +
         "  - {club: driver, club_speed: 98, attack_deg: 1}\n"
         "  - {club: 5-wood, club_speed: 88}\n"
         "  - {club: 7-iron, club_speed: 78}\n"
         "  - {club: pitching wedge, club_speed: 72}\n";
}

// The same clubs by what they carry, to the last digit.
std::string carried_text() {
  const auto reading = yardworth::read_player(struck_text(), "f");
  REQUIRE(reading.ok());
  std::string text = head;
  for (const yardworth::Club& club : reading.value->clubs) {
    text += fmt::format("  - {{club: {}, carry: {}}}\n", club.name, club.carry_yd);
  }
  return text;
}

Outcome ask_command(const std::string& arguments, const PlayerFile& player) {
  std::istringstream words(arguments);
  std::vector<std::string> all;
  for (std::string word; words >> word;) all.push_back(word);
  all.insert(all.end(), {"--player", player.path});
  return yardworth::cli::run(all, {});
}

}  // namespace

TEST_CASE("a player by strikes is worth what one by the same carries is, and the report says what was assumed") {
  const PlayerFile struck("struck", struck_text());
  const PlayerFile carried("carried", carried_text());
  for (const char* question : {"gain --plan habit --method table", "strategy --hole 4"}) {
    CAPTURE(question);
    const Outcome by_strikes = ask_command(question, struck);
    const Outcome by_carries = ask_command(question, carried);
    REQUIRE_MESSAGE(by_strikes.status == 0, by_strikes.err);
    REQUIRE_MESSAGE(by_carries.status == 0, by_carries.err);
    CHECK(says(by_strikes.out, "Carries worked out from strikes, in still air"));
    const std::string words = yardworth::test::words_of(by_strikes.out);
    CHECK(says(words, "Of the strike: driver at 98.0 mph, carry "));
    CHECK(says(words, "(typical: dynamic loft 14.0, club path 0.0, face angle 0.0, in degrees)"));
    CHECK_FALSE(says(by_carries.out, "strike: "));
    auto json = nlohmann::json::parse(ask_command(question + std::string(" --format json"), struck).out);
    auto other = nlohmann::json::parse(ask_command(question + std::string(" --format json"), carried).out);
    CHECK(says(json["notes"].dump(), "Carries worked out from strikes"));
    json.erase("notes");
    other.erase("notes");
    CHECK(json == other);
    // The function for browsers has the same.
    const nlohmann::json request = {
        {"command", says(question, "gain") ? "gain" : "strategy"},
        {"player", struck.text},
        {"options",
         says(question, "gain") ? nlohmann::json({{"plan", "habit"}, {"method", "table"}}) : nlohmann::json::object()}};
    const auto answered = nlohmann::json::parse(yardworth::answer(request.dump()));
    REQUIRE(answered["status"] == 0);
    CHECK(says(answered["answer"]["notes"].dump(), "Of the strike: driver at 98.0 mph"));
  }
}

TEST_CASE("check says carry, roll and total of a club by its strike") {
  const PlayerFile struck("checked", struck_text());
  const Outcome outcome = yardworth::cli::run({"check", struck.path}, {});
  CHECK(outcome.status == 0);
  CHECK_MESSAGE(says(outcome.out, "by the strike: driver at 98.0 mph, carry "), outcome.out);
  CHECK(says(outcome.out, " yards in all (typical: "));
}
