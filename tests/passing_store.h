#pragma once

/// A store that passes everything on to another one; what is tested overrides a part of it.

#include "journal/store.h"

namespace samples {

using namespace cinder;

class PassingStore : public journal::Store {
  public:
    template <class T>
    using Stored = Result<T, journal::StoreError>;

    explicit PassingStore(journal::Store& inner) : inner_(inner) {}

    const DeviceId& device() const override { return inner_.device(); }
    journal::Access access() const override { return inner_.access(); }
    Stored<journal::OperationId> nextId(const EventId& id) const override {
        return inner_.nextId(id);
    }
    Stored<void> append(std::span<const journal::Operation> operations) override {
        return inner_.append(operations);
    }
    Stored<std::vector<journal::ChainHead>> heads() const override { return inner_.heads(); }
    Stored<std::vector<journal::ChainHead>> heads(const EventId& id) const override {
        return inner_.heads(id);
    }
    Stored<std::optional<journal::Seal>> sealOf(const EventId& event,
                                                const journal::OperationId& id) const override {
        return inner_.sealOf(event, id);
    }
    Stored<std::vector<journal::Entry>> entriesAfter(const EventId& event,
                                                     const journal::OperationId& last,
                                                     std::size_t bytes) const override {
        return inner_.entriesAfter(event, last, bytes);
    }
    Stored<void> take(std::span<const journal::Entry> entries) override {
        return inner_.take(entries);
    }
    Stored<std::vector<journal::Operation>> read(const EventId& id) const override {
        return inner_.read(id);
    }
    Stored<std::vector<journal::Operation>> readKinds(
        const EventId& id, std::span<const std::string_view> kinds) const override {
        return inner_.readKinds(id, kinds);
    }
    Stored<std::optional<journal::Operation>> readLast(
        const EventId& id, std::string_view kind,
        const std::set<journal::OperationId>& but) const override {
        return inner_.readLast(id, kind, but);
    }
    Stored<std::vector<EventId>> events() const override { return inner_.events(); }
    Stored<std::optional<journal::BrokenChain>> verify() const override { return inner_.verify(); }
    Stored<std::optional<journal::BrokenChain>> verify(const EventId& id) const override {
        return inner_.verify(id);
    }
    Stored<std::optional<journal::BrokenChain>> copyTo(
        const std::filesystem::path& file) const override {
        return inner_.copyTo(file);
    }
    Stored<std::unique_ptr<journal::Store>> openCopy(
        const std::filesystem::path& file) const override {
        return inner_.openCopy(file);
    }

  private:
    journal::Store& inner_;
};

}  // namespace samples
