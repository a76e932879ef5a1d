#include "report/picture/hole_picture.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/distance_words.hpp"
#include "core/telling.hpp"
#include "course/ground.hpp"
#include "report/basis_words.hpp"
#include "report/gain_parts.hpp"
#include "report/picture/ground_style.hpp"
#include "report/picture/labels.hpp"
#include "report/picture/plan_drawing.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

constexpr double side = 8.0;  // of the picture that words keep free
constexpr double words_width = picture_width - 2.0 * side;
constexpr double words_size = 11.0;

enum class When { before, after };

// How tee shots of one time are drawn: dashed with a ring for the aim, or solid with a diamond.
struct ShotLook {
  const char* word;
  const char* dash;
  const char* fill;
};
ShotLook look_of(When when, bool alone) {
  if (when == When::before && !alone) return {"before", " stroke-dasharray=\"4 3\"", "none"};
  return {alone ? "tee shot" : "after", "", "#1b2a49"};
}

std::string aim_mark(Point at, When when, bool alone) {
  if (when == When::before && !alone) {
    return fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"4\" fill=\"#fff\" stroke=\"#1b2a49\" stroke-width=\"1.6\"/>\n",
                       px(at.x), px(at.y));
  }
  return fmt::format("<path d=\"M{}l4.5,4.5l-4.5,4.5l-4.5,-4.5Z\" fill=\"#1b2a49\" stroke=\"#fff\"/>\n",
                     px(Point{at.x, at.y - 4.5}));
}

std::string region_svg(const FinishRegion& region, const PlanFrame& frame, const ShotLook& look, bool inner) {
  const std::string path = path_of(frame.at(region.outlines));
  return fmt::format(
      "<path d=\"{}\" fill=\"none\" stroke=\"#fff\" stroke-width=\"{}\" opacity=\"0.75\"/>\n"
      "<path d=\"{}\" fill=\"{}\" fill-opacity=\"{}\" fill-rule=\"evenodd\" stroke=\"#1b2a49\" "
      "stroke-width=\"{}\"{}/>\n",
      path, inner ? "3.6" : "2.8", path, look.fill, inner ? "0.16" : "0.08", inner ? "1.8" : "1.1", look.dash);
}

std::string shot_svg(const HoleDrawing& drawing, const DrawnTeeShot& shot, const PlanFrame& frame, When when,
                     bool alone) {
  const ShotLook look = look_of(when, alone);
  std::string svg;
  for (std::size_t i = shot.regions.size(); i-- > 0;) svg += region_svg(shot.regions[i], frame, look, i == 0);
  svg += fmt::format("<path d=\"{}\" fill=\"none\" stroke=\"#1b2a49\" stroke-width=\"1\"{}/>\n",
                     open_path({frame.at(drawing.tee), frame.at(shot.aim)}), look.dash);
  return svg + aim_mark(frame.at(shot.aim), when, alone);
}

// What is left and the club from there; of a shot at the green how often it finishes there.
Label shot_label(const TeePlay& play, const DrawnTeeShot& shot, const PlanFrame& frame, Units units, When when,
                 bool alone) {
  Label label{frame.at(shot.aim), when == When::before && !alone ? Column::left : Column::right, {}, -1};
  const std::string club = short_club_name(shot.result.club);
  label.lines.push_back(fmt::format("{}: {}", look_of(when, alone).word, club));
  // A long name stands in a line of its own.
  if (text_width(label.lines.back(), label_size, true) > label_width) label.lines = {look_of(when, alone).word, club};
  if (play.tee_shot.aim.at_green()) {
    label.lines.push_back("on the green " + percent(on_green(play)));
    return label;
  }
  label.lines.push_back("leaves " + distance_words(shot.result.left_yd, units));
  const std::string& next = shot.result.next_club;
  label.lines.push_back("then " + (next == "lay-up" ? "a lay-up" : short_club_name(next)));
  return label;
}

// How the tee shots before and after meet a hazard.
struct Meeting {
  const HazardMet& before;
  const HazardMet* after;

  bool comes_into_reach() const {
    return after && before.reached < telling::within_reach && after->reached >= telling::within_reach;
  }
  bool is_cleared() const {
    return after && before.cleared < telling::mostly_cleared && after->cleared >= telling::mostly_cleared;
  }
  double most_found() const { return std::max(before.found, after ? after->found : 0.0); }
  bool worth_a_label() const {
    return most_found() >= telling::chance_worth_a_row || comes_into_reach() || is_cleared();
  }
};

