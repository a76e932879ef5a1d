#include "yardworth/read.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <optional>
#include <system_error>
#include <utility>

#include "core/spelling.hpp"
#include "input/formats.hpp"

namespace yardworth {
namespace input {
namespace {

const std::vector<std::string>& known_formats() {
  static const std::vector<std::string> formats = {std::string(course_format), std::string(player_format),
                                                   std::string(baseline_format), std::string(options_format)};
  return formats;
}

const Entry* entry_of(const Node& root, std::string_view key) {
  const auto found =
      std::find_if(root.entries.begin(), root.entries.end(), [&](const Entry& entry) { return entry.key == key; });
  return found == root.entries.end() ? nullptr : &*found;
}

bool misspells_format(const Entry& entry) { return nearest_word(entry.key, {"format"}).has_value(); }

// What a document without a format was most likely meant to be, so that its other faults can be told too.
std::optional<std::string> likely_format(const Node& root, const std::vector<std::string>& allowed) {
  if (allowed.size() == 1) return allowed.front();
  if (entry_of(root, "holes") != nullptr) return std::string(course_format);
  if (entry_of(root, "clubs") != nullptr) return std::string(player_format);
  if (entry_of(root, "fairway") != nullptr) return std::string(baseline_format);
  if (entry_of(root, "options") != nullptr) return std::string(options_format);
  return std::nullopt;
}

std::optional<std::string> without_format(const Node& root, const std::vector<std::string>& allowed,
                                          Findings& findings) {
  const auto likely = likely_format(root, allowed);
  // A misspelt key is reported with the unknown ones.
  const bool misspelt = likely && std::any_of(root.entries.begin(), root.entries.end(), misspells_format);
  if (!misspelt) {
    findings.fault(root.place, "format", "nothing: the required key is missing",
                   fmt::format("{}", fmt::join(allowed, " or ")));
  }
  return likely;
}

// Whether a table begins with headings that a log of shots has.
bool is_like_shot_log(const std::string& table) {
  constexpr std::size_t longest_header = 500;
  const std::string header = small_letters(table.substr(0, longest_header));
  return header.find("club") != std::string::npos && header.find("carry") != std::string::npos;
}

// The format to read the document by: the one it says, if that is allowed. Any other is a fault.
std::optional<std::string> read_format(const Node& root, const std::vector<std::string>& allowed, Findings& findings) {
  if (root.kind == Node::Kind::refused) return std::nullopt;
  if (root.kind != Node::Kind::map) {
    const bool table = root.kind == Node::Kind::scalar && root.text.find_first_of(",;\t") != std::string::npos;
    if (table) {
      std::string expected = "YAML that begins with format:; docs/formats.md has a file to copy";
      if (is_like_shot_log(root.text)) expected += ", and `yardworth bag LOG.csv` reads a log of shots";
      findings.fault(root.place, "", "a table (CSV)", expected);
      return std::nullopt;
    }
    findings.fault(root.place, "", described(root), "a map that begins with format:");
    return std::nullopt;
  }
  const Entry* entry = entry_of(root, "format");
  if (entry == nullptr) return without_format(root, allowed, findings);
  const Node& value = entry->value;
  const bool scalar = value.kind == Node::Kind::scalar;
  if (scalar && std::find(allowed.begin(), allowed.end(), value.text) != allowed.end()) return value.text;
  if (value.kind != Node::Kind::refused) {
    const auto meant = scalar ? nearest_word(value.text, allowed) : std::nullopt;
    findings.fault(value.place, "format", described(value),
                   meant.value_or(fmt::format("{}", fmt::join(allowed, " or "))));
  }
  return std::nullopt;
}

// Reads the text with `from` when it is of the one format.
template <class T>
Reading<T> read_one(std::string_view text, const std::string& file, std::string_view format,
                    T (*from)(const Value&, Findings&)) {
  Document document = parse_document(text, file);
  Findings findings(file, std::move(document.findings));
  Reading<T> reading;
  if (document.root && read_format(*document.root, {std::string(format)}, findings)) {
    reading.value = from({&*document.root, ""}, findings);
  }
  if (findings.has_fault()) reading.value.reset();
  reading.findings = findings.in_order();
  return reading;
}

AnyFile any_from(const std::string& format, const Value& root, Findings& findings) {
  if (format == course_format) return course_from(root, findings);
  if (format == player_format) return player_from(root, findings);
  if (format == options_format) return options_from(root, findings);
  return baseline_from(root, findings);
}

Reading<std::string> refused(const std::string& path, const std::string& found, const std::string& expected) {
  return {std::nullopt, {file_fault(path, found, expected)}};
}

}  // namespace
}  // namespace input

Reading<Course> read_course(std::string_view text, const std::string& file) {
  return input::read_one(text, file, input::course_format, input::course_from);
}

Reading<Player> read_player(std::string_view text, const std::string& file) {
  return input::read_one(text, file, input::player_format, input::player_from);
}

Reading<BaselineTable> read_baseline(std::string_view text, const std::string& file) {
  return input::read_one(text, file, input::baseline_format, input::baseline_from);
}

Reading<OptionsFile> read_options(std::string_view text, const std::string& file) {
  return input::read_one(text, file, input::options_format, input::options_from);
}

Reading<AnyFile> read_any(std::string_view text, const std::string& file) {
  input::Document document = input::parse_document(text, file);
  input::Findings findings(file, std::move(document.findings));
  Reading<AnyFile> reading;
  if (document.root) {
    const auto format = input::read_format(*document.root, input::known_formats(), findings);
    if (format) reading.value = input::any_from(*format, {&*document.root, ""}, findings);
  }
  if (findings.has_fault()) reading.value.reset();
  reading.findings = findings.in_order();
  return reading;
}

Reading<std::string> read_text(const std::string& path, std::size_t most_bytes) {
  namespace fs = std::filesystem;
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (status.type() == fs::file_type::not_found) return input::refused(path, "no such file", "");
  if (status.type() == fs::file_type::directory) return input::refused(path, "a directory", "a file to read");
  std::ifstream stream(path, std::ios::binary);
  if (error || !stream) {
    const int reason = error ? error.value() : errno;
    return input::refused(path, "a file that cannot be read: " + std::system_category().message(reason),
                          "a file to read");
  }
  // Read up to the limit and one byte more, whatever size is claimed: a pipe or a device claims none.
  std::string text;
  while (stream && text.size() <= most_bytes) {
    const std::size_t before = text.size();
    text.resize(std::min(before + largest_file_bytes, most_bytes) + 1);
    stream.read(text.data() + before, static_cast<std::streamsize>(text.size() - before));
    text.resize(before + static_cast<std::size_t>(stream.gcount()));
  }
  if (stream.bad()) return input::refused(path, "a file that cannot be read to its end", "a file to read");
  if (text.size() > most_bytes) {
    return input::refused(path, "a file that is too large", fmt::format("at most {} bytes", most_bytes));
  }
  return {std::move(text), {}};
}

std::size_t default_tee(const Course& course, Gender gender) {
  const auto marked =
      std::find_if(course.tees.begin(), course.tees.end(), [&](const Tee& tee) { return tee.rated_for == gender; });
  if (marked != course.tees.end()) return static_cast<std::size_t>(marked - course.tees.begin());
  return (course.tees.size() - 1) / 2;
}

}  // namespace yardworth
