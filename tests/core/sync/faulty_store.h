#pragma once

/// A store that does its work until it is told to fail.

#include <memory>
#include <optional>
#include <utility>

#include "journal/sqlite/sqlite_store.h"

namespace samples {

using namespace cinder;
using namespace cinder::journal;

class FaultyStore final : public Store {
  public:
    using Why = StoreError::Why;
    explicit FaultyStore(std::unique_ptr<Store> sound) : sound_(std::move(sound)) {}

    std::optional<Why> headsFail;
    std::optional<Why> sealsFail;
    std::optional<Why> takingFails;
    /// Reading on in this event fails.
    std::optional<EventId> damaged;
    mutable int allHeadsRead = 0;

    [[nodiscard]] const DeviceId& device() const override { return sound_->device(); }
    [[nodiscard]] Access access() const override { return sound_->access(); }
    [[nodiscard]] Result<OperationId, StoreError> nextId(const EventId& event) const override {
        return sound_->nextId(event);
    }
    [[nodiscard]] Result<void, StoreError> append(std::span<const Operation> operations) override {
        return sound_->append(operations);
    }
    [[nodiscard]] Result<std::vector<ChainHead>, StoreError> heads() const override {
        ++allHeadsRead;
        if (headsFail) return fail(StoreError{*headsFail, "as told"});
        return sound_->heads();
    }
    [[nodiscard]] Result<std::vector<ChainHead>, StoreError> heads(
        const EventId& event) const override {
        if (headsFail) return fail(StoreError{*headsFail, "as told"});
        return sound_->heads(event);
    }
    [[nodiscard]] Result<std::optional<Seal>, StoreError> sealOf(
        const EventId& event, const OperationId& id) const override {
        if (sealsFail) return fail(StoreError{*sealsFail, "as told"});
        return sound_->sealOf(event, id);
    }
    [[nodiscard]] Result<std::vector<Entry>, StoreError> entriesAfter(
        const EventId& event, const OperationId& last, std::size_t bytes) const override {
        if (damaged == event) return fail(StoreError{Why::Damaged, "as told"});
        return sound_->entriesAfter(event, last, bytes);
    }
    [[nodiscard]] Result<void, StoreError> take(std::span<const Entry> entries) override {
        if (takingFails) return fail(StoreError{*takingFails, "as told"});
        return sound_->take(entries);
    }
    [[nodiscard]] Result<std::vector<Operation>, StoreError> read(
        const EventId& event) const override {
        return sound_->read(event);
    }
    [[nodiscard]] Result<std::vector<Operation>, StoreError> readKinds(
        const EventId& event, std::span<const std::string_view> kinds) const override {
        return sound_->readKinds(event, kinds);
    }
    [[nodiscard]] Result<std::optional<Operation>, StoreError> readLast(
        const EventId& event, std::string_view kind,
        const std::set<OperationId>& but) const override {
        return sound_->readLast(event, kind, but);
    }
    [[nodiscard]] Result<std::vector<EventId>, StoreError> events() const override {
        return sound_->events();
    }
    [[nodiscard]] Result<std::optional<BrokenChain>, StoreError> verify() const override {
        return sound_->verify();
    }
    [[nodiscard]] Result<std::optional<BrokenChain>, StoreError> verify(
        const EventId& event) const override {
        return sound_->verify(event);
    }
    [[nodiscard]] Result<std::optional<BrokenChain>, StoreError> copyTo(
        const std::filesystem::path& file) const override {
        return sound_->copyTo(file);
    }
    [[nodiscard]] Result<std::unique_ptr<Store>, StoreError> openCopy(
        const std::filesystem::path& file) const override {
        return sound_->openCopy(file);
    }

  private:
    std::unique_ptr<Store> sound_;
};

}  // namespace samples