// "206, carry 222": how far it is to reach and to carry.
std::string distances_of(const HazardView& hazard, Units units) {
  if (hazard.all_along) return "all along";
  const std::string to = length_text(hazard.to_yd, units);
  const bool beside = hazard.side == HazardSide::left || hazard.side == HazardSide::right;
  const bool carried = facts_of(hazard.ground).carry_is_told &&
                       (!beside || hazard.to_yd - hazard.from_yd <= telling::longest_carried_yd);
  if (hazard.from_yd <= 0.0) return (carried ? "carry " : "up to ") + to;
  return length_text(hazard.from_yd, units) + (carried ? ", carry " : " to ") + to;
}

Label hazard_label(const Meeting& meeting, Point anchor, Units units) {
  const HazardView& hazard = meeting.before.hazard;
  Label label{anchor, anchor.x < picture_width / 2.0 ? Column::left : Column::right, {}, 0};
  label.lines = {std::string(name(hazard.ground)), distances_of(hazard, units)};
  if (meeting.most_found() >= telling::chance_worth_a_row) {
    const std::string now = meeting.after ? ", now " + percent(meeting.after->found) : "";
    for (std::string& line : wrap_text("found " + percent(meeting.before.found) + now, label_width, label_size)) {
      label.lines.push_back(std::move(line));
    }
  }
  if (meeting.comes_into_reach()) label.lines.emplace_back("comes into reach");
  if (meeting.is_cleared()) label.lines.emplace_back("now mostly cleared");
  label.rank = static_cast<int>(1000.0 * (1.0 - meeting.most_found()));
  return label;
}

std::vector<Label> labels_of(const HoleStrategy& hole, const PlanFrame& frame, Units units) {
  const HoleDrawing& drawing = *hole.drawing;
  const bool alone = !drawing.after;
  std::vector<Label> labels = {shot_label(hole.before, drawing.before, frame, units, When::before, alone)};
  if (drawing.after) labels.push_back(shot_label(*hole.after, *drawing.after, frame, units, When::after, alone));
  const Point finish = frame.at(drawing.after ? drawing.after->aim : drawing.before.aim);
  for (std::size_t i = 0; i < drawing.before.hazards.size(); ++i) {
    const Meeting meeting{drawing.before.hazards[i], drawing.after ? &drawing.after->hazards[i] : nullptr};
    if (!meeting.worth_a_label()) continue;
    const auto anchor = place_of_hazard(drawing.plan, frame, meeting.before.hazard.hazard, finish);
    if (anchor) labels.push_back(hazard_label(meeting, *anchor, units));
  }
  return labels;
}

// Lines of words from a height on, which moves below them.
std::string paragraph(const std::string& words, double& top, double size) {
  std::string svg;
  for (const std::string& line : wrap_text(words, words_width, size)) {
    top += size + 3.0;
    svg += text_line({side, top}, words_width, line, {size});
  }
  return svg;
}

std::string heading(const std::string& words, double& top) {
  top += 18.0;
  return text_line({side, top}, words_width, words, {14.0, true});
}

std::string shots_key(bool alone, double& top) {
  std::string svg;
  for (const When when : {When::before, When::after}) {
    if (alone && when == When::after) continue;
    const ShotLook look = look_of(when, alone);
    const Point from = {when == When::before ? side : picture_width / 2.0, top + 8.0};
    svg += fmt::format("<path d=\"M{}h30\" stroke=\"#1b2a49\" stroke-width=\"1.8\"{}/>\n", px(from), look.dash);
    svg += aim_mark({from.x + 40.0, from.y}, when, alone);
    svg += text_line({from.x + 50.0, top + 12.0}, 110.0, fmt::format("{}, and its aim", look.word), {key_size});
  }
  top += 16.0;
  return svg;
}

std::string change_line(const StrategyResult& result) {
  if (!result.change) return "";
  const auto amount = [&](double yards) {
    return fmt::format("{}{}", yards < 0.0 ? "" : "+", plain_number(from_yards(yards, result.units)));
  };
  const std::string driver = amount(result.change->driver_carry_yd);
  return fmt::format(" After: {} {} of driver carry, {} in the irons.", driver, unit_after(driver, result.units),
                     amount(result.change->irons_carry_yd));
}

std::string signs_key(const HoleDrawing& drawing, const PlanFrame& frame, Units units, const std::string& prefix,
                      double& top) {
  std::string svg = shots_key(!drawing.after, top);
  svg += scale_bar(frame, units, top);
  top += 16.0;
  return svg + ground_key(grounds_of(drawing.plan.areas), prefix, top);
}

