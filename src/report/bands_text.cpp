#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/cannot_finish_words.hpp"
#include "core/telling.hpp"
#include "report/bands_parts.hpp"
#include "report/basis_words.hpp"
#include "report/gain_parts.hpp"
#include "report/hole_words.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using Cells = std::vector<std::string>;

using telling::most_club_tables;

const char* const index_heading = "Handicap\nIndex";
const char* const second_heading = "second shot\nof par 4s";

std::string title_of(Gender gender) { return gender == Gender::men ? "Men" : "Women"; }

// A row for each golfer of one gender; the band is named where it begins.
template <class RowOf>
void put_rows(const BandsResult& result, Gender gender, Table& table, RowOf row_of) {
  std::string last;
  for (const BandOnTee& golfer : result.golfers) {
    if (golfer.gender != gender) continue;
    const std::string band(name(golfer.band));
    Cells row = {band == last ? "" : band, report::shown_tee(result.tees[golfer.tee].name)};
    last = band;
    const Cells rest = row_of(golfer);
    row.insert(row.end(), rest.begin(), rest.end());
    table.rows.push_back(std::move(row));
  }
}

std::string typical_club(const RoundPlay& play) {
  return play.second_shots.empty() ? "-" : report::short_club_name(escape_control(play.typical_second_shot));
}

// Which parts of the strokes saved there are to tell apart.
struct Parts {
  bool irons;
  bool replanning;

  explicit Parts(const BandsResult& result)
      : irons(result.change.irons_carry_yd != 0.0), replanning(result.replanning_computed) {}
  bool any() const { return irons || replanning; }
};

Cells golfer_row(const BandOnTee& golfer, const Parts& parts) {
  if (!golfer.cannot_finish.empty()) return {"-"};
  const StepValues& round = golfer.round;
  Cells row = {fixed(round.before, 1), strokes_text(round.strokes_saved())};
  if (parts.any()) row.push_back(strokes_text(round.from_tee()));
  if (parts.irons) row.push_back(strokes_text(round.from_irons()));
  if (parts.replanning) row.push_back(strokes_text(round.from_replanning()));
  row.push_back(golfer.index_change ? signed_tenths(*golfer.index_change) : "-");
  row.push_back(before_after(percent(golfer.before.green_in_regulation), percent(golfer.after.green_in_regulation)));
  // A table is as wide as a terminal: where the strokes are told apart, there is no room for everything.
  if (!parts.any()) {
    row.push_back(before_after(percent(golfer.before.fairway), percent(golfer.after.fairway)));
    row.push_back(before_after(fixed(golfer.before.penalty, 1), fixed(golfer.after.penalty, 1)));
  }
  const std::string club = typical_club(golfer.before);
  row.push_back(parts.any() ? club : before_after(club, typical_club(golfer.after)));
  return row;
}

Table bands_table(const Parts& parts) {
  Table table{{{"", Align::left}, {"tees", Align::left}, {"strokes"}, {"saved"}}, {}};
  if (parts.any()) table.columns.push_back({"from the\ntee shot"});
  if (parts.irons) table.columns.push_back({"from the\nirons"});
  if (parts.replanning) table.columns.push_back({"from a\nnew plan"});
  table.columns.push_back(give_way({index_heading}, 5, GivesWay::left_out));
  table.columns.push_back(give_way({"greens in\nregulation"}, 4, GivesWay::left_out));
  if (!parts.any()) {
    table.columns.push_back(give_way({"fairways\nfound"}, 2, GivesWay::left_out));
    table.columns.push_back(give_way({"tee shot\npenalties"}, 1, GivesWay::left_out));
  }
  table.columns.push_back(give_way({second_heading, Align::left}, 3, GivesWay::left_out));
  return table;
}

std::string cannot_finish_lines(const BandsResult& result, const Page& page) {
  std::string text;
  for (const BandOnTee& golfer : result.golfers) {
    if (golfer.cannot_finish.empty()) continue;
    text += page.bullet(fmt::format("{} {}, {} tees: {}", name(golfer.band), name(golfer.gender),
                                    report::shown_tee(result.tees[golfer.tee].name),
                                    cannot_finish_words(golfer.cannot_finish, result.units)));
  }
  return text;
}

