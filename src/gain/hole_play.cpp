#include "gain/hole_play.hpp"

#include "gain/hazards_met.hpp"

namespace yardworth {

HolePlay describe_play(const PlayedHole& played, int par, const std::vector<HazardView>& hazards,
                       PlayWorkspace& workspace) {
  HolePlay play;
  StrikeOutcomes outcomes(played.model, played.planned, workspace.outcomes);
  play.green_in_regulation = green_in_regulation(played.model, played.planned, par, outcomes, workspace.green_chances);
  if (par > 3) play.approach = approach_clubs(played, outcomes);
  play.hazards = hazards_met(played.model, hazards, played.tee_nodes);
  return play;
}

}  // namespace yardworth
