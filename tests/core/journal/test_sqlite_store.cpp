#include <catch2/catch.hpp>

#include "journal/sqlite/sqlite_store.h"
#include "samples.h"

using namespace samples;

namespace {

std::unique_ptr<SqliteStore> openStore(const std::filesystem::path& file) {
    auto store = SqliteStore::open(file);
    REQUIRE(store);
    return std::move(*store);
}

std::vector<Operation> someDay(const std::string& device = "tablet") {
    std::vector<Operation> day;
    std::uint64_t sequence = 0;
    for (const Body& body : everyKind())
        day.push_back(operation(++sequence, body, device));
    return day;
}

}  // namespace

TEST_CASE("a new store has a device of its own, which stays the same") {
    const Folder folder;
    const DeviceId device = openStore(folder.file("a.journal"))->device();

    CHECK(device.text().size() == 16);
    CHECK(openStore(folder.file("a.journal"))->device() == device);
    CHECK(openStore(folder.file("b.journal"))->device() != device);
}

TEST_CASE("operations are read back as they were appended, after the store was opened again") {
    const Folder folder;
    const auto day = someDay();
    REQUIRE(openStore(folder.file("a.journal"))->append(day));

    const auto store = openStore(folder.file("a.journal"));

    CHECK(store->read(EventId{"orchard"}).value() == day);
    CHECK(store->events().value() == std::vector{EventId{"orchard"}});
    CHECK_FALSE(store->verify().value());
}

TEST_CASE("the next name of this device continues its chain in each event") {
    const Folder folder;
    const auto store = openStore(folder.file("a.journal"));
    const OperationId first = store->nextId(EventId{"orchard"}).value();
    Operation op = operation(1, Undone{});
    op.id = first;
    REQUIRE(store->append({&op, 1}));

    CHECK(first.sequence == 1);
    CHECK(store->nextId(EventId{"orchard"}).value().sequence == 2);
    CHECK(store->nextId(EventId{"another"}).value().sequence == 1);
}

TEST_CASE("operations that are already there are passed over") {
    const Folder folder;
    const auto store = openStore(folder.file("a.journal"));
    const auto day = someDay();
    REQUIRE(store->append(std::span(day).first(5)));

    REQUIRE(store->append(day));

    CHECK(store->read(EventId{"orchard"}).value() == day);
}

TEST_CASE(
    "another operation under a name that is taken is refused, and so is all that came with it") {
    const Folder folder;
    const auto store = openStore(folder.file("a.journal"));
    const auto day = someDay();
    REQUIRE(store->append(day));
    std::vector<Operation> clash = someDay("phone");
    clash.push_back(operation(2, TaskSkipped{TaskId{"x"}, at(1)}));

    const auto refused = store->append(clash);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == StoreError::Why::OutOfOrder);
    CHECK(store->read(EventId{"orchard"}).value() == day);
}

TEST_CASE("a gap in a device's chain is refused") {
    const Folder folder;
    const auto store = openStore(folder.file("a.journal"));
    const auto day = someDay();

    const auto refused = store->append(std::span(day).subspan(1));

    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == StoreError::Why::OutOfOrder);
    CHECK(store->events().value().empty());
}

TEST_CASE("two devices' operations come back in clock order, whichever was appended first") {
    const Folder folder;
    const auto one = openStore(folder.file("a.journal"));
    const auto two = openStore(folder.file("b.journal"));
    const auto tablet = someDay("tablet");
    const auto phone = someDay("phone");
    REQUIRE(one->append(tablet));
    REQUIRE(one->append(phone));
    REQUIRE(two->append(phone));
    REQUIRE(two->append(tablet));

    const auto merged = one->read(EventId{"orchard"}).value();

    CHECK(merged == two->read(EventId{"orchard"}).value());
    CHECK(std::is_sorted(merged.begin(), merged.end(), comesBefore));
}

TEST_CASE("the last operation of a kind is found past those that do not count") {
    const Folder folder;
    const auto store = openStore(folder.file("a.journal"));
    const EventId event{"orchard"};
    const std::vector<Operation> written{operation(1, EventDrafted{"{}", "/name"}),
                                         operation(2, EventDrafted{"{ }", "/site"}),
                                         operation(3, TaskStarted{TaskId{"lamb"}, Instant{}})};
    REQUIRE(store->append(written));

    CHECK(store->readLast(event, "drafted", {}).value() == written[1]);
    CHECK(store->readLast(event, "drafted", {written[1].id}).value() == written[0]);
    CHECK_FALSE(store->readLast(event, "drafted", {written[0].id, written[1].id}).value());
    CHECK_FALSE(store->readLast(event, "described", {}).value());
    CHECK_FALSE(store->readLast(EventId{"barn"}, "drafted", {}).value());
}
