#pragma once

/// Where operations are kept. An append returns only when the operations would survive the battery
/// being pulled in the next instant; nothing is ever updated or removed.

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "journal/entry.h"
#include "journal/operation.h"

namespace cinder::journal {

struct StoreError {
    enum class Why {
        CannotOpen,   ///< no such folder, no permission
        NotAJournal,  ///< the file is something else, or damaged beyond reading
        ReadOnly,     ///< nothing can be added to this store
        DiskFull,     ///< nothing was added
        Locked,       ///< another program holds the store
        OutOfOrder,   ///< an operation does not continue its device's chain
        BadSeal,      ///< an entry is not the one that its device sealed
        Damaged,      ///< a page or a row cannot be read
        Failed,       ///< the device reported another fault
        Occupied,     ///< what stands where a copy was to go is not replaced by it
    };
    Why why = Why::Failed;
    std::string detail;  ///< for the log
};

/// Whether a store takes new operations, and if not, why.
enum class Access : std::uint8_t {
    Full,
    ReadOnlyFile,  ///< the file or the disk is write-protected, or the disk is full
    Newer,         ///< written by a newer app; shown, never touched
};

/// The first place where the record is not what was written.
struct BrokenChain {
    EventId event;
    OperationId operation;
    enum class What : std::uint8_t {
        Altered,  ///< the entry is not the one that was sealed
        Missing,  ///< an entry before this one is gone
    };
    What what = What::Altered;
    friend bool operator==(const BrokenChain&, const BrokenChain&) = default;
};

class Store {
  public:
    Store() = default;
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;
    virtual ~Store() = default;

    /// The device this store belongs to; made when the store is. Empty for a copy.
    [[nodiscard]] virtual const DeviceId& device() const = 0;
    [[nodiscard]] virtual Access access() const = 0;

    /// The name the next operation of this device in `event` must have.
    [[nodiscard]] virtual Result<OperationId, StoreError> nextId(const EventId& event) const = 0;

    /// Adds all or none. Operations already here are passed over; of each device they must
    /// continue its chain without a gap.
    [[nodiscard]] virtual Result<void, StoreError> append(
        std::span<const Operation> operations) = 0;

    // --- what devices hand each other ---
    /// Where every chain ends, by event and device.
    [[nodiscard]] virtual Result<std::vector<ChainHead>, StoreError> heads() const = 0;
    /// The same for one event.
    [[nodiscard]] virtual Result<std::vector<ChainHead>, StoreError> heads(
        const EventId& event) const = 0;
    /// Nothing when the operation is not here.
    [[nodiscard]] virtual Result<std::optional<Seal>, StoreError> sealOf(
        const EventId& event, const OperationId& id) const = 0;
    /// What a device wrote after `last`, in its order: up to `bytes` of bodies, and one at least
    /// where there is one.
    [[nodiscard]] virtual Result<std::vector<Entry>, StoreError> entriesAfter(
        const EventId& event, const OperationId& last, std::size_t bytes) const = 0;
    /// Adds all or none, as they are. Each must continue its device's chain and bear the seal that
    /// follows (BadSeal); those already here are passed over when their seal is the same
    /// (OutOfOrder when it is another: the device's record parted in two).
    [[nodiscard]] virtual Result<void, StoreError> take(std::span<const Entry> entries) = 0;

    /// All operations of an event in the order of the fold.
    [[nodiscard]] virtual Result<std::vector<Operation>, StoreError> read(
        const EventId& event) const = 0;

    /// Only those whose kind is one of `kinds` (journal/codec.h), in the same order: what a list of
    /// events needs, without the plans.
    [[nodiscard]] virtual Result<std::vector<Operation>, StoreError> readKinds(
        const EventId& event, std::span<const std::string_view> kinds) const = 0;

    /// The last one of a kind in that order that is none of `but`; nothing when there is none. What
    /// is written at every touch is long, and only the last of it counts.
    [[nodiscard]] virtual Result<std::optional<Operation>, StoreError> readLast(
        const EventId& event, std::string_view kind, const std::set<OperationId>& but) const = 0;

    /// Every event that has operations, by id.
    [[nodiscard]] virtual Result<std::vector<EventId>, StoreError> events() const = 0;

    /// Walks every chain; nothing means that the whole record is as it was written.
    [[nodiscard]] virtual Result<std::optional<BrokenChain>, StoreError> verify() const = 0;
    /// The same for one event.
    [[nodiscard]] virtual Result<std::optional<BrokenChain>, StoreError> verify(
        const EventId& event) const = 0;

    /// Writes everything into one file, which is there whole and compared with this store row by
    /// row, or not at all. A file of that name is replaced when it is a copy all of which is in the
    /// new one; any other, and this store itself, is left as it is (Occupied). Returns what
    /// `verify` finds: a broken chain is copied as it stands.
    [[nodiscard]] virtual Result<std::optional<BrokenChain>, StoreError> copyTo(
        const std::filesystem::path& file) const = 0;

    /// A copy that `copyTo` of any device wrote, to be read and never touched.
    [[nodiscard]] virtual Result<std::unique_ptr<Store>, StoreError> openCopy(
        const std::filesystem::path& file) const = 0;
};

}  // namespace cinder::journal
