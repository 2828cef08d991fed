#pragma once

/// The usual cautions of the fire, each with where it was published and how far that was checked.
/// Data for the pages that show them; local fire and health codes and licensed practice decide.

#include <cstdint>
#include <span>
#include <string_view>

namespace cinder::cook {

/// Where a caution belongs on the screen.
enum class FireMoment : std::uint8_t {
    Lighting,   ///< before and while the coals are lit
    Always,     ///< as long as anything glows
    OverCoals,  ///< meat on the grate: fat, flames, hands
    Doneness,   ///< beside every forecast and every judgement
    Ash,        ///< when the fire is to be left
};

/// How the source was checked when this was written.
enum class Checked : std::uint8_t { Read, FromMemory };

struct FireCaution {
    std::string_view id;  ///< stable; translations go by it
    FireMoment moment;
    std::string_view text;
    std::string_view spanish;
    std::string_view source;
    /// The same with our own words about it in Spanish; a title stays as published. Empty where
    /// nothing but a title is said.
    std::string_view sourceSpanish;
    Checked checked;
    /// The same in a line, where the work is done; empty when it is told on its page only.
    std::string_view brief{};
    std::string_view briefSpanish{};
};

[[nodiscard]] std::span<const FireCaution> fireCautions();

/// Shown wherever a caution is.
inline constexpr std::string_view kDeference =
    "Local fire and health codes and licensed practice decide.";

}  // namespace cinder::cook
