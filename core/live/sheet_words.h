#pragma once

/// The words of the run sheet document for the values of enumerations.

#include <array>
#include <string_view>

namespace cinder::live {

/// In the order of plan::TaskKind.
inline constexpr std::array<std::string_view, 13> kTaskKindWords = {
    "setUp", "fire", "prep", "cook",  "rest",   "slice", "finish",
    "warm",  "hold", "load", "serve", "strike", "check"};
/// In the order of plan::HandsOn::Act.
inline constexpr std::array<std::string_view, 4> kActWords = {"work", "putOn", "turn", "takeOff"};
/// In the order of plan::End.
inline constexpr std::array<std::string_view, 2> kEndWords = {"start", "finish"};
/// In the order of plan::Lean.
inline constexpr std::array<std::string_view, 2> kLeanWords = {"early", "late"};

/// The word for `value`, which must be in range.
template <class Enum, std::size_t N>
[[nodiscard]] constexpr std::string_view wordFor(Enum value,
                                                 const std::array<std::string_view, N>& words) {
    return words[static_cast<std::size_t>(value)];
}

}  // namespace cinder::live
