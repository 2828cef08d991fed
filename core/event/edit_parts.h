#pragma once

/// What the edits of an event have in common; internal to core/event.

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "event/draft.h"
#include "event/edit.h"
#include "event/json.h"
#include "event/reader.h"

namespace cinder::event {

inline Edited refused(Fault fault) {
    return fail(Faults{std::move(fault)});
}

/// The changed draft, if it can be stored and read again.
inline Edited settled(const Event& draft) {
    return parseDraft(write(draft));
}

template <class Entry, class Key>
auto findById(std::vector<Entry>& list, const Key& id) {
    return std::find_if(list.begin(), list.end(),
                        [&](const Entry& entry) { return entry.id == id; });
}

/// In the place of the entry with the same id, or last; without an id, as "`stem`-3".
template <class Entry>
void put(std::vector<Entry>& list, Entry entry, const std::string& stem) {
    using Key = decltype(entry.id);
    for (std::size_t n = list.size() + 1; entry.id.empty(); ++n)
        if (const Key free(stem + "-" + std::to_string(n)); findById(list, free) == list.end())
            entry.id = free;
    if (const auto there = findById(list, entry.id); there != list.end())
        *there = std::move(entry);
    else
        list.push_back(std::move(entry));
}

/// Calls `visit(dish or null, step, path)` for every step of the event, in the order of the
/// document.
template <class Visit>
void forEachStep(const Event& event, Visit visit) {
    for (std::size_t d = 0; d < event.menu.size(); ++d)
        for (std::size_t s = 0; s < event.menu[d].method.size(); ++s)
            visit(&event.menu[d], event.menu[d].method[s],
                  joinPath(joinPath("/menu", d) + "/method", s));
    for (std::size_t s = 0; s < event.work.size(); ++s)
        visit(static_cast<const Dish*>(nullptr), event.work[s], joinPath("/work", s));
}

}  // namespace cinder::event
