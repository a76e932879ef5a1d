#include "embed/sentences.hpp"

#include <initializer_list>

#include "report/gain_parts.hpp"
#include "report/measured_words.hpp"
#include "report/rounds_words.hpp"
#include "report/score_parts.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::embed {
namespace {

std::vector<std::string> told(std::initializer_list<std::string> sentences) {
  std::vector<std::string> safe;
  for (const std::string& sentence : sentences) {
    if (!sentence.empty()) safe.push_back(escape_control(sentence));
  }
  return safe;
}

}  // namespace

std::vector<std::string> sentences_of(const GainReport& report) {
  const GainResult& result = report.result;
  return told({gain_sentence(result), report::interval_sentence(result), report::second_shot_sentence(result),
               report::scores_sentence(result), report::control_sentence(report), report::shows_sentence(result)});
}

std::vector<std::string> sentences_of(const StrategyReport& report) {
  std::vector<std::string> sentences;
  for (const HoleStrategy& hole : report.result.holes) {
    sentences.push_back(escape_control(strategy_sentence(hole, report.result.units)));
  }
  return sentences;
}

std::vector<std::string> sentences_of(const BandsReport& report) { return told({bands_sentence(report.result)}); }

std::vector<std::string> sentences_of(const MembersReport& report) { return told({members_sentence(report.result)}); }

std::vector<std::string> sentences_of(const DeliveryReport& report) { return told({delivery_sentence(report.result)}); }

std::vector<std::string> sentences_of(const BagReport& report) {
  if (!report.comparison || report.comparison->changes.empty()) return told({bag_sentence(report.result)});
  std::vector<std::string> sentences;
  for (const ClubChange& change : report.comparison->changes) {
    sentences.push_back(escape_control(change_sentence(change, report.result.units)));
  }
  return sentences;
}

std::vector<std::string> sentences_of(const WeighReport& report) { return told({weigh_sentence(report.result)}); }

}  // namespace yardworth::embed
