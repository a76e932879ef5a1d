#include "input/document.hpp"

#include <fmt/format.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <boost/locale/utf.hpp>
#include <istream>
#include <streambuf>
#include <utility>

#include "core/message_text.hpp"

namespace yardworth::input {
namespace {

constexpr std::size_t deepest = 20;
constexpr std::size_t most_nodes = 100'000;
// Of YAML's signs in one file, outside comments: twice as many as values.
constexpr std::size_t most_signs = 2 * most_nodes;

bool continues_character(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) == 0x80; }

Diagnostic fault_at(const std::string& file, Place place, std::string found, std::string expected) {
  return {Severity::fault, file, place.line, place.column, "", std::move(found), std::move(expected)};
}

// Without a byte order mark and with line feeds only, so that a line is a line whatever system wrote the file.
std::string plain_lines(std::string_view text) {
  constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
  if (text.substr(0, byte_order_mark.size()) == byte_order_mark) text.remove_prefix(byte_order_mark.size());
  std::string plain;
  plain.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool half_of_pair = text[i] == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
    if (!half_of_pair) plain += text[i] == '\r' ? '\n' : text[i];
  }
  return plain;
}

// The first thing in the text that is no text. The YAML reader would take some of these for the end of the file.
std::optional<Diagnostic> refuse_bytes(const std::string& text, const std::string& file) {
  Place place{1, 1};
  for (auto at = text.begin(); at != text.end();) {
    const auto byte = static_cast<unsigned char>(*at);
    const auto point = boost::locale::utf::utf_traits<char>::decode(at, text.end());
    if (!boost::locale::utf::is_valid_codepoint(point)) {
      return fault_at(file, place, fmt::format("byte 0x{:02X}, which is not UTF-8", byte), "text in UTF-8");
    }
    if ((point < 0x20 && point != '\t' && point != '\n') || point == 0x7F) {
      return fault_at(file, place, fmt::format("control character 0x{:02X}", point), "text");
    }
    if (point == '\n') {
      place = {place.line + 1, 1};
    } else {
      ++place.column;
    }
  }
  return std::nullopt;
}

// The reader counts columns in bytes; people and editors count characters.
class Places {
 public:
  explicit Places(std::string_view text) : text_(text) {}

  Place of(const YAML::Mark& mark) {
    if (mark.pos < 0 || mark.line < 0 || mark.column < 0) return {};
    const auto at = static_cast<std::size_t>(mark.pos);
    // The reader forgets the column once it has come to the end.
    if (at >= text_.size()) return of_end();
    return {mark.line + 1, characters(at - std::min(at, static_cast<std::size_t>(mark.column)), at) + 1};
  }

  Place of_end() {
    const std::size_t last_feed = text_.rfind('\n');
    const auto lines = static_cast<int>(std::count(text_.begin(), text_.end(), '\n'));
    return {lines + 1, characters(last_feed == std::string_view::npos ? 0 : last_feed + 1, text_.size()) + 1};
  }

  // Of a text in quotation marks that begins here.
  bool closes_on_line(const YAML::Mark& mark) const {
    if (mark.pos < 0 || static_cast<std::size_t>(mark.pos) >= text_.size()) return true;
    const std::string_view line = text_.substr(static_cast<std::size_t>(mark.pos));
    return line.find(line.front(), 1) < line.find('\n');
  }

 private:
  // Those of a line that begins at start, before at. Marks come in the order of the text, so each is counted from the
  // one before: a long line costs no more than many short ones.
  int characters(std::size_t start, std::size_t at) {
    if (counted_to_ < start || counted_to_ > at) {
      counted_to_ = start;
      characters_ = 0;
    }
    for (; counted_to_ < at; ++counted_to_) characters_ += continues_character(text_[counted_to_]) ? 0 : 1;
    return characters_;
  }

  std::string_view text_;
  std::size_t counted_to_ = 0;
  int characters_ = 0;  // of the line of counted_to_, before it
};

// Ends the reading of a document from within; the reason is among the findings.
struct Stop {};

// Grows the tree from the reader's events.
class TreeBuilder : public YAML::EventHandler {
 public:
  TreeBuilder(Places& places, const std::string& file) : places_(places), file_(file) {}

