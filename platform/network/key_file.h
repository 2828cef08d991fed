#pragma once

/// Keeps the code and the key of the crew while the app is closed, beside the journal, in a file
/// that only its owner can read. Four lines: what it is, the code, the key in hexadecimal digits,
/// and its mark, by which a damaged key is known.

#include <filesystem>
#include <optional>
#include <string>

#include "sync/crew_code.h"

namespace cinder::platform {

struct Membership {
    std::string code;
    sync::CrewKey key{};
    friend bool operator==(const Membership&, const Membership&) = default;
};

class KeyFile {
  public:
    explicit KeyFile(std::filesystem::path file);

    /// Nothing when there is none, or when it is damaged.
    [[nodiscard]] std::optional<Membership> read() const;
    /// False when it could not be kept. The one before is gone in any case.
    [[nodiscard]] bool write(const Membership& membership) const;
    void remove() const;

  private:
    std::filesystem::path file_;
};

}  // namespace cinder::platform
