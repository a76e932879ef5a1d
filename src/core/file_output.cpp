#include "core/file_output.hpp"

#include <fcntl.h>
#include <pthread.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <random>
#include <system_error>
#include <utility>

namespace yardworth {
namespace {

namespace fs = std::filesystem;

OutputRefusal system_refusal(const std::string& path, int error) {
  constexpr std::array of_the_name = {ENOENT, ENOTDIR, ENAMETOOLONG, ELOOP, EISDIR};
  const bool by_name = std::find(of_the_name.begin(), of_the_name.end(), error) != of_the_name.end();
  return {file_fault(path, "an output that cannot be written: " + std::system_category().message(error),
                     "a place for a file that may be written"),
          !by_name};
}

OutputRefusal name_refusal(const std::string& path, const std::string& found, const std::string& expected) {
  return {file_fault(path, found, expected), false};
}

OutputRefusal exists_refusal(const std::string& path) {
  return name_refusal(path, existing_file, "a new name, or leave to replace it");
}

// The thread whose HeldSignals hold signals back. Global because a signal handler knows nothing else; only they use it.
std::atomic<pthread_t> holding_thread{};
static_assert(std::atomic<pthread_t>::is_always_lock_free, "a signal handler may not wait");

// Of a signal that came to another thread.
extern "C" void hand_to_holding_thread(int signal) {
  const int error = errno;
  ::pthread_kill(holding_thread.load(), signal);
  errno = error;
}

// While it lives, no signal that can be held back ends the process: it waits, and does what it does when this is gone.
// Blocking is for one thread only, so that other threads hand on what they get.
class HeldSignals {
 public:
  HeldSignals() {
    sigset_t held;
    sigemptyset(&held);
    for (const int signal : ending) sigaddset(&held, signal);
    ::pthread_sigmask(SIG_BLOCK, &held, &mask_before_);
    holding_thread.store(::pthread_self());
    for (std::size_t i = 0; i < ending.size(); ++i) {
      ::sigaction(ending[i], nullptr, &before_[i]);
      if (ends_process(before_[i])) set_handler(ending[i]);
    }
  }
  HeldSignals(const HeldSignals&) = delete;
  HeldSignals& operator=(const HeldSignals&) = delete;
  ~HeldSignals() {
    for (std::size_t i = 0; i < ending.size(); ++i) {
      if (ends_process(before_[i])) ::sigaction(ending[i], &before_[i], nullptr);
    }
    ::pthread_sigmask(SIG_SETMASK, &mask_before_, nullptr);
  }

  // Whether one that will end the process is waiting.
  bool ending_waits() const {
    sigset_t waiting;
    sigemptyset(&waiting);
    ::sigpending(&waiting);
    for (std::size_t i = 0; i < ending.size(); ++i) {
      if (ends_process(before_[i]) && sigismember(&waiting, ending[i]) == 1) return true;
    }
    return false;
  }

 private:
  // What comes from outside and ends a process that does nothing about it. A fault of the program itself is not held.
  static constexpr std::array ending = {SIGHUP,  SIGINT,  SIGQUIT, SIGTERM,   SIGPIPE, SIGALRM,
                                        SIGUSR1, SIGUSR2, SIGXCPU, SIGVTALRM, SIGPROF, SIGIO};

  static bool ends_process(const struct sigaction& action) {
    return (action.sa_flags & SA_SIGINFO) == 0 && action.sa_handler == SIG_DFL;
  }
  static void set_handler(int signal) {
    struct sigaction handing {};
    handing.sa_handler = hand_to_holding_thread;
    handing.sa_flags = SA_RESTART;
    sigemptyset(&handing.sa_mask);
    ::sigaction(signal, &handing, nullptr);
  }

