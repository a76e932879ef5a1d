#pragma once

#include <optional>
#include <vector>

#include "validate/tell.hpp"
#include "yardworth/course.hpp"

namespace yardworth {

// What the parts of a hole have to be beside each other, for readers and validate() alike. That each number is within
// its own limits is looked at before.

// What places along a hole are held against.
struct HoleLine {
  Units units = Units::yards;        // of messages
  std::optional<double> longest_yd;  // the length from the first tee, where it is known
  std::vector<Dogleg> doglegs;       // those that fit
};

// Whether a dogleg fits behind those of the line; last_yd is where the one before is, whether it fits or not.
bool dogleg_fits(const Dogleg& dogleg, double last_yd, const HoleLine& line, const Tell& tell);

// Whether a stretch of the line begins before it ends.
bool begins_before_it_ends(double from_yd, double to_yd, Units units, std::string_view from_key,
                           std::string_view to_key, const Tell& tell);

void check_fairway_width(const FairwayStretch& stretch, const Tell& tell);
// Whether the stretch has an extent; tells where it lies beside the hole too.
bool check_fairway_ends(const FairwayStretch& stretch, const HoleLine& line, const Tell& tell);
// last_yd: where the stretch before ends.
void check_fairway_follows(const FairwayStretch& stretch, double last_yd, Units units, const Tell& tell);

// A strip of a hazard as far as it is said; yards.
struct StripEntry {
  std::optional<HazardKind> kind;
  std::optional<Side> side;
  std::optional<double> from_yd, to_yd, near_yd, far_yd;
};

// The hazard with the defaults of its kind for what is not said. Tells what does not go together, and is of use only
// where kind, side, from and to are there and nothing was told.
Hazard strip_of(const StripEntry& entry, const HoleLine& line, const Tell& tell);

void check_polygon(const std::vector<LinePlace>& corners, const HoleLine& line, const Tell& tell);

// Where the line turns towards a place the two legs end at the mitre before they reach it, and what lies wholly past it
// on both has no ground of its own: the hole would be played as if the hazard were not there.
void check_not_in_mitre(const Hazard& hazard, const HoleLine& line, const Tell& tell);

// That no two holes have the same number (0: not known) or the same stroke index.
void check_holes_differ(const std::vector<const Hole*>& holes, const TellOf& tell_of);

}  // namespace yardworth
