#include "embed/members.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "core/spelling.hpp"

namespace yardworth::embed {

std::string described(const Json& value) {
  if (value.is_object()) return "an object";
  if (value.is_array()) return "a list";
  return shortened(value.dump(-1, ' ', true, Json::error_handler_t::replace));
}

Members::Members(const Json& object, std::vector<std::string> known, Tell tell)
    : object_(object), tell_(std::move(tell)) {
  if (!object_.is_object()) {
    tell_("", described(object_), "an object");
    return;
  }
  for (const auto& [name, value] : object_.items()) {
    if (std::find(known.begin(), known.end(), name) != known.end()) continue;
    tell_(shortened(name), "unknown member " + quoted(name), one_of(name, known));
  }
}

const Json* Members::find(const std::string& name) const {
  if (!object_.is_object()) return nullptr;
  const auto at = object_.find(name);
  return at == object_.end() || at->is_null() ? nullptr : &*at;
}

std::optional<std::string> Members::text(const std::string& name) const {
  const Json* value = find(name);
  if (value == nullptr) return std::nullopt;
  if (value->is_string()) return value->get<std::string>();
  tell_(name, described(*value), "text between quotation marks");
  return std::nullopt;
}

std::optional<double> Members::number(const std::string& name, const Limits& limits) const {
  const Json* value = find(name);
  if (value == nullptr) return std::nullopt;
  if (!value->is_number()) {
    tell_(name, described(*value), "a number " + bounds(limits));
    return std::nullopt;
  }
  const auto number = value->get<double>();
  return check_number(number, limits, name, tell_) ? std::optional(number) : std::nullopt;
}

std::optional<double> Members::percent(const std::string& name, const Limits& limits) const {
  const Json* value = find(name);
  if (value == nullptr) return std::nullopt;
  const ParsedNumber number =
      value->is_string() ? parse_percent(value->get<std::string>()) : ParsedNumber{0.0, NumberFault::not_a_number};
  if (number.fault == NumberFault::none && number.value >= limits.low && number.value <= limits.high) {
    return number.value;
  }
  tell_(name, described(*value), "a text with " + percent_words(limits));
  return std::nullopt;
}

std::optional<int> Members::whole(const std::string& name, int low, int high) const {
  const auto number = this->number(name, {static_cast<double>(low), static_cast<double>(high)});
  if (!number) return std::nullopt;
  if (std::trunc(*number) == *number) return static_cast<int>(*number);
  tell_(name, described(*find(name)), "a whole number");
  return std::nullopt;
}

bool Members::flag(const std::string& name) const {
  const Json* value = find(name);
  if (value == nullptr) return false;
  if (!value->is_boolean()) tell_(name, described(*value), "true or false");
  return value->is_boolean() && value->get<bool>();
}

std::vector<Json> Members::list(const std::string& name, const std::string& of_what) const {
  const Json* value = find(name);
  if (value == nullptr) return {};
  if (value->is_array()) return {value->begin(), value->end()};
  tell_(name, described(*value), "a list of " + of_what);
  return {};
}

std::vector<std::string> Members::words_of(const std::string& name) const {
  const Json* value = find(name);
  if (value == nullptr) return {};
  if (value->is_string()) return {value->get<std::string>()};
  std::vector<std::string> words;
  for (const Json& word : list(name, "words")) {
    if (word.is_string()) words.push_back(word.get<std::string>());
    if (!word.is_string()) tell_(name, described(word), "text between quotation marks");
  }
  return words;
}

void Members::tell_of_word(const std::string& name, const std::string& word,
                           const std::vector<std::string>& words) const {
  tell_(name, quoted(word), one_of(word, words));
}

}  // namespace yardworth::embed
