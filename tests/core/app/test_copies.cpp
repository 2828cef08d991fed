#include <catch2/catch.hpp>

#include <fstream>

#include <sqlite3.h>

#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using samples::Device;

namespace {

Instant morning() {
    return event::parse(samples::orchard()).value().serve.at - 6h;
}

/// A device on which the orchard lunch was begun.
void begin(Device& device) {
    REQUIRE(device.session->importEvent(samples::orchard()));
    REQUIRE(device.session->start(device.session->look()->tasks.front().id));
}

void spoil(const std::filesystem::path& file, const char* statement) {
    sqlite3* database = nullptr;
    REQUIRE(sqlite3_open(file.string().c_str(), &database) == SQLITE_OK);
    CHECK(sqlite3_exec(database, statement, nullptr, nullptr, nullptr) == SQLITE_OK);
    sqlite3_close(database);
}

}  // namespace

TEST_CASE("everything of a device comes back on an empty one, with its day as it stood") {
    Device old(morning());
    begin(old);
    const auto file = old.folder.file("all.store");
    REQUIRE(old.session->backUp(file));

    Device fresh(morning());
    const auto restored = fresh.session->restore(file);

    REQUIRE(restored);
    CHECK(restored->events == 1);
    CHECK(restored->operations == 3);
    const auto events = fresh.session->events().value();
    REQUIRE(events == old.session->events().value());
    REQUIRE(fresh.session->open(events.front().id));
    CHECK(fresh.session->look()->tasks == old.session->look()->tasks);
    CHECK(fresh.store->device() != old.store->device());
    CHECK_FALSE(fresh.session->verify().value());
}

TEST_CASE("a copy taken back twice, or where it was made, adds nothing") {
    Device device(morning());
    begin(device);
    const auto file = device.folder.file("all.store");
    REQUIRE(device.session->backUp(file));
    CHECK(device.session->restore(file).value().operations == 0);

    Device other(morning());
    REQUIRE(other.session->restore(file));
    CHECK(other.session->restore(file).value().operations == 0);
}

TEST_CASE("what was done since the copy stays, also in the event that is open") {
    Device device(morning());
    begin(device);
    const auto file = device.folder.file("all.store");
    REQUIRE(device.session->backUp(file));
    const TaskId first = device.session->look()->tasks.front().id;
    device.clock.advance(5min);
    REQUIRE(device.session->finish(first));
    const auto before = device.session->look()->tasks;

    REQUIRE(device.session->restore(file));

    CHECK(device.session->look()->tasks == before);
}

TEST_CASE("work done on another copy comes home into the open event") {
    Device tablet(morning());
    begin(tablet);
    const auto there = tablet.folder.file("there.store");
    const auto back = tablet.folder.file("back.store");
    REQUIRE(tablet.session->backUp(there));
    Device phone(morning() + 10min);
    REQUIRE(phone.session->restore(there));
    REQUIRE(phone.session->open(tablet.session->look()->event));
    const TaskId first = tablet.session->look()->tasks.front().id;
    REQUIRE(phone.session->finish(first));
    REQUIRE(phone.session->backUp(back));

    CHECK(tablet.session->restore(back).value().operations == 1);

    CHECK(tablet.session->look()->tasks.front().state == app::TaskState::Done);
}

TEST_CASE("a copy that was changed is refused, and says where") {
    Device device(morning());
    begin(device);
    const auto file = device.folder.file("all.store");
    REQUIRE(device.session->backUp(file));
    spoil(file,
          "DROP TRIGGER operation_is_not_changed;"
          "UPDATE operation SET body = replace(body, 'at', 'AT') WHERE kind = 'started'");

    Device fresh(morning());
    const auto restored = fresh.session->restore(file);

    REQUIRE_FALSE(restored);
    CHECK(restored.error().why == Refusal::Why::BadCopy);
    CHECK_THAT(restored.error().detail, Catch::Contains("entry 3"));
    CHECK(fresh.session->events().value().empty());
}

TEST_CASE("what is no copy, or not there, is refused and nothing is made") {
    Device device(morning());
    const auto notes = device.folder.file("notes.store");
    std::ofstream(notes) << "somebody's notes about lunch, longer than a page header would be. "
                            "somebody's notes about lunch, longer than a page header would be.";
    const auto none = device.folder.file("none.store");
    for (const auto& file : {notes, none}) {
        const auto restored = device.session->restore(file);
        REQUIRE_FALSE(restored);
        CHECK(restored.error().why == Refusal::Why::BadCopy);
    }
    CHECK_FALSE(std::filesystem::exists(none));
}

TEST_CASE("a copy that cannot be written leaves the one before as it is") {
    Device device(morning());
    begin(device);
    const auto file = device.folder.file("no-such-folder") / "all.store";
    const auto refused = device.session->backUp(file);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == Refusal::Why::NotSaved);
    CHECK_FALSE(std::filesystem::exists(file));
}

TEST_CASE("a copy is one file and replaces the one of its name") {
    Device device(morning());
    begin(device);
    const auto file = device.folder.file("copies") / "all.store";
    std::filesystem::create_directories(file.parent_path());
    REQUIRE(device.session->backUp(file));
    REQUIRE(device.session->backUp(file));
    Device fresh(morning());
    REQUIRE(fresh.session->restore(file));
    const std::filesystem::directory_iterator inFolder(file.parent_path());
    CHECK(std::distance(begin(inFolder), end(inFolder)) == 1);
}
