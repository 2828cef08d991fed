#include "service/guest_line.h"

#include <algorithm>
#include <queue>

namespace cinder::service {

namespace {

/// Streams of the generator: one for what is taken, one for how long it lasts, one for coming.
constexpr std::uint64_t kTaking = 1U << 20U;
constexpr std::uint64_t kComing = 1U << 21U;

/// Neighbouring seeds give neighbouring first numbers, and neighbours in a queue must not be alike;
/// so the seed is stirred. Source: the finalizer of SplitMix64, G. L. Steele et al., "Fast
/// Splittable Pseudorandom Number Generators", OOPSLA 2014, from memory.
Rng rngOf(std::uint64_t seed, std::int32_t guest, std::uint64_t stream) {
    std::uint64_t z = seed * 0x9E3779B97F4A7C15ULL + (static_cast<std::uint64_t>(guest) << 24U);
    z += stream;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return Rng(z ^ (z >> 31U), stream);
}

/// One side of one stop. Guests are numbered; each passes once, so the lists only grow.
struct Lane {
    std::vector<std::int32_t> waiting;
    std::size_t called = 0;  ///< of `waiting`
    std::vector<std::int32_t> done;
    std::size_t gone = 0;  ///< of `done`
    std::int32_t helped = 0;

    [[nodiscard]] std::int32_t queue() const {
        return static_cast<std::int32_t>(waiting.size() - called);
    }
    /// Helped, or helped and still standing in the way.
    [[nodiscard]] std::int32_t occupied() const {
        return helped + static_cast<std::int32_t>(done.size() - gone);
    }
};

struct Happening {
    Duration at{0};
    std::uint64_t order = 0;
    std::int32_t guest = 0;
    std::int32_t stop = -1;  ///< where help ends; -1: the guest joins the queue
    std::int32_t side = 0;
    friend bool operator>(const Happening& a, const Happening& b) {
        return a.at != b.at ? a.at > b.at : a.order > b.order;
    }
};

class Play {
  public:
    Play(const Buffet& buffet, const Crowd& crowd, std::uint64_t seed)
        : buffet_(buffet),
          crowd_(crowd),
          seed_(seed),
          sides_(static_cast<std::size_t>(std::max(1, buffet.sides))),
          lanes_(buffet.stops.size() * sides_),
          pools_(poolsOf(buffet)),
          helping_(buffet.stops.size(), 0) {
        service_.guests.resize(static_cast<std::size_t>(crowd.guests));
        service_.busy.resize(buffet.stops.size(), Duration{0});
    }

    Service run() {
        release();
        while (!coming_.empty()) {
            const Happening next = coming_.top();
            coming_.pop();
            now_ = next.at;
            if (next.stop < 0)
                join(next.guest);
            else
                finish(next);
            settle();
        }
        return std::move(service_);
    }

  private:
    Lane& lane(std::size_t stop, std::size_t side) { return lanes_[stop * sides_ + side]; }

    void push(Duration at, std::int32_t guest, std::int32_t stop, std::size_t side) {
        coming_.push({at, order_++, guest, stop, static_cast<std::int32_t>(side)});
    }

    void release() {
        const Release& how = crowd_.release;
        if (how.how == Release::How::WhenShort) return sendTable();
        Rng rng(seed_, kComing);
        const Spread gap = Spread::exponential(how.every);
        Duration at = how.walk;
        for (std::int32_t guest = 0; guest < crowd_.guests; ++guest) {
            if (how.how == Release::How::OneByOne)
                at += gap.draw(rng);
            else if (how.how == Release::How::EachTable && guest > 0 &&
                     guest % std::max(1, how.seats) == 0)
                at += how.every;
            push(at, guest, -1, 0);
        }
        sent_ = crowd_.guests;
    }

    void sendTable() {
        const std::int32_t end = std::min(crowd_.guests, sent_ + std::max(1, crowd_.release.seats));
        for (; sent_ < end; ++sent_)
            push(now_ + crowd_.release.walk, sent_, -1, 0);
    }

    void join(std::int32_t guest) {
        std::size_t side = 0;
        for (std::size_t other = 1; other < sides_; ++other)
            if (standing(other) < standing(side)) side = other;
        lane(0, side).waiting.push_back(guest);
        pass(guest).joined = now_;
        ++joined_;
    }
    std::int32_t standing(std::size_t side) {
        return lane(0, side).queue() + lane(0, side).occupied();
    }

    void finish(const Happening& over) {
        const auto stop = static_cast<std::size_t>(over.stop);
        Lane& here = lane(stop, static_cast<std::size_t>(over.side));
        --here.helped;
        --helping_[pools_[stop]];
        here.done.push_back(over.guest);
    }

