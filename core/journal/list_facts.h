#pragma once

/// What a person decides about quantities and the line, and counts into the van: part of the kinds
/// of operation.h.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/time.h"

namespace cinder::journal {

/// An own value for one figure (quantity::Figure::key), in the figure's unit; without a value the
/// app's own stands again. The last word counts.
struct FigureSet {
    std::string figure;
    std::optional<double> value;
    std::optional<std::string> note;
    Instant at;
    friend bool operator==(const FigureSet&, const FigureSet&) = default;
};
/// So many will eat. Diets and allergies stay as they were told; never fewer of them are named
/// because fewer guests come. The last word counts.
struct GuestsSet {
    std::int32_t adults = 0;
    std::int32_t children = 0;
    Instant at;
    friend bool operator==(const GuestsSet&, const GuestsSet&) = default;
};
/// The dishes along the line, from the plates; others follow. The last word counts.
struct LineOrdered {
    std::vector<DishId> dishes;
    Instant at;
    friend bool operator==(const LineOrdered&, const LineOrdered&) = default;
};
/// So many of one row of a list are in the van, on the way home, or in their place on the line:
/// the count as it then is, not how many more. The last word counts.
struct Packed {
    enum class Where : std::uint8_t { Out, Home, Line };
    std::string row;  ///< quantity::PackRow::key, or app::StandCard::key
    std::int32_t count = 0;
    Where where = Where::Out;
    Instant at;
    friend bool operator==(const Packed&, const Packed&) = default;
};

}  // namespace cinder::journal
