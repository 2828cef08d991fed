#pragma once

/// Vibration on Linux, where a phone's motor shows up as an LED-class device that runs for a set
/// time. Source: Linux kernel documentation, "LED Transient Trigger" (leds/ledtrig-transient),
/// which names vibrators as its use.

#include <filesystem>

#include "models/devices.h"

namespace cinder::platform {

class LedVibrator final : public face::Haptics {
  public:
    /// `device` is "/sys/class/leds/vibrator" except in tests. A laptop or most tablets have none.
    explicit LedVibrator(std::filesystem::path device = "/sys/class/leds/vibrator");

    /// Runs the motor as long as the alarm's first call sounds, longer the louder.
    void buzz(live::TimerKind kind, int loudness) override;
    [[nodiscard]] bool isAvailable() const override { return isAvailable_; }

  private:
    std::filesystem::path device_;
    bool isAvailable_ = false;
};

/// How long the motor runs: each kind its own time, half as long again at full loudness.
[[nodiscard]] Duration buzzLength(live::TimerKind kind, int loudness);

}  // namespace cinder::platform
