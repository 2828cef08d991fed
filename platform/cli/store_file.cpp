#include "cli/store_file.h"

namespace cinder::cli {

Failure storeFailure(const journal::StoreError& error, const std::string& file) {
    using Why = journal::StoreError::Why;
    const auto words = [&error]() -> std::string {
        switch (error.why) {
            case Why::CannotOpen:
                return "cannot be opened; check the name and that you may read it";
            case Why::NotAJournal:
                return "is not a store of Cinderbell, or is damaged beyond reading; it was left as "
                       "it is";
            case Why::ReadOnly:
                return "is read-only: nothing was added";
            case Why::DiskFull:
                return "has no room left: nothing was added and nothing was lost; make room";
            case Why::Locked:
                return "is in use by another program; close that first";
            case Why::OutOfOrder:
                return "was changed by another program meanwhile: nothing was added; try again";
            case Why::BadSeal:
                return "was given an entry that its device did not seal: nothing was added";
            case Why::Damaged:
                return "is damaged: part of it cannot be read; keep a copy before anything else";
            case Why::Occupied:
                return "was left as it is; name another file";
            case Why::Failed:
                break;
        }
        return "failed";
    }();
    std::string all = "store " + file + " " + words;
    if (!error.detail.empty()) all += " (" + error.detail + ")";
    return {ExitCode::Store, all};
}

Outcome<std::unique_ptr<journal::SqliteStore>> openStore(const std::filesystem::path& file,
                                                         journal::SqliteStore::Options options) {
    auto store = journal::SqliteStore::open(file, options);
    if (!store) return fail(storeFailure(store.error(), file.string()));
    return *std::move(store);
}

}  // namespace cinder::cli
