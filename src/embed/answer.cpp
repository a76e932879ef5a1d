#include <fmt/format.h>

#include <algorithm>
#include <exception>
#include <new>
#include <string_view>
#include <utility>

#include "embed/facts.hpp"
#include "embed/part_json.hpp"
#include "embed/question.hpp"
#include "embed/sentences.hpp"
#include "gain/drawn_holes.hpp"
#include "gain/said_change.hpp"
#include "gain/saved_draws.hpp"
#include "report/picture/hole_picture.hpp"
#include "yardworth/embed.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace embed {
namespace {

// The exit statuses of the command.
constexpr int done = 0;
constexpr int not_done = 1;
constexpr int at_fault = 2;

// A request with more texts than it can need, or nested like no request, is not read.
constexpr std::size_t largest_request_bytes = 8 * largest_file_bytes;
constexpr int deepest = 32;

Json finding_json(const Diagnostic& finding) {
  return {{"severity", finding.severity == Severity::fault ? "fault" : "advice"},
          {"file", finding.file},
          {"line", finding.line},
          {"column", finding.column},
          {"key", finding.path},
          {"found", finding.found},
          {"expected", finding.expected},
          {"message", to_line(finding)}};
}

Json findings_json(const std::vector<Diagnostic>& findings) {
  Json json = Json::array();
  for (const Diagnostic& finding : findings) json.push_back(finding_json(finding));
  return json;
}

Json refused(int status, const std::string& message, const std::vector<Diagnostic>& findings = {}) {
  return {{"status", status}, {"message", escape_control(message)}, {"findings", findings_json(findings)}};
}

Json refused(const std::vector<Diagnostic>& findings) {
  return refused(at_fault, "the request, or a text in it, has faults", findings);
}

// A request that is no JSON, at its place.
Diagnostic not_json(std::string_view text, std::size_t byte, const std::string& found) {
  const std::string_view before = text.substr(0, std::min(byte > 0 ? byte - 1 : 0, text.size()));
  Diagnostic finding = file_fault("request", found, "one JSON object");
  finding.line = 1 + static_cast<int>(std::count(before.begin(), before.end(), '\n'));
  const std::size_t line_start = before.rfind('\n');
  finding.column = static_cast<int>(before.size() - (line_start == std::string_view::npos ? 0 : line_start + 1)) + 1;
  return finding;
}

Reading<Json> parse(std::string_view text) {
  if (text.size() > largest_request_bytes) {
    return {std::nullopt,
            {file_fault("request", fmt::format("{} bytes", text.size()),
                        fmt::format("at most {} bytes", largest_request_bytes))}};
  }
  bool too_deep = false;
  const auto not_deep = [&](int depth, Json::parse_event_t event, Json&) {
    const bool opens = event == Json::parse_event_t::object_start || event == Json::parse_event_t::array_start;
    too_deep = too_deep || (opens && depth > deepest);
    return !too_deep;
  };
  try {
    Reading<Json> reading;
    reading.value.emplace(Json::parse(text, not_deep));
    if (!too_deep) return reading;
    return {std::nullopt, {file_fault("request", "lists or objects too deep in each other", "a request")}};
  } catch (const Json::parse_error& error) {
    return {std::nullopt, {not_json(text, error.byte, "text that is no JSON")}};
  } catch (const Json::exception&) {
    return {std::nullopt, {file_fault("request", "a number that is too large for any", "finite numbers")}};
  }
}

constexpr const char* part_format = "yardworth/part/1";

template <class HoleResult>
Json part_of(const Question& question, const std::vector<HoleResult>& holes) {
  return {{"format", part_format}, {"about", question.about}, {"holes", Json(nlohmann::json(holes))}};
}

int number_of(const HoleStrategy& hole) { return hole.number; }
int number_of(const HoleGains& hole) { return hole.best ? hole.best->number : hole.habit ? hole.habit->number : 0; }

// Whether a drawing can be drawn.
bool is_whole(const HoleDrawing& drawing) {
  const PlanView& plan = drawing.plan;
  const bool same_hazards = !drawing.after || drawing.after->hazards.size() == drawing.before.hazards.size();
  return same_hazards && plan.line.size() >= 2 &&
         std::all_of(plan.areas.begin(), plan.areas.end(), [](const auto& area) { return area.outline.size() >= 3; });
}

// Whether a part's hole has what the question asks for.
bool answers(const HoleStrategy& hole, const Question& question) {
  const bool changed = question.strategy.change.has_value();
  if (hole.after.has_value() != changed || hole.drawing.has_value() != question.strategy.drawing) return false;
  return !hole.drawing || (hole.drawing->after.has_value() == changed && is_whole(*hole.drawing));
}
bool answers(const HoleGains& hole, const Question& question) {
  const bool table = question.gain.method == Method::table;
  const bool habit = table || question.gain.policy != PolicyChoice::best;
  const bool best = !table && question.gain.policy != PolicyChoice::habit;
  return hole.habit.has_value() == habit && hole.best.has_value() == best &&
         (!habit || !best || hole.habit->number == hole.best->number);
}

// The holes of the parts in the course's order; nothing, and what is wrong with them, where they do not make the whole.
template <class HoleResult>
std::optional<std::vector<HoleResult>> holes_of(const Question& question, std::vector<Diagnostic>& findings) {
  std::vector<HoleResult> holes;
  const auto fault = [&](std::size_t i, const char* found, const char* expected) {
    findings.push_back(file_fault("request", found, expected));
    findings.back().path = fmt::format("parts[{}]", i);
  };
  for (std::size_t i = 0; i < question.parts.size(); ++i) {
    const Json& part = question.parts[i];
    try {
      if (part.at("format") != part_format) {
        fault(i, "the part of another version", "a part that this version made");
      } else if (part.at("about") != question.about) {
        fault(i, "a part of another question", "parts of requests that differ in nothing but their holes");
      } else {
        for (const nlohmann::json& hole : nlohmann::json(part.at("holes"))) holes.push_back(hole.get<HoleResult>());
      }
    } catch (const std::exception&) {
      fault(i, "no part of an answer", "the member \"part\" of an answer");
    }
  }
  std::sort(holes.begin(), holes.end(),
            [](const HoleResult& a, const HoleResult& b) { return number_of(a) < number_of(b); });
  const std::vector<Hole>& course = question.course->holes;
  for (const HoleResult& hole : holes) {
    if (findings.empty() && !answers(hole, question)) fault(0, "a part that was changed", "parts as they were given");
  }
  const bool whole = std::equal(holes.begin(), holes.end(), course.begin(), course.end(),
                                [](const HoleResult& a, const Hole& b) { return number_of(a) == b.number; });
  if (findings.empty() && !whole) {
    findings.push_back(file_fault("request", "parts that do not make the round", "every hole of the course once"));
    findings.back().path = "parts";
  }
  if (!findings.empty()) return std::nullopt;
  return holes;
}

Json answered(const std::string& json, std::vector<std::string> sentences, std::string text) {
  return {
      {"status", done}, {"answer", Json::parse(json)}, {"sentences", std::move(sentences)}, {"text", std::move(text)}};
}

Baseline baseline_of(const Question& question) {
  return question.baseline ? Baseline(*question.baseline) : default_baseline(*question.player);
}

GainReport gain_report(const Question& question, const std::vector<HoleGains>& holes) {
  const Course& course = *question.course;
  const Player& player = *question.player;
  const Baseline baseline = baseline_of(question);
  GainReport report{put_together(course, player, baseline, question.gain, holes), {}, question.opening};
  if (question.draws > 0) {
    const auto draws = drawn_changes(*question.measured, player, question.draws, question.seed);
    const auto saved = compute_saved_draws(course, player, baseline, question.gain, draws);
    report.result.interval = interval_of(saved, bag_level, policy_of_draws(question.gain));
  }
  if (question.curve) {
    GainRequest along = question.gain;
    along.change = change_along_curve(along.change, question.measured.has_value());
    report.curve = compute_curve(course, player, baseline, along, question.curve->limit_yd, question.curve->step_yd);
  }
  return report;
}

Json answer_gain(const Question& question) {
  std::vector<HoleGains> holes;
  if (question.parts.empty()) {
    holes = compute_hole_gains(*question.course, *question.player, baseline_of(question), question.gain);
  } else {
    std::vector<Diagnostic> findings;
    const auto parts = holes_of<HoleGains>(question, findings);
    if (!parts) return refused(findings);
    holes = *parts;
  }
  const GainReport report = gain_report(question, holes);
  Json json = answered(gain_json(report), sentences_of(report), gain_text(report, false, question.columns));
  if (question.pictures) json["pictures"]["gain"] = gain_svg(report);
  if (!question.gain.holes.empty()) json["part"] = part_of(question, holes);
  return json;
}

Json answer_report(const Question& question) {
  LessonReport report;
  const Course& course = *question.course;
  const Player& player = *question.player;
  const Baseline baseline = baseline_of(question);
  report.gain = gain_report(question, compute_hole_gains(course, player, baseline, question.gain));
  report.strategy = compute_drawn_holes(course, player, baseline, question.gain);
  if (question.strikes) report.delivery = losses_before(*question.strikes);
  report.seed = static_cast<int>(question.seed);
  Json json =
      answered(gain_json(report.gain), sentences_of(report.gain), gain_text(report.gain, false, question.columns));
  json["sheet"] = lesson_html(report);
  return json;
}

Json answer_strategy(const Question& question) {
  const Course& course = *question.course;
  const Player& player = *question.player;
  const Baseline baseline = baseline_of(question);
  StrategyReport report;
  if (question.parts.empty()) {
    report.result = compute_strategy(course, player, baseline, question.strategy);
  } else {
    std::vector<Diagnostic> findings;
    auto holes = holes_of<HoleStrategy>(question, findings);
    if (!holes) return refused(findings);
    report.result = put_together(course, player, baseline, question.strategy, std::move(*holes));
  }
  report.opening = question.opening;
  Json json = answered(strategy_json(report), sentences_of(report), strategy_text(report, false, question.columns));
  if (question.strategy.graph) {
    json["graphs"] = Json::array();
    for (const HoleStrategy& hole : report.result.holes) json["graphs"].push_back(hole.graph);
  }
  if (question.strategy.drawing) {
    for (const HoleStrategy& hole : report.result.holes) {
      json["pictures"][fmt::format("hole_{}", hole.number)] = hole_svg(report.result, hole);
      json["pictures"][fmt::format("small_{}", hole.number)] = report::small_hole_svg(report.result, hole);
    }
  }
  if (!question.strategy.holes.empty()) json["part"] = part_of(question, report.result.holes);
  return json;
}

Json answer_members(const Question& question) {
  MembersRequest request;
  request.members = *question.members;
  request.tees = question.bands.tees;
  request.change = question.bands.change;
  request.policy = question.bands.policy;
  request.threads = question.bands.threads;
  const MembersReport report{compute_members(*question.course, request), question.opening};
  return answered(members_json(report), sentences_of(report), members_text(report, false, question.columns));
}

Json answer_bands(const Question& question) {
  if (question.members) return answer_members(question);
  BandsReport report;
  report.result = compute_bands(*question.course, question.bands);
  report.hole = question.hole;
  report.opening = question.opening;
  Json json = answered(bands_json(report), sentences_of(report), bands_text(report, false, question.columns));
  if (question.pictures) json["pictures"]["bands"] = bands_svg(report);
  return json;
}

Json answer_delivery(const Question& question) {
  const DeliveryReport report{compute_delivery(question.delivery), question.opening};
  Json json = answered(delivery_json(report), sentences_of(report), delivery_text(report, false, question.columns));
  if (question.pictures) json["pictures"]["delivery"] = delivery_svg(report);
  return json;
}

Json answer_bag(const Question& question) {
  const BagQuestion& bag = question.bag;
  BagReport report;
  if (bag.after) {
    report.comparison = bag.two_clubs ? compare_clubs(*bag.log, *bag.after, bag.request)
                                      : compare_bags(*bag.log, *bag.after, bag.request);
    report.result = report.comparison->measured_after;
  } else {
    report.result = measure_bag(*bag.log, bag.request);
  }
  Json json = answered(bag_json(report), sentences_of(report), bag_text(report, false, question.columns));
  if (question.pictures) json["pictures"]["bag"] = bag_svg(report);
  return json;
}

Json answer_weigh(const Question& question) {
  const WeighReport report{compute_weigh(*question.course, *question.player, baseline_of(question), question.weigh),
                           question.opening};
  return answered(weigh_json(report), sentences_of(report), weigh_text(report, false, question.columns));
}

Json answer_check(const Question& question, const Json& request) {
  Json understood = Json::object();
  std::string text;
  const auto add = [&](const char* which, const AnyFile& file) {
    understood[which] = summarise(file);
    text += fmt::format("{}: {}\n", which, summarise(file));
  };
  if (is_given(request, "course")) add("course", *question.course);
  if (is_given(request, "player")) add("player", *question.player);
  if (question.baseline) add("baseline", *question.baseline);
  Json answer = {{"format", "yardworth/check/1"}, {"understood", understood}};
  const Course& course = *question.course;
  const ChangedCourse changed = question.bands.changed_course.value_or(ChangedCourse{course, {}});
  if (is_given(request, "course")) answer["course"] = facts_of_course(changed.course);
  if (is_given(request, "player")) answer["player"] = facts_of_player(*question.player);
  Json json = {{"status", done}, {"answer", std::move(answer)}, {"text", text}};
  if (question.pictures && question.hole) {
    json["pictures"]["hole"] = report::hazards_svg(course, changed, *question.hole);
  } else if (question.pictures) {
    json["pictures"]["course"] = course_svg(course);
  }
  return json;
}

// Findings of the library about a request, by the members of the JSON.
std::vector<Diagnostic> by_members(std::vector<Diagnostic> findings) {
  constexpr std::pair<std::string_view, std::string_view> members[] = {
      {"change.driver_carry_yd", "options.driver"},
      {"change.irons_carry_yd", "options.irons"},
      {"change.carry_sd_share", "options.carry_sd"},
      {"change.direction_sd_share", "options.direction_sd"},
      {"change.direction_mean_rad", "options.direction_mean"},
      {"change.poor_strike", "options.poor_strike"},
      {"change.short_game_share", "options.short_game"},
      {"change.putting_share", "options.putting"},
      {"limit_yd", "options.to"},
      {"mark", "options.mark"},
      {"step_yd", "options.step"},
      {"tee", "options.tee"},
      {"threads", "options.threads"}};
  for (Diagnostic& finding : findings) {
    if (finding.file != "request") continue;
    for (const auto& [path, member] : members) {
      if (finding.path == path) finding.path = std::string(member);
    }
    if (finding.path.starts_with("change.clubs")) finding.path = "options.club";
  }
  return findings;
}

Json answer_question(const Question& question, const Json& request) {
  try {
    switch (question.command) {
      case Command::gain:
        return answer_gain(question);
      case Command::strategy:
        return answer_strategy(question);
      case Command::report:
        return answer_report(question);
      case Command::bands:
        return answer_bands(question);
      case Command::delivery:
        return answer_delivery(question);
      case Command::bag:
        return answer_bag(question);
      case Command::weigh:
        return answer_weigh(question);
      case Command::check:
        return answer_check(question, request);
    }
  } catch (const InvalidRequest& error) {
    return refused(by_members(error.findings()));
  } catch (const CannotFinish& error) {
    return refused(not_done, error.what());
  }
  return {};
}

Json answer_text(std::string_view text) {
  const Reading<Json> request = parse(text);
  if (!request.ok()) return refused(request.findings);
  const Reading<Question> question = read_question(*request.value);
  if (!question.ok()) return refused(question.findings);
  Json json = answer_question(*question.value, *request.value);
  // Advice about the texts, where nothing is refused.
  if (!json.contains("findings")) json["findings"] = findings_json(question.findings);
  return json;
}

std::string written(const Json& json) { return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n"; }

}  // namespace
}  // namespace embed

std::string answer(std::string_view request) noexcept {
  try {
    try {
      return embed::written(embed::answer_text(request));
    } catch (const std::bad_alloc&) {
      return embed::written(embed::refused(embed::not_done, "out of memory: more is needed than there is"));
    } catch (const std::exception& error) {
      return embed::written(embed::refused(embed::not_done, error.what()));
    }
  } catch (...) {
    return R"({"status":1})";  // so short that it needs no memory of its own
  }
}

}  // namespace yardworth
