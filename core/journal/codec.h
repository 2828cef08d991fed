#pragma once

/// Operations as text. The body of an operation is one JSON object (RFC 8259, UTF-8), its kind a
/// word beside it:
///
///     described     {"document": text}               the event document, as text
///     drafted       {"document": text, "field": pointer}   the event while it is being written
///     planned       {"document": text}               the run sheet, see live/run_sheet.h
///     started       {"task": id, "at": ms}
///     finished      {"task": id, "at": ms}
///     skipped       {"task": id, "at": ms}
///     left-out      {"dish": id, "tasks": [id], "at": ms}   with what was still to be done for it
///     crew          {"members": [{"person": id, "name": text, "skills": [id], "here": boolean}],
///                    "at": ms}
///     ticked        {"task": id, "line": n, "at": ms}
///     turned        {"task": id, "turn": n, "at": ms}
///     serve-moved   {"serve": ms, "at": ms}
///     heard         {"alarm": name, "at": ms}        an alarm was acknowledged
///     temperature   {"task": id, "milliCelsius": n, "at": ms}
///     rehearsal     {"real": ms, "shown": ms, "speed": n}
///     undone        {"device": id, "sequence": n}
///     laid          {"task": id, "startMilliCelsius": n, "at": ms,
///                    "kinds": [{"thicknessMicrometres": n, "pieces": n}]}
///     hand          {"grate": id, "milliseconds": n, "at": ms}
///     grate         {"grate": id, "milliCelsius": n, "at": ms}
///     probe         {"task": id, "piece": n, "milliCelsius": n, "at": ms} and, when it was
///                   measured, "depthMicrometres": n
///     judged        {"task": id, "piece": n, "done": boolean, "at": ms}
///     pulled        {"task": id, "pieces": [n], "pan": n, "at": ms}
///     moved         {"task": id, "pieces": [n], "toCoolSide": boolean, "at": ms}
///     coal          {"grate": id, "grams": n, "at": ms}
///     measured      {"dish": id, "pan": n, "for": purpose, "milliCelsius": n, "scale": "C"|"F",
///                    "thermometer": id, "at": ms} and, when it was watched, "heldMs": n; when it
///                    corrects another entry, "corrects": entry and "reason": text
///     acted         {"entry": entry, "action": action, "at": ms}
///     left-control  {"dish": id, "pan": n, "rule": rule, "milliCelsius": n, "scale": "C"|"F",
///                    "thermometer": id, "at": ms}
///     cooling       {"dish": id, "pan": n, "route": "cooked"|"ambient", "at": ms}
///     discarded     {"dish": id, "pan": n, "at": ms}
///     kept          {"dish": id, "pan": n, "at": ms}
///     ice-point     {"thermometer": id, "milliCelsius": n, "scale": "C"|"F", "at": ms}
///     fire-ready    {"item": item, "at": ms}
///     fire-unready  {"item": item, "reason": text, "at": ms}    passed over
///     local-rules   {"authority": text, "at": ms, "limits": [{"field": text, and either
///                    "milliCelsius": n, "scale": "C"|"F" or "ms": n}]}
///     signed        {"name": text, "certificate": text, "at": ms}
///     figure        {"figure": key, "at": ms} and, unless the app's own value stands again,
///                   "value": number; "note": text when there is one
///     guests        {"adults": n, "children": n, "at": ms}
///     line-order    {"dishes": [id], "at": ms}
///     packed        {"row": key, "count": n, "where": "out"|"home"|"line", "at": ms}
///     passed        {"guests": n, "at": ms}          so many are through the line
///     last-guest    {"at": ms}
///     pan-level     {"dish": id, "pan": n, "percent": n, "at": ms}    left in it
///     pan-set       {"dish": id, "pan": n, "at": ms}  on the line in the place of the one before
///     interrupted   {"task": id, "interrupted": boolean, "at": ms}   its time does not count
///     lesson        {"figure": text, "accepted": boolean, "value": n, "at": ms}   learn/lessons.h
///     clock         {"at": ms}                       a person said that the clock is right now
///
/// where entry is {"device": id, "sequence": n}, and the words for purpose, action, rule and item
/// stand in codec_safety.cpp, and ms is milliseconds since 1970-01-01T00:00:00Z. A kind this
/// version does not know, a body of a later version and a body that does not read are kept word for
/// word as `Unknown`: they are passed on to other devices, and a newer app will understand them.

#include <string>
#include <string_view>

#include "journal/operation.h"

namespace cinder::journal {

/// The version this code writes and fully understands.
inline constexpr std::int32_t kBodyVersion = 1;

struct BodyText {
    std::string kind;
    std::string text;
    friend bool operator==(const BodyText&, const BodyText&) = default;
};

[[nodiscard]] BodyText writeBody(const Body& body);

/// Never fails: what cannot be understood comes back as `Unknown`.
[[nodiscard]] Body readBody(std::string_view kind, std::int32_t version, std::string_view text);

}  // namespace cinder::journal
