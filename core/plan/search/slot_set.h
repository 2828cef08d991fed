#pragma once

/// A set of slots that is small and soon emptied: what has changed in a stretch of a timeline.

#include <algorithm>
#include <cstdint>
#include <limits>

#include "plan/search/project.h"

namespace cinder::plan::search {

class SlotSet {
  public:
    SlotSet() = default;
    /// For slots from 0 up to, not including, `horizon`.
    explicit SlotSet(Slot horizon) : words_(horizon / kBits + 1, 0) {}

    void clear() {
        for (std::int32_t w = low_; w <= high_; ++w)
            words_[w] = 0;
        low_ = std::numeric_limits<std::int32_t>::max();
        high_ = -1;
    }

    /// Adds the slots of [from, until).
    void add(Slot from, Slot until) {
        if (from >= until) return;
        low_ = std::min(low_, from / kBits);
        high_ = std::max(high_, (until - 1) / kBits);
        for (std::int32_t w = from / kBits; w <= (until - 1) / kBits; ++w)
            words_[w] |= maskOf(w, from, until);
    }

    /// Adds what a stretch of `length` that began at `was` leaves free where it begins at `is`.
    void addLeft(Slot was, Slot is, Slot length) {
        if (is > was)
            add(was, std::min(is, was + length));
        else
            add(std::max(was, is + length), was + length);
    }

    /// Whether any slot of [from, until) is in the set.
    [[nodiscard]] bool meets(Slot from, Slot until) const {
        if (from >= until) return false;
        const std::int32_t last = std::min(high_, (until - 1) / kBits);
        for (std::int32_t w = std::max(low_, from / kBits); w <= last; ++w)
            if ((words_[w] & maskOf(w, from, until)) != 0) return true;
        return false;
    }

  private:
    static constexpr std::int32_t kBits = 64;

    /// The slots of [from, until) in word `w`, where there are some.
    static std::uint64_t maskOf(std::int32_t w, Slot from, Slot until) {
        const Slot first = std::max(from - w * kBits, 0);
        const Slot end = std::min(until - w * kBits, kBits);
        return ~std::uint64_t{0} >> (kBits - end) & ~std::uint64_t{0} << first;
    }

    Row<std::uint64_t> words_;
    std::int32_t low_ = std::numeric_limits<std::int32_t>::max();  ///< of the words not zero
    std::int32_t high_ = -1;
};

}  // namespace cinder::plan::search
