#pragma once

/// What a dish is on a plate, in a shop and on the line: the portion, who takes it, what it is made
/// of and how that is bought, and the vessel it stands in. People write it; quantity/ reckons with
/// it. Everything may be absent, because a dish is entered step by step: what is missing is named
/// where it is needed, never guessed.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/local_text.h"
#include "base/units.h"
#include "event/step.h"
#include "event/unknown.h"

namespace cinder::event {

using IngredientId = Id<struct IngredientTag>;

/// How an ingredient is sold. Exactly one of the two is set.
struct Pack {
    LocalText name;
    std::optional<Mass> mass;
    std::optional<std::int32_t> pieces;
    UnknownMembers unknown;
    friend bool operator==(const Pack&, const Pack&) = default;
};

struct Ingredient {
    /// Dishes that use the same id under the same name are bought together.
    IngredientId id;
    LocalText name;
    /// Of the dish's weight as it is portioned: ready to eat when portions are weighed, raw when
    /// they are counted. The ingredients of a dish add up to 100.
    std::int32_t percent = 100;
    /// Keys of published yields (quantity/yields.h), one after the other: trimmed, then cooked.
    std::vector<std::string> yields;
    /// The cook's own figure instead: ready weight for 100 of bought weight. Dry beans give more
    /// than 100.
    std::optional<std::int32_t> yieldPercent;
    std::optional<Pack> pack;
    /// Where the cook's own figure comes from.
    std::optional<std::string> source;
    UnknownMembers unknown;
    friend bool operator==(const Ingredient&, const Ingredient&) = default;
};

/// What a dish stands in on the line. Chafers and cold pans hold standard pans.
enum class Vessel : std::uint8_t { Chafer, ColdPan, Bowl, Basket, Board, SauceBowl };

/// The part of a full steam-table opening a pan fills.
enum class PanSize : std::uint8_t { Full, TwoThirds, Half, Third, Quarter, Sixth };

/// 2 1/2, 4 and 6 inches.
enum class PanDepth : std::uint8_t { Shallow, Medium, Deep };

struct Serving {
    /// Exactly one of the two is set: by weight ready to eat, or by pieces (an ear, a skewer).
    std::optional<Mass> portion;
    std::optional<std::int32_t> portionPieces;
    /// Of the guests.
    std::optional<std::int32_t> takePercent;
    /// A child's portion in percent of an adult's; absent: the same.
    std::optional<std::int32_t> childPercent;
    /// Portions on top for those who come back, in percent of the portions; absent: none.
    std::optional<std::int32_t> secondsPercent;
    /// Dishes with the same word are a choice of one ("mains"): their take rates cover everybody.
    std::optional<std::string> choice;
    /// How heavy a litre of it is, as it lies in its vessel.
    std::optional<std::int32_t> gramsPerLitre;
    std::optional<Vessel> vessel;
    /// Of Chafer and ColdPan.
    std::optional<PanSize> panSize;
    std::optional<PanDepth> panDepth;
    /// Of every other vessel; the length lies along the table.
    std::optional<Volume> vesselVolume;
    std::optional<Length> vesselLength;
    std::optional<Length> vesselWidth;
    std::vector<Ingredient> ingredients;
    UnknownMembers unknown;
    friend bool operator==(const Serving&, const Serving&) = default;
};

/// What becomes of food made ahead, until it rides to the site.
enum class Keeping : std::uint8_t {
    Chill,    ///< cooked, cooled and kept cold
    Cold,     ///< made of cool or room-warm things and kept cold
    HoldHot,  ///< kept hot from the stove to the line
    Dry,      ///< needs no cold: bread, seasoning
};

/// Work in the kitchen before the van leaves.
struct Ahead {
    StepId id;
    LocalText name;
    std::optional<Duration> duration;
    /// It is done this long before the serve time.
    Duration beforeServe{0};
    Keeping then = Keeping::Dry;
    UnknownMembers unknown;
    friend bool operator==(const Ahead&, const Ahead&) = default;
};

/// A person's own value for a figure the app reckons ("dish/slaw/portions").
struct Override {
    std::string figure;
    double value = 0;  ///< in the figure's own unit
    std::optional<std::string> note;
    UnknownMembers unknown;
    friend bool operator==(const Override&, const Override&) = default;
};

/// What people decide about quantities and the line, beside what each dish says.
struct Quantities {
    /// From the bell until the line closes.
    std::optional<Duration> service;
    /// Kept on the road for what goes wrong.
    std::optional<Duration> buffer;
    /// Dishes in the order somebody wants them on the line; the others follow.
    std::vector<DishId> lineOrder;
    std::vector<Override> overrides;
    UnknownMembers unknown;
    friend bool operator==(const Quantities&, const Quantities&) = default;
};

}  // namespace cinder::event
