// The embedding function: any bytes are answered with one JSON object that has a status, and findings where something
// is at fault. Questions of gain are made quick ones (method table, one hole); those of strategy and bands are only
// read as texts to check, since answering them takes too long here.

#include <cstddef>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "promise.hpp"
#include "yardworth/embed.hpp"

namespace yardworth::fuzz {
namespace {

using Json = nlohmann::ordered_json;

// What is asked with options of its own is asked about one hole by method table.
std::string quick(std::string_view text) {
  Json request = Json::parse(text, nullptr, false);
  if (!request.is_object()) return std::string(text);
  const Json command = request.value("command", Json());
  if (command != "gain" && command != "strategy" && command != "bands") return std::string(text);
  if (command != "gain") request["command"] = "check";
  if (!request.contains("parts")) request["holes"] = {1};
  Json& options = request["options"];
  if (options.is_object()) options["method"] = "table";
  // A curve takes long, another strike does not.
  if (options.is_object() && options.contains("to") && !options["to"].is_object()) options.erase("to");
  return request.dump(-1, ' ', true, Json::error_handler_t::replace);
}

void ask(std::string_view text) {
  const Json answered = Json::parse(answer(quick(text)), nullptr, false);
  promise(answered.is_object() && answered.contains("status"), "an answer is an object with a status");
  const bool done = answered["status"] == 0;
  promise(done == answered.contains("answer"), "what is done is answered");
  promise(done || !answered["message"].get<std::string>().empty(), "what is not done is explained");
  promise(answered["status"] != 2 || !answered["findings"].empty(), "what is at fault is found");
}

}  // namespace
}  // namespace yardworth::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  yardworth::fuzz::ask({reinterpret_cast<const char*>(data), size});
  return 0;
}