// What the picture says to read below it.
std::string words_below(const StrategyResult& result, const HoleDrawing& drawing, double& top) {
  std::string svg = paragraph(hole_picture_key(result.units), top, key_size);
  svg += paragraph(fmt::format("{} on {}, {} tees.", result.player, result.course, result.tee) + change_line(result),
                   top, key_size);
  for (const Caution& caution : result.cautions) {
    if (drawing.after && caution.kind == Caution::Kind::swing_changes_load_the_body) {
      svg += paragraph(caution_words(caution), top, key_size);
    }
  }
  return svg;
}

// All of the hole and of where its tee shots finish.
PlanFrame frame_of(const HoleDrawing& drawing, double top) {
  std::vector<Point> seen = places_to_see(drawing.plan);
  for (const DrawnTeeShot* shot : {&drawing.before, drawing.after ? &*drawing.after : nullptr}) {
    if (!shot) continue;
    for (const FinishRegion& region : shot->regions) {
      for (const Polygon& outline : region.outlines) seen.insert(seen.end(), outline.begin(), outline.end());
    }
  }
  return PlanFrame(drawing.plan, seen, top);
}

// The hole and its tee shots, without words.
std::string drawn_hole(const HoleDrawing& drawing, const PlanFrame& frame, const std::string& prefix) {
  const auto tee = std::find(drawing.plan.tees.begin(), drawing.plan.tees.end(), drawing.tee);
  std::string svg = plan_svg(drawing.plan, frame, prefix, static_cast<std::size_t>(tee - drawing.plan.tees.begin()));
  const bool alone = !drawing.after;
  svg += shot_svg(drawing, drawing.before, frame, When::before, alone);
  if (drawing.after) svg += shot_svg(drawing, *drawing.after, frame, When::after, alone);
  return svg;
}

std::string drawn_labels(const HoleStrategy& hole, const PlanFrame& frame, Units units) {
  return labels_svg(place_labels(labels_of(hole, frame, units), frame.top() + 2.0, frame.bottom() - 2.0));
}

std::string prefix_of(const HoleStrategy& hole) { return fmt::format("hole-{}", hole.number); }

}  // namespace

std::string hole_picture_key(Units units) {
  return fmt::format(
      "Of the tee shots half finish inside the thick line, nine in ten inside the thin one. At a hazard: {} from the "
      "tee to reach and to carry it, and how often it is found.",
      name(units));
}

Panel hole_panel(const StrategyResult& result, const HoleStrategy& hole) {
  const HoleDrawing& drawing = *hole.drawing;
  const std::string prefix = prefix_of(hole);
  double top = 0.0;
  std::string svg = heading(
      fmt::format("Hole {}, par {}, {}", hole.number, hole.par, distance_words(hole.length_yd, result.units)), top);
  svg += paragraph(strategy_sentence(hole, result.units), top, words_size);
  const PlanFrame frame = frame_of(drawing, top + 6.0);
  svg += drawn_hole(drawing, frame, prefix) + drawn_labels(hole, frame, result.units);
  top = frame.bottom() + 4.0;
  svg += signs_key(drawing, frame, result.units, prefix, top);
  svg += words_below(result, drawing, top);
  return {svg, top + 10.0};
}

Panel labelled_hole_panel(const StrategyResult& result, const HoleStrategy& hole) {
  const HoleDrawing& drawing = *hole.drawing;
  const std::string prefix = prefix_of(hole);
  const PlanFrame frame = frame_of(drawing, 2.0);
  std::string svg = drawn_hole(drawing, frame, prefix) + drawn_labels(hole, frame, result.units);
  double top = frame.bottom() + 4.0;
  svg += signs_key(drawing, frame, result.units, prefix, top);
  return {svg, top + 10.0};
}

Panel small_hole_panel(const HoleStrategy& hole, const std::string& below) {
  constexpr double size = 28.0;
  double top = size + 4.0;
  std::string svg =
      text_line({side, top}, words_width, fmt::format("Hole {}, par {}", hole.number, hole.par), {size, true});
  const PlanFrame frame = frame_of(*hole.drawing, top + 12.0);
  svg += drawn_hole(*hole.drawing, frame, "small-" + prefix_of(hole));
  top = frame.bottom() + size + 4.0;
  svg += text_line({side, top}, words_width, below, {size});
  return {svg, top + 12.0};
}

}  // namespace yardworth::report
