#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "embed/members.hpp"
#include "embed/shots.hpp"
#include "gain/measured_change.hpp"
#include "gain/strike_change.hpp"
#include "report/opening.hpp"
#include "yardworth/bands.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"
#include "yardworth/strategy.hpp"
#include "yardworth/weigh.hpp"

namespace yardworth::embed {

enum class Command { gain, strategy, report, bands, delivery, bag, weigh, check };

inline constexpr std::array<std::string_view, 8> command_words = {"gain",     "strategy", "report", "bands",
                                                                  "delivery", "bag",      "weigh",  "check"};
std::optional<Command> command_named(std::string_view word);
// The members of its options.
std::vector<std::string> option_names(Command command);

// A curve that is asked for beside a gain.
struct CurveAsked {
  double limit_yd = 0.0;
  double step_yd = 0.0;
};

// What a request asks, read and with what stands in filled in.
struct Question {
  Command command = Command::gain;
  std::optional<Course> course;
  std::optional<Player> player;
  std::optional<BaselineTable> baseline;  // nothing: default_baseline
  GainRequest gain;                       // of report too
  std::optional<CurveAsked> curve;
  std::optional<StrikeChange> strikes;     // where strikes say the change
  std::optional<MeasuredChange> measured;  // where logs say the change
  int draws = 0;                           // of what was measured
  std::uint64_t seed = 1;
  StrategyRequest strategy;
  BandsRequest bands;
  std::optional<std::vector<Member>> members;  // of bands: a list that is asked about in their place
  std::optional<int> hole;                     // of bands: whose hazards are told; of check: the one that is drawn
  DeliveryRequest delivery;
  BagQuestion bag;
  WeighRequest weigh;
  bool pictures = false;               // of all but strategy, report and weigh
  std::size_t columns = report_width;  // of the lines of text
  std::vector<std::string> opening;
  std::vector<Json> parts;  // of holes answered before
  std::string about;        // of parts: the same for all requests that differ in nothing but holes and parts
};

// Whether the request has the member: null is as good as none.
bool is_given(const Json& request, const char* member);

// Every fault of the request and of the texts in it; the question is there only when there is none, and advice too is a
// finding. Findings of texts have the names that the request gives them, those of the request itself "request".
Reading<Question> read_question(const Json& request);

}  // namespace yardworth::embed
