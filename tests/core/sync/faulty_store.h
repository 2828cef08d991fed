#pragma once

/// A store that does its work until it is told to fail.

#include <memory>
#include <optional>
#include <utility>

#include "journal/sqlite/sqlite_store.h"
#include "passing_store.h"

namespace samples {

using namespace cinder;
using namespace cinder::journal;

class FaultyStore final : public PassingStore {
  public:
    using Why = StoreError::Why;
    explicit FaultyStore(std::unique_ptr<Store> sound)
        : PassingStore(*sound), sound_(std::move(sound)) {}

    std::optional<Why> headsFail;
    std::optional<Why> sealsFail;
    std::optional<Why> takingFails;
    /// Reading on in this event fails.
    std::optional<EventId> damaged;
    mutable int allHeadsRead = 0;

    [[nodiscard]] Stored<std::vector<ChainHead>> heads() const override {
        ++allHeadsRead;
        if (headsFail) return fail(StoreError{*headsFail, "as told"});
        return PassingStore::heads();
    }
    [[nodiscard]] Stored<std::vector<ChainHead>> heads(const EventId& event) const override {
        if (headsFail) return fail(StoreError{*headsFail, "as told"});
        return PassingStore::heads(event);
    }
    [[nodiscard]] Stored<std::optional<Seal>> sealOf(const EventId& event,
                                                     const OperationId& id) const override {
        if (sealsFail) return fail(StoreError{*sealsFail, "as told"});
        return PassingStore::sealOf(event, id);
    }
    [[nodiscard]] Stored<std::vector<Entry>> entriesAfter(const EventId& event,
                                                          const OperationId& last,
                                                          std::size_t bytes) const override {
        if (damaged == event) return fail(StoreError{Why::Damaged, "as told"});
        return PassingStore::entriesAfter(event, last, bytes);
    }
    [[nodiscard]] Stored<void> take(std::span<const Entry> entries) override {
        if (takingFails) return fail(StoreError{*takingFails, "as told"});
        return PassingStore::take(entries);
    }

  private:
    std::unique_ptr<Store> sound_;
};

}  // namespace samples
