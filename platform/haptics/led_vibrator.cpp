#include "led_vibrator.h"

#include <algorithm>
#include <fstream>
#include <string>

namespace cinder::platform {

namespace {

bool write(const std::filesystem::path& file, const std::string& value) {
    std::ofstream out(file);
    out << value << std::flush;
    return out.good();
}

}  // namespace

LedVibrator::LedVibrator(std::filesystem::path device) : device_(std::move(device)) {
    std::error_code ignored;
    // Choosing the trigger makes the kernel offer `duration`, `state` and `activate`; without the
    // right to write there is no vibration, and the boards must not promise any.
    isAvailable_ = std::filesystem::exists(device_ / "trigger", ignored) &&
                   write(device_ / "trigger", "transient");
}

Duration buzzLength(live::TimerKind kind, int loudness) {
    const auto length = [kind]() -> Duration {
        switch (kind) {
            case live::TimerKind::Turn:
                return Duration{400};
            case live::TimerKind::Pull:
                return Duration{700};
            case live::TimerKind::RestOver:
                return Duration{250};
            case live::TimerKind::StartNow:
                return Duration{550};
            case live::TimerKind::Check:
                return Duration{150};
        }
        return Duration{400};
    }();
    return length + length * (std::clamp(loudness, 1, 5) - 1) / 8;
}

void LedVibrator::buzz(live::TimerKind kind, int loudness) {
    if (!isAvailable_) return;
    isAvailable_ =
        write(device_ / "duration", std::to_string(buzzLength(kind, loudness).count())) &&
        write(device_ / "state", "1") && write(device_ / "activate", "1");
}

}  // namespace cinder::platform
