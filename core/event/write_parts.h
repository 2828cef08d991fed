#pragma once

/// What every part of the document is written with.

#include <cmath>
#include <nlohmann/json.hpp>

#include "event/event.h"
#include "event/words.h"

namespace cinder::event {

using Json = nlohmann::ordered_json;

/// 5 rather than 5.0 when it is whole.
inline Json number(double value) {
    if (value == std::floor(value) && std::abs(value) < 1e9)
        return static_cast<std::int64_t>(value);
    return value;
}
inline Json minutes(Duration duration) {
    return number(static_cast<double>(duration.count()) / 60000.0);
}
inline Json millimetres(Length length) {
    return number(length.millimetres());
}

inline Json text(const LocalText& text) {
    const auto& byLanguage = text.byLanguage();
    if (byLanguage.size() == 1 && byLanguage.begin()->first.empty())
        return byLanguage.begin()->second;
    Json object = Json::object();
    for (const auto& [language, words] : byLanguage)
        object[language] = words;
    return object;
}

template <class Tag>
Json text(const Id<Tag>& id) {
    return id.text();
}

template <class List, class Write>
Json list(const List& entries, Write write) {
    Json array = Json::array();
    for (const auto& entry : entries)
        array.push_back(write(entry));
    return array;
}

template <class List>
Json wordList(const List& values) {
    return list(values, [](auto value) { return wordFor(value); });
}

template <class List>
Json idList(const List& ids) {
    return list(ids, [](const auto& id) { return id.text(); });
}

inline void addUnknown(Json& object, const UnknownMembers& unknown) {
    for (const auto& [name, value] : unknown) {
        Json parsed = Json::parse(value, nullptr, false);
        if (!parsed.is_discarded() && !object.contains(name)) object[name] = std::move(parsed);
    }
}

[[nodiscard]] Json write(const Dish& dish);
[[nodiscard]] Json write(const Serving& serving);
[[nodiscard]] Json write(const Ahead& ahead);
[[nodiscard]] Json write(const Quantities& quantities);

}  // namespace cinder::event
