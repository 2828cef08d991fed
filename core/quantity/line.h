#pragma once

/// The buffet line to scale: tables end to end, plates at the head, vessels in serving order, a
/// card before every dish, cutlery at the end.
///
/// The line is seen from above; x runs along it from the plates, y from the guests' edge away from
/// them. Vessels stand in columns: two small ones, the far one on a riser, or one chafer. Nothing
/// stands across a joint between two tables. Chafers stand lengthwise, and end-on when the line
/// would be short otherwise.

#include <optional>
#include <string>
#include <vector>

#include "quantity/dish_figures.h"
#include "quantity/pans.h"

namespace cinder::quantity {

/// Gap between columns, so that hands and lids have room; room for plates at the head and for
/// cutlery at the end; depth of the strip for cards. Common practice - no source.
inline constexpr Length kColumnGap = Length::fromMillimetres(50);
inline constexpr Length kPlatesRoom = Length::fromMillimetres(300);
inline constexpr Length kCutleryRoom = Length::fromMillimetres(250);
inline constexpr Length kCardStrip = Length::fromMillimetres(80);

struct TableSpan {
    ResourceId table;
    /// Which of several like ones, from 1.
    std::int32_t number = 1;
    LocalText name;
    Length x, length, width;
    /// Tables of one station stand end to end; those of another are a line of their own.
    StationId station;
    friend bool operator==(const TableSpan&, const TableSpan&) = default;
};

struct Stand {
    DishId dish;
    LocalText name;
    event::Vessel vessel = event::Vessel::Bowl;
    event::Course course = event::Course::Side;
    /// Which of several vessels of the dish, from 1.
    std::int32_t number = 1;
    std::size_t table = 0;  ///< index of Line::tables
    Length x, y, length, width;
    bool isOnRiser = false;
    friend bool operator==(const Stand&, const Stand&) = default;
};

struct Card {
    DishId dish;
    LocalText name;
    std::vector<event::Allergen> contains;
    std::vector<event::Diet> suits;
    Length x;  ///< of its middle
    friend bool operator==(const Card&, const Card&) = default;
};

/// What weather and order ask for.
struct Prompt {
    enum class What : std::uint8_t {
        Wind,    ///< wind guards, vents open, flame away from the wind
        Shade,   ///< cold dishes out of the sun
        Cover,   ///< bread and bowls covered against dust and insects
        Order,   ///< a served main stands before another dish
        Riser,   ///< what stands on a riser must stand still
        Joint,   ///< tables tied together, nothing on the joint
        Second,  ///< one line is slow for so many guests
    };
    What what = What::Wind;
    std::vector<DishId> dishes;
    LocalText words;
    friend bool operator==(const Prompt&, const Prompt&) = default;
};

/// One line, or one at each station where dishes are loaded: those follow one another here, and
/// what they have, need and lack is added up.
struct Line {
    std::vector<TableSpan> tables;
    /// In serving order; those that found no room are in `waiting`.
    std::vector<Stand> stands;
    std::vector<DishId> waiting;
    std::vector<Card> cards;
    Length available;
    /// To the end of the cutlery, as if there were room for all.
    Length needed;
    /// `needed` reaches this far past the last table of its line.
    Length shortBy;
    /// More tables like the last one that would do.
    std::int32_t moreTables = 0;
    bool areChafersEndOn = false;
    std::vector<Prompt> prompts;
    friend bool operator==(const Line&, const Line&) = default;
};

/// The dishes in serving order: as people want them (Quantities::lineOrder), the others by course
/// (cold, bread, sides, sauces, mains) and their own order. Indices of the menu.
[[nodiscard]] std::vector<std::size_t> servingOrder(const event::Event& event);

/// Where two tables meet end to end.
[[nodiscard]] std::size_t jointCount(const Line& line);

/// Lays each dish on the tables that stand where it is loaded; one that is loaded where no table
/// stands, on the first. A dish whose vessel or size
/// is unknown was blamed when it was reckoned and is left out. Blames tables that are short, and
/// vessels that are wider than a table.
[[nodiscard]] Line layLine(Tally& tally, const std::vector<DishFigures>& dishes);

}  // namespace cinder::quantity
