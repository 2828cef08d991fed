#pragma once

/// Devices of an invented crew, each with a store and a clock of its own, and connections between
/// them on which messages travel one after the other, as fast as a test says.

#include <catch2/catch.hpp>

#include <algorithm>
#include <deque>
#include <functional>
#include <list>
#include <memory>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "../journal/samples.h"
#include "faulty_store.h"
#include "live/day.h"
#include "sync/exchange.h"

namespace samples {

using namespace cinder::sync;

inline const EventId kOrchard{"orchard"};
inline const EventId kBarn{"barn"};
inline const EventId kLake{"lake"};

/// So many lines of one checklist.
inline std::vector<Body> ticks(int count) {
    std::vector<Body> bodies;
    for (int line = 1; line <= count; ++line)
        bodies.emplace_back(LineTicked{TaskId{"tables"}, line, at(line)});
    return bodies;
}

struct Tablet {
    explicit Tablet(Instant start) : clock(start) { open({}); }

    void open(SqliteStore::Options options) {
        store.reset();
        auto opened = SqliteStore::open(folder.file("day.journal"), options);
        REQUIRE(opened);
        store = std::make_unique<FaultyStore>(std::move(*opened));
    }
    [[nodiscard]] std::vector<Operation> day(const EventId& event) const {
        return store->read(event).value();
    }

    Folder folder;
    SimulatedClock clock;
    std::unique_ptr<FaultyStore> store;
    std::vector<Exchange*> exchanges;
    std::vector<Entry> arrived;
    std::uint32_t touches = 0;
};

/// One connection. The exchanges stay when it is cut, to be looked at.
struct Link {
    struct End {
        Tablet* tablet = nullptr;
        std::unique_ptr<Exchange> exchange;
        [[nodiscard]] const Peer& peer() const { return exchange->peer(); }
        [[nodiscard]] Standing standing() const { return exchange->peer().standing; }
    };
    End a;
    End b;
    bool isCut = false;
    bool hungUp = false;  ///< by a device that could make no sense of what it heard
};

class Crew {
  public:
    /// How long each message takes.
    Duration delay{0};
    /// May change what is on its way.
    std::function<void(Message&)> between;
    /// Everything that was heard so far.
    std::vector<Message> said;

    Tablet& add(Instant start = at(0)) { return tablets_.emplace_back(start); }

    Link& connect(Tablet& a, Tablet& b) {
        Link& link = links_.emplace_back();
        link.a = {&a, exchangeOf(link, a, link.a, link.b)};
        link.b = {&b, exchangeOf(link, b, link.b, link.a)};
        for (Link::End* end : {&link.a, &link.b})
            end->tablet->exchanges.push_back(end->exchange.get());
        link.a.exchange->begin();
        link.b.exchange->begin();
        return link;
    }
    void cut(Link& link) {
        link.isCut = true;
        std::erase_if(flying_, [&](const Flight& flight) { return flight.link == &link; });
        for (Link::End* end : {&link.a, &link.b})
            std::erase(end->tablet->exchanges, end->exchange.get());
    }
    /// The next message arrives; false when none is on its way.
    bool step() {
        if (flying_.empty()) return false;
        const Flight flight = std::move(flying_.front());
        flying_.pop_front();
        for (Tablet& tablet : tablets_)
            tablet.clock.advance(delay);
        Message message = cinder::sync::read(flight.bytes).value();
        if (between) between(message);
        said.push_back(message);
        if (!flight.to->exchange->receive(cinder::sync::write(message))) {
            flight.link->hungUp = true;
            cut(*flight.link);
        }
        return true;
    }
    /// Until nothing more is said; how many messages that were.
    int run() {
        constexpr int kEndless = 10'000;
        int steps = 0;
        while (step())
            REQUIRE(++steps < kEndless);
        return steps;
    }
    /// Time goes by, and all of them look again.
    void beat() {
        for (Tablet& tablet : tablets_) {
            tablet.clock.advance(std::chrono::seconds{5});
            for (Exchange* exchange : tablet.exchanges)
                exchange->beat();
        }
        run();
    }
    /// Noted by hand on a device, in one go.
    static void note(Tablet& tablet, const EventId& event, const std::vector<Body>& bodies) {
        std::vector<Operation> operations;
        std::uint64_t sequence = tablet.store->nextId(event).value().sequence;
        for (const Body& body : bodies) {
            Operation op = operation(sequence++, body, tablet.store->device().text());
            op.event = event;
            op.stamp = {tablet.clock.wall(), ++tablet.touches};
            operations.push_back(std::move(op));
        }
        REQUIRE(tablet.store->append(operations));
        for (Exchange* exchange : tablet.exchanges)
            exchange->noteAdded(event);
    }
    static void touch(Tablet& tablet, const EventId& event, int line = 1) {
        note(tablet, event, {LineTicked{TaskId{"tables"}, line, tablet.clock.wall()}});
    }
    /// How many entries were on their way so far, those sent twice counted twice.
    [[nodiscard]] std::size_t entriesSaid() const {
        std::size_t sum = 0;
        for (const Message& message : said)
            if (const auto* entries = std::get_if<Entries>(&message))
                sum += entries->entries.size();
        return sum;
    }
    template <class Kind>
    [[nodiscard]] std::ptrdiff_t count() const {
        return std::count_if(said.begin(), said.end(), [](const Message& message) {
            return std::holds_alternative<Kind>(message);
        });
    }

  private:
    struct Flight {
        Link* link;
        Link::End* to;
        std::string bytes;
    };
    std::unique_ptr<Exchange> exchangeOf(Link& link, Tablet& tablet, Link::End& from,
                                         Link::End& to) {
        Exchange::Ways ways;
        ways.send = [this, &link, &to](std::string bytes) {
            if (!link.isCut) flying_.push_back({&link, &to, std::move(bytes)});
        };
        ways.now = [&tablet] { return tablet.clock.wall(); };
        ways.arrived = [&tablet, &from](const std::vector<Entry>& entries) {
            tablet.arrived.insert(tablet.arrived.end(), entries.begin(), entries.end());
            for (Exchange* exchange : tablet.exchanges)
                if (exchange != from.exchange.get())
                    exchange->noteAdded(entries.front().operation.event);
        };
        return std::make_unique<Exchange>(*tablet.store, "", std::move(ways));
    }

    std::list<Tablet> tablets_;
    std::list<Link> links_;
    std::deque<Flight> flying_;
};

/// Both have the same record, word for word and seal for seal, and it tells of the same day.
inline void checkSame(const Tablet& a, const Tablet& b) {
    CHECK(a.store->heads().value() == b.store->heads().value());
    CHECK(a.store->events().value() == b.store->events().value());
    const std::vector<EventId> events = a.store->events().value();
    for (const EventId& event : events) {
        CHECK(a.day(event) == b.day(event));
        CHECK(live::fold(a.day(event)) == live::fold(b.day(event)));
    }
    CHECK_FALSE(a.store->verify().value());
    CHECK_FALSE(b.store->verify().value());
}

/// No entry came to a device twice, nor one that it had made itself.
inline void checkEachOnce(const Tablet& tablet) {
    std::set<std::pair<EventId, OperationId>> seen;
    for (const Entry& entry : tablet.arrived) {
        CHECK(entry.operation.id.device != tablet.store->device());
        CHECK(seen.emplace(entry.operation.event, entry.operation.id).second);
    }
}

}  // namespace samples
