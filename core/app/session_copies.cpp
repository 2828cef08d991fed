#include "app/session.h"

#include <algorithm>
#include <iterator>

#include "app/session_state.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;

tl::unexpected<Refusal> badCopy(std::string detail, std::optional<journal::StoreError::Why> why) {
    return fail(Refusal{Why::BadCopy, std::move(detail), {}, {}, why});
}

std::string placeOf(const journal::BrokenChain& chain) {
    return "changed since it was written: event " + chain.event.text() + ", device " +
           chain.operation.device.text() + ", entry " + std::to_string(chain.operation.sequence);
}

/// What a newer app wrote is not taken apart by this one.
Result<std::unique_ptr<journal::Store>, Refusal> readableCopy(const journal::Store& store,
                                                              const std::filesystem::path& file) {
    auto copy = store.openCopy(file);
    if (!copy) return badCopy(copy.error().detail, copy.error().why);
    if ((*copy)->access() == journal::Access::Newer)
        return badCopy("written by a newer version of the app", std::nullopt);
    return *std::move(copy);
}

/// What each device wrote in one event of a copy, as it was sealed; or why it is not taken.
Result<std::vector<journal::Entry>, std::string> soundEvent(const journal::Store& copy,
                                                            const EventId& id) {
    const auto unreadable = [&](const journal::StoreError& error) {
        return fail("event " + id.text() + " cannot be read: " + error.detail);
    };
    const auto broken = copy.verify(id);
    if (!broken) return unreadable(broken.error());
    if (*broken) return fail(placeOf(**broken));
    const auto heads = copy.heads(id);
    if (!heads) return unreadable(heads.error());
    std::vector<journal::Entry> all;
    for (const journal::ChainHead& head : *heads) {
        auto chain = copy.entriesAfter(id, {head.last.device, 0}, std::string::npos);
        if (!chain) return unreadable(chain.error());
        std::move(chain->begin(), chain->end(), std::back_inserter(all));
    }
    return all;
}

/// Adds one event; `restored` says what became of it.
Result<void, Refusal> take(journal::Store& store, const EventId& id,
                           const std::vector<journal::Entry>& theirs, Restored& restored) {
    const auto before = store.heads(id);
    if (!before) return fail(refusalFor(before.error()));
    const auto taken = store.take(theirs);
    if (!taken && taken.error().why == journal::StoreError::Why::OutOfOrder) {
        restored.differing.push_back(id);
        return {};
    }
    if (!taken) return fail(refusalFor(taken.error()));
    const auto isNew = [&](const journal::Entry& entry) {
        const journal::OperationId& name = entry.operation.id;
        return std::none_of(before->begin(), before->end(), [&](const journal::ChainHead& head) {
            return head.last.device == name.device && name.sequence <= head.last.sequence;
        });
    };
    const auto added = std::count_if(theirs.begin(), theirs.end(), isNew);
    restored.events += before->empty() && added > 0 ? 1 : 0;
    restored.operations += static_cast<std::int32_t>(added);
    return {};
}

}  // namespace

Result<std::optional<journal::BrokenChain>, Refusal> Session::backUp(
    const std::filesystem::path& file) const {
    auto copied = state_->store.copyTo(file);
    if (!copied) return fail(refusalFor(copied.error()));
    return *std::move(copied);
}

Result<Restored, Refusal> Session::restore(const std::filesystem::path& file) {
    const auto copy = readableCopy(state_->store, file);
    if (!copy) return fail(copy.error());
    const auto events = (*copy)->events();
    if (!events) return badCopy(events.error().detail, events.error().why);
    Restored restored;
    Result<void, Refusal> taken;
    std::string whyNot;
    for (const EventId& id : *events) {
        const auto theirs = soundEvent(**copy, id);
        if (!theirs) {
            if (whyNot.empty()) whyNot = theirs.error();
            restored.broken.push_back(id);
            continue;
        }
        const std::int32_t before = restored.operations;
        taken = take(state_->store, id, *theirs, restored);
        if (!taken) break;
        if (restored.operations > before) state_->tellNoted(id);
    }
    // Also when it ended half way: what was added counts.
    if (state_->event && restored.operations > 0)
        if (auto loaded = state_->load(EventId(*state_->event)); !loaded && taken)
            return fail(std::move(loaded.error()));
    if (!taken) return fail(std::move(taken.error()));
    if (!events->empty() && restored.broken.size() == events->size())
        return badCopy(std::move(whyNot), std::nullopt);
    return restored;
}

}  // namespace cinder::app
