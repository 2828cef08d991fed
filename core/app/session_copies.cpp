#include "app/session.h"
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

/// Nothing but an unbroken record is taken: a copy that was changed would be sealed anew here.
Result<std::unique_ptr<journal::Store>, Refusal> soundCopy(const journal::Store& store,
                                                           const std::filesystem::path& file) {
    auto copy = store.openCopy(file);
    if (!copy) return badCopy(copy.error().detail, copy.error().why);
    if ((*copy)->access() == journal::Access::Newer)
        return badCopy("written by a newer version of the app", std::nullopt);
    const auto broken = (*copy)->verify();
    if (!broken) return badCopy(broken.error().detail, broken.error().why);
    if (*broken) return badCopy(placeOf(**broken), std::nullopt);
    return *std::move(copy);
}

}  // namespace

Result<void, Refusal> Session::backUp(const std::filesystem::path& file) const {
    if (const auto copied = state_->store.copyTo(file); !copied)
        return fail(refusalFor(copied.error()));
    return {};
}

Result<Restored, Refusal> Session::restore(const std::filesystem::path& file) {
    const auto copy = soundCopy(state_->store, file);
    if (!copy) return fail(copy.error());
    const auto events = (*copy)->events();
    if (!events) return badCopy(events.error().detail, events.error().why);
    Restored restored;
    for (const EventId& id : *events) {
        const auto theirs = (*copy)->read(id);
        if (!theirs) return badCopy(theirs.error().detail, theirs.error().why);
        const auto before = state_->store.read(id);
        if (!before) return fail(refusalFor(before.error()));
        const auto taken = state_->store.append(*theirs);
        if (!taken && taken.error().why == journal::StoreError::Why::OutOfOrder) {
            restored.differing.push_back(id);
            continue;
        }
        if (!taken) return fail(refusalFor(taken.error()));
        const auto after = state_->store.read(id);
        if (!after) return fail(refusalFor(after.error()));
        restored.events += before->empty() ? 1 : 0;
        restored.operations += static_cast<std::int32_t>(after->size() - before->size());
    }
    if (state_->event && restored.operations > 0) {
        if (auto loaded = state_->load(EventId(*state_->event)); !loaded)
            return fail(std::move(loaded.error()));
    }
    return restored;
}

}  // namespace cinder::app
