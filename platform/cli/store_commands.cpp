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

}  // namespace

Outcome<std::string> listEvents(const Options& options) {
    const auto store = openStore(options.file, {.readOnly = true, .pageLimit = {}});
    if (!store) return fail(store.error());
    const auto events = (*store)->events();
    if (!events) return fail(storeFailure(events.error(), options.file.string()));
    Table table({"event", "serve", "operations", "name"}, {2});
    for (const EventId& id : *events) {
        const auto operations = (*store)->read(id);
        if (!operations) return fail(storeFailure(operations.error(), options.file.string()));
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
    const journal::BrokenChain& chain = **broken;
    const bool isAltered = chain.what == journal::BrokenChain::What::Altered;
    return fail(Failure{
        ExitCode::Altered,
        options.file.string() + ": event " + chain.event.text() + ", device " +
            chain.operation.device.text() + ", entry " + std::to_string(chain.operation.sequence) +
            (isAltered ? " is not the one that was written" : " follows one that is gone") +
            "; compare with another device's copy"});
}

Outcome<std::string> backUpStore(const Options& options) {
    const auto store = openStore(options.file, {.readOnly = true, .pageLimit = {}});
    if (!store) return fail(store.error());
    const std::string copy = options.copy->string();
    if (const auto copied = (*store)->copyTo(*options.copy); !copied)
        return fail(storeFailure(copied.error(), copy));
    return options.file.string() + " is in " + copy + ", checked\n";
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
    return words;
}

}  // namespace cinder::cli
