#pragma once

/// The journal in one SQLite file. The only folder that knows SQLite.
///
/// Write-ahead log with synchronous FULL: a commit is on the disk before it is reported (SQLite
/// documentation, "PRAGMA synchronous"). Rows are never updated or deleted; the schema itself
/// refuses it. `user_version` numbers the schema, `application_id` marks the file as ours.

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>

#include "journal/store.h"

namespace cinder::journal {

class SqliteStore final : public Store {
  public:
    struct Options {
        bool readOnly = false;
        /// Refuses to grow past this many pages of 4 KiB, as a full disk would.
        std::optional<std::int64_t> pageLimit;
    };

    /// Opens the store at `file`, making it when there is none. A file that cannot be written, or
    /// lies on a full disk, or that a newer version wrote, opens read-only: see `access()`.
    [[nodiscard]] static Result<std::unique_ptr<SqliteStore>, StoreError> open(
        const std::filesystem::path& file, Options options);
    [[nodiscard]] static Result<std::unique_ptr<SqliteStore>, StoreError> open(
        const std::filesystem::path& file) {
        return open(file, Options{});
    }
    ~SqliteStore() override;

    [[nodiscard]] const DeviceId& device() const override;
    [[nodiscard]] Access access() const override;
    [[nodiscard]] Result<OperationId, StoreError> nextId(const EventId& event) const override;
    [[nodiscard]] Result<void, StoreError> append(std::span<const Operation> operations) override;
    [[nodiscard]] Result<std::vector<ChainHead>, StoreError> heads() const override;
    [[nodiscard]] Result<std::vector<ChainHead>, StoreError> heads(
        const EventId& event) const override;
    [[nodiscard]] Result<std::optional<Seal>, StoreError> sealOf(
        const EventId& event, const OperationId& id) const override;
    [[nodiscard]] Result<std::vector<Entry>, StoreError> entriesAfter(
        const EventId& event, const OperationId& last, std::size_t bytes) const override;
    [[nodiscard]] Result<void, StoreError> take(std::span<const Entry> entries) override;
    [[nodiscard]] Result<std::vector<Operation>, StoreError> read(
        const EventId& event) const override;
    [[nodiscard]] Result<std::vector<Operation>, StoreError> readKinds(
        const EventId& event, std::span<const std::string_view> kinds) const override;
    [[nodiscard]] Result<std::optional<Operation>, StoreError> readLast(
        const EventId& event, std::string_view kind,
        const std::set<OperationId>& but) const override;
    [[nodiscard]] Result<std::vector<EventId>, StoreError> events() const override;
    [[nodiscard]] Result<std::optional<BrokenChain>, StoreError> verify() const override;
    [[nodiscard]] Result<std::optional<BrokenChain>, StoreError> verify(
        const EventId& event) const override;
    [[nodiscard]] Result<std::optional<BrokenChain>, StoreError> copyTo(
        const std::filesystem::path& file) const override;
    [[nodiscard]] Result<std::unique_ptr<Store>, StoreError> openCopy(
        const std::filesystem::path& file) const override;

  private:
    struct Connection;
    [[nodiscard]] static Result<std::unique_ptr<SqliteStore>, StoreError> openAs(
        const std::filesystem::path& file, Options options);
    explicit SqliteStore(std::unique_ptr<Connection> connection);
    std::unique_ptr<Connection> connection_;
};

}  // namespace cinder::journal
