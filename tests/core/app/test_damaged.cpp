/// A store of which one event is damaged, or that fails half way: the others go on.

#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"
#include "passing_store.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using samples::Device;

namespace {

using journal::StoreError;

/// The store of a device, one event of which cannot be read, or not be added to.
class FaultyStore final : public samples::PassingStore {
  public:
    using PassingStore::PassingStore;

    EventId unreadable;
    EventId full;

    Stored<void> append(std::span<const journal::Operation> operations) override {
        if (!operations.empty() && operations.front().event == full)
            return fail(StoreError{StoreError::Why::DiskFull, "no room"});
        return PassingStore::append(operations);
    }
    Stored<void> take(std::span<const journal::Entry> entries) override {
        if (!entries.empty() && entries.front().operation.event == full)
            return fail(StoreError{StoreError::Why::DiskFull, "no room"});
        return PassingStore::take(entries);
    }
    Stored<std::vector<journal::Operation>> read(const EventId& id) const override {
        if (id == unreadable) return fail(damaged());
        return PassingStore::read(id);
    }
    Stored<std::vector<journal::Operation>> readKinds(
        const EventId& id, std::span<const std::string_view> kinds) const override {
        if (id == unreadable) return fail(damaged());
        return PassingStore::readKinds(id, kinds);
    }
    Stored<std::optional<journal::Operation>> readLast(
        const EventId& id, std::string_view kind,
        const std::set<journal::OperationId>& but) const override {
        if (id == unreadable) return fail(damaged());
        return PassingStore::readLast(id, kind, but);
    }

  private:
    static StoreError damaged() { return {StoreError::Why::Damaged, "malformed"}; }
};

/// The orchard lunch and, a day before it, the same one under another name.
struct TwoEvents : Device {
    TwoEvents() : Device(event::parse(samples::orchard()).value().serve.at - 6h) {
        auto earlier = event::parse(samples::orchard()).value();
        earlier.id = EventId{"earlier"};
        earlier.serve.at -= 24h;
        if (earlier.site.arrival) earlier.site.arrival->at -= 24h;
        past = session->importEvent(event::write(earlier)).value();
        event = session->importEvent(samples::orchard()).value();
        faulty = std::make_unique<FaultyStore>(*store);
        session = std::make_unique<app::Session>(*faulty, clock);
    }
    EventId past;
    EventId event;
    std::unique_ptr<FaultyStore> faulty;
};

}  // namespace

TEST_CASE("an event that cannot be read is named and hides no other") {
    TwoEvents device;
    device.faulty->unreadable = device.past;

    const auto events = device.session->events();

    REQUIRE(events);
    REQUIRE(events->size() == 2);
    for (const app::EventEntry& entry : *events)
        CHECK(entry.isUnreadable == (entry.id == device.past));
    const auto refused = device.session->open(device.past);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().storage == StoreError::Why::Damaged);
    CHECK_THAT(app::describe(refused.error()), Catch::Contains("damaged"));
    REQUIRE(device.session->open(device.event));
    REQUIRE(device.session->start(TaskId{"unload"}));
}

TEST_CASE("an event that cannot be read teaches nothing, and the others do") {
    TwoEvents device;
    REQUIRE(device.session->open(device.event));
    REQUIRE(device.session->start(TaskId{"unload"}));
    const auto methods = device.session->methods().value();
    REQUIRE_FALSE(methods.empty());

    device.faulty->unreadable = device.past;

    CHECK(device.session->methods());
    CHECK(device.session->debrief());
}

TEST_CASE("a restore that fails half way shows what had come in the event that is open") {
    TwoEvents device;
    const auto before = device.folder.file("before.store");
    const auto after = device.folder.file("after.store");
    REQUIRE(device.session->backUp(before));
    Device phone(device.clock.wall());
    REQUIRE(phone.session->restore(before));
    for (const EventId& id : {device.past, device.event}) {
        REQUIRE(phone.session->open(id));
        REQUIRE(phone.session->start(TaskId{"unload"}));
    }
    REQUIRE(phone.session->backUp(after));
    REQUIRE(device.session->open(device.past));
    device.faulty->full = device.event;

    const auto restored = device.session->restore(after);

    REQUIRE_FALSE(restored);
    CHECK(restored.error().storage == StoreError::Why::DiskFull);
    const auto tasks = device.session->look()->tasks;
    CHECK(std::any_of(tasks.begin(), tasks.end(), [](const app::TaskCard& card) {
        return card.state == app::TaskState::Running;
    }));
}

TEST_CASE("what one device wrote under a clock that was set back is taken in its own order") {
    Device tablet(event::parse(samples::orchard()).value().serve.at - 6h);
    const auto id = tablet.session->importEvent(samples::orchard()).value();
    // As a clock that is not ours could have stamped them.
    auto next = tablet.store->nextId(id).value();
    std::vector<journal::Operation> odd;
    for (const auto back : {1min, 2min}) {
        journal::Operation op;
        op.event = id;
        op.id = {DeviceId{"odd"}, odd.size() + 1};
        op.stamp = {tablet.clock.wall() - back, 0};
        op.body = journal::TaskStarted{TaskId{"unload"}, tablet.clock.wall()};
        odd.push_back(std::move(op));
    }
    REQUIRE(tablet.store->append(odd));
    const auto file = tablet.folder.file("all.store");
    REQUIRE(tablet.session->backUp(file));

    Device fresh(tablet.clock.wall());
    const auto restored = fresh.session->restore(file);

    REQUIRE(restored);
    CHECK(restored->differing.empty());
    CHECK(restored->operations == static_cast<std::int32_t>(next.sequence - 1 + odd.size()));
}

TEST_CASE("a device that can write nothing says so before anything is touched") {
    Device device(event::parse(samples::orchard()).value().serve.at - 6h);
    CHECK_FALSE(device.session->whyReadOnly());
    device.session.reset();
    device.store.reset();
    device.store = journal::SqliteStore::open(device.folder.file("day.journal"),
                                              {.readOnly = true, .pageLimit = {}})
                       .value();
    device.session = std::make_unique<app::Session>(*device.store, device.clock);

    const auto why = device.session->whyReadOnly();
    REQUIRE(why);
    CHECK(why->why == Refusal::Why::ReadOnly);
    CHECK(why->storage == StoreError::Why::ReadOnly);
}
