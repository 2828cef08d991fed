#include "live/alarm.h"

#include <algorithm>

namespace cinder::live {

namespace {

constexpr std::chrono::seconds kGrowEvery{15};
constexpr int kLoudest = 5;

}  // namespace

TaskId taskOfTimer(std::string_view name) {
    name.remove_prefix(std::min(name.find(':') + 1, name.size()));
    return TaskId(std::string(name.substr(0, name.find(':'))));
}

int loudness(const Timer& timer, Instant now) {
    if (!timer.isRinging(now)) return 0;
    const auto grown = (now - timer.due) / Duration{kGrowEvery};
    return static_cast<int>(std::min<std::int64_t>(kLoudest, 1 + grown));
}

}  // namespace cinder::live
