#pragma once

/// What is in use when: resources slot by slot, people by their stretches of work.
///
/// Several resources share one machine word, one lane each with its top bit as a guard, so that one
/// subtraction tells whether all of them suffice (the guard of a lane that falls short is
/// borrowed away).

#include <array>
#include <bit>
#include <cstdint>

#include "plan/search/row.h"

namespace cinder::plan::search {

using People = std::uint32_t;  ///< one bit per person
constexpr std::int32_t kMostPeople = 32;

/// How resources lie in words.
struct Lanes {
    std::int32_t words = 1;
    std::int32_t bits = 16;  ///< per lane, guard included
    std::uint64_t guard = 0x8000800080008000ULL;

    /// Whether a word of `free` covers one of `demand`, lane by lane.
    [[nodiscard]] bool suffices(std::uint64_t free, std::uint64_t demand) const {
        return (((free | guard) - demand) & guard) == guard;
    }
};

/// A stretch of one person's work; the way to the next stretch comes on top.
struct Stretch {
    std::int32_t start = 0;
    std::int32_t finish = 0;
    std::int32_t station = 0;
};

class Timeline {
  public:
    Timeline() = default;
    /// `stretches`: the most that one person can ever have.
    Timeline(std::int32_t horizon, Lanes lanes, std::int32_t people, std::int32_t stations,
             std::int32_t stretches);

    /// Back to `base`, which has the same shape. Does not allocate.
    void resetTo(const Timeline& base);

    void setFree(std::int32_t lane, std::int32_t from, std::int32_t until, std::int64_t units);
    void setWalk(std::int32_t a, std::int32_t b, std::int32_t slots) {
        walk_[a * stations_ + b] = slots;
        hasWalks_ = hasWalks_ || slots > 0;
    }
    [[nodiscard]] const Lanes& lanes() const { return lanes_; }
    [[nodiscard]] std::int32_t horizon() const { return horizon_; }

    /// The first start at or after `from` where `demand` fits for `length` slots; `horizon()` when
    /// there is none.
    [[nodiscard]] std::int32_t earliestFit(const std::uint64_t* demand, std::int32_t from,
                                           std::int32_t length) const;
    [[nodiscard]] bool fits(const std::uint64_t* demand, std::int32_t from,
                            std::int32_t until) const;
    /// The most units of a lane that are ever free.
    [[nodiscard]] std::int64_t mostFree(std::int32_t lane) const;
    /// What is free at a slot, in lanes.
    [[nodiscard]] std::uint64_t freeWord(std::int32_t at, std::int32_t word) const {
        return free_[at * lanes_.words + word];
    }
    [[nodiscard]] std::int64_t freeAt(std::int32_t lane, std::int32_t at) const;
    [[nodiscard]] People busyAt(std::int32_t at) const { return busy_.size() == 0 ? 0 : busy_[at]; }
    void occupy(const std::uint64_t* demand, std::int32_t from, std::int32_t until) {
        forEachWord(demand, from, until,
                    [](std::uint64_t& free, std::uint64_t use) { free -= use; });
    }
    void release(const std::uint64_t* demand, std::int32_t from, std::int32_t until) {
        forEachWord(demand, from, until,
                    [](std::uint64_t& free, std::uint64_t use) { free += use; });
    }

    /// Who of `among` is free for all of [from, until) at `station`, walks included.
    [[nodiscard]] People freePeople(People among, std::int32_t from, std::int32_t until,
                                    std::int32_t station) const;
    /// The stretch of free time of `person` at `station` that contains or follows `from`, walks
    /// taken off both ends; start == horizon() when there is none.
    [[nodiscard]] Stretch freeStretch(std::int32_t person, std::int32_t from,
                                      std::int32_t station) const;
    void book(People people, Stretch stretch);
    void unbook(People people, Stretch stretch);

  private:
    /// Here, and with the one word of few resources apart, for it is the most frequent work there
    /// is.
    template <class Change>
    void forEachWord(const std::uint64_t* demand, std::int32_t from, std::int32_t until,
                     Change change) {
        if (lanes_.words == 1) {
            const std::uint64_t use = *demand;
            for (std::int32_t t = from; t < until; ++t)
                change(free_[t], use);
            return;
        }
        for (std::int32_t t = from; t < until; ++t)
            for (std::int32_t w = 0; w < lanes_.words; ++w)
                change(free_[t * lanes_.words + w], demand[w]);
    }
    [[nodiscard]] bool hasTimeToWalk(std::int32_t person, std::int32_t from, std::int32_t until,
                                     std::int32_t station) const;
    [[nodiscard]] std::int32_t firstAfter(std::int32_t person, std::int32_t from) const;
    [[nodiscard]] std::int32_t way(std::int32_t a, std::int32_t b) const {
        return walk_[a * stations_ + b];
    }

    std::int32_t horizon_ = 0;
    Lanes lanes_;
    Row<std::uint64_t> free_;
    Row<People> busy_;
    std::int32_t people_ = 0;
    std::int32_t stations_ = 0;
    bool hasWalks_ = false;
    Row<std::int32_t> walk_;
    std::int32_t room_ = 0;   ///< for stretches, per person
    Row<Stretch> stretches_;  ///< by person, then by start
    Row<std::int32_t> stretchCount_;
};

}  // namespace cinder::plan::search
