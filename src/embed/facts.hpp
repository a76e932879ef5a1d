#pragma once

#include <nlohmann/json.hpp>

#include "yardworth/course.hpp"
#include "yardworth/player.hpp"

namespace yardworth::embed {

// What a form needs to know of a text that was understood: names and numbers to choose from. Lengths are in the text's
// own units, as options take them.
nlohmann::ordered_json facts_of_course(const Course& course);
nlohmann::ordered_json facts_of_player(const Player& player);

}  // namespace yardworth::embed
