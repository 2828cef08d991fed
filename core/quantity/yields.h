#pragma once

/// Published yields: how much ready food comes of what is bought. The figures are kept as printed,
/// with how they are to be read, because the tables answer different questions: weight after
/// cooking, refuse, trimming by the factor or by the hundred.
///
/// A yield counts bone on both sides where the cut has bone. Two tables about the same food differ
/// (household refuse, recipe trimming, restaurant trimming); the event names the one it follows.

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "base/units.h"
#include "quantity/figure.h"

namespace cinder::quantity {

/// How a printed yield is read.
enum class Printed : std::uint8_t {
    Percent,         ///< ready for 100 bought
    Refuse,          ///< lost of 100 bought
    Factor,          ///< bought for 1 ready
    Ratio,           ///< ready for 1 bought
    OuncesAPound,    ///< one-ounce servings from a pound
    QuarterCups171,  ///< quarter cups, 171 g a cup, from a pound
};

struct Yield {
    std::string_view key;
    std::string_view food;
    std::string_view state;
    double printed = 0;
    Printed reading = Printed::Percent;
    Origin origin = Origin::Published;
    std::string_view source;
};

/// All yields, in the order of the keys.
[[nodiscard]] std::span<const Yield> yields();
[[nodiscard]] const Yield* findYield(std::string_view key);

/// Ready weight for one of bought weight; above 1 for what takes up water.
[[nodiscard]] double readyForOne(const Yield& yield);

/// Does it tell what cooking leaves, and not only what trimming does?
[[nodiscard]] bool isOfCooking(const Yield& yield);

/// Bought for `ready`, exact before any rounding to packs. `readyForOne` is positive.
[[nodiscard]] Mass bought(Mass ready, double readyForOne);

}  // namespace cinder::quantity
