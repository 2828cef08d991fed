#pragma once

/// Keeps a second window off a journal: each would show a day that the other goes on with. Knows no
/// Qt.

#include <filesystem>

namespace cinder::platform {

/// An advisory lock on a folder itself (flock(2)): it needs no room on a full or write-protected
/// disk, and is gone with the process, however that ends. Who only reads need not ask for it.
class FolderLock {
  public:
    explicit FolderLock(const std::filesystem::path& folder);
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;
    ~FolderLock();

    /// Somebody else holds it. Where a disk knows no locks, nobody does.
    [[nodiscard]] bool isTaken() const { return isTaken_; }

  private:
    int handle_ = -1;
    bool isTaken_ = false;
};

}  // namespace cinder::platform