  sigset_t mask_before_{};
  std::array<struct sigaction, ending.size()> before_{};
};

// A folder that stays the same whatever happens to its name.
class OpenFolder {
 public:
  explicit OpenFolder(const fs::path& folder) : descriptor_(::open(folder.c_str(), O_PATH | O_DIRECTORY | O_CLOEXEC)) {}
  OpenFolder(const OpenFolder&) = delete;
  OpenFolder& operator=(const OpenFolder&) = delete;
  ~OpenFolder() {
    if (descriptor_ >= 0) ::close(descriptor_);
  }

  bool open() const { return descriptor_ >= 0; }
  int descriptor() const { return descriptor_; }
  // So that a name itself outlives a power cut. The file is whole either way, so failures are of no consequence.
  void flush() const {
    const int descriptor = ::openat(descriptor_, ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return;
    ::fsync(descriptor);
    ::close(descriptor);
  }

 private:
  int descriptor_;
};

// The file that is written until it is whole; if it is not put in its place, it goes away with this object.
class UnfinishedFile {
 public:
  UnfinishedFile(const OpenFolder& folder, Unfinished unfinished) : folder_(folder.descriptor()) {
    if (unfinished == Unfinished::nameless) open_nameless();
    if (descriptor_ < 0) open_named();
  }
  UnfinishedFile(const UnfinishedFile&) = delete;
  UnfinishedFile& operator=(const UnfinishedFile&) = delete;
  ~UnfinishedFile() {
    if (!name_.empty()) ::unlinkat(folder_, name_.c_str(), 0);
    if (descriptor_ >= 0) ::close(descriptor_);
  }

  bool open() const { return descriptor_ >= 0; }
  // Each of these gives 0 or the error number.
  int error() const { return error_; }
  int take_mode(mode_t mode) { return ::fchmod(descriptor_, mode) == 0 ? 0 : errno; }
  int write_all(std::string_view bytes);
  int put_in_place(const std::string& name, bool replace);

 private:
  void open_nameless();
  void open_named();
  // Gives it a name by make(name), which is 0 or -1 with errno.
  template <class Make>
  int take_name(Make make);
  int link_nameless(const std::string& name) {
    return ::linkat(AT_FDCWD, self_.c_str(), folder_, name.c_str(), AT_SYMLINK_FOLLOW);
  }

