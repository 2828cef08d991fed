#pragma once

/// A folder of a test's own, gone again afterwards.

#include <stdlib.h>

#include <filesystem>
#include <stdexcept>
#include <string>

namespace samples {

class Folder {
  public:
    Folder() {
        std::string name =
            (std::filesystem::temp_directory_path() / "cinderbell-test-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder: " + name);
        path_ = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::filesystem::path file(const char* name) const { return path_ / name; }

  private:
    std::filesystem::path path_;
};

}  // namespace samples
