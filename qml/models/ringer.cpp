#include "ringer.h"

#include <algorithm>
#include <utility>

#include "row_maker.h"

namespace cinder::face {

namespace {

using std::chrono::milliseconds;
constexpr Duration kSlowest = milliseconds(4000);
constexpr Duration kQuicker = milliseconds(625);  // by each step of loudness

/// The loudest of some calls, the newest of those that are as loud.
struct Loudest {
    void consider(const live::Timer& other, int loud) {
        if (timer != nullptr && loud < loudness) return;
        timer = &other;
        loudness = loud;
    }
    const live::Timer* timer = nullptr;
    int loudness = 0;
};

}  // namespace

void Ringer::attend(const app::Snapshot* day) {
    if (const bool hold = day != nullptr; hold != isHeld_) {
        isHeld_ = hold;
        devices_.wake.hold(hold);
    }
    Loudest loudest;
    Loudest fresh;  // so that a new call is not drowned by an old one
    std::set<std::string> calling;
    if (day != nullptr)
        for (const auto& timer : day->timers) {
            if (!isCalling(timer, *day)) continue;
            const int loud = live::loudness(timer, day->now);
            loudest.consider(timer, loud);
            if (calling_.count(timer.name) == 0) fresh.consider(timer, loud);
            calling.insert(timer.name);
        }
    calling_ = std::move(calling);
    if (loudest.timer == nullptr) {
        if (playedAt_) devices_.sound.silence();
        playedAt_.reset();
        return;
    }
    pause_ = kSlowest - kQuicker * (loudest.loudness - 1);
    if (fresh.timer != nullptr)
        play(*fresh.timer, fresh.loudness);
    else if (calling_.count(playing_) == 0 || untilNext() <= Duration{0})
        play(*loudest.timer, loudest.loudness);
}

std::optional<Duration> Ringer::untilNext() const {
    if (!playedAt_) return std::nullopt;
    return *playedAt_ + pause_ - clock_.running();
}

void Ringer::play(const live::Timer& timer, int loudness) {
    playing_ = timer.name;
    playedAt_ = clock_.running();
    devices_.sound.ring(timer.kind, loudness);
    devices_.haptics.buzz(timer.kind, loudness);
}

}  // namespace cinder::face