  void OnDocumentStart(const YAML::Mark& mark) override {
    if (++documents_ > 1) stop(mark, "a second document", "one document in a file");
  }
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    add(start(mark, Node::Kind::nothing, "", anchor));
  }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    refuse(mark, "an alias (*)", "the value itself");
    add(start(mark, Node::Kind::refused, "", {}));
  }
  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    Node node = start(mark, Node::Kind::scalar, tag, anchor);
    node.text = value;
    node.quoted = tag == "!";
    if (node.quoted && !places_.closes_on_line(mark)) {
      stop(mark, "a quotation mark that is not closed on its line", "the same mark at the end of the text");
    }
    add(std::move(node));
  }
  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value) override {
    open_.push_back({start(mark, Node::Kind::list, tag, anchor), std::nullopt, true});
  }
  void OnSequenceEnd() override { close(); }
  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value) override {
    open_.push_back({start(mark, Node::Kind::map, tag, anchor), std::nullopt, true});
  }
  void OnMapEnd() override { close(); }

  std::optional<Node> root;
  std::vector<Diagnostic> findings;

 private:
  // A list or a map that has begun and not ended.
  struct Open {
    Node node;
    std::optional<Entry> key;  // of a map: read, its value is yet to come
    bool key_is_text = true;   // otherwise the value is dropped with the key
  };

  void refuse(const YAML::Mark& mark, std::string found, std::string expected) {
    findings.push_back(fault_at(file_, places_.of(mark), std::move(found), std::move(expected)));
  }
  [[noreturn]] void stop(const YAML::Mark& mark, std::string found, std::string expected) {
    refuse(mark, std::move(found), std::move(expected));
    throw Stop{};
  }

  Node start(const YAML::Mark& mark, Node::Kind kind, const std::string& tag, YAML::anchor_t anchor) {
    if (++nodes_ > most_nodes) stop(mark, "too much in one file", fmt::format("at most {} values", most_nodes));
    if (open_.size() >= deepest) {
      stop(mark, "lists and maps in one another too deeply", fmt::format("at most {} levels", deepest));
    }
    if (anchor != 0) refuse(mark, "an anchor (&)", "the value without a name of its own");
    Node node;
    node.kind = kind;
    node.place = places_.of(mark);
    // "?" and "!" are the reader's own for plain and quoted values.
    const bool tagged = !tag.empty() && tag != "?" && tag != "!";
    if (tagged) {
      refuse(mark, fmt::format("the tag {}", shortened(tag)), "a plain value without a tag");
      node.kind = Node::Kind::refused;
    }
    return node;
  }

  void close() {
    Node node = std::move(open_.back().node);
    open_.pop_back();
    add(std::move(node));
  }

  void add(Node node) {
    if (open_.empty()) {
      root = std::move(node);
    } else if (Open& top = open_.back(); top.node.kind == Node::Kind::list) {
      top.node.items.push_back(std::move(node));
    } else if (top.node.kind == Node::Kind::refused) {
      return;
    } else if (top.key) {
      top.key->value = std::move(node);
      if (top.key_is_text) top.node.entries.push_back(std::move(*top.key));
      top.key.reset();
    } else {
      add_key(top, node);
    }
  }

  void add_key(Open& map, const Node& node) {
    map.key_is_text = node.kind == Node::Kind::scalar;
    map.key = {node.text, node.place, {}};
    const bool unreported = !map.key_is_text && node.kind != Node::Kind::refused;
    if (unreported) findings.push_back(fault_at(file_, node.place, "a key that is not text", "a key"));
  }

  Places& places_;
  const std::string& file_;
  std::vector<Open> open_;
  std::size_t nodes_ = 0;
  int documents_ = 0;
};

// Text to read from without a copy of it.
class TextBuffer : public std::streambuf {
 public:
  explicit TextBuffer(std::string_view text) {
    char* begin = const_cast<char*>(text.data());  // never written: a stream that is only read puts nothing back
    setg(begin, begin, begin + text.size());
  }
};

