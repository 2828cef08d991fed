#include "app/session.h"
#include "cli/commands.h"
#include "cli/store_file.h"
#include "cli/table.h"
#include "event/json.h"

namespace cinder::cli {

namespace {

/// What is last said about the event in its journal, when it can be read.
std::optional<event::Event> described(const std::vector<journal::Operation>& operations) {
    std::optional<event::Event> event;
    for (const journal::Operation& operation : operations) {
        const auto* const body = std::get_if<journal::EventDescribed>(&operation.body);
        if (body == nullptr) continue;
        if (auto parsed = event::parse(body->document)) event = *std::move(parsed);
    }
    return event;
}

const char* accessWords(journal::Access access) {
    switch (access) {
        case journal::Access::Full:
        case journal::Access::ReadOnlyFile:
            return "";
        case journal::Access::Newer:
            return "written by a newer version: it is shown, never touched\n";
    }
    return "";
}

std::string placeOf(const journal::BrokenChain& chain) {
    const bool isAltered = chain.what == journal::BrokenChain::What::Altered;
    return "event " + chain.event.text() + ", device " + chain.operation.device.text() +
           ", entry " + std::to_string(chain.operation.sequence) +
           (isAltered ? " is not the one that was written" : " follows one that is gone");
}

/// A copy fails at the store it is made of, or where it is to go.
bool isOfTheSource(journal::StoreError::Why why) {
    using Why = journal::StoreError::Why;
    return why == Why::Damaged || why == Why::NotAJournal || why == Why::Locked;
}

}  // namespace

Outcome<std::string> listEvents(const Options& options) {
    const auto store = openStore(options.file, {.readOnly = true, .pageLimit = {}});
    if (!store) return fail(store.error());
    const auto events = (*store)->events();
    if (!events) return fail(storeFailure(events.error(), options.file.string()));
    Table table({"event", "serve", "operations", "name"}, {2});
    for (const EventId& id : *events) {
        const auto operations = (*store)->read(id);
        if (!operations) {
            using Why = journal::StoreError::Why;
            const Why why = operations.error().why;
            if (why != Why::Damaged && why != Why::Failed)
                return fail(storeFailure(operations.error(), options.file.string()));
            // One damaged event hides no other.
            table.add({id.text(), "-", "-", "cannot be read: " + operations.error().detail});
            continue;
        }
        const auto event = described(*operations);
        table.add({id.text(), event ? formatRfc3339(event->serve) : "-",
                   std::to_string(operations->size()),
                   event ? std::string(event->name.in(options.language)) : "-"});
    }
    return accessWords((*store)->access()) + table.text();
}

Outcome<std::string> verifyStore(const Options& options) {
    const auto store = openStore(options.file, {.readOnly = true, .pageLimit = {}});
    if (!store) return fail(store.error());
    const auto broken = (*store)->verify();
    if (!broken) return fail(storeFailure(broken.error(), options.file.string()));
    if (!*broken)
        return accessWords((*store)->access()) + options.file.string() +
               ": the record is as it was written\n";
    return fail(Failure{ExitCode::Altered, options.file.string() + ": " + placeOf(**broken) +
                                               "; compare with another device's copy"});
}

Outcome<std::string> backUpStore(const Options& options) {
    const auto store = openStore(options.file, {.readOnly = true, .pageLimit = {}});
    if (!store) return fail(store.error());
    const std::string copy = options.copy->string();
    const auto copied = (*store)->copyTo(*options.copy);
    if (!copied)
        return fail(storeFailure(copied.error(),
                                 isOfTheSource(copied.error().why) ? options.file.string() : copy));
    std::string words = options.file.string() + " is in " + copy + ", checked\n";
    if (*copied)
        words += "but the record was no longer as it was written, and was copied as it stands: " +
                 placeOf(**copied) + "\n";
    return words;
}

Outcome<std::string> restoreStore(const Options& options, const Clock& clock) {
    const auto store = openStore(options.file, {});
    if (!store) return fail(store.error());
    app::Session session(**store, clock);
    const auto restored = session.restore(*options.copy);
    if (!restored)
        return fail(Failure{ExitCode::Store,
                            options.copy->string() + ": " + app::describe(restored.error())});
    std::string words = std::to_string(restored->events) + " events and " +
                        std::to_string(restored->operations) +
                        " entries were not there and are now\n";
    for (const EventId& id : restored->differing)
        words += id.text() + " went another way in this store and was left as it is\n";
    for (const EventId& id : restored->broken)
        words += id.text() +
                 " was changed in the copy, or cannot be read there, and was not "
                 "taken\n";
    return words;
}

}  // namespace cinder::cli
