#include "plan/search/timeline.h"

#include <algorithm>

namespace cinder::plan::search {

Timeline::Timeline(std::int32_t horizon, Lanes lanes, std::int32_t people, std::int32_t stations,
                   std::int32_t stretches)
    : horizon_(horizon),
      lanes_(lanes),
      free_(horizon * lanes.words, 0),
      busy_(people > 0 ? horizon : 0, 0),
      people_(people),
      stations_(stations),
      walk_(stations * stations, 0),
      room_(stretches),
      stretches_(people * stretches),
      stretchCount_(people, 0) {}

void Timeline::resetTo(const Timeline& base) {
    std::copy(base.free_.begin(), base.free_.end(), free_.begin());
    std::copy(base.busy_.begin(), base.busy_.end(), busy_.begin());
    for (std::int32_t p = 0; p < people_; ++p) {
        stretchCount_[p] = base.stretchCount_[p];
        std::copy_n(base.stretches_.from(p * room_), stretchCount_[p], stretches_.from(p * room_));
    }
}

void Timeline::setFree(std::int32_t lane, std::int32_t from, std::int32_t until,
                       std::int64_t units) {
    const std::int32_t perWord = 64 / lanes_.bits;
    const std::int32_t shift = (lane % perWord) * lanes_.bits;
    const std::uint64_t mask = ((std::uint64_t{1} << (lanes_.bits - 1)) - 1) << shift;
    for (std::int32_t t = std::max(0, from); t < std::min(until, horizon_); ++t) {
        std::uint64_t& word = free_[t * lanes_.words + lane / perWord];
        word = (word & ~mask) | (static_cast<std::uint64_t>(units) << shift);
    }
}

std::int32_t Timeline::earliestFit(const std::uint64_t* demand, std::int32_t from,
                                   std::int32_t length) const {
    const std::uint64_t* const free = free_.data();
    const std::int32_t words = lanes_.words;
    std::int32_t start = from;
    std::int32_t known = from;  // everything from start up to here fits
    while (start + length <= horizon_) {
        std::int32_t t = start + length - 1;
        if (words == 1) {
            while (t >= known && lanes_.suffices(free[t], *demand))
                --t;
        } else {
            for (; t >= known; --t) {
                bool fits = true;
                for (std::int32_t w = 0; w < words; ++w)
                    fits = fits && lanes_.suffices(free[t * words + w], demand[w]);
                if (!fits) break;
            }
        }
        if (t < known) return start;
        known = start + length;
        start = t + 1;
    }
    return horizon_;
}

bool Timeline::fits(const std::uint64_t* demand, std::int32_t from, std::int32_t until) const {
    for (std::int32_t t = from; t < until; ++t)
        for (std::int32_t w = 0; w < lanes_.words; ++w)
            if (!lanes_.suffices(freeWord(t, w), demand[w])) return false;
    return true;
}

std::int64_t Timeline::freeAt(std::int32_t lane, std::int32_t at) const {
    const std::int32_t perWord = 64 / lanes_.bits;
    const std::int32_t shift = (lane % perWord) * lanes_.bits;
    const std::uint64_t mask = (std::uint64_t{1} << (lanes_.bits - 1)) - 1;
    return static_cast<std::int64_t>(free_[at * lanes_.words + lane / perWord] >> shift & mask);
}

std::int64_t Timeline::mostFree(std::int32_t lane) const {
    std::int64_t most = 0;
    for (std::int32_t t = 0; t < horizon_; ++t)
        most = std::max(most, freeAt(lane, t));
    return most;
}

std::int32_t Timeline::firstAfter(std::int32_t person, std::int32_t from) const {
    const Stretch* const begin = stretches_.from(person * room_);
    const Stretch* const end = begin + stretchCount_[person];
    return static_cast<std::int32_t>(
        std::lower_bound(begin, end, from,
                         [](const Stretch& s, std::int32_t at) { return s.start < at; }) -
        begin);
}

bool Timeline::hasTimeToWalk(std::int32_t person, std::int32_t from, std::int32_t until,
                             std::int32_t station) const {
    const Stretch* const day = stretches_.from(person * room_);
    const std::int32_t next = firstAfter(person, from);
    if (next < stretchCount_[person] && until + way(station, day[next].station) > day[next].start)
        return false;
    return next == 0 || day[next - 1].finish + way(day[next - 1].station, station) <= from;
}

People Timeline::freePeople(People among, std::int32_t from, std::int32_t until,
                            std::int32_t station) const {
    People busy = 0;
    for (std::int32_t t = from; t < until && (among & ~busy) != 0; ++t)
        busy |= busy_[t];
    People free = among & ~busy;
    if (!hasWalks_) return free;
    for (People rest = free; rest != 0; rest &= rest - 1) {
        const int person = std::countr_zero(rest);
        if (!hasTimeToWalk(person, from, until, station)) free &= ~(People{1} << person);
    }
    return free;
}

Stretch Timeline::freeStretch(std::int32_t person, std::int32_t from, std::int32_t station) const {
    const Stretch* const day = stretches_.from(person * room_);
    const std::int32_t count = stretchCount_[person];
    for (std::int32_t next = firstAfter(person, from); next <= count; ++next) {
        const std::int32_t start =
            next == 0 ? from
                      : std::max(from, day[next - 1].finish + way(day[next - 1].station, station));
        const std::int32_t finish =
            next == count ? horizon_ : day[next].start - way(station, day[next].station);
        if (start < finish) return {start, finish, station};
    }
    return {horizon_, horizon_, station};
}

void Timeline::book(People people, Stretch stretch) {
    if (stretch.start == stretch.finish) return;
    for (std::int32_t t = stretch.start; t < stretch.finish; ++t)
        busy_[t] |= people;
    for (; people != 0; people &= people - 1) {
        const int person = std::countr_zero(people);
        Stretch* const day = stretches_.from(person * room_);
        const std::int32_t at = firstAfter(person, stretch.start);
        std::copy_backward(day + at, day + stretchCount_[person], day + stretchCount_[person] + 1);
        day[at] = stretch;
        ++stretchCount_[person];
    }
}

void Timeline::unbook(People people, Stretch stretch) {
    if (stretch.start == stretch.finish) return;
    for (std::int32_t t = stretch.start; t < stretch.finish; ++t)
        busy_[t] &= ~people;
    for (; people != 0; people &= people - 1) {
        const int person = std::countr_zero(people);
        Stretch* const day = stretches_.from(person * room_);
        const std::int32_t at = firstAfter(person, stretch.start);
        std::copy(day + at + 1, day + stretchCount_[person], day + at);
        --stretchCount_[person];
    }
}

}  // namespace cinder::plan::search
