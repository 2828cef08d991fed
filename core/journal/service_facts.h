#pragma once

/// What a person counted or saw at the line. Each names what it is about: the counter says how many
/// are through, not "ten more"; a pan has its number.

#include <cstdint>

#include "base/id.h"
#include "base/time.h"

namespace cinder::journal {

/// So many guests are through; 0 is the first guest stepping up.
struct GuestsPassed {
    std::int32_t guests = 0;
    Instant at;
    friend bool operator==(const GuestsPassed&, const GuestsPassed&) = default;
};

/// Nobody is coming any more.
struct LastGuestPassed {
    Instant at;
    friend bool operator==(const LastGuestPassed&, const LastGuestPassed&) = default;
};

/// So much is left in the pan on the line, in percent.
struct PanLevelTapped {
    DishId dish;
    std::int32_t pan = 1;
    std::int32_t percent = 100;
    Instant at;
    friend bool operator==(const PanLevelTapped&, const PanLevelTapped&) = default;
};

/// The pan with this number, from 2, is on the line in the place of the one before it.
struct NextPanSet {
    DishId dish;
    std::int32_t pan = 2;
    Instant at;
    friend bool operator==(const NextPanSet&, const NextPanSet&) = default;
};

}  // namespace cinder::journal
