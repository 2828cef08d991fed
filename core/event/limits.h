#pragma once

/// How large the numbers of an event may be: wide enough for any crew this app is for, tight
/// enough that a slip of the finger is caught. Our own choice, except where a source is named. The
/// published schema repeats them, and a test compares the two.

#include <cstddef>
#include <cstdint>

#include "event/range.h"

namespace cinder::event {

inline constexpr Range<std::int32_t> kGuestRange{0, 5000};
inline constexpr Range<std::int32_t> kCountRange{0, 100000};
inline constexpr Range<std::int32_t> kPlaceRange{1, 1000};
inline constexpr Range<std::int32_t> kPeopleRange{1, 8};
inline constexpr Range<std::int32_t> kPieceRange{1, 20000};
inline constexpr Range<std::int32_t> kPercentRange{1, 100};
inline constexpr Range<std::int32_t> kStalenessRange{0, 10};
inline constexpr Range<std::int32_t> kGramRange{1, 100000};
inline constexpr Range<std::int32_t> kVersionRange{1, 1000000};

/// Minutes. Nothing an event says lasts longer than a day; a step takes at least half a minute.
inline constexpr Range<double> kStepMinutes{0.5, 1440};
inline constexpr Range<double> kMinutes{0, 1440};
inline constexpr Range<double> kSignedMinutes{-1440, 1440};
inline constexpr Range<double> kWalkMinutes{0, 60};
/// Work in the kitchen: three days ahead at most. Longer keeping asks for date marking (FDA Food
/// Code 2022, 3-501.17), which is not this app's.
inline constexpr Range<double> kAheadMinutes{0, 4320};

/// Millimetres.
inline constexpr Range<double> kSurfaceMillimetres{100, 10000};
inline constexpr Range<double> kGapMillimetres{0, 1000};
inline constexpr Range<double> kPieceMillimetres{5, 2000};
inline constexpr Range<double> kThicknessMillimetres{1, 500};

inline constexpr Range<double> kPullCelsius{30, 100};

/// Of a serving. Seconds may double a dish; dry pulses more than treble.
inline constexpr Range<std::int32_t> kPortionGrams{1, 5000};
inline constexpr Range<std::int32_t> kPortionPieces{1, 50};
inline constexpr Range<std::int32_t> kSecondsPercent{0, 100};
inline constexpr Range<std::int32_t> kYieldPercent{1, 1000};
inline constexpr Range<std::int32_t> kGramsPerLitre{20, 2500};
inline constexpr Range<double> kVesselLitres{0.05, 100};
inline constexpr Range<double> kVesselMillimetres{50, 2000};
inline constexpr Range<double> kFigure{0, 1000000000};

/// Entries of lists.
inline constexpr Range<std::size_t> kAnyEntries{0, 500};
inline constexpr Range<std::size_t> kSomeEntries{1, 500};
/// The crews this app is for.
inline constexpr Range<std::size_t> kCrewEntries{1, 8};

/// Letters of texts.
inline constexpr Range<std::size_t> kNameLetters{1, 200};
inline constexpr Range<std::size_t> kNoteLetters{1, 2000};

}  // namespace cinder::event
