#pragma once

#include <string>
#include <vector>

#include "yardworth/report.hpp"

namespace yardworth::embed {

// The answer in sentences, the first of which tells the most: those at the head of a report, safe to be shown.
std::vector<std::string> sentences_of(const GainReport& report);
std::vector<std::string> sentences_of(const StrategyReport& report);
std::vector<std::string> sentences_of(const BandsReport& report);
std::vector<std::string> sentences_of(const MembersReport& report);
std::vector<std::string> sentences_of(const DeliveryReport& report);
std::vector<std::string> sentences_of(const BagReport& report);
std::vector<std::string> sentences_of(const WeighReport& report);

}  // namespace yardworth::embed
