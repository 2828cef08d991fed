#pragma once

/// The orchard lunch at the moment its crew arrives, for what is written into its record.

#include <catch2/catch.hpp>

#include "demo_day.h"

namespace samples {

using namespace std::chrono_literals;

inline constexpr Instant kMorning{1'821'000'000'000ms};
inline const safety::ThermometerId kProbe{"probe-1"};
inline const safety::Pan kSlaw{DishId{"slaw"}, 0};
inline const safety::Pan kStew{DishId{"stew"}, 1};

struct FoodDay : Device {
    FoodDay() : Device(kMorning) {
        REQUIRE(session->importEvent(orchard()));
        clock.advance(session->look()->arrival - clock.wall());
    }
    void wait(Duration time) { clock.advance(time); }
    [[nodiscard]] app::FoodPanCard pan(const safety::Pan& pan) {
        for (const auto& card : session->look()->food.pans)
            if (card.pan == pan) return card;
        FAIL("no pan of " << pan.dish.text());
        return {};
    }
};

}  // namespace samples
