#include "embed/facts.hpp"

#include "report/hazard_place.hpp"
#include "yardworth/units.hpp"

namespace yardworth::embed {
namespace {

using Facts = nlohmann::ordered_json;

// Where it lies: from its beginning to its end along the hole, and how far right of the line of play its middle.
Facts facts_of_hazard(const Hazard& hazard, Units units) {
  const report::HazardPlace place = report::place_of(hazard);
  Facts facts = {{"kind", name(hazard.kind)}};
  if (hazard.side) facts["side"] = name(*hazard.side);
  facts["from"] = from_yards(place.from_yd, units);
  facts["to"] = from_yards(place.to_yd, units);
  facts["right"] = from_yards((place.left_yd + place.right_yd) / 2.0, units);
  facts["words"] = report::hazard_place_words(hazard, units);
  return facts;
}

Facts facts_of_hole(const Hole& hole, Units units) {
  Facts hazards = Facts::array();
  for (const Hazard& hazard : hole.hazards) hazards.push_back(facts_of_hazard(hazard, units));
  return {{"number", hole.number},
          {"par", hole.par},
          {"length", from_yards(hole.length_yd.front(), units)},
          {"hazards", std::move(hazards)}};
}

}  // namespace

Facts facts_of_course(const Course& course) {
  Facts holes = Facts::array();
  for (const Hole& hole : course.holes) holes.push_back(facts_of_hole(hole, course.units));
  Facts tees = Facts::array();
  for (const Tee& tee : course.tees) tees.push_back(tee.name);
  return {{"name", course.name}, {"units", name(course.units)}, {"tees", std::move(tees)}, {"holes", std::move(holes)}};
}

Facts facts_of_player(const Player& player) {
  Facts clubs = Facts::array();
  for (const Club& club : player.clubs) clubs.push_back(club.name);
  return {{"label", player.label}, {"units", name(player.units)}, {"clubs", std::move(clubs)}};
}

}  // namespace yardworth::embed
