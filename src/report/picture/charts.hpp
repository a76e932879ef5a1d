#pragma once

#include <string>
#include <vector>

#include "report/picture/svg.hpp"

namespace yardworth::report {

// Charts as wide as a picture, from rows that are ready: numbers with the words beside them. What is before is hollow
// and dashed, what is after solid.

// A chart that is put together from the top down.
struct Sheet {
  std::string svg;
  double top = 0.0;  // of what comes next

  void heading(const std::string& words);
  void paragraph(const std::string& words);
  Panel panel() const { return {svg, top + 14.0}; }
};

// A bar from one number to another. Whole ones (totals) are grey; those that go down are hatched.
struct Bar {
  std::string name;
  double from = 0.0;
  double to = 0.0;
  std::string value;  // in words
  bool total = false;
};
enum class Joined { no, yes };  // yes: each begins where the one before ends, and a line says so
void add_bars(Sheet& sheet, const std::vector<Bar>& bars, Joined joined, const std::string& prefix);

// Two numbers of one thing.
struct Pair {
  std::string name;
  double before = 0.0;
  double after = 0.0;
  std::string value;
};
void add_pairs(Sheet& sheet, const std::vector<Pair>& pairs);

// A number and the interval that it lies in.
struct Interval {
  std::string name;
  double value = 0.0;
  double low = 0.0;
  double high = 0.0;
  std::string words;
  bool before = false;
};
void add_intervals(Sheet& sheet, const std::vector<Interval>& intervals);

// Lines over a scale of two axes.
struct Line {
  std::vector<Point> points;
  bool dashed = false;
  bool stepped = false;  // each value holds half way to its neighbours
  bool dotted_points = false;
};
struct Mark {
  double x = 0.0;
  std::string words;
};
// An interval that a number at x lies in.
struct Span {
  double x = 0.0;
  double value = 0.0;
  double low = 0.0;
  double high = 0.0;
};
struct LineChart {
  std::vector<Line> lines;
  std::vector<Mark> marks;
  // Places that words below the chart are about, numbered from 1 in a ring above it.
  std::vector<Point> pins;
  std::vector<Span> spans;
  std::string x_words;
};
void add_lines(Sheet& sheet, const LineChart& chart);

// The distance between the numbers of an axis: 1, 2 or 5 times a power of ten, for at most so many.
double axis_step(double range, int most);

}  // namespace yardworth::report
