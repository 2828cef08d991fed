#pragma once

/// What the journal says about pieces, batches and beds of coal. Facts only: what follows from them
/// is in live/fire_forecast.h.

#include <map>
#include <optional>
#include <vector>

#include "base/time.h"
#include "base/units.h"
#include "journal/piece_facts.h"

namespace cinder::live {

/// A probe in a piece.
struct PieceReading {
    Temperature temperature;
    std::optional<Length> depth;  ///< absent: the middle
    friend bool operator==(const PieceReading&, const PieceReading&) = default;
};

struct PieceFacts {
    std::map<Instant, PieceReading> readings;
    std::map<Instant, bool> judgements;  ///< true: looks done
    std::map<Instant, bool> moves;       ///< true: to the cool side
    std::optional<Instant> pulled;
    std::int32_t pan = 0;  ///< the pan it was pulled into
    friend bool operator==(const PieceFacts&, const PieceFacts&) = default;
};

struct BatchFacts {
    struct Laid {
        Instant at;
        Temperature start;
        std::vector<journal::LaidKind> kinds;  ///< empty: as described
        friend bool operator==(const Laid&, const Laid&) = default;
    };
    std::optional<Laid> laid;
    std::map<std::int32_t, PieceFacts> pieces;  ///< by number
    friend bool operator==(const BatchFacts&, const BatchFacts&) = default;
};

struct GrateFacts {
    std::map<Instant, Duration> handTests;
    std::map<Instant, Temperature> readings;
    std::map<Instant, Mass> coalAdded;
    friend bool operator==(const GrateFacts&, const GrateFacts&) = default;
};

}  // namespace cinder::live
