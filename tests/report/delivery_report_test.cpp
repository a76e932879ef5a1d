#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "report/text.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using test::lines_of;
using test::says;

// Round numbers that no flight has; what is tested is how they are told.
DeliveryReport sample_delivery() {
  DeliveryResult result;
  result.club = *typical_club("driver");
  result.limits = attainable(result.club);
  DeliveryFlight& own = result.own;
  own.delivery = {from_mph(90.0), radians(-2.0), radians(16.0), radians(-3.0), radians(1.0)};
  own.flight.launch = {from_mph(126.0), 1.4, radians(18.0), radians(12.5), radians(0.25), from_rpm(3000.0), 0.0};
  own.flight.carry_m = 200.0 * metres_per_yard;
  own.flight.run_m = 20.0 * metres_per_yard;
  own.flight.total_m = 220.0 * metres_per_yard;
  own.flight.offline_m = -10.0 * metres_per_yard;
  own.flight.apex_m = 75.0 * metres_per_foot;
  result.best = own;
  result.best.flight.carry_m = 208.0 * metres_per_yard;
  result.losses.own = result.own;
  result.losses.best = result.best;
  const auto loss = [](DeliveryAngle of, double in_turn_yd) {
    return Loss{of, radians(1.0), radians(2.0), 0.0, in_turn_yd * metres_per_yard};
  };
  result.losses.losses = {loss(DeliveryAngle::attack, 5.0), loss(DeliveryAngle::path, 2.5),
                          loss(DeliveryAngle::dynamic_loft, 0.75), loss(DeliveryAngle::face, -0.25)};
  result.losses.together_m = 8.0 * metres_per_yard;
  result.new_head = NewHeadGain{2.5 * metres_per_yard, 1.5 * metres_per_yard, 4.0 * metres_per_yard, radians(15.0)};
  return {result, {"Assumed: nothing."}};
}

}  // namespace

TEST_CASE("a delivery in one sentence") {
  DeliveryReport report = sample_delivery();
  CHECK(delivery_sentence(report.result) ==
        "Driver at 90 mph: 200 yards of carry, 220 in all; up to 8.0 yards of carry more at the same speed, 5.0 of "
        "them by "
        "the attack angle, which comes first.");
  report.result.after = report.result.best;
  CHECK(says(delivery_sentence(report.result), "220 in all; 208 and 220 after; up to"));
  report.result.losses.together_m = 0.1;
  CHECK(says(delivery_sentence(report.result), "at this speed there is no more to gain."));
  report.result.losses.losses[1].alone_m = 3.0 * metres_per_yard;
  CHECK(says(delivery_sentence(report.result),
             "up to 3.0 yards of carry more at the same speed, by the club path alone"));
}

TEST_CASE("angles that are worth more together than in turn are named together") {
  DeliveryReport report = sample_delivery();
  auto& losses = report.result.losses.losses;
  losses[0].in_turn_m = 1.0 * metres_per_yard;
  losses[1].in_turn_m = 6.5 * metres_per_yard;
  CHECK(says(delivery_sentence(report.result),
             "8.0 yards of carry more at the same speed, 7.5 of them by attack angle and club path together."));
  losses[0].in_turn_m = 5.0 * metres_per_yard;
  losses[1].in_turn_m = 2.5 * metres_per_yard;
  losses[2].in_turn_m = 1.0 * metres_per_yard;
  losses[2].alone_m = 6.0 * metres_per_yard;
  CHECK(says(delivery_sentence(report.result), "8.5 of them by attack angle, club path and dynamic loft together."));
}

TEST_CASE("what a delivery rests on names weather and limits that are not the usual ones") {
  DeliveryReport report = sample_delivery();
  CHECK_FALSE(says(delivery_text(report), "hPa"));
  CHECK_FALSE(says(delivery_text(report), "m/s"));
  CHECK_FALSE(says(delivery_text(report), "widened"));
  report.result.conditions.air.pressure_hpa = 990.5;
  report.result.conditions.wind = {4.0, radians(90.0), 0.03};
  report.result.own.delivery.attack_rad = radians(-5.0);
  report.result.losses.best.delivery.path_rad = report.result.losses.best.delivery.face_rad = 0.0;
  const std::string text = delivery_text(report);
  CHECK(says(text, "990.5 hPa"));
  CHECK(says(text, "wind of 4 m/s from 90 degrees"));
  CHECK(says(text, "attack angle -5.0 (from -3.0 to 3.0)"));
  CHECK(says(text, "Without the wind from the side: 200.0 yards of carry now, 208.0 at best."));
  CHECK(says(delivery_sentence(report.result), "; without the wind from the side up to 8.0"));
  CHECK(says(test::words_of(text), "path and face straight"));
  CHECK_FALSE(says(test::words_of(text), "the best is bent"));
  report.result.losses.best.delivery.face_rad = radians(4.0);
  const std::string bent = test::words_of(delivery_text(report));
  CHECK(says(bent, "path and face from -4.0 to 4.0"));
  CHECK(says(bent, "a bent ball can carry further than a straight one, so the best is bent"));
  report.result.conditions.wind.from_rad = radians(180.0);
  CHECK_FALSE(says(delivery_text(report), "from the side"));
}

TEST_CASE("a delivery for a terminal") {
  const std::string text = delivery_text(sample_delivery());
  CHECK(says(text, "Assumed: nothing.\n\nDriver at 90 mph"));
  CHECK(says(text, "smash factor"));
  CHECK(says(text, "apex, feet"));
  CHECK(says(text, "yards of carry; a face at it already gains nothing"));
  CHECK(says(text, "Cautions\n"));
  CHECK_FALSE(says(text, "nan"));
  for (const std::string& line : lines_of(text)) CHECK(display_width(line) <= report_width);
  CHECK(says(delivery_text(sample_delivery(), true), "\x1b[1mDriver"));
  DeliveryReport iron = sample_delivery();
  iron.result.new_head.reset();
  CHECK_FALSE(says(delivery_text(iron), "A new head"));
}

TEST_CASE("a delivery as JSON and CSV") {
  DeliveryReport report = sample_delivery();
  const auto json = nlohmann::json::parse(delivery_json(report));
  CHECK(json["format"] == "yardworth/delivery/1");
  CHECK(json["flight"]["ball_speed_mph"] == doctest::Approx(126.0));
  CHECK(json["flight"]["offline_yd"] == doctest::Approx(-10.0));
  CHECK(json["flight"]["apex_ft"] == doctest::Approx(75.0));
  CHECK(json["losses"][0]["of"] == "attack_deg");
  CHECK(json["losses"][3]["in_turn_yd"] == doctest::Approx(-0.25));
  CHECK(json["new_head"]["together_yd"] == doctest::Approx(4.0));
  CHECK_FALSE(json.contains("board"));
  CHECK_FALSE(says(delivery_json(report), "-0.0,"));
  CHECK(json["cautions"].size() >= 2);
  const auto rows = lines_of(delivery_csv(report));
  REQUIRE(rows.size() == 3);
  CHECK(rows[0].rfind("club,which,club_speed_mph,attack_deg,", 0) == 0);
  report.result.board = {{{from_mph(90.0), 0.0, radians(15.0), 190.0, 210.0}}};
  CHECK(nlohmann::json::parse(delivery_json(report))["board"].size() == 1);
  CHECK(lines_of(delivery_board_csv(report)).size() == 2);
}

}  // namespace yardworth
