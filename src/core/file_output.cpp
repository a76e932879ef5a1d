#include "core/file_output.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <random>
#include <system_error>
#include <utility>

namespace yardworth {
namespace {

namespace fs = std::filesystem;

Diagnostic system_refusal(const std::string& path, int error) {
  return file_fault(path, "an output that cannot be written: " + std::system_category().message(error),
                    "a place for a file that may be written");
}

Diagnostic exists_refusal(const std::string& path) {
  return file_fault(path, existing_file, "a new name, or leave to replace it");
}

// The file that stands half-written until it is renamed; it goes away with this object unless it was.
class TemporaryFile {
 public:
  explicit TemporaryFile(const fs::path& target) {
    std::random_device random;
    for (int attempt = 0; attempt < 100 && descriptor_ < 0; ++attempt) {
      path_ = target.string() + "." + std::to_string(random()) + ".part";
      // Not mkstemp: the mode is then 0600 whatever the umask says.
      descriptor_ = ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
      error_ = errno;
      if (descriptor_ < 0 && error_ != EEXIST) return;
    }
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  ~TemporaryFile() {
    if (descriptor_ >= 0) ::close(descriptor_);
    if (exists_under_own_name()) ::unlink(path_.c_str());
  }

  bool open() const { return descriptor_ >= 0; }
  // Each of these gives 0 or the error number.
  int error() const { return error_; }
  int take_mode(mode_t mode) { return ::fchmod(descriptor_, mode) == 0 ? 0 : errno; }
  int write_all(std::string_view bytes);
  int rename_to(const fs::path& target, bool replace);

 private:
  bool exists_under_own_name() const { return created() && !renamed_; }
  bool created() const { return descriptor_ >= 0 || closed_; }

  std::string path_;
  int descriptor_ = -1;
  int error_ = 0;
  bool closed_ = false;
  bool renamed_ = false;
};

int TemporaryFile::write_all(std::string_view bytes) {
  while (!bytes.empty()) {
    const auto written = ::write(descriptor_, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  if (::fsync(descriptor_) != 0) return errno;
  const int result = ::close(std::exchange(descriptor_, -1));
  closed_ = true;
  return result == 0 ? 0 : errno;
}

int TemporaryFile::rename_to(const fs::path& target, bool replace) {
  // Without leave to replace, a file that appeared since the look must not be lost either: a hard link never replaces.
  if (!replace) {
    if (::link(path_.c_str(), target.c_str()) == 0) return 0;
    const bool no_links_here = errno == EPERM || errno == ENOTSUP || errno == ENOSYS;
    if (!no_links_here) return errno;
  }
  if (::rename(path_.c_str(), target.c_str()) != 0) return errno;
  renamed_ = true;
  return 0;
}

// So that the rename itself outlives a power cut. The file is whole either way, so failures are of no consequence.
void flush_directory(const fs::path& directory) {
  const int descriptor = ::open(directory.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return;
  ::fsync(descriptor);
  ::close(descriptor);
}

// The file is written beside its target first.
std::optional<Diagnostic> refuse_folder(const std::string& path, const fs::path& target) {
  const fs::path parent = target.parent_path();
  const std::string folder = parent.empty() ? "." : parent.string();
  if (::faccessat(AT_FDCWD, folder.c_str(), W_OK | X_OK, AT_EACCESS) == 0) return std::nullopt;
  return system_refusal(path, errno);
}

}  // namespace

std::optional<Diagnostic> refuse_target(const std::string& path, bool replace) {
  if (path.empty()) return file_fault(path, "an empty file name", "the name of a file to write");
  struct stat status {};
  if (::lstat(path.c_str(), &status) != 0) {
    if (errno == ENOENT) return refuse_folder(path, path);
    return system_refusal(path, errno);
  }
  // What a link leads to is what counts; a link that leads nowhere stands for itself.
  if (S_ISLNK(status.st_mode)) static_cast<void>(::stat(path.c_str(), &status));
  if (S_ISDIR(status.st_mode)) return file_fault(path, "a directory", "the name of a file to write");
  if (!S_ISREG(status.st_mode)) return file_fault(path, "something that is not an ordinary file", "an ordinary file");
  if (!replace) return exists_refusal(path);
  std::error_code ignored;
  return refuse_folder(path, fs::canonical(path, ignored));
}

std::optional<Diagnostic> write_file(const std::string& path, std::string_view bytes, bool replace) {
  if (auto finding = refuse_target(path, replace)) return finding;
  std::error_code ignored;
  fs::path target = path;
  if (fs::exists(target, ignored)) target = fs::canonical(target, ignored);

  TemporaryFile file(target);
  if (!file.open()) return system_refusal(path, file.error());
  struct stat status {};
  if (::stat(target.c_str(), &status) == 0) {
    if (const int error = file.take_mode(status.st_mode & 07777)) return system_refusal(path, error);
  }
  if (const int error = file.write_all(bytes)) return system_refusal(path, error);
  if (const int error = file.rename_to(target, replace)) {
    return error == EEXIST ? exists_refusal(path) : system_refusal(path, error);
  }
  flush_directory(target.has_parent_path() ? target.parent_path() : fs::path("."));
  return std::nullopt;
}

}  // namespace yardworth
