// What other devices of the crew noted.

#include <algorithm>

#include "app/session.h"
#include "app/session_state.h"

namespace cinder::app {

namespace {

/// What these say reaches back to words that were let go (Session::State::forgetOldDrafts).
bool needsAllRead(const journal::Body& body) {
    return std::holds_alternative<journal::Undone>(body) ||
           std::holds_alternative<journal::EventDrafted>(body);
}

}  // namespace

Result<void, Refusal> Session::State::takeNote(const std::vector<journal::Entry>& entries) {
    past.reset();
    std::vector<journal::Operation> added;
    added.reserve(entries.size());
    for (const journal::Entry& entry : entries)
        if (event == entry.operation.event) added.push_back(entry.operation);
    if (added.empty()) return {};
    if (std::any_of(added.begin(), added.end(),
                    [](const journal::Operation& op) { return needsAllRead(op.body); }))
        return load(EventId(*event));
    for (journal::Operation& op : added) {
        stamps.witness(op.stamp);
        operations.push_back(std::move(op));
    }
    std::sort(operations.begin(), operations.end(), journal::comesBefore);
    refold();
    return {};
}

Result<void, Refusal> Session::takeNote(const std::vector<journal::Entry>& entries) {
    return state_->takeNote(entries);
}

void Session::tellWhenNoted(std::function<void(const EventId&)> noted) {
    state_->whenNoted = std::move(noted);
}

}  // namespace cinder::app
