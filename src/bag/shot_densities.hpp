#pragma once

#include "bag/mixture.hpp"

namespace yardworth {

// The densities of strikes with their tails cut off, as they are played; or with all of them, as they are fitted, so
// that no shot pulls at a spread by the cut that it lies beside.
enum class Tails { cut, whole };

// What a shot is as a solid strike, as a poor one and as neither, each times how often there is one.
struct Densities {
  double solid = 0.0, poor = 0.0, stray = 0.0;

  double sum() const { return solid + poor + stray; }
};

Densities densities_of(const StruckShot& shot, const Mixture& mixture, Tails tails);

// The scale of the t that directions of solid strikes have, for a spread of 1.
double t_scale_per_sd();

}  // namespace yardworth
