#include <sys/ioctl.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <exception>
#include <filesystem>
#include <new>
#include <optional>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

#include "cli/command.hpp"
#include "core/number_text.hpp"
#include "yardworth/diagnostics.hpp"

namespace {

using yardworth::cli::not_done;

// A terminal that knows no commands, such as those for colour.
bool is_dumb() {
  const char* terminal = std::getenv("TERM");
  return terminal == nullptr || std::string_view(terminal) == "dumb";
}

// Colour on a terminal, unless NO_COLOR says otherwise or the terminal has none.
bool wants_colour() {
  const char* no_color = std::getenv("NO_COLOR");
  const bool refused = no_color != nullptr && *no_color != '\0';
  return ::isatty(STDOUT_FILENO) == 1 && !refused && !is_dumb();
}

std::optional<std::size_t> terminal_columns(int descriptor) {
  winsize size{};
  if (::ioctl(descriptor, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return std::nullopt;
  return size.ws_col;
}

std::optional<std::size_t> said_columns() {
  const char* said = std::getenv("COLUMNS");
  const std::optional<int> columns = said == nullptr ? std::nullopt : yardworth::parse_whole_number(said);
  return columns && *columns > 0 ? std::optional<std::size_t>(*columns) : std::nullopt;
}

// Where an installation has it, seen from the program.
std::string installed_page() {
  std::error_code error;
  const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", error);
  return error ? "" : (program.parent_path().parent_path() / "share" / "yardworth" / "yardworth.html").string();
}

// 0 or the error number.
int write_all(int descriptor, std::string_view text) {
  while (!text.empty()) {
    const auto written = ::write(descriptor, text.data(), text.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

int finish(const yardworth::cli::Outcome& outcome) {
  write_all(STDERR_FILENO, outcome.err);
  const int error = write_all(STDOUT_FILENO, outcome.out);
  // A reader that has read enough is no failure.
  if (error == 0 || error == EPIPE) return outcome.status;
  write_all(STDERR_FILENO, std::string("yardworth: cannot write the output: ") + std::strerror(error) + "\n");
  return not_done;
}

int fail(std::string_view what) {
  write_all(STDERR_FILENO, "yardworth: " + yardworth::escape_control(std::string(what)) + "\n");
  return not_done;
}

}  // namespace

int main(int argc, char** argv) {
  try {
    // Both are told as errors of what is written.
    std::signal(SIGPIPE, SIG_IGN);
    std::signal(SIGXFSZ, SIG_IGN);
    const std::vector<std::string> arguments(argv + (argc > 0 ? 1 : 0), argv + argc);
    // It is written over itself, which takes commands too.
    const bool progress = ::isatty(STDERR_FILENO) == 1 && !is_dumb();
    return finish(yardworth::cli::run(arguments, {wants_colour(), progress, terminal_columns(STDOUT_FILENO),
                                                  said_columns(), terminal_columns(STDERR_FILENO), installed_page()}));
  } catch (const std::bad_alloc&) {
    write_all(STDERR_FILENO, "yardworth: out of memory: more is needed than the system gives\n");
    return not_done;
  } catch (const std::exception& error) {
    return fail(error.what());
  } catch (...) {
    return fail("an error that has no name");
  }
}
