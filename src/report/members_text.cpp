#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/cannot_finish_words.hpp"
#include "core/full_round.hpp"
#include "report/bands_parts.hpp"
#include "report/basis_words.hpp"
#include "report/members_parts.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace report {

const MemberOnTee& on_usual_tee(const MemberResult& member) { return member.from_tees[member.usual_tee]; }

bool finishes(const MemberResult& member) { return on_usual_tee(member).cannot_finish.empty(); }

std::string index_words(double index) { return index < 0.0 ? "+" + fixed(-index, 1) : fixed(index, 1); }

}  // namespace report

namespace {

using report::finishes;
using report::index_words;
using report::on_usual_tee;
using report::shown_name;
using report::Subject;

std::string tee_shown(const MembersResult& result, const std::optional<std::size_t>& tee) {
  return tee ? shorten(escape_control(result.tees[*tee].name), 12) : std::string("-");
}

// "; by the clubs of their second shots the middle tees suit 12 of them, the forward tees 4"; empty where none suits.
std::string suited(const MembersResult& result) {
  std::string words;
  for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
    const auto count = std::count_if(result.members.begin(), result.members.end(),
                                     [&](const MemberResult& member) { return member.by_clubs == tee; });
    if (count == 0) continue;
    words += fmt::format("{} the {} tees{} {}{}", words.empty() ? "" : ",", shown_name(result.tees[tee].name),
                         words.empty() ? " suit" : "", count, words.empty() ? " of them" : "");
  }
  return words.empty() ? "" : "; by the clubs of their second shots" + words;
}

// Whom the change helps most and least from their usual tees, and what it is on average.
struct Gains {
  const MemberResult* most = nullptr;
  const MemberResult* least = nullptr;
  double mean = 0.0;
  int count = 0;
};

Gains gains_of(const MembersResult& result, double sign) {
  const auto effect = [&](const MemberResult& member) { return sign * on_usual_tee(member).round.strokes_saved(); };
  Gains gains;
  for (const MemberResult& member : result.members) {
    if (!finishes(member)) continue;
    gains.mean += effect(member);
    ++gains.count;
    if (gains.most == nullptr || effect(member) > effect(*gains.most)) gains.most = &member;
    if (gains.least == nullptr || effect(member) < effect(*gains.least)) gains.least = &member;
  }
  if (gains.count > 0) gains.mean /= gains.count;
  return gains;
}

std::string suits_one(const MembersResult& result, const MemberResult& member) {
  if (!member.by_clubs) return "";
  return fmt::format("; by the clubs of the second shots the {} tees suit",
                     shown_name(result.tees[*member.by_clubs].name));
}

std::string saving_of(const MemberResult& member, double sign) {
  return fixed(sign * on_usual_tee(member).round.strokes_saved(), 1);
}

}  // namespace

std::string members_sentence(const MembersResult& result) {
  const std::string course = shown_name(result.course);
  const bool one = result.members.size() == 1;
  if (!report::carry_changes(result.change)) {
    return fmt::format("With no carry gained or lost nothing changes on {}{}.", course,
                       one ? suits_one(result, result.members.front()) : suited(result));
  }
  const bool loss = result.change.driver_carry_yd < 0.0 ||
                    (result.change.driver_carry_yd == 0.0 && result.change.irons_carry_yd < 0.0);
  const double sign = loss ? -1.0 : 1.0;
  const Gains gains = gains_of(result, sign);
  if (gains.count == 0) return fmt::format("No member can finish {} from the usual tees.", course);
  const Subject subject = report::carry_subject(result.change, result.units);
  const std::string round = result.holes == full_round_holes ? "round" : fmt::format("round of {} holes", result.holes);
  const std::string begin =
      fmt::format("On {} {} {}{}", course, subject.text, loss ? "cost" : "save", subject.singular ? "s" : "");
  const std::string most = shown_name(gains.most->member.label);
  if (gains.count == 1) {
    return fmt::format("{} {} {} strokes a {}{}.", begin, most, saving_of(*gains.most, sign), round,
                       one ? suits_one(result, *gains.most) : suited(result));
  }
  return fmt::format("{} {} members {} strokes a {} on average, {} most, {}, and {} least, {}{}.", begin, gains.count,
                     fixed(gains.mean, 1), round, most, saving_of(*gains.most, sign),
                     shown_name(gains.least->member.label), saving_of(*gains.least, sign), suited(result));
}

