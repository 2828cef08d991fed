#pragma once

/// How full the battery is, from the kernel's power supply class.
/// Source: Linux kernel documentation, ABI/testing/sysfs-class-power (type, scope, status,
/// capacity).

#include <filesystem>
#include <optional>

#include <QElapsedTimer>

#include "models/devices.h"

namespace cinder::platform {

class PowerSupply final : public face::Battery {
  public:
    explicit PowerSupply(std::filesystem::path folder = "/sys/class/power_supply");

    /// Asked once a half minute at most; in between the last answer stands.
    [[nodiscard]] std::optional<int> percentLeft() override;

  private:
    [[nodiscard]] std::optional<int> read() const;

    std::filesystem::path folder_;
    std::optional<int> left_;
    QElapsedTimer asked_;
};

}  // namespace cinder::platform
