#pragma once

#include <doctest/doctest.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <pty.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <string>

namespace yardworth::test {

// The built program, run as a shell runs it.

// What the program writes to a pipe, with these variables of the environment; called from the root of the sources.
inline std::string written(const std::string& environment, const std::string& arguments) {
  const std::string line = fmt::format("cd '{}' && env -u COLUMNS -u NO_COLOR {} '{}' {} 2>/dev/null",
                                       YARDWORTH_SOURCE_DIR, environment, YARDWORTH_PROGRAM, arguments);
  std::FILE* pipe = ::popen(line.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string out;
  std::array<char, 4096> buffer{};
  while (const std::size_t count = std::fread(buffer.data(), 1, buffer.size(), pipe)) out.append(buffer.data(), count);
  ::pclose(pipe);
  return out;
}

// What it writes to a terminal of so many columns.
inline std::string written_to_terminal(unsigned short columns, const std::string& environment,
                                       const std::string& arguments) {
  int terminal = -1;
  int ours = -1;
  winsize size{};
  size.ws_row = 24;
  size.ws_col = columns;
  REQUIRE(::openpty(&ours, &terminal, nullptr, nullptr, &size) == 0);
  const std::string name = fmt::format("/proc/{}/fd/{}", ::getpid(), terminal);
  const std::string line = fmt::format("cd '{}' && env -u COLUMNS -u NO_COLOR TERM=dumb {} '{}' {} >'{}' 2>/dev/null",
                                       YARDWORTH_SOURCE_DIR, environment, YARDWORTH_PROGRAM, arguments, name);
  std::FILE* pipe = ::popen(line.c_str(), "r");
  REQUIRE(pipe != nullptr);
  ::fcntl(ours, F_SETFL, O_NONBLOCK);
  std::string out;
  std::array<char, 4096> buffer{};
  const auto take = [&] {
    for (auto count = ::read(ours, buffer.data(), buffer.size()); count > 0;
         count = ::read(ours, buffer.data(), buffer.size())) {
      out.append(buffer.data(), static_cast<std::size_t>(count));
    }
  };
  for (std::array<char, 1> end{}; std::fread(end.data(), 1, 1, pipe) == 1;) take();
  ::pclose(pipe);
  take();
  ::close(terminal);
  ::close(ours);
  out.erase(std::remove(out.begin(), out.end(), '\r'), out.end());
  return out;
}

}  // namespace yardworth::test
