#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/diagnostics.hpp"

namespace yardworth::input {

// Line and column of a file, from 1; a column is a character, not a byte.
struct Place {
  int line = 0;
  int column = 0;
};

struct Entry;

// A value of the file. refused stands where the text had something our formats do without (an alias, a tag): that is
// a finding already, and nobody need look further.
struct Node {
  enum class Kind { nothing, scalar, list, map, refused };
  Kind kind = Kind::nothing;
  Place place;
  std::string text;            // of a scalar
  bool quoted = false;         // a quoted number is text
  std::vector<Node> items;     // of a list
  std::vector<Entry> entries;  // of a map, in the order of the file, repeated keys and all
};

struct Entry {
  std::string key;
  Place place;
  Node value;
};

struct Document {
  std::optional<Node> root;  // nothing: the text is not a document that can be looked at
  std::vector<Diagnostic> findings;
};

// Reads the text as one plain YAML document: UTF-8, lists, maps and scalars. Aliases and anchors are refused before
// they are followed, so that no text grows when it is read; depth and size have limits.
Document parse_document(std::string_view text, const std::string& file);

}  // namespace yardworth::input
