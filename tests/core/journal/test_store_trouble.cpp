/// What a store does when the disk, the file or somebody's hand is against it.

#include <sqlite3.h>
#include <catch2/catch.hpp>

#include <fstream>

#include "journal/sqlite/sqlite_store.h"
#include "samples.h"

using namespace samples;

namespace {

using Why = StoreError::Why;

/// Does to the file what no code of ours would.
void meddle(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* handle = nullptr;
    REQUIRE(sqlite3_open(file.c_str(), &handle) == SQLITE_OK);
    char* error = nullptr;
    const int code = sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, &error);
    INFO((error ? error : ""));
    REQUIRE(code == SQLITE_OK);
    sqlite3_free(error);
    sqlite3_close(handle);
}

std::vector<Operation> ticks(int count) {
    std::vector<Operation> day;
    for (int i = 1; i <= count; ++i) {
        day.push_back(operation(static_cast<std::uint64_t>(i),
                                LineTicked{TaskId{"tables/set-up"}, i, at(i)}));
    }
    return day;
}

/// A closed store with ten operations in it.
std::filesystem::path storeWithTen(const Folder& folder) {
    const auto file = folder.file("day.journal");
    auto store = SqliteStore::open(file);
    REQUIRE(store);
    REQUIRE((*store)->append(ticks(10)));
    return file;
}

Why whyNot(const std::filesystem::path& file) {
    const auto opened = SqliteStore::open(file);
    REQUIRE_FALSE(opened);
    return opened.error().why;
}

}  // namespace

TEST_CASE("a full disk refuses the operation and keeps every earlier one") {
    const Folder folder;
    const auto file = storeWithTen(folder);
    const auto day = ticks(5000);
    {
        auto store = SqliteStore::open(file, {.readOnly = false, .pageLimit = 20});
        REQUIRE(store);

        const auto refused = (*store)->append(day);

        REQUIRE_FALSE(refused);
        CHECK(refused.error().why == Why::DiskFull);
        CHECK((*store)->read(EventId{"orchard"}).value() == ticks(10));
    }

    auto again = SqliteStore::open(file);
    REQUIRE(again);
    CHECK((*again)->append(day));
    CHECK((*again)->read(EventId{"orchard"}).value() == day);
}

TEST_CASE("a store opened read-only shows everything and takes nothing") {
    const Folder folder;
    const auto file = storeWithTen(folder);
    auto store = SqliteStore::open(file, {.readOnly = true, .pageLimit = {}});
    REQUIRE(store);

    const auto refused = (*store)->append(ticks(11));

    CHECK((*store)->access() == Access::ReadOnlyFile);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == Why::ReadOnly);
    CHECK((*store)->read(EventId{"orchard"}).value().size() == 10);
}

TEST_CASE("a store from a newer version is shown and never touched") {
    const Folder folder;
    const auto file = storeWithTen(folder);
    meddle(file, "ALTER TABLE operation ADD COLUMN mood TEXT; PRAGMA user_version = 99;");
    auto store = SqliteStore::open(file);
    REQUIRE(store);

    CHECK((*store)->access() == Access::Newer);
    CHECK((*store)->read(EventId{"orchard"}).value().size() == 10);
    CHECK((*store)->append(ticks(11)).error().why == Why::ReadOnly);
}

TEST_CASE("another program's database is left alone") {
    const Folder folder;
    const auto file = folder.file("recipes.db");
    meddle(file, "CREATE TABLE soup (name TEXT);");

    CHECK(whyNot(file) == Why::NotAJournal);
    meddle(file, "INSERT INTO soup VALUES ('leek');");
}

TEST_CASE("a file that is no database is left alone") {
    const Folder folder;
    const auto file = folder.file("letter.txt");
    const std::string letter(5000, 'x');
    std::ofstream(file) << letter;

    CHECK(whyNot(file) == Why::NotAJournal);
    CHECK(std::filesystem::file_size(file) == letter.size());
}

TEST_CASE("a folder that is not there is named as the reason") {
    const Folder folder;

    CHECK(whyNot(folder.file("no") / "such" / "day.journal") == Why::CannotOpen);
}

TEST_CASE("the schema itself refuses to change or remove an operation") {
    const Folder folder;
    const auto file = storeWithTen(folder);
    sqlite3* handle = nullptr;
    REQUIRE(sqlite3_open(file.c_str(), &handle) == SQLITE_OK);

    CHECK(sqlite3_exec(handle, "DELETE FROM operation", nullptr, nullptr, nullptr) != SQLITE_OK);
    CHECK(sqlite3_exec(handle, "UPDATE operation SET person = 'x'", nullptr, nullptr, nullptr) !=
          SQLITE_OK);
    sqlite3_close(handle);
}

TEST_CASE("the walk along the chain names the first entry that is not what was written") {
    const Folder folder;
    const auto file = storeWithTen(folder);
    const std::string unlock =
        "DROP TRIGGER operation_is_not_changed; DROP TRIGGER operation_is_not_removed;";
    BrokenChain expected{EventId{"orchard"}, {DeviceId{"tablet"}, 4}, BrokenChain::What::Altered};

    SECTION("an altered body") {
        meddle(file, unlock +
                         "UPDATE operation SET body = replace(body, ':4,', ':5,') "
                         "WHERE sequence = 4");
    }
    SECTION("an altered person") {
        meddle(file, unlock + "UPDATE operation SET person = 'ed' WHERE sequence = 4");
    }
    SECTION("a removed entry") {
        meddle(file, unlock + "DELETE FROM operation WHERE sequence = 3");
        expected.what = BrokenChain::What::Missing;
    }
    SECTION("an entry put under another's name") {
        meddle(file, unlock +
                         "DELETE FROM operation WHERE sequence = 4;"
                         "INSERT INTO operation SELECT event, device, 4, wall, counter, "
                         "person, kind, version, body, seal FROM operation "
                         "WHERE sequence = 5");
    }

    auto store = SqliteStore::open(file);
    REQUIRE(store);
    CHECK((*store)->verify().value() == expected);
}

TEST_CASE("a damaged page is an error, not a wrong answer or a crash") {
    const Folder folder;
    const auto file = folder.file("day.journal");
    {
        auto store = SqliteStore::open(file);
        REQUIRE(store);
        REQUIRE((*store)->append(ticks(2000)));
    }
    {
        std::fstream bytes(file, std::ios::in | std::ios::out | std::ios::binary);
        bytes.seekp(static_cast<std::streamoff>(std::filesystem::file_size(file) / 2));
        bytes << std::string(8192, '\x5a');
    }

    const auto store = SqliteStore::open(file);
    if (!store) {
        CHECK(store.error().why == Why::Damaged);
        return;
    }
    const auto verified = (*store)->verify();
    CHECK((!verified || verified->has_value()));
}
