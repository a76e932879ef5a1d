#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/cannot_finish_words.hpp"
#include "core/telling.hpp"
#include "report/bands_parts.hpp"
#include "report/basis_words.hpp"
#include "report/hole_words.hpp"
#include "report/html.hpp"
#include "report/html_table.hpp"
#include "report/members_parts.hpp"
#include "report/picture/bands_charts.hpp"
#include "report/text.hpp"
#include "yardworth/version.hpp"

namespace yardworth::report {
namespace {

std::string who(Band band, Gender gender) { return fmt::format("{} {}", name(band), name(gender)); }

std::string title_of(Gender gender) { return gender == Gender::men ? "Men" : "Women"; }

std::string tee_words(const std::vector<TeeOfBands>& tees, const std::optional<std::size_t>& tee) {
  return tee ? shown_tee(tees[*tee].name) : "-";
}

// A chart for each gender, side by side where there is room.
template <class Add>
std::string charts_by_gender(const BandsResult& result, const std::string& description, Add add) {
  std::string charts;
  for (const Gender gender : genders_of(result)) {
    Sheet sheet;
    add(sheet, gender);
    charts += "<div>\n<h3>" + title_of(gender) + "</h3>\n" +
              html_figure(svg_file({sheet.panel()}, title_of(gender), description)) + "</div>\n";
  }
  return "<div class=\"pair\">\n" + charts + "</div>\n";
}

std::string head(const BandsResult& result) {
  std::string tees;
  for (const TeeOfBands& tee : result.tees) {
    tees += fmt::format("{}{} ({} {})", tees.empty() ? "" : ", ", tee.name, length_text(tee.length_yd, result.units),
                        name(result.units));
  }
  const bool hazards = !result.changed_hazards.empty();
  return fmt::format("<h1>{}</h1>\n<p class=\"whose\">{}</p>\n",
                     hazards ? "What the changed hazards do" : "What distance is worth to a club",
                     svg_text(fmt::format("{}; tees: {}", result.course, tees)));
}

std::string answer(const ClubReport& report) {
  std::vector<std::string> sentences = {bands_sentence(report.bands.result)};
  if (report.members) sentences.push_back(members_sentence(report.members->result));
  std::string html = "<section class=\"answer\">\n" + html_paragraphs(sentences) + "</section>\n";
  if (report.bands.opening.empty()) return html;
  return html + "<section class=\"assumed\">\n" + html_list(report.bands.opening) + "</section>\n";
}

std::string changed_hazards(const BandsResult& result) {
  std::string html;
  for (std::size_t i = 0; i < result.changed_hazards.size(); ++i) {
    const ChangedHazard& hazard = result.changed_hazards[i];
    const std::string title = changed_hazard_title(result, hazard);
    const auto add = [&](Sheet& sheet, Gender gender) { add_changed_hazard(sheet, result, i, gender); };
    html += html_section(title, charts_by_gender(result, title, add));
  }
  return html;
}

const BandOnTee* golfer_of(const BandsResult& result, Band band, Gender gender, std::size_t tee) {
  const auto golfer = std::find_if(result.golfers.begin(), result.golfers.end(), [&](const BandOnTee& one) {
    return one.band == band && one.gender == gender && one.tee == tee;
  });
  return golfer == result.golfers.end() ? nullptr : &*golfer;
}

// Of one gender, as asked.
std::vector<Band> bands_of(const BandsResult& result, Gender gender) {
  std::vector<Band> bands;
  for (const BandOnTee& golfer : result.golfers) {
    if (golfer.gender == gender && golfer.tee == 0) bands.push_back(golfer.band);
  }
  return bands;
}

// Strokes, and below them what the change makes of them.
std::string round_words(const BandOnTee& golfer, bool changes) {
  if (!golfer.cannot_finish.empty()) return "cannot\nfinish";
  const std::string strokes = fixed(golfer.round.before, 1);
  const std::string more = strokes_text(-golfer.round.strokes_saved());
  return !changes ? strokes : strokes + "\n" + (more.front() == '-' || more == "0.00" ? "" : "+") + more;
}

// A row for each band, a column for each of the tees.
std::string rounds_table(const BandsResult& result, Gender gender) {
  const bool changes = carry_changes(result.change);
  HtmlTable table;
  table.caption = title_of(gender) +
                  (changes ? ": strokes a round; below, fewer (-) or more (+) with the change" : ": strokes a round");
  table.columns = {"band"};
  for (const TeeOfBands& tee : result.tees) table.columns.push_back(shown_tee(tee.name) + "\ntees");
  for (const Band band : bands_of(result, gender)) {
    HtmlRow row = {{std::string(name(band))}};
    for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
      const BandOnTee* golfer = golfer_of(result, band, gender, tee);
      row.push_back({golfer == nullptr ? "-" : round_words(*golfer, changes)});
    }
    table.rows.push_back(std::move(row));
  }
  return html_table(table);
}

std::string cannot_finish_list(const BandsResult& result) {
  std::vector<std::string> lines;
  for (const BandOnTee& golfer : result.golfers) {
    if (golfer.cannot_finish.empty()) continue;
    lines.push_back(fmt::format("{}, {} tees: {}", who(golfer.band, golfer.gender), result.tees[golfer.tee].name,
                                cannot_finish_words(golfer.cannot_finish, result.units)));
  }
  return html_list(lines);
}

std::string rounds(const BandsResult& result) {
  std::string html;
  const bool saves = carry_changes(result.change);
  if (saves && result.changed_hazards.empty()) {
    html += charts_by_gender(result, bands_sentence(result),
                             [&](Sheet& sheet, Gender gender) { add_saved_by_band(sheet, result, gender); });
  }
  std::string tables;
  for (const Gender gender : genders_of(result)) tables += "<div>\n" + rounds_table(result, gender) + "</div>\n";
  html += "<div class=\"pair\">\n" + tables + "</div>\n" + cannot_finish_list(result);
  return html_section(saves ? "What is saved, band by band and tee by tee" : "The round, band by band and tee by tee",
                      html);
}

// Net scores and points of those whom the tees are rated for.
std::string points(const BandsResult& result) {
  const auto both = [](double before, double after) { return before_after(fixed(before, 1), fixed(after, 1)); };
  HtmlTable table;
  table.columns = {"golfer", "Course\nHandicap", "net score", "Stableford\npoints"};
  for (const BandOnTee& golfer : result.golfers) {
    if (!golfer.cannot_finish.empty() || !golfer.scores || !golfer.handicap) continue;
    const RoundScores& before = golfer.scores->before;
    const RoundScores& after = golfer.scores->after;
    table.rows.push_back({{who(golfer.band, golfer.gender) + "\n" + tee_words(result.tees, golfer.tee) + " tees"},
                          {std::to_string(golfer.handicap->course_handicap)},
                          {both(before.handicap->net, after.handicap->net)},
                          {both(before.handicap->stableford.mean(), after.handicap->stableford.mean())}});
  }
  if (table.rows.empty()) return "";
  return html_section("Net scores and points",
                      html_paragraph("Under the Course Handicap of the band's index, the same before and after, from "
                                     "the tees that are rated for those who play them.") +
                          html_table(table));
}

// "middle tees: 6-12 men, 13-20 men, scratch women".
std::vector<std::string> suited_by_clubs(const BandsResult& result) {
  std::vector<std::string> lines;
  for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
    std::string golfers;
    for (const SuitingTee& suits : result.suiting) {
      if (suits.by_clubs == tee) golfers += (golfers.empty() ? "" : ", ") + who(suits.band, suits.gender);
    }
    lines.push_back(
        fmt::format("{} tees: {}", result.tees[tee].name, golfers.empty() ? "nobody of those asked about" : golfers));
  }
  return lines;
}

