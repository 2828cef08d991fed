#pragma once

/// The usual cautions of a caterer's day beside those of the fire (cook/cautions.h): hands,
/// weather, food, permits and people. Each with where it was published. Local fire and health codes
/// and licensed practice decide.

#include <cstdint>
#include <span>
#include <string_view>

namespace cinder::safety {

enum class Topic : std::uint8_t { Hands, Weather, Food, People };

struct Caution {
    std::string_view id;
    Topic topic = Topic::Food;
    std::string_view text;
    std::string_view spanish;
    std::string_view source;
    /// The same with our own words about it in Spanish; a title stays as published. Empty where
    /// nothing but a title is said.
    std::string_view sourceSpanish;
    bool isRead = true;  ///< false: the source was not at hand, it is from memory
    /// The same in a line, where the work is done; empty when it is told on its page only.
    std::string_view brief{};
    std::string_view briefSpanish{};
};

/// By topic.
[[nodiscard]] std::span<const Caution> cautions();

}  // namespace cinder::safety
