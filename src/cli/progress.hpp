#pragma once

#include <condition_variable>
#include <mutex>
#include <thread>

namespace yardworth::cli {

// While it lives, and where it is wanted, a line on standard error that counts the seconds of work once there is more
// than one; the line is gone afterwards.
class Progress {
 public:
  explicit Progress(bool wanted);
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  ~Progress();

 private:
  void count();

  std::mutex mutex_;
  std::condition_variable ended_changed_;
  bool ended_ = false;
  std::thread counter_;
};

}  // namespace yardworth::cli
