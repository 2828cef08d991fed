#pragma once

/// The event as people describe it: who eats, what, when and where; who works, with what, and how
/// each dish is made. Nothing here is computed, and nothing here knows how a plan is found.
///
/// An event travels as one JSON document (event/json.h); its shape is published as a JSON Schema
/// in assets/schema. Every name people read is a LocalText, so that English and Spanish travel
/// with it. Values that come out of `parse` are checked: references lead somewhere, ids are
/// unique, times are possible. Values made in code are checked by `findFaults`.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/local_text.h"
#include "base/time.h"
#include "event/kit.h"
#include "event/menu.h"
#include "event/serving.h"
#include "event/step.h"
#include "event/unknown.h"

namespace cinder::event {

/// The version of the document this code writes and fully understands.
inline constexpr std::int32_t kVersion = 1;

struct Skill {
    SkillId id;
    LocalText name;
    UnknownMembers unknown;
    friend bool operator==(const Skill&, const Skill&) = default;
};

struct Person {
    PersonId id;
    std::string name;
    std::vector<SkillId> skills;
    UnknownMembers unknown;
    friend bool operator==(const Person&, const Person&) = default;
};

/// A place where work is done: the fire, the line, the van.
struct Station {
    StationId id;
    LocalText name;
    UnknownMembers unknown;
    friend bool operator==(const Station&, const Station&) = default;
};

/// How long it takes on foot, the same both ways. Pairs that are not listed take no time.
struct Walk {
    StationId from;
    StationId to;
    Duration time{0};
    UnknownMembers unknown;
    friend bool operator==(const Walk&, const Walk&) = default;
};

struct Site {
    LocalText name;
    std::optional<std::string> address;
    std::optional<LocalText> notes;
    /// Agreed with the client; absent means as late as the work allows.
    std::optional<ZonedInstant> arrival;
    /// From the kitchen to the site.
    std::optional<Duration> travel;
    std::vector<Station> stations;
    std::vector<Walk> walks;
    UnknownMembers unknown;
    friend bool operator==(const Site&, const Site&) = default;
};

struct Event {
    EventId id;
    LocalText name;
    std::int32_t version = kVersion;
    ZonedInstant serve;
    /// IANA name ("America/New_York"), for people and calendars; the offset is beside the instant.
    std::string timeZone;
    Guests guests;
    Site site;
    std::vector<Skill> skills;
    std::vector<Person> crew;
    Kit kit;
    std::vector<Dish> menu;
    /// Work that belongs to no dish: set-up, fire, serving, strike.
    std::vector<Step> work;
    std::optional<Quantities> quantities;
    UnknownMembers unknown;

    /// Made by a newer version: shown, never written.
    [[nodiscard]] bool isReadOnly() const { return version > kVersion; }
    friend bool operator==(const Event&, const Event&) = default;
};

}  // namespace cinder::event
