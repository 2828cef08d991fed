/// What devices hand each other: entries with their seals.

#include <catch2/catch.hpp>

#include "journal/sqlite/sqlite_store.h"
#include "samples.h"

using namespace samples;

namespace {

const EventId kOrchard{"orchard"};
constexpr std::size_t kAll = std::string::npos;

struct Shelf {
    Folder folder;
    std::unique_ptr<SqliteStore> store = SqliteStore::open(folder.file("a.journal")).value();

    std::vector<Entry> chain(const std::string& device, std::uint64_t after = 0,
                             std::size_t bytes = kAll) const {
        return store->entriesAfter(kOrchard, {DeviceId{device}, after}, bytes).value();
    }
};

/// `count` touches of a device.
std::vector<Operation> touches(int count, const std::string& device) {
    std::vector<Operation> day;
    day.reserve(static_cast<std::size_t>(count));
    for (int n = 1; n <= count; ++n)
        day.push_back(operation(static_cast<std::uint64_t>(n),
                                TaskStarted{TaskId{"task-" + std::to_string(n)}, at(n)}, device));
    return day;
}

}  // namespace

TEST_CASE("a store says where the chain of each device in each event ends") {
    Shelf shelf;
    REQUIRE(shelf.store->append(touches(3, "tablet")));
    REQUIRE(shelf.store->append(touches(2, "phone")));
    auto elsewhere = touches(1, "tablet");
    elsewhere.front().event = EventId{"market"};
    REQUIRE(shelf.store->append(elsewhere));

    const auto all = shelf.store->heads().value();
    REQUIRE(all.size() == 3);
    CHECK(all[0].event == EventId{"market"});
    CHECK(all[1].last == OperationId{DeviceId{"phone"}, 2});
    CHECK(all[2].last == OperationId{DeviceId{"tablet"}, 3});
    CHECK(all[2].seal == shelf.chain("tablet").back().seal);

    const auto here = shelf.store->heads(kOrchard).value();
    CHECK(here == std::vector(all.begin() + 1, all.end()));
    CHECK(shelf.store->heads(EventId{"unknown"}).value().empty());
}

TEST_CASE("a part of a chain is as long as asked for, and never empty where there is more") {
    Shelf shelf;
    REQUIRE(shelf.store->append(touches(5, "tablet")));
    const auto whole = shelf.chain("tablet");
    REQUIRE(whole.size() == 5);

    CHECK(shelf.chain("tablet", 2) == std::vector(whole.begin() + 2, whole.end()));
    CHECK(shelf.chain("tablet", 5).empty());
    CHECK(shelf.chain("tablet", 0, 1) == std::vector{whole.front()});
    const std::size_t two = whole[0].body.text.size() + whole[1].body.text.size();
    CHECK(shelf.chain("tablet", 0, two).size() == 2);
    CHECK(shelf.chain("nobody").empty());
}

TEST_CASE("entries of another device are taken as they were sealed, once") {
    Shelf tablet;
    Shelf phone;
    std::vector<Operation> day;
    std::uint64_t sequence = 0;
    for (const Body& body : everyKind())
        day.push_back(operation(++sequence, body));
    REQUIRE(tablet.store->append(day));
    const auto sealed = tablet.chain("tablet");

    REQUIRE(phone.store->take(sealed));
    REQUIRE(phone.store->take(sealed));

    CHECK(phone.store->read(kOrchard).value() == day);
    CHECK(phone.chain("tablet") == sealed);
    CHECK_FALSE(phone.store->verify().value());
    CHECK(phone.store->sealOf(kOrchard, {DeviceId{"tablet"}, 2}).value() == sealed[1].seal);
    CHECK_FALSE(phone.store->sealOf(kOrchard, {DeviceId{"tablet"}, sequence + 1}).value());
}

TEST_CASE("the words of a newer version are passed on as they were written") {
    Shelf tablet;
    Shelf phone;
    Shelf third;
    const std::string words = R"({"task":"a","at":5,   "later":"kept"})";
    REQUIRE(tablet.store->append(std::vector{operation(1, Unknown{"gladdened", words})}));

    REQUIRE(phone.store->take(tablet.chain("tablet")));
    REQUIRE(third.store->take(phone.chain("tablet")));

    CHECK(third.chain("tablet").front().body == BodyText{"gladdened", words});
    CHECK(third.chain("tablet") == tablet.chain("tablet"));
}

TEST_CASE("what does not follow from what a device sealed is not taken, and nothing beside it is") {
    Shelf tablet;
    Shelf phone;
    REQUIRE(tablet.store->append(touches(4, "tablet")));
    auto sealed = tablet.chain("tablet");
    auto why = StoreError::Why::Failed;

    SECTION("other words") {
        sealed[2].body.text += " ";
        why = StoreError::Why::BadSeal;
    }
    SECTION("another seal") {
        sealed[3].seal[0] ^= 1U;
        why = StoreError::Why::BadSeal;
    }
    SECTION("one is missing") {
        sealed.erase(sealed.begin() + 1);
        why = StoreError::Why::OutOfOrder;
    }
    SECTION("said to be by somebody else") {
        sealed[0].operation.person = PersonId{"bo"};
        why = StoreError::Why::BadSeal;
    }

    const auto taken = phone.store->take(sealed);
    REQUIRE_FALSE(taken);
    CHECK(taken.error().why == why);
    CHECK(phone.store->events().value().empty());
}

TEST_CASE("a record that parted in two shows, and stays as it is here") {
    Shelf tablet;
    Shelf twin;
    REQUIRE(tablet.store->append(touches(3, "tablet")));
    auto other = touches(3, "tablet");
    other[2].body = TaskSkipped{TaskId{"task-3"}, at(3)};
    REQUIRE(twin.store->append(other));
    const auto before = twin.chain("tablet");

    const auto taken = twin.store->take(tablet.chain("tablet"));

    REQUIRE_FALSE(taken);
    CHECK(taken.error().why == StoreError::Why::OutOfOrder);
    CHECK(twin.chain("tablet") == before);
}

TEST_CASE("a store that cannot be written gives what it has and takes nothing") {
    Shelf tablet;
    REQUIRE(tablet.store->append(touches(2, "tablet")));
    tablet.store.reset();
    const auto shown =
        SqliteStore::open(tablet.folder.file("a.journal"), {.readOnly = true, .pageLimit = {}})
            .value();
    Shelf phone;
    REQUIRE(phone.store->append(touches(1, "phone")));

    CHECK(shown->entriesAfter(kOrchard, {DeviceId{"tablet"}, 0}, kAll).value().size() == 2);
    const auto taken = shown->take(phone.chain("phone"));
    REQUIRE_FALSE(taken);
    CHECK(taken.error().why == StoreError::Why::ReadOnly);
}
