#include "ringer.h"

#include <algorithm>

#include "row_maker.h"

namespace cinder::face {

namespace {
using std::chrono::milliseconds;
constexpr Duration kSlowest = milliseconds(4000);
constexpr Duration kQuicker = milliseconds(625);  // by each step of loudness
}  // namespace

void Ringer::attend(const app::Snapshot* day) {
    if (const bool hold = day != nullptr; hold != isHeld_) {
        isHeld_ = hold;
        devices_.wake.hold(hold);
    }
    const live::Timer* loudest = nullptr;
    int loudness = 0;
    if (day != nullptr)
        for (const auto& timer : day->timers) {
            if (!isCalling(timer, *day)) continue;
            // The newest of the loudest, so that a fresh call is not drowned by an old one.
            if (const int loud = live::loudness(timer, day->now); loud >= loudness) {
                loudest = &timer;
                loudness = loud;
            }
        }
    if (loudest == nullptr) {
        if (playedAt_) devices_.sound.silence();
        playedAt_.reset();
        playing_.clear();
        return;
    }
    const Duration pause = kSlowest - kQuicker * (loudness - 1);
    const bool isNew = loudest->name != playing_;
    if (!isNew && playedAt_ && clock_.running() - *playedAt_ < pause) return;
    playing_ = loudest->name;
    playedAt_ = clock_.running();
    devices_.sound.ring(loudest->kind, loudness);
    devices_.haptics.buzz(loudest->kind, loudness);
}

}  // namespace cinder::face
