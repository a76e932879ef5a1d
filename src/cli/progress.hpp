#pragma once

#include <condition_variable>
#include <cstddef>
#include <mutex>
#include <thread>

namespace yardworth::cli {

// While it lives, and where it is wanted, a line on standard error that counts the seconds of work once there is more
// than one, and says how much of it is done where it is told; the line is gone afterwards.
class Progress {
 public:
  explicit Progress(bool wanted);
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  ~Progress();

  // On any thread.
  void tell(std::size_t finished, std::size_t of);

 private:
  void count();

  std::mutex mutex_;
  std::condition_variable ended_changed_;
  bool ended_ = false;
  std::size_t done_ = 0;
  std::size_t of_ = 0;  // 0: nobody says
  std::thread counter_;
};

}  // namespace yardworth::cli
