#pragma once

/// SQLite's exceptions as this library's errors; internal to journal/sqlite.

#include <SQLiteCpp/Exception.h>

#include "journal/store.h"

namespace cinder::journal {

template <class T>
using Stored = Result<T, StoreError>;

/// `code` is SQLite's, without its extension.
[[nodiscard]] StoreError::Why reasonFor(int code);

/// Runs `work`, which may throw SQLite's exception; none crosses the border of this library.
template <class Work>
auto guarded(Work work) -> decltype(work()) {
    try {
        return work();
    } catch (const SQLite::Exception& e) {
        return fail(StoreError{reasonFor(e.getErrorCode() & 0xFF), e.what()});
    }
}

}  // namespace cinder::journal
