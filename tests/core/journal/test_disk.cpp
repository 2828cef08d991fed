/// A store on a disk that takes nothing more. The disk is a small one of the test's own, in a
/// process of its own; where that may not be made, the test says what it skipped.

#include <sched.h>
#include <sys/mount.h>
#include <sys/wait.h>
#include <unistd.h>
#include <catch2/catch.hpp>

#include <fstream>
#include <functional>

#include "journal/sqlite/sqlite_store.h"
#include "samples.h"

using namespace samples;

namespace {

namespace fs = std::filesystem;

constexpr int kNoDisk = 77;

std::vector<Operation> ticks(int count) {
    std::vector<Operation> day;
    for (int i = 1; i <= count; ++i)
        day.push_back(operation(static_cast<std::uint64_t>(i),
                                LineTicked{TaskId{"tables/set-up"}, i, at(i)}));
    return day;
}

/// Runs `work` with a disk of half a mebibyte at `place`; what it returns, or kNoDisk.
int onDisk(const fs::path& place, const std::function<int()>& work) {
    fs::create_directories(place);
    const pid_t child = ::fork();
    if (child == 0) {
        const bool isMade = ::unshare(CLONE_NEWNS) == 0 &&
                            ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
                            ::mount("none", place.c_str(), "tmpfs", 0, "size=512k") == 0;
        ::_exit(isMade ? work() : kNoDisk);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

/// A store with ten entries that was closed, and one with twelve as it lies when the battery dies:
/// with a log that was never taken in, and without the shared memory.
void makeStores(const fs::path& place) {
    const auto file = place / "closed.journal";
    const auto cut = place / "cut.journal";
    {
        const auto store = SqliteStore::open(file).value();
        if (!store->append(ticks(10))) ::_exit(2);
    }
    const auto store = SqliteStore::open(file).value();
    fs::copy_file(file, cut);
    if (!store->append(ticks(12))) ::_exit(2);
    fs::copy_file(file.string() + "-wal", cut.string() + "-wal");
}

/// 0 when it is shown whole and takes nothing; else what is wrong.
int shownWhole(const fs::path& file, std::size_t entries) {
    const auto store = SqliteStore::open(file);
    if (!store) return 10 + static_cast<int>(store.error().why);
    if ((*store)->access() != Access::ReadOnlyFile) return 3;
    const auto all = (*store)->read(EventId{"orchard"});
    if (!all || all->size() != entries) return 4;
    const auto added = (*store)->append(ticks(20));
    if (added || added.error().why != StoreError::Why::ReadOnly) return 5;
    const auto broken = (*store)->verify();
    return broken && !*broken ? 0 : 6;
}

int bothShown(const fs::path& place) {
    if (const int wrong = shownWhole(place / "cut.journal", 12); wrong != 0) return wrong;
    const int wrong = shownWhole(place / "closed.journal", 12);
    return wrong == 0 ? 0 : 100 + wrong;
}

void fill(const fs::path& file) {
    std::ofstream out(file, std::ios::binary);
    const std::string block(512, 'x');
    while (out.write(block.data(), static_cast<std::streamsize>(block.size())).flush()) {
    }
}

void checkShown(int result) {
    if (result == kNoDisk)
        WARN("skipped: no disk can be made here to be filled (needs unshare and mount)");
    else
        CHECK(result == 0);
}

}  // namespace

TEST_CASE("a store on a write-protected disk is shown with its last touches") {
    const Folder folder;
    const auto place = folder.file("disk");
    checkShown(onDisk(place, [&] {
        makeStores(place);
        if (::mount("none", place.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) != 0)
            return kNoDisk;
        return bothShown(place);
    }));
}

TEST_CASE("a store on a full disk is shown with its last touches") {
    const Folder folder;
    const auto place = folder.file("disk");
    checkShown(onDisk(place, [&] {
        makeStores(place);
        fill(place / "photographs");
        return bothShown(place);
    }));
}

TEST_CASE("a store on a full disk can be copied to another") {
    const Folder folder;
    const auto place = folder.file("disk");
    const auto copy = folder.file("copy.store");
    const int result = onDisk(place, [&] {
        makeStores(place);
        fill(place / "photographs");
        const auto store = SqliteStore::open(place / "cut.journal");
        return store && (*store)->copyTo(copy) ? 0 : 1;
    });
    checkShown(result);
    if (result != 0) return;
    const auto taken = SqliteStore::open(copy, {.readOnly = true, .pageLimit = {}});
    REQUIRE(taken);
    CHECK((*taken)->read(EventId{"orchard"}).value() == ticks(12));
}

TEST_CASE("a copy onto a full disk is refused and leaves nothing there") {
    const Folder folder;
    const auto place = folder.file("disk");
    const auto store = SqliteStore::open(folder.file("day.journal")).value();
    REQUIRE(store->append(ticks(500)));
    checkShown(onDisk(place, [&] {
        fill(place / "photographs");
        const auto here = SqliteStore::open(folder.file("day.journal"));
        if (!here) return 1;
        const auto copied = (*here)->copyTo(place / "copy.store");
        if (copied || copied.error().why != StoreError::Why::DiskFull) return 2;
        return std::distance(fs::directory_iterator(place), fs::directory_iterator()) == 1 ? 0 : 3;
    }));
}
