#include "embed/question.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <utility>

#include "core/message_text.hpp"
#include "core/spelling.hpp"
#include "course/hazard_kind.hpp"
#include "embed/strikes.hpp"
#include "gain/player_change.hpp"
#include "gain/said_change.hpp"
#include "gain/saved_draws.hpp"
#include "gain/strike_change.hpp"
#include "report/measured_words.hpp"
#include "report/text.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/scenario.hpp"

namespace yardworth::embed {
namespace {

constexpr std::size_t most_findings = 200;                        // that are told
constexpr int narrowest_text = static_cast<int>(narrowest_page);  // columns
constexpr int widest_text = static_cast<int>(report_width);

// A lesson sheet is that of a gain, and asked for as a gain is.
bool is_about_gain(Command command) { return command == Command::gain || command == Command::report; }

// The request while it is read.
struct Reader {
  const Json& request;
  Question question;
  std::vector<Diagnostic> findings;

  Tell tell(const std::string& path = "") { return below(tell_into(findings, "request"), path); }
};

std::optional<Diagnostic> too_long(const std::string& text, const std::string& name, std::size_t most_bytes) {
  if (text.size() <= most_bytes) return std::nullopt;
  return file_fault(name, fmt::format("{} bytes", text.size()), fmt::format("at most {} bytes", most_bytes));
}

template <class T>
std::optional<T> read_one(Reader& reader, const std::string& text, const std::string& name,
                          Reading<T> (*read)(std::string_view, const std::string&)) {
  if (const auto fault = too_long(text, name, largest_file_bytes)) {
    reader.findings.push_back(*fault);
    return std::nullopt;
  }
  Reading<T> reading = read(text, name);
  reader.findings.insert(reader.findings.end(), reading.findings.begin(), reading.findings.end());
  return std::move(reading.value);
}

std::vector<std::string> text_members() {
  return {"course", "player", "baseline", "log", "after", "player_after", "members", "options_file"};
}

// The texts of files, by the names that the request gives them.
void read_texts(Reader& reader, const Members& members) {
  const Json none = Json::object();
  const Json* given = members.find("names");
  const Members names(given == nullptr ? none : *given, text_members(), reader.tell("names"));
  const auto name_of = [&](const char* which) { return names.text(which).value_or(which); };
  Question& question = reader.question;
  const auto course = members.text("course");
  const auto player = members.text("player");
  question.course = course ? read_one<Course>(reader, *course, name_of("course"), read_course)
                           : read_course(scenario_course_yaml(), std::string(scenario_course_file)).value;
  question.player = player ? read_one<Player>(reader, *player, name_of("player"), read_player)
                           : read_player(scenario_player_yaml(), std::string(scenario_player_file)).value;
  if (const auto baseline = members.text("baseline")) {
    question.baseline = read_one<BaselineTable>(reader, *baseline, name_of("baseline"), read_baseline);
  }
  if (const auto list = members.text("members")) {
    question.members = read_one<std::vector<Member>>(reader, *list, name_of("members"), read_members);
  }
}

std::vector<int> read_holes(Reader& reader, const Members& members) {
  std::vector<int> holes;
  const std::vector<Json> said = members.list("holes", "the numbers of holes");
  if (said.size() > static_cast<std::size_t>(limits::most_holes)) {
    reader.tell()("holes", fmt::format("a list of {}", said.size()), "each hole once");
    return holes;
  }
  for (const Json& hole : said) {
    if (hole.is_number_integer() && hole >= 1 && hole <= limits::most_holes) {
      holes.push_back(hole.get<int>());
    } else {
      reader.tell()("holes", shortened(hole.dump(-1, ' ', true, Json::error_handler_t::replace)),
                    fmt::format("numbers of holes, from 1 to {}", limits::most_holes));
    }
  }
  return holes;
}

SaidChange read_carry_change(const Members& options) {
  return {options.number("driver", limits::carry_change), options.number("irons", limits::carry_change)};
}

// "club": {"9-iron": 5}
std::vector<SaidClub> read_clubs(Reader& reader, const Members& options) {
  const Tell tell = reader.tell("options");
  const Json* said = options.find("club");
  std::vector<SaidClub> clubs;
  if (said == nullptr) return clubs;
  if (!said->is_object()) {
    tell("club", described(*said), "an object of clubs and the carry that is added to each, such as {\"9-iron\": 5}");
    return clubs;
  }
  std::vector<std::string> names;
  for (const auto& [name, carry] : said->items()) names.push_back(name);
  const Members members(*said, names, below(tell, "club"));
  for (const std::string& name : names) {
    if (const auto carry = members.number(name, limits::carry_change)) clubs.push_back({name, *carry});
  }
  return clubs;
}

SaidChange read_change(Reader& reader, const Members& options) {
  SaidChange change = read_carry_change(options);
  change.clubs = read_clubs(reader, options);
  change.carry_sd = options.percent("carry_sd", limits::spread_change);
  change.direction_sd = options.percent("direction_sd", limits::spread_change);
  change.direction_mean = options.number("direction_mean", limits::direction_mean_change);
  change.poor_strike = options.percent("poor_strike", limits::poor_strike_change);
  change.short_game = options.percent("short_game", limits::spread_change);
  change.putting = options.percent("putting", limits::spread_change);
  return change;
}

std::optional<std::size_t> read_tee(const Members& options, const Course& course) {
  return options.choice<std::size_t>("tee", tee_names(course),
                                     [&](std::string_view word) { return tee_index(course, word); });
}

template <class T>
std::optional<T> among(std::string_view word, std::initializer_list<T> all) {
  for (const T one : all) {
    if (name(one) == word) return one;
  }
  return std::nullopt;
}

report::StoodIn stood_in_of(const Reader& reader) {
  report::StoodIn stood_in;
  stood_in.units = reader.question.course->units;
  if (!is_given(reader.request, "course")) stood_in.course = reader.question.course->name;
  return stood_in;
}

// What gain and strategy say of what stands in.
std::vector<std::string> opening_of_round(const Reader& reader, const std::optional<std::size_t>& tee) {
  const Question& question = reader.question;
  report::StoodIn stood_in = stood_in_of(reader);
  if (!is_given(reader.request, "player")) stood_in.player = question.player->label;
  if (!tee) stood_in.tee = question.course->tees[default_tee(*question.course, question.player->gender)].name;
  std::vector<std::string> opening = report::opening_of(stood_in);
  for (std::string& sentence : report::struck_words(*question.player)) opening.push_back(std::move(sentence));
  return opening;
}

// "to" of a gain: a number, where a curve ends; an object, what is different of a strike; or a list of both.
struct SaidTo {
  std::optional<double> curve;
  const Json* strike = nullptr;
};

SaidTo read_to(Reader& reader, const Members& options) {
  SaidTo to;
  const Json* said = options.find("to");
  if (said == nullptr) return to;
  const Tell tell = reader.tell("options");
  const Limits limits{limits::curve_step.low, limits::carry_change.high};
  const auto take = [&](const Json& value) {
    if (value.is_object() && to.strike == nullptr) {
      to.strike = &value;
    } else if (value.is_number() && !to.curve) {
      if (check_number(value.get<double>(), limits, "to", tell)) to.curve = value.get<double>();
    } else {
      tell("to", described(value),
           "one number, where the curve ends, one object, what is different, or both in a list");
    }
  };
  if (!said->is_array()) {
    take(*said);
  } else {
    for (const Json& value : *said) take(value);
  }
  return to;
}

// The change that a better strike of the driver is, with what a report says of it; nothing where no strike is said or
// one is at fault.
std::optional<DistanceChange> read_strikes(Reader& reader, const Members& options, const SaidChange& change,
                                           const Json* to) {
  const Tell tell = reader.tell("options");
  const Json* from = options.find("from_delivery");
  if (from == nullptr && to != nullptr) tell("to", "no \"from_delivery\" beside it", "how the driver is struck now");
  if (from == nullptr) return std::nullopt;
  if (change.driver) tell("from_delivery", "\"driver\" beside it", "one of them: both say what the driver gains");
  if (to == nullptr) tell("from_delivery", "no \"to\" beside it", "what changes of that strike");
  const TypicalClub driver = *typical_club("driver");
  const SaidStrike own = own_driver_strike(*reader.question.player);
  const SaidStrike before = read_strike(*from, own, below(tell, "from_delivery"));
  if (to == nullptr) return std::nullopt;
  const SaidStrike after = read_strike(*to, before, below(tell, "to"));
  if (has_fault(reader.findings)) return std::nullopt;
  const Units units = reader.question.course->units;
  const StrikeChange strikes = change_of_strike(before.delivery, after.delivery);
  reader.question.strikes = strikes;
  for (std::string& sentence :
       report::opening_of_strikes(driver, either(before.said, own.said), strikes, change.irons.has_value(), units)) {
    reader.question.opening.push_back(std::move(sentence));
  }
  return strikes.in_yards(change.irons, units);
}

void read_curve(Reader& reader, const Members& options, const std::optional<double>& to) {
  const Units units = reader.question.course->units;
  const auto step = options.number("step", limits::curve_step);
  if (step && !options.has("to")) reader.tell("options")("step", "no \"to\" beside it", "where the curve ends");
  if (to) reader.question.curve = {to_yards(*to, units), to_yards(step.value_or(default_curve_step), units)};
}

// What the request calls its texts; what is wrong with the names was told when the texts were read.
std::string name_of_text(const Reader& reader, const char* text) {
  const Json none = Json::object();
  const Json& names = is_given(reader.request, "names") ? reader.request["names"] : none;
  return Members(names, text_members(), [](auto, auto, auto) {}).text(text).value_or(text);
}

BagTexts texts_of_logs(const Reader& reader, const Members& members) {
  return {members.text("log"), members.text("after"), name_of_text(reader, "log"), name_of_text(reader, "after"), {}};
}

// The change that files say; nothing where none does, or one is at fault.
std::optional<Change> read_change_files(Reader& reader, const Members& members, const Members& options,
                                        bool said_otherwise) {
  Question& question = reader.question;
  const bool by_logs = is_given(reader.request, "log") || is_given(reader.request, "after");
  const bool by_player = is_given(reader.request, "player_after");
  if (!by_logs && !by_player) return std::nullopt;
  const char* member = by_logs ? "log" : "player_after";
  if (by_logs && by_player) reader.tell()("player_after", "logs beside it", "one of them: both say what changes");
  if (said_otherwise) reader.tell()(member, "options beside it that say what changes", "one or the other");
  if (by_player) {
    const std::string name = name_of_text(reader, "player_after");
    const auto after = read_one<Player>(reader, members.text("player_after").value_or(""), name, read_player);
    if (!after || by_logs) return std::nullopt;
    Reading<Change> change = change_between(*question.player, *after, name);
    reader.findings.insert(reader.findings.end(), change.findings.begin(), change.findings.end());
    question.opening.push_back(report::after_words(after->label));
    return change.value;
  }
  const BagQuestion logs =
      read_logs(texts_of_logs(reader, members), options, reader.tell(), reader.tell("options"), reader.findings);
  if (!logs.log || !logs.after) {
    if (logs.log && !has_fault(reader.findings)) reader.tell()("after", missing_key, "a later log, or two sessions");
    return std::nullopt;
  }
  question.measured = measured_change(compare_bags(*logs.log, *logs.after, {question.player, true}), *question.player);
  if (question.measured->clubs.empty()) {
    reader.tell()("log", "no club of the player with enough shots before and after", "one at least");
  }
  for (std::string& sentence : report::measured_words(*question.measured, *question.player, question.course->units)) {
    question.opening.push_back(std::move(sentence));
  }
  return estimated_change(*question.measured, *question.player);
}

// Draws of what was measured: of a whole round.
void read_draws(Reader& reader, const Members& options) {
  Question& question = reader.question;
  const auto draws = options.whole("draws", 0, limits::most_draws);
  question.seed = static_cast<std::uint64_t>(options.whole("seed", 0, limits::largest_seed).value_or(1));
  const bool whole_round = !is_given(reader.request, "holes") && !is_given(reader.request, "parts");
  if (draws.value_or(0) > 0 && !question.measured) {
    reader.tell("options")("draws", "no logs beside it", "a change that was measured");
  } else if (draws.value_or(0) > 0 && !whole_round) {
    reader.tell("options")("draws", "holes or parts beside it", "a whole round, whose strokes they are of");
  } else if (draws == 1) {
    reader.tell("options")("draws", "1", "2 at least, or 0 for none");
  } else if (question.measured && whole_round) {
    question.draws = draws.value_or(default_draws);
  }
}

void read_gain(Reader& reader, const Members& members, const Members& options) {
  Question& question = reader.question;
  const Units units = question.course->units;
  GainRequest& gain = question.gain;
  gain.tee = read_tee(options, *question.course);
  const auto method = [](std::string_view word) { return among(word, {Method::play, Method::table}); };
  gain.method = options.choice<Method>("method", {"play", "table"}, method).value_or(Method::play);
  const auto plan = [](std::string_view word) {
    return among(word, {PolicyChoice::both, PolicyChoice::habit, PolicyChoice::best});
  };
  gain.policy = options.choice<PolicyChoice>("plan", {"both", "habit", "best"}, plan).value_or(PolicyChoice::both);
  gain.threads = options.whole("threads", 0, limits::most_threads).value_or(0);
  gain.mark = options.whole("mark", static_cast<int>(limits::mark.low), static_cast<int>(limits::mark.high));
  const SaidChange change = read_change(reader, options);
  question.opening = opening_of_round(reader, gain.tee);
  const SaidTo to = read_to(reader, options);
  const bool given = change.given() || options.has("from_delivery");
  gain.change = (given ? change : default_gain_change()).in_yards(units);
  if (const auto by_strike = read_strikes(reader, options, change, to.strike)) {
    gain.change = with_carry(std::move(gain.change), *by_strike);
  }
  const auto by_files = read_change_files(reader, members, options, given);
  if (by_files) gain.change = *by_files;
  read_draws(reader, options);
  if (!given && !by_files) question.opening.push_back(report::default_change_words("neither driver nor irons", units));
  read_curve(reader, options, to.curve);
}

void read_strategy(Reader& reader, const Members& members, const Members& options) {
  Question& question = reader.question;
  StrategyRequest& strategy = question.strategy;
  strategy.tee = read_tee(options, *question.course);
  const SaidChange change = read_change(reader, options);
  if (change.given()) strategy.change = change.in_yards(question.course->units);
  strategy.prove = options.flag("prove");
  strategy.graph = options.flag("graph");
  strategy.drawing = options.flag("pictures");
  strategy.alternatives = !options.flag("tee_shot_alone");
  strategy.threads = options.whole("threads", 0, limits::most_threads).value_or(0);
  question.opening = opening_of_round(reader, strategy.tee);
  if (const auto by_strike = read_strikes(reader, options, change, options.find("to"))) {
    strategy.change = with_carry(strategy.change.value_or(Change{}), *by_strike);
  }
  const bool given = change.given() || options.has("from_delivery");
  if (auto by_files = read_change_files(reader, members, options, given)) strategy.change = std::move(by_files);
}

// One hazard that is moved or added: the keys of a file, with the hole and, of a move, the number of the hazard.
HazardChange read_hazard(const Json& json, Units units, const std::string& name, const Tell& tell) {
  const Members members(json, {"hole", "hazard", "kind", "side", "from", "to", "near", "far", "along", "right"}, tell);
  HazardChange change;
  change.name = name;
  if (!members.has("hole")) tell("hole", missing_key, "the number of a hole");
  change.hole = members.whole("hole", 1, limits::most_holes).value_or(0);
  change.hazard = members.whole("hazard", 1, static_cast<int>(limits::most_parts));
  change.kind = members.choice<HazardKind>("kind", hazard_kind_names(), hazard_kind_named);
  change.side = members.choice<Side>("side", {"left", "right", "across"}, side_named);
  const auto length = [&](const char* key, const Limits& limits_yd) -> std::optional<double> {
    const auto number = members.number(key, in_units(limits_yd, units));
    return number ? std::optional(to_yards(*number, units)) : std::nullopt;
  };
  change.from_yd = length("from", limits::along_hole);
  change.to_yd = length("to", limits::along_hole);
  change.near_yd = length("near", limits::from_line);
  change.far_yd = length("far", limits::from_line);
  change.along_yd = length("along", limits::moved);
  change.right_yd = length("right", limits::moved);
  return change;
}

void read_hazards(Reader& reader, const Members& options) {
  const std::vector<Json> said = options.list("hazards", "hazards that are moved or added");
  if (said.empty()) return;
  const Course& course = *reader.question.course;
  std::vector<HazardChange> changes;
  for (std::size_t i = 0; i < said.size(); ++i) {
    changes.push_back(read_hazard(said[i], course.units, fmt::format("request: options.hazards[{}]", i),
                                  below(reader.tell("options"), "hazards", i)));
  }
  if (has_fault(reader.findings)) return;
  Reading<ChangedCourse> changed = change_hazards(course, changes);
  for (Diagnostic& finding : changed.findings) {
    // A change names its hazard as the member of the request does.
    if (finding.path == "number") finding.path = "hazard";
  }
  reader.findings.insert(reader.findings.end(), changed.findings.begin(), changed.findings.end());
  reader.question.bands.changed_course = std::move(changed.value);
}

// What is about bands or holes alone cannot stand beside a list of members.
void check_beside_members(Reader& reader, const Members& options) {
  if (!is_given(reader.request, "members")) return;
  for (const char* option : {"band", "gender", "hole", "hazards", "changed_holes_alone", "pictures"}) {
    if (options.has(option)) reader.tell("options")(option, "\"members\" beside it", "a question about bands");
  }
}

void read_bands(Reader& reader, const Members& options) {
  Question& question = reader.question;
  check_beside_members(reader, options);
  const Course& course = *question.course;
  BandsRequest& bands = question.bands;
  if (options.words_of("gender") != std::vector<std::string>{"both"}) {
    const auto genders = options.choices<Gender>("gender", {"men", "women", "both"}, gender_named);
    if (!genders.empty()) bands.genders = genders;
  }
  std::vector<std::string> band_words;
  for (const Band band : all_bands) band_words.emplace_back(name(band));
  const auto wanted = options.choices<Band>("band", band_words, band_named);
  if (!wanted.empty()) bands.bands = wanted;
  bands.tees = options.choices<std::size_t>("tee", tee_names(course),
                                            [&](std::string_view word) { return tee_index(course, word); });
  std::sort(bands.tees.begin(), bands.tees.end());
  bands.tees.erase(std::unique(bands.tees.begin(), bands.tees.end()), bands.tees.end());
  const auto plan = [](std::string_view word) { return among(word, {PolicyChoice::habit, PolicyChoice::best}); };
  bands.policy = options.choice<PolicyChoice>("plan", {"habit", "best"}, plan).value_or(PolicyChoice::habit);
  bands.threads = options.whole("threads", 0, limits::most_threads).value_or(0);
  question.hole = options.whole("hole", 1, static_cast<int>(course.holes.size()));
  const SaidChange change = read_carry_change(options);
  bands.change = change.carry_in_yards(course.units);
  report::StoodIn stood_in = stood_in_of(reader);
  // A question about hazards is about golfers as they are, unless it says otherwise.
  if (!change.given() && !options.has("hazards")) {
    stood_in.driver = default_driver_change;
    bands.change.driver_carry_yd = to_yards(default_driver_change, course.units);
  }
  question.opening = report::opening_of(stood_in);
  read_hazards(reader, options);
  bands.rounds = !options.flag("changed_holes_alone");
  if (!bands.rounds && !options.has("hazards")) {
    reader.tell("options")("changed_holes_alone", "no \"hazards\" beside it", "hazards that change holes");
  }
}

// Hazards may be looked at elsewhere before anybody plays there.
void read_check(Reader& reader, const Members& options) {
  const int holes = static_cast<int>(reader.question.course->holes.size());
  reader.question.hole = options.whole("hole", 1, holes);
  read_hazards(reader, options);
}

// A strike knows neither course nor golfer.
void read_delivery(Reader& reader, const Members& options) {
  Question& question = reader.question;
  for (const char* text : {"course", "player", "baseline"}) {
    if (is_given(reader.request, text)) reader.tell()(text, "a text", "none: a delivery knows no course and no player");
  }
  const SaidFields said = read_delivery(options, question.delivery, reader.tell("options"));
  question.opening = report::typical_words(question.delivery.club, question.delivery.delivery, said);
}

// Shots know no course, and a player only where one is given.
void read_bag(Reader& reader, const Members& members, const Members& options) {
  for (const char* text : {"course", "baseline", "player_after"}) {
    if (is_given(reader.request, text)) reader.tell()(text, "a text", "none: measured shots know no course");
  }
  BagTexts texts = texts_of_logs(reader, members);
  if (is_given(reader.request, "player")) texts.player = reader.question.player;
  reader.question.bag = read_bag(texts, options, reader.tell(), reader.tell("options"), reader.findings);
}

// The text of a file that an options file names, of those that the request has in files.
Reading<std::string> text_of_file(const Json* files, const std::string& name, std::size_t most_bytes) {
  if (files == nullptr || !files->contains(name) || !(*files)[name].is_string()) {
    return {std::nullopt, {file_fault(name, "no such text in files", "the text of the file by this name")}};
  }
  auto text = (*files)[name].get<std::string>();
  if (const auto fault = too_long(text, name, most_bytes)) return {std::nullopt, {*fault}};
  return {std::move(text), {}};
}

// The texts of files by their names; nothing, and a fault, where it is something else.
const Json* read_files(Reader& reader, const Members& members) {
  const Json* files = members.find("files");
  if (files == nullptr || files->is_object()) return files;
  reader.tell()("files", described(*files), "an object of the texts of files by their names");
  return nullptr;
}

// The options that are weighed are a text of their own.
void read_weigh(Reader& reader, const Members& members, const Members& options) {
  WeighRequest& weigh = reader.question.weigh;
  weigh.tee = read_tee(options, *reader.question.course);
  const auto plan = [](std::string_view word) {
    return among(word, {PolicyChoice::habit, PolicyChoice::best, PolicyChoice::both});
  };
  weigh.policy = options.choice<PolicyChoice>("plan", {"habit", "best", "both"}, plan).value_or(PolicyChoice::habit);
  weigh.stroke_worth = options.number("stroke_worth", limits::stroke_worth);
  weigh.sensitivity = options.flag("sensitivity");
  const int draws = options.whole("draws", 2, limits::most_draws).value_or(default_draws);
  weigh.threads = options.whole("threads", 0, limits::most_threads).value_or(0);
  reader.question.opening = opening_of_round(reader, weigh.tee);
  const auto text = members.text("options_file");
  if (!text) {
    if (!members.has("options_file")) reader.tell()("options_file", missing_key, "the text of an options file");
    return;
  }
  auto file = read_one<OptionsFile>(reader, *text, name_of_text(reader, "options_file"), yardworth::read_options);
  if (!file || !reader.question.player) return;
  const Json* files = read_files(reader, members);
  const std::vector<Diagnostic> findings = work_out_changes(
      *file, *reader.question.player,
      [files](const std::string& name, std::size_t most_bytes) { return text_of_file(files, name, most_bytes); },
      draws);
  reader.findings.insert(reader.findings.end(), findings.begin(), findings.end());
  weigh.options = std::move(file->options);
}

void read_options(Reader& reader, const Members& members) {
  if (is_given(reader.request, "members") && reader.question.command != Command::bands) {
    reader.tell()("members", "a text", "none: lists of members are for the command bands");
  }
  const Json none = Json::object();
  const Json* given = members.find("options");
  const Command command = reader.question.command;
  const Members options(given == nullptr ? none : *given, option_names(command), reader.tell("options"));
  if (command != Command::strategy && command != Command::report) reader.question.pictures = options.flag("pictures");
  if (command == Command::bag) return read_bag(reader, members, options);
  if (!reader.question.course || !reader.question.player) return;
  if (is_about_gain(command)) read_gain(reader, members, options);
  if (command == Command::strategy) read_strategy(reader, members, options);
  if (command == Command::bands) read_bands(reader, options);
  if (command == Command::delivery) read_delivery(reader, options);
  if (command == Command::check) read_check(reader, options);
  if (command == Command::weigh) return read_weigh(reader, members, options);
  if (is_about_gain(command) || command == Command::strategy) return;
  for (const char* text : {"log", "after", "player_after"}) {
    if (is_given(reader.request, text))
      reader.tell()(text, "a text", "none: shot logs and second players are for bag, gain, strategy and report");
  }
}

// Holes and parts of them belong to the questions about holes one by one.
void read_which_holes(Reader& reader, const Members& members) {
  Question& question = reader.question;
  question.gain.holes = question.strategy.holes = read_holes(reader, members);
  question.parts = members.list("parts", "parts, each the member \"part\" of an answer");
  const bool hole_by_hole = question.command == Command::gain || question.command == Command::strategy;
  for (const char* member : {"holes", "parts"}) {
    if (!members.has(member)) continue;
    if (!hole_by_hole) reader.tell()(member, "a question that is not answered hole by hole", "none");
    if (const Json* list = members.find(member); list->is_array() && list->empty())
      reader.tell()(member, "an empty list", "at least one, or no such member");
    if (question.curve) reader.tell()(member, "a curve, which is not answered hole by hole", "none");
  }
  if (members.has("holes") && members.has("parts")) reader.tell()("parts", "holes beside them", "one or the other");
}

std::string about(Json request) {
  for (const char* member : {"holes", "parts", "columns"}) request.erase(member);
  if (request.contains("options") && request["options"].is_object()) request["options"].erase("threads");
  const std::string text = request.dump(-1, ' ', true, Json::error_handler_t::replace);
  return to_string(boost::uuids::name_generator_sha1(boost::uuids::ns::oid())(text));
}

}  // namespace

bool is_given(const Json& request, const char* member) {
  return request.is_object() && request.contains(member) && !request[member].is_null();
}

namespace {

std::vector<std::string> with_change(std::initializer_list<const char*> others) {
  std::vector<std::string> names = {"driver",         "irons",       "club",       "carry_sd", "direction_sd",
                                    "direction_mean", "poor_strike", "short_game", "putting"};
  names.insert(names.end(), others.begin(), others.end());
  return names;
}

}  // namespace

std::vector<std::string> option_names(Command command) {
  if (is_about_gain(command)) {
    std::vector<std::string> names = with_change({"from_delivery", "to", "sessions", "skip_bad_rows", "draws", "seed",
                                                  "step", "tee", "method", "plan", "mark", "threads"});
    if (command == Command::gain) names.emplace_back("pictures");
    return names;
  }
  if (command == Command::strategy) {
    return with_change({"from_delivery", "to", "sessions", "skip_bad_rows", "tee", "prove", "graph", "tee_shot_alone",
                        "pictures", "threads"});
  }
  if (command == Command::bands) {
    return {"driver",   "irons",  "tee", "band", "gender", "plan", "hole", "hazards", "changed_holes_alone",
            "pictures", "threads"};
  }
  if (command == Command::delivery) return delivery_options();
  if (command == Command::bag) return bag_options();
  if (command == Command::weigh) return {"tee", "plan", "stroke_worth", "sensitivity", "draws", "threads"};
  return {"hole", "hazards", "pictures"};
}

std::optional<Command> command_named(std::string_view word) {
  for (std::size_t i = 0; i < command_words.size(); ++i) {
    if (command_words[i] == word) return static_cast<Command>(i);
  }
  return std::nullopt;
}

Reading<Question> read_question(const Json& request) {
  Reader reader{request, {}, {}};
  const Members members(request,
                        {"command", "course", "player", "baseline", "log", "after", "player_after", "members",
                         "options_file", "files", "names", "options", "holes", "parts", "columns"},
                        reader.tell());
  if (!request.is_object()) return {std::nullopt, reader.findings};
  const std::vector<std::string> words(command_words.begin(), command_words.end());
  if (!members.has("command"))
    reader.tell()("command", missing_key, fmt::format("one of {}", fmt::join(command_words, ", ")));
  reader.question.command = members.choice<Command>("command", words, command_named).value_or(Command::check);
  if (const auto columns = members.whole("columns", narrowest_text, widest_text)) {
    reader.question.columns = static_cast<std::size_t>(*columns);
  }
  read_texts(reader, members);
  read_options(reader, members);
  read_which_holes(reader, members);
  reader.question.about = about(request);
  if (reader.findings.size() > most_findings) reader.findings.resize(most_findings);
  if (has_fault(reader.findings)) return {std::nullopt, reader.findings};
  return {std::move(reader.question), std::move(reader.findings)};
}

}  // namespace yardworth::embed
