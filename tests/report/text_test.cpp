#include "report/text.hpp"

#include <doctest/doctest.h>

#include "support/words.hpp"
#include "yardworth/report.hpp"

using namespace yardworth;

TEST_CASE("numbers never show a negative zero") {
  CHECK(fixed(-0.004, 2) == "0.00");
  CHECK(fixed(-0.4, 0) == "0");
  CHECK(fixed(-0.006, 2) == "-0.01");
  CHECK(fixed(-10.0, 1) == "-10.0");
  CHECK(plain_number(20.0) == "20");
  CHECK(plain_number(100.0) == "100");
  CHECK(plain_number(7.5) == "7.5");
  CHECK(plain_number(-0.04) == "0");
}

TEST_CASE("a share claims never and always only where it is so") {
  CHECK(percent(0.0) == "0%");
  CHECK(percent(0.004) == "<1%");
  CHECK(percent(0.41) == "41%");
  CHECK(percent(0.996) == ">99%");
  CHECK(percent(1.0) == "100%");
}

TEST_CASE("width is counted in columns") {
  CHECK(display_width("") == 0);
  CHECK(display_width("plain") == 5);
  CHECK(display_width("S\u00f6der\u00e5sen") == 9);
  CHECK(display_width("e\u0301") == 1);       // e and a combining acute accent
  CHECK(display_width("\u6771\u4eac") == 4);  // two wide characters
  CHECK(display_width("a\xff") == 2);
}

TEST_CASE("long text is shortened between characters") {
  CHECK(shorten("7-iron", 10) == "7-iron");
  CHECK(shorten("0123456789", 10) == "0123456789");
  CHECK(shorten("01234567890", 10) == "0123456...");
  CHECK(shorten("\u00e5\u00e5\u00e5\u00e5\u00e5\u00e5", 5) == "\u00e5\u00e5...");
  CHECK(shorten("\u6771\u4eac\u6771\u4eac", 6) == "\u6771...");
}

TEST_CASE("paragraphs are broken between words") {
  CHECK(wrap("one two three", 7) == "one two\nthree\n");
  CHECK(wrap("- one two three", 9, 2) == "- one two\n  three\n");
  CHECK(wrap("incomprehensible is long", 8) == "incomprehensible\nis long\n");
  CHECK(wrap("", 8) == "\n");
  CHECK(break_long_words("incomprehensible is long", 8) == "incompre hensible is long");
  CHECK(wrap("- " + break_long_words("incomprehensible is long", 6), 8, 2) ==
        "- incomp\n  rehens\n  ible\n  is\n  long\n");
  const std::string name(95, 'n');
  for (const std::string& text :
       {Page(60).paragraph("from the " + name + " tees"), Page(60).bullet(name + " tees"), Page(60).section(name)}) {
    for (const std::string& line : test::lines_of(text)) CHECK(display_width(line) <= 60);
  }
}

TEST_CASE("columns of a table stand in line") {
  const Table table{{{"name", Align::left}, {"strokes\nsaved"}}, {{"\u00e5ke", "1.5"}, {}, {"all", "10.25"}}};
  CHECK(format_table(table, report_width) ==
        "      strokes\n"
        "name    saved\n"
        "\u00e5ke       1.5\n"
        "----  -------\n"
        "all     10.25\n");
}

TEST_CASE("a table that is too wide draws its columns together, and cells keep to their widest") {
  const Table table{{{"a"}, {"b", Align::left, 6}}, {{"1", "0123456789"}}};
  CHECK(format_table(table, 9) == "a  b\n1  012...\n");
  CHECK(format_table(table, 8) == "a b\n1 012...\n");
}

