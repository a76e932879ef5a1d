#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/embed.hpp"

namespace yardworth {
namespace {

using ChangeJson = nlohmann::ordered_json;

ChangeJson gain_answer(const ChangeJson& options, const ChangeJson& texts = ChangeJson::object()) {
  ChangeJson request = {{"command", "gain"}, {"options", options}};
  request["options"]["plan"] = "habit";
  for (const auto& [name, text] : texts.items()) request[name] = text;
  return ChangeJson::parse(answer(request.dump()));
}

}  // namespace

TEST_CASE("the embedding function takes a change of more than carry") {
  const ChangeJson json = gain_answer({{"driver", 5},
                                       {"club", {{"9-iron", 5}}},
                                       {"carry_sd", "-10%"},
                                       {"direction_sd", "-10%"},
                                       {"direction_mean", -1},
                                       {"poor_strike", "-3%"},
                                       {"short_game", "-5%"},
                                       {"putting", "-5%"}});
  REQUIRE_MESSAGE(json["status"] == 0, json.dump());
  CHECK(json["answer"]["round"]["steps"].size() == 8);
  CHECK(json["answer"]["change"]["poor_strike_probability"] == doctest::Approx(-0.03));
}

TEST_CASE("the embedding function says all that is wrong with a change") {
  const ChangeJson json = gain_answer({{"putting", -5}, {"club", {{"9-iron", "five"}}}, {"direction_sd", "-95%"}});
  CHECK(json["status"] == 2);
  CHECK(json["findings"].size() == 3);
  const ChangeJson unknown = gain_answer({{"club", {{"9-irn", 5}}}});
  CHECK(unknown["status"] == 2);
  CHECK(unknown["findings"][0]["key"] == "options.club");
  const ChangeJson doubtless = gain_answer({{"driver", 5}, {"draws", 10}});
  CHECK(doubtless["status"] == 2);
  CHECK(doubtless["findings"][0]["key"] == "options.draws");
}

TEST_CASE("the embedding function takes a change from logs, with its interval, and from a second player") {
  const ChangeJson logs = {{"log", test::text_of("courses/heron-ferry/bay/weekend-16-before.csv")},
                           {"after", test::text_of("courses/heron-ferry/bay/weekend-16-after.csv")}};
  const ChangeJson measured = gain_answer({{"draws", 4}}, logs);
  REQUIRE_MESSAGE(measured["status"] == 0, measured.dump());
  CHECK(measured["answer"]["interval"]["draws"] == 4);
  CHECK(gain_answer({{"driver", 5}}, logs)["status"] == 2);
  const std::string before =
      "format: yardworth/player/1\nlabel: pupil\nhandicap_index: 18\nclubs:\n  - {club: driver, carry: 190}\n";
  const std::string after =
      "format: yardworth/player/1\nlabel: pupil\nhandicap_index: 18\nclubs:\n  - {club: driver, carry: 200}\n";
  const ChangeJson second = gain_answer(ChangeJson::object(), {{"player", before}, {"player_after", after}});
  REQUIRE_MESSAGE(second["status"] == 0, second.dump());
  CHECK(second["answer"]["change"]["driver_carry_yd"] == 10.0);
}

}  // namespace yardworth