std::string bands_section(const BandsResult& result, const Page& page) {
  const Parts parts(result);
  std::string text;
  bool shows_second = false;
  bool shows_index = false;
  for (const Gender gender : report::genders_of(result)) {
    Table table = bands_table(parts);
    put_rows(result, gender, table, [&](const BandOnTee& golfer) { return golfer_row(golfer, parts); });
    shows_second = shows_second || page.shows(table, second_heading);
    shows_index = shows_index || page.shows(table, index_heading);
    text += page.section(title_of(gender)) + page.table(table);
  }
  const std::string middle =
      " Second shot of par 4s: the typical one; half of them ask for a longer club or a lay-up, half for a shorter.";
  const std::string index =
      " Handicap Index: the change to expect; - where the tees are not rated for them, and for 9 holes.";
  return text +
         page.paragraph("Strokes: expected for a round before the change." + (shows_second ? middle : "") +
                        (shows_index ? index : "")) +
         cannot_finish_lines(result, page);
}

std::string suiting_section(const BandsResult& result, const Page& page) {
  if (result.tees.size() < 2) return "";
  const std::string unit = name(result.units);
  Table table{{{"", Align::left},
               {"drive\n" + unit},
               {"recommended\n" + unit},
               {"tees by\nlength", Align::left},
               {"tees by\nclubs", Align::left},
               give_way({"clubs longer than scratch,\ntee by tee", Align::left}, 1, GivesWay::left_out)},
              {}};
  const auto tee_name = [&](const std::optional<std::size_t>& tee) {
    return tee ? report::shown_tee(result.tees[*tee].name) : std::string("-");
  };
  for (std::size_t i = 0; i < result.suiting.size(); ++i) {
    const SuitingTee& suits = result.suiting[i];
    std::string apart;
    for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
      const BandOnTee& golfer = result.golfers[i * result.tees.size() + tee];
      apart += (tee > 0 ? " / " : "") + (golfer.clubs_longer ? signed_tenths(*golfer.clubs_longer) : "-");
    }
    table.rows.push_back({fmt::format("{} {}", name(suits.band), name(suits.gender)),
                          length_text(suits.driver_distance_yd, result.units),
                          length_text(suits.recommended.low_yd, result.units) + "-" +
                              length_text(suits.recommended.high_yd, result.units),
                          tee_name(suits.by_length), tee_name(suits.by_clubs), apart});
  }
  return page.section("Which tees suit whom") + page.table(table) + page.paragraph(report::suiting_words(result));
}

// The golfers of one gender on one tee, who have a column each.
std::vector<const BandOnTee*> column_of(const BandsResult& result, Gender gender, std::size_t tee) {
  std::vector<const BandOnTee*> golfers;
  for (const BandOnTee& golfer : result.golfers) {
    if (golfer.gender == gender && golfer.tee == tee && golfer.cannot_finish.empty()) golfers.push_back(&golfer);
  }
  return golfers;
}

Table table_by_band(const std::vector<const BandOnTee*>& golfers, const std::string& heading) {
  Table table{{{heading, Align::left}}, {}};
  for (const BandOnTee* golfer : golfers) table.columns.push_back({std::string(name(golfer->band))});
  return table;
}

std::string who(const BandsResult& result, Gender gender, std::size_t tee) {
  return fmt::format("{}, {} tees", name(gender), report::shown_tee(result.tees[tee].name));
}

std::string clubs_table(const BandsResult& result, Gender gender, std::size_t tee, const Page& page) {
  const auto golfers = column_of(result, gender, tee);
  if (golfers.empty()) return "";
  ClubShares all;
  for (const BandOnTee* golfer : golfers) {
    for (const auto& [club, share] : golfer->before.approach) all[club] += share;
    for (const auto& [club, share] : golfer->after.approach) all[club] += share;
  }
  const auto share_of = [](const RoundPlay& play, const std::string& club) {
    const auto share = play.approach.find(club);
    return share == play.approach.end() ? "-" : in_100(share->second);
  };
  Table table = table_by_band(golfers, "");
  for (const std::string& club : report::in_bag_order(all)) {
    Cells row = {escape_control(club)};
    for (const BandOnTee* golfer : golfers) {
      const std::string before = share_of(golfer->before, club);
      const std::string after = share_of(golfer->after, club);
      row.push_back(before_after(before, after));
    }
    table.rows.push_back(std::move(row));
  }
  return page.section("Approach shots by club, in 100, before -> after: " + who(result, gender, tee)) +
         page.table_in_parts(table, 1);
}

