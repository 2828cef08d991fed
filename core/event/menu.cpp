#include "event/menu.h"

namespace cinder::event {

std::int32_t headCount(const Guests& guests) {
    return guests.adults + guests.children;
}

std::int32_t pieceCount(const Pieces& pieces, const Guests& guests) {
    if (pieces.total) return *pieces.total;
    const std::int64_t hundredths =
        std::int64_t{pieces.perHundredGuests.value_or(0)} * headCount(guests);
    return static_cast<std::int32_t>((hundredths + 99) / 100);
}

}  // namespace cinder::event