  int folder_;
  int descriptor_ = -1;
  int error_ = 0;
  std::string self_;                 // the file without a name, as the system shows it
  std::string name_;                 // empty: it has none of its own
  std::optional<HeldSignals> held_;  // while it has one
};

void UnfinishedFile::open_nameless() {
  descriptor_ = ::openat(folder_, ".", O_TMPFILE | O_WRONLY | O_CLOEXEC, 0666);
  if (descriptor_ < 0) return;
  // Only by this name can it be given another.
  self_ = "/proc/self/fd/" + std::to_string(descriptor_);
  if (::faccessat(AT_FDCWD, self_.c_str(), F_OK, 0) != 0) ::close(std::exchange(descriptor_, -1));
}

void UnfinishedFile::open_named() {
  // Not mkstemp: the mode is then 0600 whatever the umask says.
  const auto make = [this](const std::string& name) {
    descriptor_ = ::openat(folder_, name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    return descriptor_ < 0 ? -1 : 0;
  };
  error_ = take_name(make);
}

template <class Make>
int UnfinishedFile::take_name(Make make) {
  held_.emplace();
  std::random_device random;
  int error = EEXIST;
  for (int attempt = 0; attempt < 100 && error == EEXIST; ++attempt) {
    // Short, and not made from the target's name, which may be as long as names can be.
    std::string name = ".yardworth-" + std::to_string(random()) + ".part";
    error = make(name) == 0 ? 0 : errno;
    if (error == 0) name_ = std::move(name);
  }
  return error;
}

int UnfinishedFile::write_all(std::string_view bytes) {
  constexpr std::size_t at_once = 1u << 16;
  while (!bytes.empty()) {
    if (held_ && held_->ending_waits()) return EINTR;
    const auto written = ::write(descriptor_, bytes.data(), std::min(bytes.size(), at_once));
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return ::fsync(descriptor_) == 0 ? 0 : errno;
}

int UnfinishedFile::put_in_place(const std::string& name, bool replace) {
  // Without leave to replace, a file that appeared since the look must not be lost either: a hard link never replaces.
  if (name_.empty()) {
    if (link_nameless(name) == 0) return 0;
    if (errno != EEXIST || !replace) return errno;
    if (const int error = take_name([this](const std::string& own) { return link_nameless(own); })) return error;
  } else if (!replace) {
    if (::linkat(folder_, name_.c_str(), folder_, name.c_str(), 0) == 0) return 0;
    const bool no_links_here = errno == EPERM || errno == ENOTSUP || errno == ENOSYS;
    if (!no_links_here) return errno;
  }
  if (::renameat(folder_, name_.c_str(), folder_, name.c_str()) != 0) return errno;
  name_.clear();
  return 0;
}

fs::path folder_of(const fs::path& target) { return target.has_parent_path() ? target.parent_path() : fs::path("."); }

// The file is written beside its target first.
std::optional<OutputRefusal> refuse_folder(const std::string& path, const fs::path& target) {
  if (::faccessat(AT_FDCWD, folder_of(target).c_str(), W_OK | X_OK, AT_EACCESS) == 0) return std::nullopt;
  return system_refusal(path, errno);
}

bool is_one_of(const struct stat& status, const std::vector<std::string>& files) {
  return std::any_of(files.begin(), files.end(), [&](const std::string& file) {
    struct stat other {};
    return !file.empty() && ::stat(file.c_str(), &other) == 0 && other.st_dev == status.st_dev &&
           other.st_ino == status.st_ino;
  });
}

}  // namespace

std::optional<OutputRefusal> refuse_target(const std::string& path, bool replace,
                                           const std::vector<std::string>& read) {
  if (path.empty()) return name_refusal(path, "an empty file name", "the name of a file to write");
  struct stat status {};
  if (::lstat(path.c_str(), &status) != 0) {
    if (errno == ENOENT) return refuse_folder(path, path);
    return system_refusal(path, errno);
  }
  // What a link leads to is what counts; a link that leads nowhere stands for itself.
  if (S_ISLNK(status.st_mode)) static_cast<void>(::stat(path.c_str(), &status));
  if (S_ISDIR(status.st_mode)) return name_refusal(path, "a directory", "the name of a file to write");
  if (!S_ISREG(status.st_mode)) return name_refusal(path, "something that is not an ordinary file", "an ordinary file");
  if (is_one_of(status, read)) return name_refusal(path, "a file that is read for this", "another file to write");
  if (!replace) return exists_refusal(path);
  std::error_code ignored;
  return refuse_folder(path, fs::canonical(path, ignored));
}

std::optional<OutputRefusal> write_file(const std::string& path, std::string_view bytes, bool replace,
                                        Unfinished unfinished) {
  if (auto refusal = refuse_target(path, replace)) return refusal;
  std::error_code ignored;
  fs::path target = path;
  if (fs::exists(target, ignored)) target = fs::canonical(target, ignored);

  const OpenFolder folder(folder_of(target));
  if (!folder.open()) return system_refusal(path, errno);
  UnfinishedFile file(folder, unfinished);
  if (!file.open()) return system_refusal(path, file.error());
  struct stat status {};
  if (::stat(target.c_str(), &status) == 0) {
    if (const int error = file.take_mode(status.st_mode & 07777)) return system_refusal(path, error);
  }
  if (const int error = file.write_all(bytes)) return system_refusal(path, error);
  if (const int error = file.put_in_place(target.filename().string(), replace)) {
    return error == EEXIST ? exists_refusal(path) : system_refusal(path, error);
  }
  folder.flush();
  return std::nullopt;
}

}  // namespace yardworth
