#include "battery/power_supply.h"

#include <algorithm>
#include <fstream>
#include <string>

namespace cinder::platform {

namespace {

constexpr qint64 kPauseMs = 30'000;

std::string line(const std::filesystem::path& file) {
    std::ifstream in(file);
    std::string text;
    std::getline(in, text);
    return text;
}

}  // namespace

PowerSupply::PowerSupply(std::filesystem::path folder) : folder_(std::move(folder)) {}

std::optional<int> PowerSupply::percentLeft() {
    if (asked_.isValid() && asked_.elapsed() < kPauseMs) return left_;
    asked_.start();
    left_ = read();
    return left_;
}

std::optional<int> PowerSupply::read() const {
    std::optional<int> least;
    std::error_code failed;
    // A range-for would throw when a supply goes away while they are listed.
    for (std::filesystem::directory_iterator supply(folder_, failed), end; !failed && supply != end;
         supply.increment(failed)) {
        const auto& path = supply->path();
        // A mouse or a headset has a battery too, of scope "Device".
        if (line(path / "type") != "Battery" || line(path / "scope") == "Device") continue;
        if (line(path / "status") != "Discharging") continue;
        int percent = -1;
        std::ifstream(path / "capacity") >> percent;
        if (percent < 0 || percent > 100) continue;
        least = std::min(least.value_or(percent), percent);
    }
    return least;
}

}  // namespace cinder::platform
