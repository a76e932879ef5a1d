#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

#include "bag/logged_strike.hpp"
#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/said_delivery.hpp"
#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "core/numerics.hpp"
#include "input/said_carry.hpp"
#include "report/logged_strike_words.hpp"
#include "report/opening.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {
namespace {

// By the numbers of a delivery.
constexpr std::array<const char*, delivery_fields.size()> help_of_fields = {
    "Club head speed at impact; typical of the club unless given",
    "Attack angle, upwards positive; typical of the club unless given",
    "Loft of the face at impact; typical of the club unless given",
    "Club path, in-to-out positive for a right-hander; 0 unless given",
    "Face angle to the target line, open positive for a right-hander; 0 unless given",
};

struct DeliveryOptions {
  std::string log;              // that unsaid numbers are taken from; empty: none
  std::string club = "driver";  // as it is typically called, or as the log calls it
  std::array<std::optional<double>, delivery_fields.size()> said;
  std::vector<std::string> to;
  std::optional<double> temperature_c, altitude_m, pressure_hpa, wind_mps, wind_from_deg;
  Turf turf = normal_turf();
  std::optional<std::vector<std::string>> table;  // KEY=LOW..HIGH:STEP
  OutputOptions output;
  std::string svg;
};

// The shots of the club in the log that is given.
std::optional<ShotLog> shots_of_log(const DeliveryOptions& options, std::string& complaints) {
  if (options.log.empty()) return std::nullopt;
  const Reading<std::string> text = read_text(options.log, largest_log_bytes);
  const Reading<ShotLog> log =
      text.ok() ? read_shot_log(*text.value, options.log) : Reading<ShotLog>{{}, text.findings};
  for (const Diagnostic& finding : log.findings) {
    if (finding.severity == Severity::fault) complaints += to_line(finding) + "\n";
  }
  if (!log.ok()) return std::nullopt;
  auto shots = shots_of_club(*log.value, options.club);
  if (!shots) {
    complaints +=
        escape_control(fmt::format("yardworth: --from-log: found no shots of {}, expected --club to be one of {}",
                                   shortened(options.club), fmt::join(log.value->clubs, ", "))) +
        "\n";
    return std::nullopt;
  }
  const LoggedStrike strike = logged_strike(*shots);
  if (std::none_of(strike.medians.begin(), strike.medians.end(), [](const auto& one) { return one.has_value(); })) {
    complaints += fmt::format("yardworth: --from-log: found no column of a strike, expected one of {}\n",
                              "club_speed_mph, attack_deg, dynamic_loft_deg, path_deg, face_deg");
  }
  return shots;
}

// How the club flies that is asked about; the driver in its place where nobody knows.
TypicalClub club_of(const DeliveryOptions& options, std::string& complaints) {
  if (const auto club = input::club_with_flight(options.club)) return *club;
  complaints +=
      escape_control(fmt::format("yardworth: --club: found {}, expected {}; see yardworth delivery --help",
                                 quoted(options.club), expected_word(options.club, input::names_with_flight()))) +
      "\n";
  return *typical_club("driver");
}

// What was not given is as the log has it, and else as the club is typically struck.
SaidStrike strike_of(const DeliveryOptions& options, const TypicalClub& club, const std::optional<ShotLog>& shots) {
  SaidStrike strike = on_top_of(usual_strike(club));
  if (shots) {
    const LoggedStrike logged = logged_strike(*shots);
    for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
      if (logged.medians[i]) say(strike, i, delivery_fields[i].said(*logged.medians[i]));
    }
  }
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    if (options.said[i]) say(strike, i, options.said[i]);
  }
  return strike;
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
  const bool fits = step.value > 0.0 && rows >= 0.0 && rows < limits::most_board_lines && low.value >= limits.low &&
                    high.value <= limits.high;
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
    return fmt::format("--table: found \"{}\", expected {}=LOW..HIGH:STEP within {} to {}, at most {} of them", said,
                       key, limits.low, limits.high, limits::most_board_lines);
  }
  auto& wanted = speeds ? request.board_speeds_mps : request.board_attacks_rad;
  wanted.clear();
  for (const double number : *numbers) wanted.push_back(speeds ? from_mph(number) : radians(number));
  return "";
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
  return text_of(delivery_text, report, output, surroundings);
}

// What the report says of the log, above all else.
void tell_of_log(const DeliveryOptions& options, const ShotLog& shots, const SaidStrike& strike,
                 DeliveryReport& report) {
  const DeliveryResult& result = report.result;
  report::LoggedDelivery logged;
  logged.club = options.club;
  logged.shots = shots;
  logged.known = strike.said;
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) logged.given[i] = options.said[i].has_value();
  logged.carry_m = result.own.flight.carry_m;
  logged.uneven = uneven_loft(shots, strike.delivery, result.club.head, result.conditions);
  const auto words = report::logged_strike_words(logged);
  report.opening.insert(report.opening.begin(), words.begin(), words.end());
}

Outcome run_delivery(const DeliveryOptions& options, const Surroundings& surroundings) {
  if (const std::string why = svg_conflict(options.svg, options.output); !why.empty()) return refusal(at_fault, why);
  if (const auto refused = refuse_outputs({options.output.path, options.svg}, {options.log}, options.output.replace)) {
    return refusal_of(*refused);
  }
  DeliveryReport report;
  DeliveryRequest request;
  std::string complaints;
  const std::optional<ShotLog> shots = shots_of_log(options, complaints);
  request.club = club_of(options, complaints);
  request.conditions = conditions_of(options);
  const SaidStrike strike = strike_of(options, request.club, shots);
  request.delivery = strike.delivery;
  complaints += faults_together(strike, usual_strike(request.club), "");
  if (!options.to.empty()) request.after = read_strike("--to", options.to, strike, complaints).delivery;
  if (options.table) ask_for_usual_board(request);
  for (const std::string& said : options.table.value_or(std::vector<std::string>())) {
    if (const std::string wrong = change_board(said, request); !wrong.empty())
      complaints += escape_control("yardworth: " + wrong) + "\n";
  }
  if (!complaints.empty()) return {at_fault, "", complaints};
  report.opening = report::typical_words(request.club, strike.delivery, strike.said);
  return computed([&] {
    report.result = compute_delivery(request);
    if (shots) tell_of_log(options, *shots, strike, report);
    if (!options.svg.empty()) {
      if (const auto refused = write_file(options.svg, delivery_svg(report), options.output.replace)) {
        return refusal_of(*refused);
      }
    }
    return deliver(written(report, options.output, surroundings), options.output, report.opening);
  });
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
  add_words(*command, "--club", options->club, "NAME",
            fmt::format("{}; or, with --from-log, a club by its\nname there; the driver unless given",
                        fmt::join(input::names_with_flight(), ", ")));
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    const DeliveryField& field = delivery_fields[i];
    add_number(*command, "--" + option_of(field), options->said[i], field.limits, help_of_fields[i]);
  }
  add_words(*command, "--from-log", options->log, "LOG",
            "Shot log (CSV): numbers of the strike that are not given are the median of its shots with the club");
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
  add_svg_option(*command, options->svg, "Also draw what each angle gives away");
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_delivery(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
