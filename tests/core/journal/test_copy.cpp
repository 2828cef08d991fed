/// Copies of a store: what they hold, and what they must never take the place of.

#include <sqlite3.h>
#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>

#include "journal/sqlite/sqlite_store.h"
#include "samples.h"

using namespace samples;

namespace {

namespace fs = std::filesystem;
using Why = StoreError::Why;

const EventId kOrchard{"orchard"};

std::unique_ptr<SqliteStore> openStore(const fs::path& file) {
    auto store = SqliteStore::open(file);
    REQUIRE(store);
    return std::move(*store);
}

std::vector<Operation> touches(const char* device, int count = 3) {
    std::vector<Operation> day;
    for (int i = 1; i <= count; ++i)
        day.push_back(operation(static_cast<std::uint64_t>(i),
                                LineTicked{TaskId{"tables/set-up"}, i, at(i)}, device));
    return day;
}

std::string bytesOf(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return all.str();
}

void meddle(const fs::path& file, const char* sql) {
    sqlite3* handle = nullptr;
    REQUIRE(sqlite3_open(file.c_str(), &handle) == SQLITE_OK);
    REQUIRE(sqlite3_exec(handle, sql, nullptr, nullptr, nullptr) == SQLITE_OK);
    sqlite3_close(handle);
}

std::size_t filesIn(const fs::path& folder) {
    const fs::directory_iterator all(folder);
    return static_cast<std::size_t>(std::distance(begin(all), end(all)));
}

/// The copy is refused, and what stands there is the same to the last byte.
void checkLeft(const SqliteStore& store, const fs::path& target) {
    const std::string before = bytesOf(target);
    const auto copied = store.copyTo(target);
    REQUIRE_FALSE(copied);
    CHECK(copied.error().why == Why::Occupied);
    CHECK_FALSE(copied.error().detail.empty());
    CHECK(bytesOf(target) == before);
    CHECK_FALSE(fs::exists(target.string() + ".part"));
}

}  // namespace

TEST_CASE("a copy does not take the place of a store that is closed") {
    const Folder folder;
    const auto mine = openStore(folder.file("mine.journal"));
    REQUIRE(mine->append(touches("tablet")));
    REQUIRE(openStore(folder.file("other.journal"))->append(touches("phone")));

    checkLeft(*mine, folder.file("other.journal"));

    CHECK(openStore(folder.file("other.journal"))->read(kOrchard).value() == touches("phone"));
}

TEST_CASE("a copy is not put beside the log of a store whose battery died") {
    const Folder folder;
    const auto mine = openStore(folder.file("mine.journal"));
    REQUIRE(mine->append(touches("tablet")));
    const auto target = folder.file("copy.store");
    REQUIRE(mine->copyTo(target));
    for (const char* ending : {"-wal", "-shm", "-journal"}) {
        const fs::path beside = target.string() + ending;
        std::ofstream(beside) << "what was written last";
        checkLeft(*mine, target);
        CHECK(bytesOf(beside) == "what was written last");
        fs::remove(beside);
    }
    CHECK(mine->copyTo(target));
}

TEST_CASE("a log without its store is not given one") {
    const Folder folder;
    const auto mine = openStore(folder.file("mine.journal"));
    REQUIRE(mine->append(touches("tablet")));
    std::ofstream(folder.file("copy.store-wal")) << "what was written last";

    REQUIRE_FALSE(mine->copyTo(folder.file("copy.store")));
    CHECK_FALSE(fs::exists(folder.file("copy.store")));
}

TEST_CASE("a store is not copied onto itself, whatever it is called") {
    const Folder folder;
    const auto file = folder.file("day.part");
    const auto mine = openStore(file);
    REQUIRE(mine->append(touches("tablet")));
    fs::create_symlink(file, folder.file("link"));
    fs::create_hard_link(file, folder.file("name"));

    for (const char* name : {"day.part", "link", "name"})
        checkLeft(*mine, folder.file(name));
    // The part of these copies would be a store.
    CHECK(mine->copyTo(folder.file("day")).error().why == Why::Occupied);
    REQUIRE(openStore(folder.file("other.part"))->append(touches("phone")));
    CHECK(mine->copyTo(folder.file("other")).error().why == Why::Occupied);
    CHECK(openStore(folder.file("other.part"))->read(kOrchard).value() == touches("phone"));

    CHECK(mine->read(kOrchard).value() == touches("tablet"));
    CHECK(openStore(file)->read(kOrchard).value() == touches("tablet"));
}