TEST_CASE("columns of a table that is too wide give way in their turn, and what is left out is named") {
  Table table{{{"hole"},
               give_way({"yards"}, 2, GivesWay::left_out),
               give_way({"next", Align::left}, 1, GivesWay::broken_between_parts),
               {"strokes saved"}},
              {{"1", "376", "5-wood 39% -> 5-iron 19%", "0.06"}, {}, {"all", "6013", "", "1.41"}}};
  CHECK(format_table(table, 55) ==
        "hole  yards  next                      strokes saved\n"
        "   1    376  5-wood 39% -> 5-iron 19%           0.06\n"
        "----  -----  ------------------------  -------------\n"
        " all   6013                                     1.41\n");
  CHECK(format_table(table, 35) ==
        "                            strokes\n"
        "hole  yards  next             saved\n"
        "   1    376  5-wood 39% ->     0.06\n"
        "             5-iron 19%\n"
        "----  -----  -------------  -------\n"
        " all   6013                    1.41\n");
  CHECK(format_table(table, 27) ==
        "                   strokes\n"
        "hole next            saved\n"
        "   1 5-wood 39% ->    0.06\n"
        "     5-iron 19%\n"
        "---- ------------- -------\n"
        " all                  1.41\n"
        "Left out for want of room:\nyards.\n");
  CHECK(Page(60).shows(table, "yards"));
}

TEST_CASE("columns that are alike and have no room side by side stand below each other") {
  const Table table{{{"", Align::left}, {"tour"}, {"21 and over"}, {"bogey"}}, {{"found", "2%", "30%", "4%"}}};
  CHECK(format_table_in_parts(table, 1, 40) ==
        "       tour  21 and over  bogey\n"
        "found    2%          30%     4%\n");
  CHECK(format_table_in_parts(table, 1, 26) ==
        "             21 and\n"
        "       tour    over  bogey\n"
        "found    2%     30%     4%\n");
  CHECK(format_table_in_parts(table, 1, 20) ==
        "             21 and\n"
        "       tour    over\n"
        "found    2%     30%\n"
        "\n"
        "       bogey\n"
        "found     4%\n");
}

TEST_CASE("text for pages cannot become markup") {
  CHECK(escape_html("<script>alert('1' & \"2\")</script>") ==
        "&lt;script&gt;alert(&#39;1&#39; &amp; &quot;2&quot;)&lt;/script&gt;");
  CHECK(escape_html("a\x1b[1mb\nc") == "a\\x1B[1mb\\x0Ac");
  CHECK(escape_html("\xff<") == "\\xFF&lt;");
  CHECK(escape_html("\u00e5") == "\u00e5");
}

TEST_CASE("cells of CSV are quoted as RFC 4180 has it") {
  CHECK(csv_text("plain words") == "plain words");
  CHECK(csv_text("a,b") == "\"a,b\"");
  CHECK(csv_text("say \"fore\"") == "\"say \"\"fore\"\"\"");
  CHECK(csv_text("two\nlines") == "\"two\nlines\"");
  CHECK(csv_text("two\r\nlines") == "\"two\r\nlines\"");
  CHECK(csv_text("") == "");
  CHECK(csv_row({"a", "b", ""}) == "a,b,\r\n");
}

TEST_CASE("a spreadsheet takes no cell for a formula") {
  CHECK(csv_text("=1+1") == "'=1+1");
  CHECK(csv_text("+1") == "'+1");
  CHECK(csv_text("-1") == "'-1");
  CHECK(csv_text("@x") == "'@x");
  CHECK(csv_text("\tx") == "'\tx");
  CHECK(csv_text("\rx") == "\"'\rx\"");
  CHECK(csv_text("=a,b") == "\"'=a,b\"");
  CHECK(csv_text("7-iron") == "7-iron");
}

TEST_CASE("a spreadsheet takes no cell for a date or a time") {
  for (const char* date : {"6-12", "13-20", "1/2", "1.5.26", "6:30", "3 May", "May 5", "sep-12", "March 2026"}) {
    CHECK(csv_text(date) == std::string("'") + date);
  }
  for (const char* words :
       {"7-iron", "6 to 12", "weekend 16", "junior 12", "12", "short game", "bunker at 209-229", ""}) {
    CHECK(csv_text(words) == words);
  }
}
