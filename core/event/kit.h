#pragma once

/// What the crew brings: things with a size or a count. Money is never in it.

#include <cstdint>
#include <optional>
#include <vector>

#include "base/id.h"
#include "base/local_text.h"
#include "base/units.h"
#include "event/unknown.h"

namespace cinder::event {

/// A cooking surface over coals. `length` is the long way, along which batches share the grate.
struct Grate {
    ResourceId id;
    LocalText name;
    StationId station;
    Length length;
    Length width;
    /// Left of the length for the cool side, free of pieces.
    Length coolSide;
    /// Kept between pieces, so that heat and tongs get between them.
    Length gap;
    UnknownMembers unknown;
    friend bool operator==(const Grate&, const Grate&) = default;
};

enum class EquipmentKind : std::uint8_t {
    HotBox,   ///< counted in shelves
    ColdBox,  ///< counted in shelves or boxes
    Chafer,
    Burner,
    HandWash,
    Extinguisher,
    Thermometer,
    WorkTop,  ///< room for one person to cut
    Other,
};

/// Like places with a count: the shelves of a hot box, chafers, burners.
struct Equipment {
    ResourceId id;
    LocalText name;
    EquipmentKind kind = EquipmentKind::Other;
    std::int32_t count = 1;
    std::optional<StationId> station;
    UnknownMembers unknown;
    friend bool operator==(const Equipment&, const Equipment&) = default;
};

struct Table {
    ResourceId id;
    LocalText name;
    std::int32_t count = 1;
    Length length;
    Length width;
    std::optional<StationId> station;
    UnknownMembers unknown;
    friend bool operator==(const Table&, const Table&) = default;
};

struct Kit {
    std::vector<Grate> grates;
    std::vector<Equipment> equipment;
    std::vector<Table> tables;
    UnknownMembers unknown;
    friend bool operator==(const Kit&, const Kit&) = default;
};

}  // namespace cinder::event
