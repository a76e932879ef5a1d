#pragma once

namespace yardworth {

// How widely all drives spread, poor strikes among them: what is measured on courses. A skill tells the spread of solid
// strikes; of its drives, poor_strike (0 to 1) in all are poor and spread wider. docs/model.md, "Strike".

// The variance of a poor strike's direction over that of a solid one of the same club.
double poor_direction_variance_ratio();

// Radians, both ways.
double all_drives_sd_rad(double solid_sd_rad, double poor_strike);
double solid_drives_sd_rad(double all_sd_rad, double poor_strike);

}  // namespace yardworth
