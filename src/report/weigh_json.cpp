#include "report/json_parts.hpp"
#include "report/weigh_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Json;
using report::or_null;
using report::text;

Json option_json(const WeighedOption& weighed) {
  const Option& option = weighed.option;
  return {{"name", option.name},
          {"change", report::change_json(option.change)},
          {"tee", option.tee ? Json(*option.tee) : Json(nullptr)},
          {"doubt_share", option.draws.empty() ? Json(weighed.doubt) : Json(nullptr)},
          {"draws", option.draws.size()},
          {"money", option.money},
          {"hours", option.hours},
          {"strokes_saved", {{"value", weighed.saved.value}, {"low", weighed.saved.low}, {"high", weighed.saved.high}}},
          {"money_per_stroke", or_null(weighed.money_per_stroke)},
          {"hours_per_stroke", or_null(weighed.hours_per_stroke)},
          {"best_probability", or_null(weighed.best_probability)},
          {"break_even_rounds", or_null(weighed.break_even_rounds)},
          {"equals",
           {{"driver_carry_yd", or_null(weighed.equivalents.driver_carry_yd)},
            {"direction_sd_share", or_null(weighed.equivalents.direction_share)},
            {"putting_share", or_null(weighed.equivalents.putting_share)}}}};
}

}  // namespace

std::string weigh_json(const WeighReport& report) {
  const WeighResult& result = report.result;
  Json json = {{"format", "yardworth/weigh/1"},
               {"course", result.course},
               {"tee", result.tee},
               {"player", result.player},
               {"band", text(name(result.band))},
               {"plan", text(name(result.policy))},
               {"strokes_before", result.strokes_before},
               {"stroke_worth", or_null(result.stroke_worth)},
               {"level", weigh_level},
               {"sentence", weigh_sentence(result)},
               {"options", Json::array()}};
  for (const WeighedOption& weighed : result.options) json["options"].push_back(option_json(weighed));
  json["most"] = result.options[result.most].option.name;
  json["sensitivity"] = Json::array();
  for (const Sensitivity& one : result.sensitivity) {
    json["sensitivity"].push_back({{"step", text(name(one.step))}, {"before", one.before}, {"after", one.after}});
  }
  json["baseline"] = {{"name", result.baseline_name}, {"source", result.baseline_source}};
  json["notes"] = report.opening;
  for (const std::string& words : report::weigh_basis(result)) json["notes"].push_back(words);
  json["cautions"] = report::weigh_cautions(result);
  return json.dump(2, ' ', true, Json::error_handler_t::replace) + "\n";
}

}  // namespace yardworth