std::string suiting(const BandsResult& result) {
  if (result.tees.size() < 2) return "";
  HtmlTable table;
  table.kind = "words";
  table.columns = {"golfer", "drive,\n" + std::string(name(result.units)), "tees by length", "tees by clubs"};
  for (const SuitingTee& suits : result.suiting) {
    table.rows.push_back({{who(suits.band, suits.gender)},
                          {length_text(suits.driver_distance_yd, result.units)},
                          {tee_words(result.tees, suits.by_length)},
                          {tee_words(result.tees, suits.by_clubs)}});
  }
  return html_section("Which tees suit whom", html_paragraph("By the clubs of their second shots:") +
                                                  html_list(suited_by_clubs(result)) + html_table(table) +
                                                  html_paragraph(suiting_words(result)));
}

HtmlRow member_row(const MembersResult& result, const MemberResult& member, bool changes) {
  std::string label = member.member.label;
  std::replace(label.begin(), label.end(), '\n', ' ');
  HtmlRow row = {{fmt::format("{}\n{}, {} tees", label, index_words(member.member.handicap_index),
                              tee_words(result.tees, member.usual_tee))}};
  const bool ends = finishes(member);
  const StepValues& round = on_usual_tee(member).round;
  row.push_back({ends ? fixed(round.before, 1) : "cannot\nfinish"});
  if (changes) row.push_back({ends ? strokes_text(round.strokes_saved()) : "-"});
  if (result.tees.size() > 1) row.push_back({tee_words(result.tees, member.by_clubs), true});
  return row;
}

std::string members(const std::optional<MembersReport>& report) {
  if (!report) return "";
  const MembersResult& result = report->result;
  const bool changes = carry_changes(result.change);
  HtmlTable table;
  table.columns = {"member", "strokes"};
  if (changes) table.columns.emplace_back("saved");
  if (result.tees.size() > 1) table.columns.emplace_back("tees that\nsuit");
  for (const MemberResult& member : result.members) table.rows.push_back(member_row(result, member, changes));
  return html_section("The members",
                      html_paragraph("Below each name the Handicap Index and the usual tees, from which strokes are "
                                     "expected for a round, before the change. The tees that suit are those by the "
                                     "clubs of the second shots.") +
                          html_table(table));
}

