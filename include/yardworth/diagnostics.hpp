#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "yardworth/units.hpp"

namespace yardworth {

// A fault makes a file unusable; advice is worth saying and changes nothing.
enum class Severity { fault, advice };

// One finding about one place of one file.
struct Diagnostic {
  Severity severity = Severity::fault;
  std::string file;      // as the user named it
  int line = 0;          // from 1; 0 where the finding is about the whole file
  int column = 0;        // from 1; 0 likewise
  std::string path;      // key's path, such as holes[3].hazards[1].from; empty for the whole file
  std::string found;     // what is there
  std::string expected;  // what should be there, with the nearest known key where one is misspelt
};

// A fault of a whole file: why it is neither read nor written.
Diagnostic file_fault(const std::string& file, const std::string& found, const std::string& expected);

// What reading a file gives: the value only when there is no fault, and every finding in the order of the file.
template <class T>
struct Reading {
  std::optional<T> value;
  std::vector<Diagnostic> findings;

  bool ok() const { return value.has_value(); }
};

bool has_fault(const std::vector<Diagnostic>& findings);

// "file:line:column: fault: path: found ..., expected ...". One line; control characters are escaped.
std::string to_line(const Diagnostic& finding);

// Text made safe for a terminal: control characters (C0, C1, DEL) and invalid UTF-8 become \xNN, marks of text
// direction (U+200E, U+200F, U+202A to U+202E, U+2066 to U+2069) \xNNNN.
std::string escape_control(const std::string& text);

// What the questions of the library throw.

// A request that makes no sense, or is about a course or a player with faults; what() has a line for each finding.
class InvalidRequest : public std::invalid_argument {
 public:
  // At least one finding. Their files are "course", "player" and "request", their paths the names of the members, as in
  // "change.driver_carry_yd".
  explicit InvalidRequest(std::vector<Diagnostic> findings);
  const std::vector<Diagnostic>& findings() const { return findings_; }

 private:
  std::vector<Diagnostic> findings_;
};

// A hole that cannot be finished with a golfer's clubs, or hardly can: that takes more than most_strokes.
struct UnfinishedHole {
  int number = 0;
  // The least carry that the hole takes. 0: no carry is wanting, but from some place the shots of the policy hardly get
  // the ball to the hole.
  double needed_carry_yd = 0.0;
  double most_strokes = 30.0;
};

// Holes that cannot be finished with these clubs; what() is a sentence for the golfer, in the units of the course.
class CannotFinish : public std::runtime_error {
 public:
  CannotFinish(std::vector<UnfinishedHole> holes, Units units);
  // Of whoever works on one hole and does not know which.
  explicit CannotFinish(const std::string& sentence) : std::runtime_error(sentence) {}

  const std::vector<UnfinishedHole>& holes() const { return holes_; }

 private:
  std::vector<UnfinishedHole> holes_;
};

}  // namespace yardworth
