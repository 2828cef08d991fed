#include "event/draft.h"

#include <algorithm>

#include "event/json.h"
#include "event/read_event.h"
#include "event/text_guard.h"
#include "event/write_parts.h"

namespace cinder::event {

Result<Event, Faults> parseDraft(std::string_view document) {
    GuardedText guarded = guardText(document);
    if (!guarded.isReadable) return fail(std::move(guarded.faults));
    Faults faults = std::move(guarded.faults);
    const Json json = Json::parse(document, nullptr, false);
    Event draft;
    readEvent(Node{json, {}, faults}, draft);
    // A draft begins with no dish; every other list that must not be empty comes with a template.
    const auto menu = json.is_object() ? json.find("menu") : json.end();
    if (menu != json.end() && menu->is_array() && menu->empty())
        std::erase_if(faults, [](const Fault& fault) { return fault.path == "/menu"; });
    if (!faults.empty()) return fail(std::move(faults));
    return draft;
}

Faults faultsOf(const Event& draft) {
    auto whole = parse(write(draft));
    return whole ? Faults{} : std::move(whole.error());
}

Event renewed(const Event& past, const EventId& id, ZonedInstant serve) {
    Event draft = past;
    draft.id = id;
    if (draft.site.arrival)
        draft.site.arrival =
            ZonedInstant{serve.at - (past.serve.at - past.site.arrival->at), serve.offset};
    draft.serve = serve;
    if (draft.quantities) draft.quantities->overrides.clear();
    return draft;
}

}  // namespace cinder::event