    /// Downstream first, so that whoever makes room is gone before the next one asks for it.
    void settle() {
        for (std::size_t stop = buffet_.stops.size(); stop-- > 0;) {
            for (std::size_t side = 0; side < sides_; ++side)
                while (moveOn(stop, side)) {
                }
            while (startNext(stop)) {
            }
        }
        const bool asksForMore = crowd_.release.how == Release::How::WhenShort &&
                                 sent_ < crowd_.guests && joined_ == sent_;
        if (!asksForMore) return;
        std::int32_t waiting = 0;
        for (std::size_t side = 0; side < sides_; ++side)
            waiting += lane(0, side).queue();
        if (waiting <= crowd_.release.waiting) sendTable();
    }

    bool canStart(std::size_t stop, std::size_t side) {
        const std::int32_t servers = buffet_.stops[stop].servers;
        const std::int32_t places = std::max(1, servers);
        return lane(stop, side).occupied() < places &&
               (servers == 0 || helping_[pools_[stop]] < servers);
    }

    bool moveOn(std::size_t stop, std::size_t side) {
        Lane& here = lane(stop, side);
        if (here.gone == here.done.size()) return false;
        const std::int32_t guest = here.done[here.gone];
        if (stop + 1 == buffet_.stops.size()) {
            pass(guest).passed = now_;
            service_.length = now_;
        } else {
            Lane& next = lane(stop + 1, side);
            const auto& room = buffet_.stops[stop + 1].room;
            const bool walksThrough = next.queue() == 0 && canStart(stop + 1, side);
            if (room && next.queue() >= *room && !walksThrough) return false;
            next.waiting.push_back(guest);
            while (startNext(stop + 1)) {
            }
        }
        ++here.gone;
        return true;
    }

    /// Among the sides the guest who has the lower number, which is the one who came first.
    bool startNext(std::size_t stop) {
        std::optional<std::size_t> best;
        for (std::size_t side = 0; side < sides_; ++side) {
            const Lane& here = lane(stop, side);
            if (here.queue() == 0 || !canStart(stop, side)) continue;
            if (!best || here.waiting[here.called] < first(stop, *best)) best = side;
        }
        if (!best) return false;
        Lane& here = lane(stop, *best);
        const std::int32_t guest = here.waiting[here.called++];
        ++here.helped;
        ++helping_[pools_[stop]];
        if (stop == 0) pass(guest).started = now_;
        const Duration takes = helpOf(stop, guest);
        service_.busy[stop] += takes;
        push(now_ + takes, guest, static_cast<std::int32_t>(stop), *best);
        return true;
    }
    std::int32_t first(std::size_t stop, std::size_t side) {
        const Lane& here = lane(stop, side);
        return here.waiting[here.called];
    }

    Duration helpOf(std::size_t index, std::int32_t guest) const {
        const Stop& stop = buffet_.stops[index];
        Rng rng = rngOf(seed_, guest, stop.draw);
        if (stop.options.empty()) return stop.everybody.draw(rng);
        Duration sum{0};
        bool isFirst = true;
        for (const Option& option : stop.options) {
            if (!takes(option, seed_, guest)) continue;
            sum += (isFirst ? option.time : stop.further).draw(rng);
            isFirst = false;
        }
        return isFirst ? stop.past : sum;
    }

    Pass& pass(std::int32_t guest) { return service_.guests[static_cast<std::size_t>(guest)]; }

    const Buffet& buffet_;
    const Crowd& crowd_;
    std::uint64_t seed_;
    std::size_t sides_;
    std::vector<Lane> lanes_;
    std::vector<std::size_t> pools_;     ///< of each stop: where its servers are counted
    std::vector<std::int32_t> helping_;  ///< in each pool, all sides
    std::priority_queue<Happening, std::vector<Happening>, std::greater<>> coming_;
    std::uint64_t order_ = 0;
    std::int32_t sent_ = 0;
    std::int32_t joined_ = 0;
    Duration now_{0};
    Service service_;
};

}  // namespace

std::vector<std::size_t> poolsOf(const Buffet& buffet) {
    std::vector<std::size_t> pools(buffet.stops.size());
    for (std::size_t stop = 0; stop < pools.size(); ++stop) {
        pools[stop] = stop;
        const std::uint32_t team = buffet.stops[stop].team;
        for (std::size_t other = 0; team != 0 && other < stop; ++other)
            if (buffet.stops[other].team == team) pools[stop] = pools[other];
    }
    return pools;
}

bool takes(const Option& option, std::uint64_t seed, std::int32_t guest) {
    const double number = rngOf(seed, guest, kTaking + option.draw).unit();
    return number >= option.from && number < option.from + option.share;
}

Service playService(const Buffet& buffet, const Crowd& crowd, std::uint64_t seed) {
    if (crowd.guests <= 0 || buffet.stops.empty()) return {};
    return Play(buffet, crowd, seed).run();
}

}  // namespace cinder::service
