/// What would survive the battery being pulled. Killing a program cannot show it: the pages it
/// wrote stay with the kernel. So the file system under SQLite is listened to instead. Source:
/// SQLite documentation, "The SQLite OS Interface or VFS", and PRAGMA synchronous: in a write-ahead
/// log FULL syncs the log after each commit, NORMAL does not.

#include <sqlite3.h>
#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

#include "journal/sqlite/sqlite_store.h"
#include "samples.h"

using namespace samples;

namespace {

struct Heard {
    enum class What { Write, Sync } what;
    std::string file;
};
std::vector<Heard>& heard() {
    static std::vector<Heard> all;
    return all;
}

/// Another file system's file, listened to. The real one lies behind it in the same memory.
struct Listened {
    sqlite3_file base;
    sqlite3_file* real;
    const char* name;
};

Listened& self(sqlite3_file* file) {
    return *reinterpret_cast<Listened*>(file);
}
sqlite3_file* real(sqlite3_file* file) {
    return self(file).real;
}
void note(Heard::What what, sqlite3_file* file) {
    heard().push_back({what, self(file).name != nullptr ? self(file).name : ""});
}

using File = sqlite3_file;

int doWrite(File* file, const void* bytes, int count, sqlite3_int64 at) {
    note(Heard::What::Write, file);
    return real(file)->pMethods->xWrite(real(file), bytes, count, at);
}
int doSync(File* file, int flags) {
    note(Heard::What::Sync, file);
    return real(file)->pMethods->xSync(real(file), flags);
}
int doClose(File* file) {
    return real(file)->pMethods->xClose(real(file));
}

/// All else is passed on as it comes. Without memory mapping (version 2), which would write past
/// us.
const sqlite3_io_methods kListening{
    2,
    doClose,
    [](File* f, void* to, int count, sqlite3_int64 at) {
        return real(f)->pMethods->xRead(real(f), to, count, at);
    },
    doWrite,
    [](File* f, sqlite3_int64 size) { return real(f)->pMethods->xTruncate(real(f), size); },
    doSync,
    [](File* f, sqlite3_int64* size) { return real(f)->pMethods->xFileSize(real(f), size); },
    [](File* f, int lock) { return real(f)->pMethods->xLock(real(f), lock); },
    [](File* f, int lock) { return real(f)->pMethods->xUnlock(real(f), lock); },
    [](File* f, int* out) { return real(f)->pMethods->xCheckReservedLock(real(f), out); },
    [](File* f, int op, void* arg) { return real(f)->pMethods->xFileControl(real(f), op, arg); },
    [](File* f) { return real(f)->pMethods->xSectorSize(real(f)); },
    [](File* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); },
    [](File* f, int page, int size, int extend, void volatile** out) {
        return real(f)->pMethods->xShmMap(real(f), page, size, extend, out);
    },
    [](File* f, int at, int count, int flags) {
        return real(f)->pMethods->xShmLock(real(f), at, count, flags);
    },
    [](File* f) { real(f)->pMethods->xShmBarrier(real(f)); },
    [](File* f, int isDeleted) { return real(f)->pMethods->xShmUnmap(real(f), isDeleted); },
    nullptr,
    nullptr};

sqlite3_vfs* system() {
    static sqlite3_vfs* const before = sqlite3_vfs_find(nullptr);
    return before;
}

int doOpen(sqlite3_vfs*, const char* name, File* file, int flags, int* outFlags) {
    Listened& mine = self(file);
    mine.real = reinterpret_cast<File*>(&mine + 1);
    mine.name = name;
    mine.base.pMethods = nullptr;
    const int code = system()->xOpen(system(), name, mine.real, flags, outFlags);
    if (code == SQLITE_OK) mine.base.pMethods = &kListening;
    return code;
}

/// Every database that is opened meanwhile is listened to.
class Ear {
  public:
    Ear() : listening_(*system()) {
        listening_.zName = "listening";
        listening_.pNext = nullptr;
        listening_.szOsFile = static_cast<int>(sizeof(Listened)) + system()->szOsFile;
        listening_.xOpen = doOpen;
        REQUIRE(sqlite3_vfs_register(&listening_, 1) == SQLITE_OK);
        heard().clear();
    }
    Ear(const Ear&) = delete;
    Ear& operator=(const Ear&) = delete;
    ~Ear() {
        sqlite3_vfs_register(system(), 1);
        sqlite3_vfs_unregister(&listening_);
    }

  private:
    sqlite3_vfs listening_;
};

/// That what was written last to the file is followed by a sync of it.
void checkIsOnTheDisk(const std::string& file) {
    const auto& all = heard();
    const auto isWrite = [&](const Heard& one) {
        return one.file == file && one.what == Heard::What::Write;
    };
    const auto isSync = [&](const Heard& one) {
        return one.file == file && one.what == Heard::What::Sync;
    };
    INFO(file << ": " << std::count_if(all.begin(), all.end(), isWrite) << " writes, "
              << std::count_if(all.begin(), all.end(), isSync) << " syncs");
    const auto write = std::find_if(all.rbegin(), all.rend(), isWrite);
    REQUIRE(write != all.rend());
    CHECK(std::find_if(all.rbegin(), write, isSync) != write);
}

}  // namespace

TEST_CASE("an append returns only when the log is on the disk, each time") {
    const Folder folder;
    const auto file = folder.file("day.journal");
    const Ear ear;
    const auto store = SqliteStore::open(file);
    REQUIRE(store);
    for (std::uint64_t sequence = 1; sequence <= 5; ++sequence) {
        CAPTURE(sequence);
        const Operation op = operation(sequence, LineTicked{TaskId{"tables"}, 1, at(1)});
        heard().clear();

        REQUIRE((*store)->append({&op, 1}));

        checkIsOnTheDisk(file.string() + "-wal");
    }
}

TEST_CASE("so does one that is long enough to be written on into the store itself") {
    const Folder folder;
    const auto file = folder.file("day.journal");
    const Ear ear;
    const auto store = SqliteStore::open(file);
    REQUIRE(store);
    std::vector<Operation> day;
    for (std::uint64_t sequence = 1; sequence <= 40; ++sequence)
        day.push_back(
            operation(sequence, EventDrafted{std::string(200'000, 'x'), std::to_string(sequence)}));
    heard().clear();

    REQUIRE((*store)->append(day));

    checkIsOnTheDisk(file.string() + "-wal");
    checkIsOnTheDisk(file.string());
}

TEST_CASE("a copy has its name only when all of it is on the disk") {
    const Folder folder;
    const Ear ear;
    const auto store = SqliteStore::open(folder.file("day.journal"));
    REQUIRE(store);
    const Operation op = operation(1, LineTicked{TaskId{"tables"}, 1, at(1)});
    REQUIRE((*store)->append({&op, 1}));
    heard().clear();

    REQUIRE((*store)->copyTo(folder.file("copy.journal")));

    // Written under this name, and renamed when it had been read back.
    checkIsOnTheDisk(folder.file("copy.journal.part").string());
    CHECK(std::filesystem::exists(folder.file("copy.journal")));
}
