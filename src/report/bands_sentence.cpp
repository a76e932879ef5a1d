#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/distance_words.hpp"
#include "core/telling.hpp"
#include "report/bands_parts.hpp"
#include "report/hole_words.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::carry_subject;
using report::shown_name;
using report::Subject;

std::string who(const BandsResult& result, const BandOnTee& golfer) {
  return fmt::format("{} {} from the {} tees", name(golfer.band), name(golfer.gender),
                     shown_name(result.tees[golfer.tee].name));
}

// The two golfers to whom something happens most and least.
struct Ends {
  const BandOnTee* most = nullptr;
  const BandOnTee* least = nullptr;
};

Ends ends_by(const BandsResult& result, const std::function<double(const BandOnTee&)>& measure) {
  Ends ends;
  for (const BandOnTee& golfer : result.golfers) {
    if (!golfer.cannot_finish.empty()) continue;
    if (ends.most == nullptr || measure(golfer) > measure(*ends.most)) ends.most = &golfer;
    if (ends.least == nullptr || measure(golfer) < measure(*ends.least)) ends.least = &golfer;
  }
  return ends;
}

double costs(const BandOnTee& golfer) {
  double sum = 0.0;
  for (const ChangedHole& hole : golfer.changed) sum += hole.with.strokes.before - hole.without.strokes.before;
  return sum;
}

std::string amount_words(double strokes) {
  const std::string number = fixed(std::abs(strokes), 2);
  return number == "0.00" ? "nothing to speak of" : number + " strokes a round";
}

Subject subject_of(const BandsResult& result) {
  if (result.changed_hazards.size() > 1) return {"The changed hazards together", false};
  const ChangedHazard& hazard = result.changed_hazards.front();
  const std::string words = report::changed_hazard_words(result, hazard);
  return {fmt::format("{} {} on hole {}", hazard.added ? "A new" : "Moving the", words, hazard.hole), true};
}

std::string changed_sentence(const BandsResult& result) {
  using telling::strokes_worth_telling;
  const Ends ends = ends_by(result, costs);
  const Subject subject = subject_of(result);
  const std::string s = subject.singular ? "s" : "";
  const double most = costs(*ends.most);
  const double least = costs(*ends.least);
  if (most < strokes_worth_telling && least > -strokes_worth_telling) {
    return fmt::format("{} make{} no difference to speak of to anybody asked about.", subject.text, s);
  }
  if (most < strokes_worth_telling) {
    return fmt::format("{} save{} {} most, {}, and cost{} nobody anything to speak of.", subject.text, s,
                       who(result, *ends.least), amount_words(least), s);
  }
  const std::string begin =
      fmt::format("{} cost{} {} most, {}", subject.text, s, who(result, *ends.most), amount_words(most));
  if (ends.most == ends.least) {
    return fmt::format("{} cost{} {} {}.", subject.text, s, who(result, *ends.most), amount_words(most));
  }
  if (least <= -strokes_worth_telling) {
    return fmt::format("{}, and save{} {} most, {}.", begin, s, who(result, *ends.least), amount_words(least));
  }
  return fmt::format("{}, and {} least, {}.", begin, who(result, *ends.least), amount_words(least));
}

}  // namespace

std::string bands_sentence(const BandsResult& result) {
  if (!result.changed_hazards.empty()) return changed_sentence(result);
  if (!report::carry_changes(result.change)) {
    return fmt::format("With no carry gained or lost nothing changes on {}.", shown_name(result.course));
  }
  // Of a loss the golfer who loses most comes first.
  const bool loss = result.change.driver_carry_yd < 0.0 ||
                    (result.change.driver_carry_yd == 0.0 && result.change.irons_carry_yd < 0.0);
  const double sign = loss ? -1.0 : 1.0;
  const auto effect = [sign](const BandOnTee& golfer) { return sign * golfer.round.strokes_saved(); };
  const Ends ends = ends_by(result, effect);
  const Subject subject = carry_subject(result.change, result.units);
  const std::string change = fmt::format("On {} {} {}{}", shown_name(result.course), subject.text,
                                         loss ? "cost" : "save", subject.singular ? "s" : "");
  const std::string most = fixed(effect(*ends.most), 1);
  const std::string round = result.holes == 9 ? "round of 9 holes" : "round";
  if (ends.most == ends.least) {
    return fmt::format("{} {} {} strokes a {}.", change, who(result, *ends.most), most, round);
  }
  return fmt::format("{} {} most, {} strokes a {}, and {} least, {}.", change, who(result, *ends.most), most, round,
                     who(result, *ends.least), fixed(effect(*ends.least), 1));
}

}  // namespace yardworth
