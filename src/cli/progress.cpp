#include "cli/progress.hpp"

#include <fmt/format.h>

#include <chrono>
#include <cstdio>

namespace yardworth::cli {

Progress::Progress(bool wanted) {
  if (wanted) counter_ = std::thread([this] { count(); });
}

Progress::~Progress() {
  if (!counter_.joinable()) return;
  {
    const std::lock_guard<std::mutex> lock(mutex_);
    ended_ = true;
  }
  ended_changed_.notify_one();
  counter_.join();
}

void Progress::tell(std::size_t finished, std::size_t of) {
  const std::lock_guard<std::mutex> lock(mutex_);
  done_ = finished;
  of_ = of;
}

void Progress::count() {
  std::unique_lock<std::mutex> lock(mutex_);
  int seconds = 0;
  while (!ended_changed_.wait_for(lock, std::chrono::seconds(1), [this] { return ended_; })) {
    fmt::print(stderr, "\rcomputing, {} s{} \x1b[K", ++seconds,
               of_ == 0 ? "" : fmt::format(", {} of {} holes", done_, of_));
    std::fflush(stderr);
  }
  if (seconds > 0) fmt::print(stderr, "\r\x1b[K");
}

}  // namespace yardworth::cli