namespace {

Table members_table(const MembersResult& result) {
  const std::string unit = name(result.units);
  return {{{"", Align::left, 24},
           {"index"},
           give_way({"drive\n" + unit}, 2, GivesWay::left_out),
           {"tees", Align::left},
           {"strokes"},
           {"saved"},
           give_way({"net\nscore"}, 4, GivesWay::left_out),
           give_way({"Stableford\npoints"}, 5, GivesWay::left_out),
           give_way({"Handicap\nIndex"}, 1, GivesWay::left_out),
           give_way({"tees by\nlength", Align::left}, 3, GivesWay::left_out),
           {"tees by\nclubs", Align::left}},
          {}};
}

std::vector<std::string> member_row(const MembersResult& result, const MemberResult& member) {
  const MemberOnTee& played = on_usual_tee(member);
  std::vector<std::string> row = {escape_control(member.member.label), index_words(member.member.handicap_index),
                                  length_text(member.driver_distance_yd, result.units),
                                  tee_shown(result, member.usual_tee)};
  if (finishes(member)) {
    const auto& scores = played.scores;
    const auto numbers = [](double before, double after) { return before_after(fixed(before, 1), fixed(after, 1)); };
    row.push_back(fixed(played.round.before, 1));
    row.push_back(strokes_text(played.round.strokes_saved()));
    row.push_back(scores ? numbers(scores->net_before, scores->net_after) : "-");
    row.push_back(scores ? numbers(scores->stableford_before, scores->stableford_after) : "-");
    row.push_back(scores ? signed_tenths(scores->handicap_index_change) : "-");
  } else {
    row.insert(row.end(), 5, "-");
  }
  row.push_back(tee_shown(result, member.by_length));
  row.push_back(tee_shown(result, member.by_clubs));
  return row;
}

std::string table_words(const MembersResult& result) {
  std::string lengths;
  for (const TeeOfBands& tee : result.tees) {
    lengths += fmt::format("{}{} {}", lengths.empty() ? "" : ", ", shorten(escape_control(tee.name), 12),
                           length_text(tee.length_yd, result.units));
  }
  const std::string of_tees =
      result.tees.size() < 2
          ? ""
          : fmt::format(
                " Tees by length: those whose total length is recommended for the length of the drive, carry and roll "
                "(USGA / PGA of America tee guideline); here {}. By clubs: those from which the second shots of the "
                "par "
                "4s are nearest to those of scratch golfers of the same gender from the {} tees.",
                lengths, shorten(escape_control(result.longest_tee), 12));
  return "Strokes: expected for a round from the tees named beside them, before the change. Net score and points: "
         "under "
         "today's Course Handicap, before and after; Handicap Index: the change to expect; - where those tees are not "
         "rated for the member." +
         of_tees;
}

std::string cannot_finish_lines(const MembersResult& result, const Page& page) {
  std::string text;
  for (const MemberResult& member : result.members) {
    for (std::size_t tee = 0; tee < result.tees.size(); ++tee) {
      const MemberOnTee& on_tee = member.from_tees[tee];
      if (on_tee.cannot_finish.empty()) continue;
      text += page.bullet(fmt::format("{}, {} tees: {}", shorten(escape_control(member.member.label), 24),
                                      tee_shown(result, tee), cannot_finish_words(on_tee.cannot_finish, result.units)));
    }
  }
  return text;
}

std::string basis_section(const MembersResult& result, const Page& page) {
  std::string text = page.section("What it rests on");
  text += page.bullet(result.policy == PolicyChoice::habit
                          ? "Habit plan: the longest sensible club off the tee of a par 4 or 5 down the middle, then "
                            "the club that fits the distance left at the middle of the green."
                          : "Best plan: for every place the ball can lie, the club and aim with the fewest expected "
                            "strokes.");
  for (const Note& note : result.notes) text += page.bullet(report::note_words(note, result.units));
  text += page.section("Cautions");
  for (const Caution& caution : result.cautions) text += page.bullet(report::caution_words(caution));
  return text;
}

}  // namespace

std::string members_text(const MembersReport& report, bool emphasis, std::size_t columns) {
  const MembersResult& result = report.result;
  const Page page(columns);
  std::string text;
  for (const std::string& line : report.opening) text += page.paragraph(escape_control(line));
  if (!text.empty()) text += '\n';
  std::string answer = page.paragraph(members_sentence(result));
  if (emphasis) {
    answer.pop_back();
    answer = "\x1b[1m" + answer + "\x1b[0m\n";
  }
  Table table = members_table(result);
  for (const MemberResult& member : result.members) table.rows.push_back(member_row(result, member));
  return text + answer + page.section("Members") + page.table(table) + page.paragraph(table_words(result)) +
         cannot_finish_lines(result, page) + basis_section(result, page);
}

}  // namespace yardworth
