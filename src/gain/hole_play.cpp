#include "gain/hole_play.hpp"

#include "gain/green_in_regulation.hpp"
#include "gain/hazards_met.hpp"

namespace yardworth {

HolePlay describe_play(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
                       const ActionFrom& action_from, int par, const std::vector<HazardView>& hazards,
                       PlayWorkspace& workspace) {
  HolePlay play;
  StrikeOutcomes outcomes(model, planned, workspace.outcomes);
  play.green_in_regulation = green_in_regulation(model, planned, par, outcomes);
  if (par > 3) play.approach = approach_clubs(model, player, planned, action_from, outcomes);
  play.hazards = hazards_met(model, hazards, planned.policy[static_cast<std::size_t>(model.tee_state())]);
  return play;
}

}  // namespace yardworth
