#include "core/cannot_finish_words.hpp"
#include "report/bands_parts.hpp"
#include "report/basis_words.hpp"
#include "report/json_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::before_after_json;
using report::Json;
using report::or_null;
using report::text;

Json scores_json(const MemberScores& scores) {
  return {{"course_handicap", scores.course_handicap},
          {"net", before_after_json(scores.net_before, scores.net_after)},
          {"stableford_mean", before_after_json(scores.stableford_before, scores.stableford_after)},
          {"handicap_index_change", scores.handicap_index_change}};
}

Json on_tee_json(const MembersResult& result, const MemberOnTee& on_tee, std::size_t tee) {
  Json json = {{"tee", result.tees[tee].name}};
  if (!on_tee.cannot_finish.empty()) {
    json["cannot_finish"] = cannot_finish_words(on_tee.cannot_finish, result.units);
    return json;
  }
  json["round"] = report::strokes_json(on_tee.round, {true, result.replanning_computed});
  if (on_tee.scores) json["scores"] = scores_json(*on_tee.scores);
  json["typical_second_shot"] = before_after_json(on_tee.second_shot_before, on_tee.second_shot_after);
  json["clubs_apart_from_scratch"] = or_null(on_tee.clubs_apart);
  json["clubs_longer_than_scratch"] = or_null(on_tee.clubs_longer);
  return json;
}

Json member_json(const MembersResult& result, const MemberResult& member) {
  const auto tee_name = [&](const std::optional<std::size_t>& tee) {
    return tee ? Json(result.tees[*tee].name) : Json(nullptr);
  };
  Json json = {{"member", member.member.label},
               {"index", member.member.handicap_index},
               {"gender", text(name(member.member.gender))},
               {"driver_carry_yd", or_null(member.member.driver_carry_yd)},
               {"driver_distance_yd", member.driver_distance_yd},
               {"recommended_length_yd", {member.recommended.low_yd, member.recommended.high_yd}},
               {"beyond_guideline", member.recommended.beyond_table},
               {"usual_tee", result.tees[member.usual_tee].name},
               {"tee_by_length", tee_name(member.by_length)},
               {"tee_by_clubs", tee_name(member.by_clubs)}};
  json["from_tees"] = Json::array();
  for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
    json["from_tees"].push_back(on_tee_json(result, member.from_tees[tee], tee));
  }
  return json;
}

}  // namespace

std::string members_json(const MembersReport& report) {
  const MembersResult& result = report.result;
  Json json = {{"format", "yardworth/members/1"},
               {"course", result.course},
               {"change",
                {{"driver_carry_yd", result.change.driver_carry_yd}, {"irons_carry_yd", result.change.irons_carry_yd}}},
               {"plan", text(name(result.policy))},
               {"replanning_computed", result.replanning_computed},
               {"tees", report::tees_json(result.tees)},
               {"longest_tee", result.longest_tee},
               {"golfers_worked_out", result.golfers_worked_out}};
  json["members"] = Json::array();
  for (const MemberResult& member : result.members) json["members"].push_back(member_json(result, member));
  json["notes"] = report::opening_and_notes(report.opening, result.notes, result.units);
  json["cautions"] = report::all_caution_words(result.cautions);
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