// The tees that golfers of the gender are likely to play: the middle ones of those that are rated for it, else of all.
std::size_t likely_tee(const BandsResult& result, Gender gender) {
  std::vector<std::size_t> rated;
  for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
    if (result.tees[tee].rated_for == gender) rated.push_back(tee);
  }
  return rated.empty() ? result.tees.size() / 2 : rated[rated.size() / 2];
}

// A hazard, and what share of the tee shots of each band finds it.
struct FoundByBand {
  int hole = 0;
  HazardView hazard;
  std::vector<double> found;

  double most() const { return *std::max_element(found.begin(), found.end()); }
};

// Those that are found most often, in the order of the holes.
std::vector<FoundByBand> hazards_found(const std::vector<const BandOnTee*>& golfers) {
  std::vector<FoundByBand> all;
  for (std::size_t hole = 0; hole < golfers.front()->holes.size(); ++hole) {
    const BandHole& first = golfers.front()->holes[hole];
    for (std::size_t i = 0; i < first.before.hazards.size(); ++i) {
      FoundByBand one{first.number, first.before.hazards[i].hazard, {}};
      for (const BandOnTee* golfer : golfers) one.found.push_back(golfer->holes[hole].before.hazards[i].found);
      if (one.most() >= telling::hazard_reached) all.push_back(std::move(one));
    }
  }
  std::vector<double> most;
  for (const FoundByBand& one : all) most.push_back(one.most());
  std::sort(most.rbegin(), most.rend());
  if (all.size() <= telling::most_hazards_told) return all;
  const double least = most[telling::most_hazards_told - 1];
  all.erase(std::remove_if(all.begin(), all.end(), [least](const FoundByBand& one) { return one.most() < least; }),
            all.end());
  return all;
}

std::string hazards_table(const BandsResult& result, Gender gender) {
  const std::size_t tee = likely_tee(result, gender);
  std::vector<const BandOnTee*> golfers;
  for (const BandOnTee& golfer : result.golfers) {
    if (golfer.gender == gender && golfer.tee == tee && golfer.cannot_finish.empty()) golfers.push_back(&golfer);
  }
  if (golfers.empty()) return "";
  HtmlTable table;
  table.kind = "many";
  table.caption = fmt::format("{}, {} tees: of 100 tee shots", title_of(gender), shown_tee(result.tees[tee].name));
  table.columns = {"hole, hazard"};
  for (const BandOnTee* golfer : golfers) table.columns.emplace_back(name(golfer->band));
  for (const FoundByBand& hazard : hazards_found(golfers)) {
    HtmlRow row = {{fmt::format("{}, {}", hazard.hole, hazard_words(hazard.hazard, result.units))}};
    const double most = hazard.most();
    for (const double found : hazard.found) row.push_back({in_100(found), found == most});
    table.rows.push_back(std::move(row));
  }
  const std::string html = html_table(table);
  return html.empty() ? "" : "<div>\n" + html + "</div>\n";
}

std::string hazards(const BandsResult& result) {
  std::string tables;
  for (const Gender gender : genders_of(result)) tables += hazards_table(result, gender);
  if (tables.empty()) return "";
  return html_section(
      "Who finds which hazard",
      html_paragraph(fmt::format("The hazards that the tee shots find most often, {} for each table at most, and of "
                                 "how many of 100 that is true in each band; in bold whom they catch most. As the "
                                 "course is, with today's carries.",
                                 telling::most_hazards_told)) +
          "<div class=\"pair\">\n" + tables + "</div>\n");
}

void add_new(std::vector<std::string>& all, const std::vector<std::string>& more) {
  for (const std::string& words : more) {
    if (std::find(all.begin(), all.end(), words) == all.end()) all.push_back(words);
  }
}

std::string basis(const ClubReport& report) {
  const BandsResult& bands = report.bands.result;
  std::vector<std::string> words = {bands_plan_words(report.bands)};
  add_new(words, all_note_words(bands.notes, bands.units));
  if (report.members) add_new(words, all_note_words(report.members->result.notes, bands.units));
  words.push_back(
      fmt::format("Made by Yardworth {}. Nothing is drawn at random, so there is no seed to name.", version));
  return html_section("What it rests on", html_list(words), "basis");
}

std::string cautions(const ClubReport& report) {
  std::vector<std::string> words = all_caution_words(report.bands.result.cautions);
  if (report.members) add_new(words, all_caution_words(report.members->result.cautions));
  return html_section("Cautions", html_list(words));
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string club_html(const ClubReport& report) {
  const BandsResult& result = report.bands.result;
  const std::string body = report::head(result) + report::answer(report) + report::changed_hazards(result) +
                           report::rounds(result) + report::suiting(result) + report::members(report.members) +
                           report::hazards(result) + report::points(result) + report::basis(report) +
                           report::cautions(report);
  return report::html_page(fmt::format("{}: what distance is worth to a club", result.course), body);
}

}  // namespace yardworth
