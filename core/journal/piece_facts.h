#pragma once

/// What a person did or saw at the fire, piece by piece. `task` is the batch ("lamb/cook/1"), a
/// piece is called by its number on the grate map, which runs through all batches of its dish.
///
/// Each of these names what it is about, so that the same touch on two devices counts once: a piece
/// is pulled once, a reading is one reading of one piece at one instant.

#include <cstdint>
#include <optional>
#include <vector>

#include "base/id.h"
#include "base/time.h"

namespace cinder::journal {

/// Pieces of one thickness, in micrometres.
struct LaidKind {
    std::int64_t thickness = 0;
    std::int32_t pieces = 0;
    friend bool operator==(const LaidKind&, const LaidKind&) = default;
};

/// A batch is on the grate, and what was measured of it. It also starts the task, unless somebody
/// said another start.
struct PiecesLaid {
    TaskId task;
    std::int64_t startMilliCelsius = 0;  ///< of the meat, in its middle
    /// Empty: as the event describes the dish. From thin to thick or as measured; any order.
    std::vector<LaidKind> kinds;
    Instant at;
    friend bool operator==(const PiecesLaid&, const PiecesLaid&) = default;
};

/// So long a palm bore the heat at the height of the grate.
struct HandHeld {
    ResourceId grate;
    std::int64_t milliseconds = 0;
    Instant at;
    friend bool operator==(const HandHeld&, const HandHeld&) = default;
};

/// What a thermometer on the grate showed.
struct GrateRead {
    ResourceId grate;
    std::int64_t milliCelsius = 0;
    Instant at;
    friend bool operator==(const GrateRead&, const GrateRead&) = default;
};

/// What a probe in one piece showed.
struct PieceRead {
    TaskId task;
    std::int32_t piece = 0;
    std::int64_t milliCelsius = 0;
    /// Of the tip below the upper face, in micrometres; absent means the middle of the piece.
    std::optional<std::int64_t> depth;
    Instant at;
    friend bool operator==(const PieceRead&, const PieceRead&) = default;
};

/// What a cook thinks of one piece by touch or look. Never says that food is safe.
struct PieceJudged {
    TaskId task;
    std::int32_t piece = 0;
    bool isDone = false;
    Instant at;
    friend bool operator==(const PieceJudged&, const PieceJudged&) = default;
};

/// One or several pieces come off the grate into a pan.
struct PiecesPulled {
    TaskId task;
    std::vector<std::int32_t> pieces;
    std::int32_t pan = 1;  ///< the crew's number of the hotel pan, from 1
    Instant at;
    friend bool operator==(const PiecesPulled&, const PiecesPulled&) = default;
};

/// One or several pieces change to the cool side of the grate, or back over the coals.
struct PiecesMoved {
    TaskId task;
    std::vector<std::int32_t> pieces;
    bool isToCoolSide = true;
    Instant at;
    friend bool operator==(const PiecesMoved&, const PiecesMoved&) = default;
};

/// Fresh charcoal goes on the bed under a grate.
struct CoalAdded {
    ResourceId grate;
    std::int64_t grams = 0;
    Instant at;
    friend bool operator==(const CoalAdded&, const CoalAdded&) = default;
};

}  // namespace cinder::journal
