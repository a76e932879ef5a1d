#pragma once

#include <string>
#include <vector>

#include "report/picture/svg.hpp"
#include "yardworth/plan_view.hpp"

namespace yardworth::report {

// How each ground looks: by its hatching first, so that it is told apart on grey paper and by every eye.

// The hatchings, for a picture whose names all begin with `prefix`: names are unique in a page of many pictures.
std::string ground_patterns(const std::string& prefix);
// What fills and bounds an area of the ground, as attributes.
std::string ground_attributes(Ground ground, const std::string& prefix);

// The grounds among the areas and rough, each once, in the order of Ground.
std::vector<Ground> grounds_of(const std::vector<PlanArea>& areas);

// Small samples with their names, in lines below `top`; moves `top` below them.
// Letters of what is below a plan view.
inline constexpr double key_size = 10.5;

std::string ground_key(const std::vector<Ground>& grounds, const std::string& prefix, double& top);

}  // namespace yardworth::report
