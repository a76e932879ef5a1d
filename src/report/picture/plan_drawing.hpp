#pragma once

#include <optional>
#include <string>
#include <vector>

#include "report/picture/svg.hpp"
#include "yardworth/plan_view.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

// A hole from above, to scale, the way it is played going up the picture.

// Where a plan view lies in the picture: the hole turned so that the green lies straight above the tee.
class PlanFrame {
 public:
  // All of `seen` is inside the frame, which begins at a height and is as high as the hole needs.
  PlanFrame(const PlanView& plan, const std::vector<Point>& seen, double top);

  Point at(Point yards) const;
  std::vector<Point> at(const std::vector<Point>& yards) const;
  std::vector<Polygon> at(const std::vector<Polygon>& yards) const;
  double pixels_per_yard() const { return scale_; }
  double top() const { return top_; }
  double bottom() const { return bottom_; }
  bool shows(Point pixels) const {
    return pixels.x >= 0.0 && pixels.x <= picture_width && pixels.y >= top_ && pixels.y <= bottom_;
  }

 private:
  Point up_;  // the direction in the plan view that goes up the picture
  double scale_ = 1.0;
  double top_ = 0.0;
  double bottom_ = 0.0;
  Point shift_;
};

// What a plan view should show whole: the line of play and tees, fairway, green, and hazards but for what goes on and
// on.
std::vector<Point> places_to_see(const PlanView& plan);

// The grounds, the line of play, tees and flag. The tee in use, where there is one, is the filled one.
std::string plan_svg(const PlanView& plan, const PlanFrame& frame, const std::string& prefix,
                     std::optional<std::size_t> tee);

// A place in the picture that shows the hazard and lies nearest to another one; nothing where the frame shows none of
// it.
std::optional<Point> place_of_hazard(const PlanView& plan, const PlanFrame& frame, int hazard, Point near);

// "50 yards", as long as that is, at a height.
std::string scale_bar(const PlanFrame& frame, Units units, double top);

}  // namespace yardworth::report
