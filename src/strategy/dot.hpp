#pragma once

#include <string>

#include "core/telling.hpp"
#include "strategy/policy_evaluation.hpp"

namespace yardworth {

struct DotOptions {
  double distance_step_yd =
      telling::drawn_stretch_yd;  // states of a lie within one such stretch of distance are drawn as one
  double least_probability = telling::drawn_edge;  // of an edge, given its beginning; less likely ones are left out
  double least_visits = telling::drawn_state;      // expected visits a hole of a state that is drawn
};

// The graph of states that a policy leads through, for Graphviz: a node for each lie and stretch of distance with its
// expected visits and strokes, an edge for each outcome with its probability, dashed where it costs a penalty stroke.
// The player's club names label what is played. The policy has to have an action for every state that it reaches.
std::string policy_graph_dot(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
                             const std::string& title, const DotOptions& options = {});

// Text inside a quoted label: quotes, backslashes and ampersands escaped, control characters shown.
std::string dot_label(const std::string& text);

}  // namespace yardworth
