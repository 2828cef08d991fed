#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>

#include <sqlite3.h>

#include "demo_day.h"
#include "event/json.h"
#include "journal/codec.h"

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

std::string bytesOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// The disk of `from`, put into another device: from here on both write under one name.
void becomeTwinOf(Device& from, Device& twin) {
    for (Device* one : {&from, &twin}) {
        one->session.reset();
        one->store.reset();  // its log is folded into the file
    }
    std::filesystem::copy_file(from.folder.file("day.journal"), twin.folder.file("day.journal"),
                               std::filesystem::copy_options::overwrite_existing);
    from.restart();
    twin.restart();
    REQUIRE(from.store->device() == twin.store->device());
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

TEST_CASE("an event that was changed in a copy is named, and the others are taken") {
    Device device(morning());
    begin(device);
    const auto other = device.session->importEvent(samples::demo("pruning-day-supper.json"));
    REQUIRE(other);
    const auto file = device.folder.file("all.store");
    REQUIRE(device.session->backUp(file));
    spoil(file,
          "DROP TRIGGER operation_is_not_changed;"
          "UPDATE operation SET body = replace(body, 'at', 'AT') WHERE kind = 'started'");

    Device fresh(morning());
    const auto restored = fresh.session->restore(file);

    REQUIRE(restored);
    CHECK(restored->events == 1);
    REQUIRE(restored->broken.size() == 1);
    CHECK(restored->broken.front() != *other);
    REQUIRE(fresh.session->events()->size() == 1);
    CHECK(fresh.session->events()->front().id == *other);
}

TEST_CASE("a record that was altered is copied all the same, and the person is told where") {
    Device device(morning());
    begin(device);
    spoil(device.folder.file("day.journal"),
          "DROP TRIGGER operation_is_not_changed;"
          "UPDATE operation SET body = replace(body, 'at', 'AT') WHERE kind = 'started'");
    const auto file = device.folder.file("all.store");

    const auto copied = device.session->backUp(file);

    REQUIRE(copied);
    REQUIRE(copied->has_value());
    CHECK((*copied)->operation.sequence == 3);
    CHECK(std::filesystem::exists(file));
}

TEST_CASE("a copy never takes the place of the journal it is made of") {
    Device device(morning());
    begin(device);
    const auto refused = device.session->backUp(device.folder.file("day.journal"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().storage == journal::StoreError::Why::Occupied);
    CHECK_THAT(app::describe(refused.error()), Catch::Contains("name another file"));
    device.restart();
    CHECK(device.session->events()->size() == 1);
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
    const auto file = device.folder.file("all.store");
    REQUIRE(device.session->backUp(file));
    const std::string before = bytesOf(file);
    REQUIRE(device.session->finish(device.session->look()->tasks.front().id));
    // Something that cannot be removed lies where the copy is to be made.
    std::filesystem::create_directories(file.string() + ".part/in-the-way");

    const auto refused = device.session->backUp(file);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == Refusal::Why::NotSaved);
    CHECK(bytesOf(file) == before);
    Device fresh(morning());
    CHECK(fresh.session->restore(file).value().operations == 3);
}

TEST_CASE("a copy into a folder that is not there is refused and makes none") {
    Device device(morning());
    begin(device);
    const auto file = device.folder.file("no-such-folder") / "all.store";
    const auto refused = device.session->backUp(file);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == Refusal::Why::NotSaved);
    CHECK_FALSE(std::filesystem::exists(file.parent_path()));
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

TEST_CASE("an event that went another way since the copy is named and left as it is here") {
    Device here(morning());
    begin(here);
    const EventId event = here.session->look()->event;
    const TaskId first = here.session->look()->tasks.front().id;
    Device there(morning());
    becomeTwinOf(here, there);
    // The same disk put back from a copy, then each goes on by itself.
    REQUIRE(here.session->open(event));
    REQUIRE(there.session->open(event));
    REQUIRE(here.session->finish(first));
    REQUIRE(there.session->skip(there.session->look()->tasks.back().id));
    const std::string supper = samples::demo("pruning-day-supper.json");
    const auto other = there.session->importEvent(supper);
    REQUIRE(other);
    const auto file = there.folder.file("all.store");
    REQUIRE(there.session->backUp(file));
    const auto before = here.store->read(event).value();

    const auto restored = here.session->restore(file);

    REQUIRE(restored);
    CHECK(restored->differing == std::vector{event});
    CHECK(here.store->read(event).value() == before);
    // What did not go another way came all the same.
    CHECK(restored->events == 1);
    CHECK(here.store->read(*other).value() == there.store->read(*other).value());
    CHECK_FALSE(here.session->verify().value());
}

TEST_CASE("a copy that does not fit is refused, and what came before it filled the disk is kept") {
    Device old(morning());
    begin(old);
    REQUIRE(old.session->importEvent(samples::demo("pruning-day-supper.json")));
    const auto ids = old.store->events().value();
    REQUIRE(ids.size() == 2);
    const auto file = old.folder.file("all.store");
    REQUIRE(old.session->backUp(file));

    // A disk with room for the first event of the copy, and not for the second (pages of 4 kB).
    const auto operations = old.store->read(ids.front()).value();
    std::size_t first = 0;
    for (const auto& op : operations)
        first += journal::writeBody(op.body).text.size();
    const int pages = static_cast<int>(first / 4096) + 20;
    const samples::Folder folder;
    const SimulatedClock clock(morning());
    const auto small = journal::SqliteStore::open(folder.file("day.journal"),
                                                  {.readOnly = false, .pageLimit = pages});
    REQUIRE(small);
    app::Session session(**small, clock);

    const auto restored = session.restore(file);

    REQUIRE_FALSE(restored);
    CHECK(restored.error().why == Refusal::Why::NotSaved);
    CHECK((*small)->events().value() == std::vector{ids.front()});
    CHECK((*small)->read(ids.front()).value() == operations);
    CHECK_FALSE((*small)->verify().value());
    // With room it takes the rest.
    const auto roomy = journal::SqliteStore::open(folder.file("day.journal"));
    REQUIRE(roomy);
    app::Session again(**roomy, clock);
    CHECK(again.restore(file).value().events == 1);
}
