#pragma once

#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "validate/tell.hpp"
#include "yardworth/limits.hpp"

namespace yardworth::embed {

using Json = nlohmann::ordered_json;

// A value as a finding shows it.
std::string described(const Json& value);

// The members of one JSON object. Making it tells of unknown members; each question gives nothing, and tells why, where
// the member is not of its kind, and nothing where it is not there. Holds references.
class Members {
 public:
  Members(const Json& object, std::vector<std::string> known, Tell tell);

  bool has(const std::string& name) const { return find(name) != nullptr; }
  const Json* find(const std::string& name) const;

  std::optional<std::string> text(const std::string& name) const;
  std::optional<double> number(const std::string& name, const Limits& limits) const;
  // A text such as "-10%": the number.
  std::optional<double> percent(const std::string& name, const Limits& limits) const;
  std::optional<int> whole(const std::string& name, int low, int high) const;
  bool flag(const std::string& name) const;
  // Empty where there is none.
  std::vector<Json> list(const std::string& name, const std::string& of_what) const;

  template <class T>
  std::optional<T> choice(const std::string& name, const std::vector<std::string>& words,
                          const std::function<std::optional<T>(std::string_view)>& named) const {
    const auto word = text(name);
    if (!word) return std::nullopt;
    const std::optional<T> chosen = named(*word);
    if (!chosen) tell_of_word(name, *word, words);
    return chosen;
  }
  // A list of words, or one word.
  template <class T>
  std::vector<T> choices(const std::string& name, const std::vector<std::string>& words,
                         const std::function<std::optional<T>(std::string_view)>& named) const {
    std::vector<T> all;
    for (const std::string& word : words_of(name)) {
      const std::optional<T> chosen = named(word);
      if (chosen) all.push_back(*chosen);
      if (!chosen) tell_of_word(name, word, words);
    }
    return all;
  }
  std::vector<std::string> words_of(const std::string& name) const;

 private:
  void tell_of_word(const std::string& name, const std::string& word, const std::vector<std::string>& words) const;

  const Json& object_;
  Tell tell_;
};

}  // namespace yardworth::embed
