#include "app/session.h"

#include <algorithm>
#include <set>

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

/// The operations of one event of a copy, each device's in the order it wrote them; or why they are
/// not taken. Only an unbroken record is: one that was changed would be sealed anew here.
Result<std::vector<journal::Operation>, std::string> soundEvent(const journal::Store& copy,
                                                                const EventId& id) {
    const auto broken = copy.verify(id);
    if (!broken) return fail("event " + id.text() + " cannot be read: " + broken.error().detail);
    if (*broken) return fail(placeOf(**broken));
    auto operations = copy.read(id);
    if (!operations)
        return fail("event " + id.text() + " cannot be read: " + operations.error().detail);
    std::sort(operations->begin(), operations->end(),
              [](const auto& a, const auto& b) { return a.id < b.id; });
    return *std::move(operations);
}

/// Adds one event; `restored` says what became of it.
Result<void, Refusal> take(journal::Store& store, const EventId& id,
                           const std::vector<journal::Operation>& theirs, Restored& restored) {
    const auto before = store.read(id);
    if (!before) return fail(refusalFor(before.error()));
    const auto taken = store.append(theirs);
    if (!taken && taken.error().why == journal::StoreError::Why::OutOfOrder) {
        restored.differing.push_back(id);
        return {};
    }
    if (!taken) return fail(refusalFor(taken.error()));
    // Names, not a second reading: what is here is known, and all of theirs is here now.
    std::set<journal::OperationId> here;
    for (const journal::Operation& op : *before)
        here.insert(op.id);
    const auto added =
        std::count_if(theirs.begin(), theirs.end(),
                      [&](const journal::Operation& op) { return here.count(op.id) == 0; });
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
        taken = take(state_->store, id, *theirs, restored);
        if (!taken) break;
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
