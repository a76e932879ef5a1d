#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "core/number_text.hpp"
#include "core/numerics.hpp"
#include "core/spelling.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {
namespace {

constexpr double usual_driver_speed_mph = 94.0;  // common practice, no source
constexpr double board_step_mph = 5.0;
constexpr int board_steps_either_way = 3;
constexpr int board_attacks = 5;
constexpr double most_board_rows = 50.0;

// A number of a delivery as it is said on the command line.
struct SaidNumber {
  const char* name;  // without the dashes
  const Limits& limits;
  double Delivery::*member;
  double (*inside)(double said);
  double (*said)(double inside);
  const char* words;  // of the reports
  const char* unit;
  const char* help;
};
constexpr std::array<SaidNumber, 5> said_numbers = {{
    {"club-speed-mph", limits::club_speed, &Delivery::club_speed_mps, from_mph, to_mph, "club head speed", "mph",
     "Club head speed at impact; typical of the club unless given"},
    {"attack-deg", limits::attack, &Delivery::attack_rad, radians, degrees, "attack angle", "degrees",
     "Attack angle, upwards positive; typical of the club unless given"},
    {"dynamic-loft-deg", limits::dynamic_loft, &Delivery::dynamic_loft_rad, radians, degrees, "dynamic loft", "degrees",
     "Loft of the face at impact; typical of the club unless given"},
    {"path-deg", limits::path, &Delivery::path_rad, radians, degrees, "club path", "degrees",
     "Club path, in-to-out positive for a right-hander; 0 unless given"},
    {"face-deg", limits::face, &Delivery::face_rad, radians, degrees, "face angle", "degrees",
     "Face angle to the target line, open positive for a right-hander; 0 unless given"},
}};

struct DeliveryOptions {
  TypicalClub club = *typical_club("driver");
  std::array<std::optional<double>, said_numbers.size()> said;
  std::vector<std::string> to;
  std::optional<double> temperature_c, altitude_m, pressure_hpa, wind_mps, wind_from_deg;
  Turf turf = normal_turf();
  std::optional<std::vector<std::string>> table;  // KEY=LOW..HIGH:STEP
  OutputOptions output;
};

// What was not given is as the club is typically struck.
Delivery delivery_of(const DeliveryOptions& options, std::vector<std::string>& assumed) {
  Delivery delivery = typical_delivery(options.club, from_mph(usual_driver_speed_mph));
  std::string typical;
  for (std::size_t i = 0; i < said_numbers.size(); ++i) {
    const SaidNumber& number = said_numbers[i];
    if (options.said[i]) {
      delivery.*number.member = number.inside(*options.said[i]);
    } else {
      typical += fmt::format("{}{} {:.1f} {}", typical.empty() ? "" : ", ", number.words,
                             number.said(delivery.*number.member), number.unit);
    }
  }
  if (!typical.empty())
    assumed.push_back(fmt::format("Assumed, as is typical of a {}: {}.", options.club.name, typical));
  return delivery;
}

// Keys are options without their dashes, or the names of the columns of a table: attack-deg or attack_deg.
std::string key_of(const std::string& said) {
  std::string key = said.substr(0, said.find('='));
  std::replace(key.begin(), key.end(), '_', '-');
  return key;
}

// Changes the delivery as KEY=VALUE says; what is wrong with it, if anything.
std::string change(const std::string& said, Delivery& delivery) {
  const std::size_t equals = said.find('=');
  const std::string key = key_of(said);
  std::vector<std::string> keys;
  for (const SaidNumber& number : said_numbers) keys.emplace_back(number.name);
  const auto known = std::find(keys.begin(), keys.end(), key);
  if (equals == std::string::npos && known != keys.end()) {
    return fmt::format("--to: found \"{}\", expected \"=\" and a number after it: {}=NUMBER", said, key);
  }
  if (known == keys.end()) {
    return fmt::format("--to: found \"{}\", expected KEY=VALUE with a key {}", said, one_of(key, keys));
  }
  const SaidNumber& number = said_numbers[static_cast<std::size_t>(known - keys.begin())];
  const ParsedNumber value = parse_number(said.substr(equals + 1));
  if (value.fault != NumberFault::none || value.value < number.limits.low || value.value > number.limits.high) {
    return fmt::format("--to: found \"{}\", expected a number from {} to {}", said, number.limits.low,
                       number.limits.high);
  }
  delivery.*number.member = number.inside(value.value);
  return "";
}

// What is wrong with the numbers together; each by itself has been looked at. No option says the spin loft: it comes of
// the others.
std::string faults_of(const Delivery& delivery, const char* of) {
  std::string faults;
  for (const Diagnostic& finding : validate(delivery)) {
    if (finding.path == "spin_loft_deg") {
      const char* to_changed = std::string_view(of) == "--" ? "" : "--to: ";
      const bool straight = delivery.path_rad == delivery.face_rad;
      faults += fmt::format("yardworth: {}{}: a spin loft of {} degrees, expected {}\n", to_changed,
                            straight ? "dynamic loft and attack angle" : "dynamic loft, attack angle, path and face",
                            finding.found, finding.expected);
      continue;
    }
    std::string option = finding.path;
    std::replace(option.begin(), option.end(), '_', '-');
    faults += fmt::format("yardworth: {}{}: found {}, expected {}\n", of, option, finding.found, finding.expected);
  }
  return faults;
}

FlightConditions conditions_of(const DeliveryOptions& options) {
  FlightConditions conditions;
  conditions.air.temperature_c = options.temperature_c.value_or(conditions.air.temperature_c);
  conditions.air.altitude_m = options.altitude_m.value_or(conditions.air.altitude_m);
  conditions.air.pressure_hpa = options.pressure_hpa.value_or(conditions.air.pressure_hpa);
  conditions.wind.speed_mps = options.wind_mps.value_or(0.0);
  conditions.wind.from_rad = radians(options.wind_from_deg.value_or(0.0));
  conditions.turf = options.turf;
  return conditions;
}

// LOW..HIGH:STEP as the numbers from low to high; nothing where it is none, or not within the limits.
std::optional<std::vector<double>> range_of(const std::string& text, const Limits& limits) {
  const std::size_t dots = text.find("..");
  const std::size_t colon = text.find(':');
  if (dots == std::string::npos || colon == std::string::npos || colon < dots) return std::nullopt;
  const ParsedNumber low = parse_number(text.substr(0, dots));
  const ParsedNumber high = parse_number(text.substr(dots + 2, colon - dots - 2));
  const ParsedNumber step = parse_number(text.substr(colon + 1));
  for (const ParsedNumber& number : {low, high, step}) {
    if (number.fault != NumberFault::none) return std::nullopt;
  }
  const double rows = (high.value - low.value) / step.value;
  const bool fits =
      step.value > 0.0 && rows >= 0.0 && rows < most_board_rows && low.value >= limits.low && high.value <= limits.high;
  if (!fits) return std::nullopt;
  std::vector<double> numbers;
  for (int i = 0; i <= static_cast<int>(rows + numerics::curve_rounding); ++i)
    numbers.push_back(low.value + i * step.value);
  return numbers;
}

// The board's rows or columns as the text says them; what is wrong with it, if anything.
std::string change_board(const std::string& said, DeliveryRequest& request) {
  const std::string key = key_of(said);
  const bool speeds = key == "club-speed-mph";
  if (!speeds && key != "attack-deg") {
    return fmt::format("--table: found \"{}\", expected club-speed-mph or attack-deg, such as attack-deg=-4..4:2",
                       said);
  }
  const Limits& limits = speeds ? limits::club_speed : limits::attack;
  const auto numbers = range_of(said.substr(std::min(said.find('=') + 1, said.size())), limits);
  if (!numbers) {
    return fmt::format("--table: found \"{}\", expected {}=LOW..HIGH:STEP within {} to {}, at most {:.0f} steps", said,
                       key, limits.low, limits.high, most_board_rows);
  }
  auto& wanted = speeds ? request.board_speeds_mps : request.board_attacks_rad;
  wanted.clear();
  for (const double number : *numbers) wanted.push_back(speeds ? from_mph(number) : radians(number));
  return "";
}

// Unless something else is said: speeds around the golfer's own, on whole steps, and attack angles over what can be
// learned with the club.
void ask_for_board(DeliveryRequest& request) {
  const double middle = std::round(to_mph(request.delivery.club_speed_mps) / board_step_mph) * board_step_mph;
  for (int step = -board_steps_either_way; step <= board_steps_either_way; ++step) {
    const double speed = middle + step * board_step_mph;
    if (speed >= limits::club_speed.low && speed <= limits::club_speed.high) {
      request.board_speeds_mps.push_back(from_mph(speed));
    }
  }
  const Limits attacks = attainable(request.club).attack;
  for (int i = 0; i < board_attacks; ++i) {
    request.board_attacks_rad.push_back(attacks.low + (attacks.high - attacks.low) * i / (board_attacks - 1));
  }
}

std::string written(const DeliveryReport& report, const OutputOptions& output, const Surroundings& surroundings) {
  switch (output.format) {
    case Format::json:
      return delivery_json(report);
    case Format::csv:
      return report.result.board.empty() ? delivery_csv(report) : delivery_board_csv(report);
    case Format::text:
      break;
  }
  const bool to_file = !output.path.empty();
  return delivery_text(report, surroundings.colour && !to_file, surroundings.columns(to_file).value_or(report_width));
}

Outcome run_delivery(const DeliveryOptions& options, const Surroundings& surroundings) {
  if (const auto refused = refuse_outputs({options.output.path}, {}, options.output.replace)) {
    return refusal_of(*refused);
  }
  DeliveryReport report;
  DeliveryRequest request;
  request.club = options.club;
  request.delivery = delivery_of(options, report.opening);
  request.conditions = conditions_of(options);
  std::string complaints = faults_of(request.delivery, "--");
  if (!options.to.empty()) {
    request.after = request.delivery;
    for (const std::string& said : options.to) {
      if (const std::string wrong = change(said, *request.after); !wrong.empty()) return refusal(at_fault, wrong);
    }
    if (complaints.empty()) complaints = faults_of(*request.after, "--to ");
  }
  if (!complaints.empty()) return {at_fault, "", complaints};
  if (options.table) {
    ask_for_board(request);
    for (const std::string& said : *options.table) {
      if (const std::string wrong = change_board(said, request); !wrong.empty()) return refusal(at_fault, wrong);
    }
  }
  return computed([&] {
    report.result = compute_delivery(request);
    return deliver(written(report, options.output, surroundings), options.output, report.opening);
  });
}

void add_club_option(CLI::App& command, TypicalClub& club) {
  std::vector<std::pair<std::string, TypicalClub>> choices;
  for (const TypicalClub& typical : typical_clubs()) choices.emplace_back(std::string(typical.name), typical);
  add_choice<TypicalClub>(command, "--club", club, choices, "The club; the driver unless given")->type_name("NAME");
}

void add_weather_options(CLI::App& command, DeliveryOptions& options) {
  add_number(command, "--temperature-c", options.temperature_c, limits::temperature,
             "Degrees Celsius; 25 unless given");
  add_number(command, "--altitude-m", options.altitude_m, limits::altitude, "Metres above the sea; 0 unless given");
  add_number(command, "--pressure-hpa", options.pressure_hpa, limits::pressure,
             "Air pressure reduced to sea level, as it is told in weather reports; 1013.25 unless given");
  add_number(command, "--wind-mps", options.wind_mps, limits::wind, "Wind 10 m up, metres a second; none unless given");
  add_number(command, "--wind-from-deg", options.wind_from_deg, limits::wind_from,
             "Where it blows from: 0 from ahead, 90 from the right, 180 from behind; 0 unless given");
  add_choice<Turf>(command, "--firmness", options.turf,
                   {{"soft", soft_turf()}, {"normal", normal_turf()}, {"firm", firm_turf()}},
                   "The ground the ball comes down to; normal unless given");
}

}  // namespace

void add_delivery(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<DeliveryOptions>();
  CLI::App* command = app.add_subcommand(
      "delivery", "What a strike does in the air, and what it gives away at the same club head speed");
  add_club_option(*command, options->club);
  for (std::size_t i = 0; i < said_numbers.size(); ++i) {
    const SaidNumber& number = said_numbers[i];
    add_number(*command, std::string("--") + number.name, options->said[i], number.limits, number.help);
  }
  const auto store = [options](const std::string& text) { options->to.push_back(text); };
  add_text_option(*command, "--to", store,
                  "Also with this number changed, such as attack-deg=2; several times for several")
      ->type_name("KEY=VALUE")
      ->trigger_on_parse()
      ->expected(1);
  command
      ->add_option_function<std::string>(
          "--table",
          [options](const std::string& text) {
            if (!options->table) options->table.emplace();
            if (!text.empty()) options->table->push_back(text);
          },
          "Also carry and total by club head speed and attack angle, or by what is said of\n"
          "either, such as attack-deg=-4..4:2; with --format csv that alone")
      ->type_name("KEY=LOW..HIGH:STEP")
      ->trigger_on_parse()
      ->expected(0, 1);
  add_weather_options(*command, *options);
  add_output_options(*command, options->output);
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_delivery(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
