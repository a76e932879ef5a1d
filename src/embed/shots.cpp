#include "embed/shots.hpp"

#include <fmt/format.h>

#include <utility>

#include "core/message_text.hpp"
#include "core/spelling.hpp"
#include "input/two_parts.hpp"

namespace yardworth::embed {
namespace {

std::optional<ShotLog> read_text_of_log(const std::string& text, const std::string& name, BadRows bad_rows,
                                        std::vector<Diagnostic>& findings) {
  Reading<ShotLog> reading = read_shot_log(text, name, bad_rows);
  findings.insert(findings.end(), reading.findings.begin(), reading.findings.end());
  return std::move(reading.value);
}

// Two parts of the log by the names that an option has; nothing where it is not given.
std::vector<std::string> two_names(const Members& options, const char* option, const Tell& tell) {
  if (!options.has(option)) return {};
  std::vector<std::string> names = options.words_of(option);
  if (names.size() == 2) return names;
  tell(option, fmt::format("a list of {}", names.size()), "two names");
  return {};
}

using Part = std::optional<ShotLog> (*)(const ShotLog&, std::string_view);

void split(BagQuestion& question, const std::vector<std::string>& names, const char* option, Part part,
           const std::vector<std::string>& known, const Tell& tell) {
  const ShotLog log = *question.log;
  if (const auto fault = input::parts_fault(names, known)) {
    tell(option, fault->found, fault->expected);
    return;
  }
  const auto take = [&](const std::string& name) {
    auto shots = part(log, name);
    if (!shots) tell(option, quoted(name), one_of(name, known));
    return shots;
  };
  question.log = take(names[0]);
  question.after = take(names[1]);
}

void read_golfer(const BagTexts& texts, const Members& options, const Tell& tell, BagRequest& request) {
  const auto index = options.number("index", limits::handicap_index);
  const auto gender = options.choice<Gender>("gender", {"men", "women"}, gender_named).value_or(Gender::men);
  if (texts.player && index) tell("index", "a player beside it", "one of them: both say whom to borrow from");
  if (index) request.golfer = golfer_of_index(*index, gender);
  if (!texts.player) return;
  request.golfer = texts.player;
  request.golfer_has_file = true;
}

}  // namespace

std::vector<std::string> bag_options() { return {"index", "gender", "skip_bad_rows", "sessions", "clubs", "pictures"}; }

BagQuestion read_bag(const BagTexts& texts, const Members& options, const Tell& tell_of_request,
                     const Tell& tell_of_options, std::vector<Diagnostic>& findings) {
  BagRequest request;
  read_golfer(texts, options, tell_of_options, request);
  BagQuestion question = read_logs(texts, options, tell_of_request, tell_of_options, findings);
  question.request = std::move(request);
  return question;
}

BagQuestion read_logs(const BagTexts& texts, const Members& options, const Tell& tell_of_request,
                      const Tell& tell_of_options, std::vector<Diagnostic>& findings) {
  BagQuestion question;
  const BadRows bad_rows = options.flag("skip_bad_rows") ? BadRows::skipped : BadRows::refused;
  const std::vector<std::string> sessions = two_names(options, "sessions", tell_of_options);
  const std::vector<std::string> clubs = two_names(options, "clubs", tell_of_options);
  const int ways = (texts.after ? 1 : 0) + (sessions.empty() ? 0 : 1) + (clubs.empty() ? 0 : 1);
  if (ways > 1) {
    tell_of_options(sessions.empty() ? "clubs" : "sessions", "another way beside it",
                    "one way to say what is compared: a second log, sessions or clubs");
  }
  if (!texts.log) {
    tell_of_request("log", missing_key, "the text of a shot log");
    return question;
  }
  question.log = read_text_of_log(*texts.log, texts.log_name, bad_rows, findings);
  if (texts.after) question.after = read_text_of_log(*texts.after, texts.after_name, bad_rows, findings);
  if (!question.log || ways > 1) return question;
  question.two_clubs = !clubs.empty();
  const std::vector<std::string> known_sessions = question.log->sessions;
  const std::vector<std::string> known_clubs = question.log->clubs;
  if (!sessions.empty()) split(question, sessions, "sessions", shots_of_session, known_sessions, tell_of_options);
  if (!clubs.empty()) split(question, clubs, "clubs", shots_of_club, known_clubs, tell_of_options);
  return question;
}

}  // namespace yardworth::embed
