#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "yardworth/bag.hpp"
#include "yardworth/bands.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/members.hpp"
#include "yardworth/read.hpp"
#include "yardworth/strategy.hpp"
#include "yardworth/weigh.hpp"

namespace yardworth {

// Columns that text is written for unless a function is told another number. At 60 nothing is wider; what a table has
// no room for is left out and named below it. Fewer than 40 count as 40.
inline constexpr std::size_t report_width = 100;

// What a report of a gain is made of. Whatever text it holds may come from files and is made safe for each format.
struct GainReport {
  GainResult result;
  std::vector<CurvePoint> curve;     // empty: was not asked for
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
  bool control_asked = false;
  std::optional<ControlToSpare> control = std::nullopt;  // where it was asked for and something is saved
};

// The answer in one sentence, in the course's units and in strokes to the tenth (small ones to the hundredth).
std::string gain_sentence(const GainResult& result);

// What bars in a text are made of: block characters of Unicode, or plain ones where those do not show.
enum class BarCharacters { blocks, ascii };

// For a terminal: the answer, the round, the holes, with bars, the second shots, the curve, what it rests on, the
// cautions. Distances in the course's units; emphasis makes the answer bold and the bars coloured.
std::string gain_text(const GainReport& report, bool emphasis = false, std::size_t columns = report_width,
                      BarCharacters bars = BarCharacters::blocks);

// The formats for programs, nothing rounded: distances in yards in JSON, in the course's units in CSV, where the
// heading names them (_yd, _m). A cell of CSV that was not computed is empty.

// "yardworth/gain/1". Every character beyond ASCII is written as an escape, so that it is safe to print; bytes that
// are not UTF-8 become U+FFFD.
std::string gain_json(const GainReport& report);
// One row for each hole and a last one for the round.
std::string gain_csv(const GainReport& report);
// One row for each point of the curve.
std::string gain_curve_csv(const GainReport& report);

// What a report of how to play holes is made of. Whatever text it holds may come from files and is made safe for each
// format.
struct StrategyReport {
  StrategyResult result;
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
};

// The advice for one hole in one sentence, in the course's units, ready for a terminal.
std::string strategy_sentence(const HoleStrategy& hole, Units units);

// For a terminal: the round, then hole by hole the advice, the tee shots, what follows them, the hazards. Distances in
// the course's units; emphasis makes the advice bold.
std::string strategy_text(const StrategyReport& report, bool emphasis = false, std::size_t columns = report_width);

// The formats for programs, nothing rounded: distances in yards in JSON, in the course's units in CSV, where the
// heading names them (_yd, _m). A cell of CSV that was not computed is empty.

// "yardworth/strategy/1", in printable ASCII only; bytes that are not UTF-8 become U+FFFD.
std::string strategy_json(const StrategyReport& report);
// One row for each tee shot of each hole: the policy's own (option 0), then the alternatives.
std::string strategy_csv(const StrategyReport& report);

// Pictures, as SVG: text that stands by itself, with no script, font or image from elsewhere, and the same bytes
// wherever it is made. Whatever text it holds may come from files and is made safe. They are 360 pixels wide and can be
// shown at any size; nothing is told by colour alone.

// A hole of the result, which needs its drawing: the plan view to scale, where the tee shots finish before and after,
// what is left, the hazards that matter.
std::string hole_svg(const StrategyResult& result, const HoleStrategy& hole);
// All holes of the result, one below the other.
std::string strategy_svg(const StrategyResult& result);
// Charts of a gain: where the strokes come from, hole by hole, the curve where there is one, second shots, scores.
std::string gain_svg(const GainReport& report);
// What was understood of each hole of a course that is valid, one below the other.
std::string course_svg(const Course& course);

// What a report of bands on tees is made of. Whatever text it holds may come from files and is made safe for each
// format.
struct BandsReport {
  BandsResult result;
  std::optional<int> hole;           // whose hazards are told, band by band
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
  // How a reader asks for more, in the words of the program that hands the report out; of what is empty nothing is
  // said.
  struct Asking {
    std::string clubs;       // the approach shots club by club
    std::string hole;        // who finds which hazard of a hole
    std::string best;        // the best plan
    std::string everything;  // all that there is
  };
  Asking asking;
};

// The answer in one sentence: whom the change of distance helps most and least, or, where hazards are changed, whom
// they cost most and least.
std::string bands_sentence(const BandsResult& result);

// For a terminal: the answer, then either the bands and the tees that suit them, or what the changed hazards do; the
// clubs of approach shots where no more than two tables of them are needed; the hazards of the hole asked for.
// Distances in the course's units; emphasis makes the answer bold.
std::string bands_text(const BandsReport& report, bool emphasis = false, std::size_t columns = report_width);

// The formats for programs, nothing rounded: distances in yards in JSON, in the course's units in CSV, where the
// heading names them (_yd, _m). A cell of CSV that was not computed is empty.

// "yardworth/bands/1", in printable ASCII only; bytes that are not UTF-8 become U+FFFD.
std::string bands_json(const BandsReport& report);
// One row for each band and tee.
std::string bands_csv(const BandsReport& report);
// One row for each band, tee and hazard: of the hole asked for, or of the changed holes without and with the change.
std::string bands_hazards_csv(const BandsReport& report);

// Charts of what the change of distance saves each golfer, tee by tee.
std::string bands_svg(const BandsReport& report);

// What a report of a club's members is made of. Whatever text it holds may come from files and is made safe for each
// format.
struct MembersReport {
  MembersResult result;
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
};

// The answer in one sentence: what the members gain on average from their usual tees, who gains most and least, and how
// many members each tee suits by the clubs of their second shots.
std::string members_sentence(const MembersResult& result);

// For a terminal: the answer, one table of all members, what it rests on, the cautions. Distances in the course's
// units; emphasis makes the answer bold.
std::string members_text(const MembersReport& report, bool emphasis = false, std::size_t columns = report_width);

// The formats for programs, as those of bands.

// "yardworth/members/1", in printable ASCII only; bytes that are not UTF-8 become U+FFFD.
std::string members_json(const MembersReport& report);
// One row for each member and tee.
std::string members_csv(const MembersReport& report);

// What a report of a delivery is made of.
struct DeliveryReport {
  DeliveryResult result;
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
};

// The answer in one sentence: how far it goes, what there is to gain at the same club head speed, and what to work on
// first.
std::string delivery_sentence(const DeliveryResult& result);

// For a terminal: the answer, the deliveries and their flights side by side, what each angle gives away, a new head,
// the board if there is one, what it rests on, the cautions. Yards, miles an hour, degrees; emphasis makes the answer
// bold.
std::string delivery_text(const DeliveryReport& report, bool emphasis = false, std::size_t columns = report_width);

// The formats for programs: in the units that a key or a column names, nothing rounded.

// "yardworth/delivery/1", in printable ASCII only.
std::string delivery_json(const DeliveryReport& report);
// One row for each delivery: as it is, after, best.
std::string delivery_csv(const DeliveryReport& report);
// One row for each cell of the board.
std::string delivery_board_csv(const DeliveryReport& report);

// The carry that each angle of the delivery gives away, in turn.
std::string delivery_svg(const DeliveryReport& report);

// What a lesson sheet is made of: a gain and, of the same change, how the holes are played. Whatever text it holds may
// come from files and is made safe.
struct LessonReport {
  GainReport gain;
  StrategyResult strategy;                                // a hole without its drawing is not shown
  std::optional<DeliveryResult> delivery = std::nullopt;  // of the strike before the change, where it was said
  int seed = 1;                                           // of the draws of what was measured, where there are any
};

// A page to read on a telephone or a screen, or to print on A4: the answer, how many clubs shorter the second shots
// are, where the strokes come from, the holes where most is gained, all holes, second shots, scores, when it shows,
// what to work on first, what it rests on, the cautions. One file of HTML that stands by itself: no script, and nothing
// is requested from elsewhere.
std::string lesson_html(const LessonReport& report);

// What a page for a club is made of: the bands and, of the same change and from the same tees, the club's own members,
// where there is a list of them. Whatever text it holds may come from files and is made safe.
struct ClubReport {
  BandsReport bands;
  std::optional<MembersReport> members = std::nullopt;
};

// A page to read on a telephone or a screen, or to print on A4: the answer, what is saved band by band and tee by tee
// or what the changed hazards do to whom, which tees suit whom, the members, who finds which hazards, what it rests on,
// the cautions. One file of HTML that stands by itself: no script, and nothing is requested from elsewhere.
std::string club_html(const ClubReport& report);

// What a report of measured shots is made of. Whatever text it holds may come from files and is made safe for each
// format.
struct BagReport {
  BagResult result;                         // of one log, or of the later of two
  std::optional<BagComparison> comparison;  // of two
  std::vector<std::string> opening;         // said before all else: what the log may have got wrong
};

// The answer in one sentence: how many clubs and shots, and how far the longest and the shortest club carry.
std::string bag_sentence(const BagResult& result);
// What changed of a club, and whether it is real, in one sentence.
std::string change_sentence(const ClubChange& change, Units units);

// For a terminal: the answer, the clubs, the outliers, what it rests on, the cautions. Distances in the log's units;
// emphasis makes the answer bold.
std::string bag_text(const BagReport& report, bool emphasis = false, std::size_t columns = report_width);

// The formats for programs, nothing rounded: distances in yards in JSON, in the log's units in CSV, where the heading
// names them (_yd, _m). What the log says nothing of is null, or an empty cell.

// "yardworth/bag/1", in printable ASCII only; bytes that are not UTF-8 become U+FFFD.
std::string bag_json(const BagReport& report);
// One row for each club.
std::string bag_csv(const BagReport& report);
// One row for each club that changed or did not; of one log as bag_csv.
std::string bag_changes_csv(const BagReport& report);

// The carries of the clubs with their intervals and gaps.
std::string bag_svg(const BagReport& report);

// What a report of options is made of. Whatever text it holds may come from files and is made safe for each format.
struct WeighReport {
  WeighResult result;
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
};

// The answer in one sentence: which option saves most, how many strokes, for what, and how likely it is the best.
std::string weigh_sentence(const WeighResult& result);

// For a terminal: the answer, the options side by side, what else would save as much, what a unit of everything is
// worth where it was asked for, what it rests on, the cautions. Distances in the course's units; emphasis makes the
// answer bold.
std::string weigh_text(const WeighReport& report, bool emphasis = false, std::size_t columns = report_width);

// The formats for programs, nothing rounded: distances in yards. What there is no answer to is null, or an empty cell.

// "yardworth/weigh/1", in printable ASCII only; bytes that are not UTF-8 become U+FFFD.
std::string weigh_json(const WeighReport& report);
// One row for each option.
std::string weigh_csv(const WeighReport& report);

// One line, in the file's own units and safe for a terminal, of what was understood. A course: holes, par, length from
// each tee, hazards by kind, doglegs. A player: label, index, band, clubs, longest and shortest carry, widest gap. A
// baseline: band and the distances of each column. Options: their names.
std::string summarise(const AnyFile& file);

}  // namespace yardworth