std::string clubs_section(const BandsResult& result, const Page& page) {
  const std::vector<Gender> genders = report::genders_of(result);
  if (genders.size() * result.tees.size() > most_club_tables) return "";
  std::string text;
  for (const Gender gender : genders) {
    for (std::size_t tee = 0; tee < result.tees.size(); ++tee) text += clubs_table(result, gender, tee, page);
  }
  return text +
         page.paragraph(
             "An approach is the first stroke after the tee shot that is played at the green from beyond the short "
             "game.");
}

const BandHole* hole_of(const BandOnTee& golfer, int number) {
  const auto hole = std::find_if(golfer.holes.begin(), golfer.holes.end(),
                                 [number](const BandHole& here) { return here.number == number; });
  return hole == golfer.holes.end() ? nullptr : &*hole;
}

std::string hazards_table(const BandsResult& result, int number, Gender gender, std::size_t tee, const Page& page) {
  const auto golfers = column_of(result, gender, tee);
  if (golfers.empty()) return "";
  Table table = table_by_band(golfers, "");
  table.columns.insert(table.columns.begin() + 1, {"", Align::left});
  const auto put = [&](const std::string& hazard, const char* what, double HazardMet::*chance, std::size_t i) {
    Cells row = {hazard, what};
    for (const BandOnTee* golfer : golfers) {
      row.push_back(percent(hole_of(*golfer, number)->before.hazards[i].*chance));
    }
    table.rows.push_back(std::move(row));
  };
  const std::vector<HazardMet>& hazards = hole_of(*golfers.front(), number)->before.hazards;
  const auto is_reached = [&](std::size_t i) {
    return std::any_of(golfers.begin(), golfers.end(), [&](const BandOnTee* golfer) {
      return hole_of(*golfer, number)->before.hazards[i].reached >= telling::hazard_reached;
    });
  };
  std::string out_of_reach;
  for (std::size_t i = 0; i < hazards.size(); ++i) {
    const HazardView& hazard = hazards[i].hazard;
    const std::string words = fmt::format("{}. {}", hazard.hazard + 1, report::hazard_words(hazard, result.units));
    if (!is_reached(i)) {
      out_of_reach += (out_of_reach.empty() ? "" : ", ") + words;
      continue;
    }
    put(words, "found", &HazardMet::found, i);
    put("", "reached", &HazardMet::reached, i);
    put("", "cleared", &HazardMet::cleared, i);
  }
  if (hazards.empty()) return "";
  return page.section(fmt::format("Hole {}, tee shots: {}", number, who(result, gender, tee))) +
         (table.rows.empty() ? "" : page.table_in_parts(table, 2)) +
         (out_of_reach.empty() ? "" : page.paragraph("Out of everyone's reach: " + out_of_reach + "."));
}

std::string hazards_section(const BandsReport& report, const Page& page) {
  if (!report.hole) return "";
  std::string text;
  for (const Gender gender : report::genders_of(report.result)) {
    for (std::size_t tee = 0; tee < report.result.tees.size(); ++tee) {
      text += hazards_table(report.result, *report.hole, gender, tee, page);
    }
  }
  if (text.empty()) return page.section(fmt::format("Hole {} has no hazards beyond the tees.", *report.hole));
  return text +
         page.paragraph(
             "Found: the tee shot ends in it. Reached: found, or it finishes level with its beginning or beyond. "
             "Cleared: it finishes beyond its end.");
}

Table changed_table(const BandsResult& result) {
  Table table{{{"", Align::left}, {"tees", Align::left}, {"strokes\nas it is"}, {"\nchanged"}, {"\ncosts"}}, {}};
  if (report::carry_changes(result.change))
    table.columns.push_back(give_way({"with the\nother carry"}, 4, GivesWay::left_out));
  table.columns.insert(table.columns.end(), {give_way({"from\nthe tee"}, 3, GivesWay::left_out), {"found"}});
  table.columns.insert(table.columns.end(),
                       {give_way({"reached"}, 2, GivesWay::left_out), give_way({"cleared"}, 1, GivesWay::left_out)});
  return table;
}