// What the YAML reader says of text that it cannot read, in plain words where beginners meet it.
Diagnostic unreadable(const YAML::Exception& error, const std::string& file, Places& places) {
  struct Plain {
    std::string_view said, found, expected;
  };
  constexpr Plain plain[] = {
      {"illegal EOF in scalar", "a quotation mark that is never closed", "the same mark at the end of the text"},
      {"illegal tab", "a tab at the beginning of the line", "blanks in its place: YAML indents by blanks alone"},
      {"end of map flow not found", "a { that is not closed", "} at the end of the list of keys"},
      {"end of sequence flow not found", "a [ that is not closed", "] at the end of the list"},
      {"end of map not found", "a line that is indented differently from those above it",
       "the keys of one map in one column"},
      {"end of sequence not found", "a line that is indented differently from those above it",
       "the dashes of one list in one column"},
      {"illegal map value", "a second colon, or a key in the wrong column",
       "one key with its value in a line, or the value in quotation marks"},
  };
  for (const Plain& one : plain) {
    if (error.msg.find(one.said) == std::string::npos) continue;
    return fault_at(file, places.of(error.mark), std::string(one.found), std::string(one.expected));
  }
  return fault_at(file, places.of(error.mark), "text that YAML cannot read: " + error.msg, "a YAML document");
}

// Why the reading ended: the text did, or a limit was passed.
enum class Ended { text, limit };

Ended read_events(std::string_view text, const std::string& file, TreeBuilder& builder, Places& places) {
  try {
    TextBuffer buffer(text);
    std::istream stream(&buffer);
    YAML::Parser parser(stream);
    while (parser.HandleNextDocument(builder)) continue;
  } catch (const YAML::Exception& error) {
    builder.root.reset();
    builder.findings.push_back(unreadable(error, file, places));
  } catch (const Stop&) {
    builder.root.reset();
    return Ended::limit;
  }
  return Ended::text;
}

// Where the most_signs first signs that may mean something end, or the text. A pair of quotes is one sign. In a line
// that begins with # none does before a quote, which may be the end of a quoted text.
std::size_t end_of_signs(std::string_view text) {
  constexpr std::string_view quotes = "\"'";
  constexpr std::string_view others = "[]{},:?-&*!|>";
  std::size_t halves = 0;
  bool line_is_blank = true;
  bool comment = false;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char sign = text[at];
    const bool quote = quotes.find(sign) != std::string_view::npos;
    if (sign == '\n' || quote) comment = false;
    if (sign == '#' && line_is_blank) comment = true;
    if (sign != ' ' && sign != '\t') line_is_blank = sign == '\n';
    if (comment) continue;
    halves += quote ? 1 : others.find(sign) != std::string_view::npos ? 2 : 0;
    if (halves > 2 * most_signs) return at;
  }
  return text.size();
}

// The YAML reader looks ahead as far as a list in brackets goes, to see whether it is a key, and keeps all it has seen:
// 400 bytes a sign. So it is given no more signs than a file within the limits can need; which limit the text passes is
// told as if it ended there.
Document refuse_signs(std::string_view text, const std::string& file) {
  Places places(text);
  TreeBuilder builder(places, file);
  if (read_events(text, file, builder, places) == Ended::limit) return {std::nullopt, std::move(builder.findings)};
  return {std::nullopt,
          {fault_at(file, places.of_end(), "too much in one file",
                    fmt::format("at most {} brackets, commas, colons and other signs of YAML", most_signs))}};
}

}  // namespace

Document parse_document(std::string_view raw, const std::string& file) {
  const std::string text = plain_lines(raw);
  if (auto finding = refuse_bytes(text, file)) return {std::nullopt, {std::move(*finding)}};
  const std::size_t end = end_of_signs(text);
  if (end < text.size()) return refuse_signs(std::string_view(text).substr(0, end), file);
  Places places(text);
  TreeBuilder builder(places, file);
  read_events(text, file, builder, places);
  if (builder.findings.empty() && (!builder.root || builder.root->kind == Node::Kind::nothing)) {
    builder.findings.push_back(fault_at(file, {1, 1}, "an empty file", "a file that begins with format:"));
    builder.root.reset();
  }
  return {std::move(builder.root), std::move(builder.findings)};
}

}  // namespace yardworth::input
