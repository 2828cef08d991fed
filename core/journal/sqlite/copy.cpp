#include "journal/sqlite/copy.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <fstream>
#include <string>
#include <string_view>

#include "journal/sqlite/open.h"
#include "journal/sqlite/rows.h"

namespace cinder::journal {

namespace {

namespace fs = std::filesystem;
using Why = StoreError::Why;

/// What SQLite lays beside a database that is open, or was when the battery died. It would be read
/// into whatever stands there under the name.
constexpr std::array kBeside = {"-wal", "-shm", "-journal"};

tl::unexpected<StoreError> occupied(std::string detail) {
    return fail(StoreError{Why::Occupied, std::move(detail)});
}

Stored<void> nothingBeside(const fs::path& file) {
    std::error_code ignored;
    for (const char* ending : kBeside)
        if (const fs::path beside = file.string() + ending; fs::exists(beside, ignored))
            return occupied(beside.filename().string() +
                            " lies beside it: it is a store in use, or was one");
    return {};
}

enum class Looks { Other, Store, Copy };

/// Read without SQLite, which would make files beside a store to look into it. "SQLite Database
/// File Format", section 1.3: the name, then at 18 and 19 a 2 for a write-ahead log.
Looks looksOf(const fs::path& file) {
    constexpr std::string_view kName("SQLite format 3\0", 16);
    std::array<char, 20> head{};
    std::ifstream in(file, std::ios::binary);
    in.read(head.data(), head.size());
    if (!in || std::string_view(head.data(), kName.size()) != kName) return Looks::Other;
    return head[18] == 1 && head[19] == 1 ? Looks::Copy : Looks::Store;
}

bool isBlank(const fs::path& file) {
    std::error_code none;
    return !fs::exists(file, none) || (fs::is_regular_file(file, none) && fs::is_empty(file, none));
}

/// Nothing is lost when what stands there goes: it is nothing, or a copy of this store or of one
/// that was joined to it. Whether all of a copy is in the new one is seen when that is written.
Stored<void> mayBeReplaced(const fs::path& file, const DeviceId& device) {
    if (auto none = nothingBeside(file); !none) return none;
    if (isBlank(file)) return {};
    std::error_code ignored;
    if (!fs::is_regular_file(file, ignored)) return occupied("it is not a file");
    const Looks looks = looksOf(file);
    if (looks == Looks::Other) return occupied("it is something else");
    if (looks == Looks::Store) return occupied("it is a store, not a copy of one");
    auto seen = guarded([&]() -> Stored<void> {
        SQLite::Database there(file.string(), SQLite::OPEN_READONLY);
        if (!isOurs(there)) return occupied("it is another program's");
        if (isNewer(there)) return occupied("a newer version of the app wrote it");
        // Copies once kept the name of the device they were made on.
        const DeviceId owner = deviceOf(there);
        if (!owner.empty() && owner != device) return occupied("it is another device's store");
        return {};
    });
    if (!seen && seen.error().why != Why::Occupied) return occupied(seen.error().detail);
    return seen;
}

void bindAs(SQLite::Statement& statement, int place, const SQLite::Column& value) {
    if (value.isNull())
        statement.bind(place);
    else if (value.isInteger())
        statement.bind(place, static_cast<std::int64_t>(value.getInt64()));
    else if (value.isBlob())
        statement.bind(place, value.getBlob(), value.getBytes());
    else
        statement.bind(place, value.getString());
}

/// Every row of `part`, seal and all, is in `whole` to the letter.
bool isWithin(SQLite::Database& part, SQLite::Database& whole) {
    constexpr int kColumns = 10;
    SQLite::Statement rows(part, kSelect);
    SQLite::Statement same(whole,
                           "SELECT 1 FROM operation WHERE event = ? AND device = ? AND "
                           "sequence = ? AND wall = ? AND counter = ? AND person IS ? AND "
                           "kind = ? AND version = ? AND body = ? AND seal = ?");
    while (rows.executeStep()) {
        same.reset();
        for (int column = 0; column < kColumns; ++column)
            bindAs(same, column + 1, rows.getColumn(column));
        if (!same.executeStep()) return false;
    }
    return true;
}

std::int64_t countOf(SQLite::Database& database) {
    return database.execAndGet("SELECT count(*) FROM operation").getInt64();
}

/// The copy holds what the store held when it was begun; the store only grows meanwhile.
Stored<void> check(const fs::path& copy, SQLite::Database& source, std::int64_t atLeast) {
    const auto isAll = guarded([&]() -> Stored<bool> {
        SQLite::Database written(copy.string(), SQLite::OPEN_READONLY);
        return countOf(written) >= atLeast && isWithin(written, source);
    });
    if (isAll && *isAll) return {};
    return fail(StoreError{
        Why::Failed, isAll ? "the disk gave back other than was written" : isAll.error().detail});
}

/// A rename is on the disk when its folder is. Some cards have folders that cannot be asked to.
Stored<void> keepFolder(const fs::path& folder) {
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0) return {};
    const bool isLost = ::fsync(handle) != 0 && errno == EIO;
    ::close(handle);
    if (isLost) return fail(StoreError{Why::Failed, "the disk did not keep the folder"});
    return {};
}

/// Of a copy that failed or was cut off.
void removePart(const fs::path& part) {
    std::error_code ignored;
    fs::remove(part, ignored);
    for (const char* ending : kBeside)
        fs::remove(part.string() + ending, ignored);
}

Stored<void> writePart(SQLite::Database& source, const fs::path& part) {
    return guarded([&]() -> Stored<void> {
        // As durable as the store: the copy is written with the store's own "synchronous" (SQLite
        // source, vacuum.c).
        SQLite::Statement copy(source, "VACUUM INTO ?");
        copy.bind(1, part.string());
        copy.executeStep();
        if (isNewer(source)) return {};
        // A copy belongs to no device: whoever goes on in it does so under a name of its own.
        SQLite::Database written(part.string(), SQLite::OPEN_READWRITE);
        written.exec("PRAGMA synchronous = FULL");
        written.exec("DELETE FROM device");
        return {};
    });
}

/// The part takes the place of `file`, when nothing is lost by it.
Stored<void> putInPlace(const fs::path& part, const fs::path& file) {
    if (!isBlank(file)) {
        const auto isAllHere = guarded([&]() -> Stored<bool> {
            SQLite::Database before(file.string(), SQLite::OPEN_READONLY);
            SQLite::Database after(part.string(), SQLite::OPEN_READONLY);
            return isWithin(before, after);
        });
        if (!isAllHere) return occupied(isAllHere.error().detail);
        if (!*isAllHere) return occupied("it holds entries that are not in this store");
    }
    if (auto none = nothingBeside(file); !none) return none;
    std::error_code error;
    fs::rename(part, file, error);
    if (error) return fail(StoreError{Why::CannotOpen, error.message()});
    return keepFolder(file.parent_path());
}

}  // namespace

Stored<void> writeCopy(SQLite::Database& source, const fs::path& file) {
    std::error_code failed;
    // Where a link points, there the files beside it lie too.
    const fs::path target = fs::weakly_canonical(file, failed);
    if (failed) return fail(StoreError{Why::CannotOpen, failed.message()});
    const fs::path part = target.string() + ".part";
    // Not as it was called when it was opened, which may be a URI.
    const fs::path here = sqlite3_db_filename(source.getHandle(), "main");
    for (const fs::path& written : {target, part})
        if (fs::equivalent(written, here, failed)) return occupied("it is the store itself");
    return guarded([&]() -> Stored<void> {
        if (auto may = mayBeReplaced(target, deviceOf(source)); !may) return may;
        if (looksOf(part) == Looks::Store)
            return occupied(part.filename().string() + " beside it is a store");
        removePart(part);
        const std::int64_t atLeast = countOf(source);
        auto done = writePart(source, part);
        if (done) done = check(part, source, atLeast);
        if (done) done = putInPlace(part, target);
        if (done) return check(target, source, atLeast);
        removePart(part);
        return done;
    });
}

}  // namespace cinder::journal
