// Why the store could not do what was asked, in words (words.h).

#include "words.h"

namespace cinder::face {

QString Words::notSaved(const app::Refusal& refusal) {
    using Store = journal::StoreError::Why;
    switch (refusal.storage.value_or(Store::Failed)) {
        case Store::Damaged:
        case Store::NotAJournal:
            return tr(
                "Part of the journal on this device is damaged and cannot be read; nothing was "
                "noted. Take the latest copy back on another device.");
        case Store::Locked:
            return tr(
                "Another program is using the journal; nothing was noted. Close it and touch "
                "again.");
        case Store::CannotOpen:
            return tr("The file cannot be made there. Check that its folder is there and can be "
                      "written. (%1)")
                .arg(toText(refusal.detail));
        case Store::Occupied:
            return tr("A file that is no copy of this device stands there and is left as it is. "
                      "Move it away, or touch again in a minute. (%1)")
                .arg(toText(refusal.detail));
        case Store::ReadOnly:
        case Store::DiskFull:
        case Store::OutOfOrder:
        case Store::BadSeal:
        case Store::Failed:
            break;
    }
    return tr(
        "Not saved: the device is full or its storage failed. Free some space and "
        "touch again.");
}

}  // namespace cinder::face
