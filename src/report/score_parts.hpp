#pragma once

#include <string>
#include <vector>

#include "report/json_parts.hpp"
#include "report/text.hpp"
#include "yardworth/gain.hpp"

namespace yardworth::report {

// What reports of a gain say of whole scores. Each is empty where none were worked out.

// "Breaks 90 in 41 rounds of 100 instead of 29."
std::string scores_sentence(const GainResult& result);
// A section with what is scored in a round under each policy.
std::string scores_section(const GainResult& result, const Page& page);
// What is wanting for points and handicaps, in one sentence; empty: nothing.
std::string handicap_needs_words(const std::vector<HandicapNeed>& needs);

Json distribution_json(const ScoreDistribution& distribution);
Json scores_json(const PolicyScores& scores, const std::optional<HandicapTerms>& terms);
Json terms_json(const HandicapTerms& terms);

}  // namespace yardworth::report