Cells changed_row(const BandsResult& result, const BandOnTee& golfer, const ChangedHazard& hazard) {
  const ChangedHole* hole = report::changed_hole(golfer, hazard.hole);
  if (hole == nullptr) return {"-"};
  const double without = hole->without.strokes.before;
  const double with = hole->with.strokes.before;
  Cells row = {strokes_text(without), strokes_text(with), strokes_text(with - without)};
  if (report::carry_changes(result.change))
    row.push_back(strokes_text(hole->with.strokes.replanned - hole->without.strokes.replanned));
  const HazardMet* now = report::hazard_met(hole->with.before, hazard.hazard);
  const HazardMet* was = hazard.added ? nullptr : report::hazard_met(hole->without.before, hazard.hazard);
  if (now == nullptr) {
    row.emplace_back("behind");
    return row;
  }
  row.push_back(length_text(now->hazard.from_yd, result.units) + "-" + length_text(now->hazard.to_yd, result.units));
  for (const auto chance : {&HazardMet::found, &HazardMet::reached, &HazardMet::cleared}) {
    const std::string is = percent(now->*chance);
    row.push_back(was == nullptr ? is : before_after(percent(was->*chance), is));
  }
  return row;
}

std::string changed_section(const BandsResult& result, const Page& page) {
  std::string text;
  for (const ChangedHazard& hazard : result.changed_hazards) {
    for (const Gender gender : report::genders_of(result)) {
      Table table = changed_table(result);
      put_rows(result, gender, table, [&](const BandOnTee& golfer) { return changed_row(result, golfer, hazard); });
      text += page.section(fmt::format("{}: {}", report::changed_hazard_title(result, hazard), name(gender))) +
              page.table(table);
    }
  }
  return text +
         page.paragraph(
             "Strokes: expected for the hole, with all changes of it. Found: the tee shot ends in the hazard. Reached: "
             "found, or it finishes level with its beginning or beyond. Cleared: it finishes beyond its end.") +
         cannot_finish_lines(result, page);
}

std::string basis_section(const BandsReport& bands, const Page& page) {
  const BandsResult& result = bands.result;
  std::string text = page.section("What it rests on") + page.bullet(report::bands_plan_words(bands));
  for (const Note& note : result.notes) text += page.bullet(report::note_words(note, result.units));
  text += page.section("Cautions");
  for (const Caution& caution : result.cautions) text += page.bullet(report::caution_words(caution));
  return text;
}

std::string more_section(const BandsReport& report, const Page& page) {
  const BandsReport::Asking& asking = report.asking;
  const bool clubs_shown = report::genders_of(report.result).size() * report.result.tees.size() <= most_club_tables;
  std::string more;
  if (!clubs_shown && !asking.clubs.empty()) more = asking.clubs + " tells the approach shots club by club";
  if (!report.hole && !asking.hole.empty()) {
    more +=
        (more.empty() ? "" : ", ") + asking.hole + (more.empty() ? " tells" : "") + " who finds which hazard of a hole";
  }
  if (more.empty()) return "";
  const std::string all = asking.everything.empty() ? "" : " " + asking.everything + " has everything.";
  return page.section("More") + page.paragraph(more + "." + all);
}

}  // namespace

std::string bands_text(const BandsReport& report, bool emphasis, std::size_t columns) {
  const BandsResult& result = report.result;
  const Page page(columns);
  std::string text;
  for (const std::string& line : report.opening) text += page.paragraph(escape_control(line));
  if (!text.empty()) text += '\n';
  std::string answer = page.paragraph(bands_sentence(result));
  if (emphasis) {
    answer.pop_back();
    answer = "\x1b[1m" + answer + "\x1b[0m\n";
  }
  text += answer;
  if (!result.changed_hazards.empty()) return text + changed_section(result, page) + basis_section(report, page);
  return text + bands_section(result, page) + report::bands_scores_section(result, page) +
         suiting_section(result, page) + clubs_section(result, page) + hazards_section(report, page) +
         more_section(report, page) + basis_section(report, page);
}

}  // namespace yardworth