TEST_CASE("a copy does not take the place of what is somebody else's") {
    const Folder folder;
    const auto mine = openStore(folder.file("mine.journal"));
    REQUIRE(mine->append(touches("tablet")));
    const auto target = folder.file("copy.store");
    SECTION("a letter") {
        std::ofstream(target) << "Dear Nora, the lamb was a delight.";
    }
    SECTION("another program's database") {
        meddle(target, "CREATE TABLE soup (name TEXT)");
    }
    SECTION("a copy of another device with something that is not here") {
        const auto other = openStore(folder.file("other.journal"));
        REQUIRE(other->append(touches("phone")));
        REQUIRE(other->copyTo(target));
    }
    SECTION("a copy that knows more than this store") {
        const auto later = openStore(folder.file("later.journal"));
        REQUIRE(later->append(touches("tablet", 4)));
        REQUIRE(later->copyTo(target));
    }
    checkLeft(*mine, target);
}

TEST_CASE("a copy takes the place of one all of which it holds, and leaves nothing beside it") {
    const Folder folder;
    const auto mine = openStore(folder.file("mine.journal"));
    const auto target = folder.file("copies") / "copy.store";
    fs::create_directories(target.parent_path());
    std::ofstream(target.string() + ".part") << "of a copy that was cut off";
    std::ofstream(target.string() + ".part-journal") << "of a copy that was cut off";
    std::ofstream(target).flush();
    REQUIRE(mine->append(touches("tablet")));
    REQUIRE(mine->copyTo(target));
    REQUIRE(mine->append(touches("tablet", 9)));
    REQUIRE(mine->copyTo(target));

    CHECK(mine->openCopy(target).value()->read(kOrchard).value() == touches("tablet", 9));
    CHECK(filesIn(target.parent_path()) == 1);
}

TEST_CASE("a copy that kept its device's name, as copies did, is still replaced by that device") {
    const Folder folder;
    const auto mine = openStore(folder.file("mine.journal"));
    REQUIRE(mine->append(touches("tablet")));
    const auto target = folder.file("copy.store");
    REQUIRE(mine->copyTo(target));
    const std::string own = "INSERT INTO device (id) VALUES ('" + mine->device().text() + "')";
    meddle(target, own.c_str());
    CHECK(mine->copyTo(target));

    meddle(target, "INSERT INTO device (id) VALUES ('0123456789abcdef')");
    checkLeft(*mine, target);
}

TEST_CASE("whoever goes on in a copy does so under a name of its own") {
    const Folder folder;
    const auto mine = openStore(folder.file("mine.journal"));
    REQUIRE(mine->append(touches("tablet")));
    REQUIRE(mine->copyTo(folder.file("one.store")));
    REQUIRE(mine->copyTo(folder.file("two.store")));
    CHECK(mine->openCopy(folder.file("one.store")).value()->device().empty());

    const auto one = openStore(folder.file("one.store"));
    const auto two = openStore(folder.file("two.store"));

    CHECK(one->device().text().size() == 16);
    CHECK(one->device() != mine->device());
    CHECK(one->device() != two->device());
    CHECK(openStore(folder.file("one.store"))->device() == one->device());
    CHECK(one->nextId(kOrchard).value().sequence == 1);
    CHECK(one->read(kOrchard).value() == touches("tablet"));
}

TEST_CASE("a record that was altered is copied as it stands, and the copy says so") {
    const Folder folder;
    const auto file = folder.file("mine.journal");
    REQUIRE(openStore(file)->append(touches("tablet")));
    meddle(file,
           "DROP TRIGGER operation_is_not_changed;"
           "UPDATE operation SET body = replace(body, ':2,', ':5,') WHERE sequence = 2");
    const auto mine = openStore(file);
    Operation other = operation(1, Undone{{DeviceId{"tablet"}, 1}}, "tablet");
    other.event = EventId{"barn"};
    REQUIRE(mine->append({&other, 1}));

    const auto copied = mine->copyTo(folder.file("copy.store"));

    const BrokenChain broken{kOrchard, {DeviceId{"tablet"}, 2}, BrokenChain::What::Altered};
    REQUIRE(copied);
    CHECK(*copied == broken);
    const auto copy = mine->openCopy(folder.file("copy.store")).value();
    CHECK(copy->read(kOrchard).value() == mine->read(kOrchard).value());
    CHECK(copy->verify(kOrchard).value() == broken);
    CHECK_FALSE(copy->verify(EventId{"barn"}).value());
}
