#include "journal/sqlite/failure.h"

#include <sqlite3.h>

namespace cinder::journal {

StoreError::Why reasonFor(int code) {
    using Why = StoreError::Why;
    switch (code) {
        case SQLITE_FULL:
            return Why::DiskFull;
        case SQLITE_READONLY:
            return Why::ReadOnly;
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return Why::Locked;
        case SQLITE_NOTADB:
            return Why::NotAJournal;
        case SQLITE_CORRUPT:
            return Why::Damaged;
        case SQLITE_CANTOPEN:
        case SQLITE_PERM:
            return Why::CannotOpen;
        default:
            return Why::Failed;
    }
}

}  // namespace cinder::journal
