#pragma once

/// Guests and what they are given.

#include <cstdint>
#include <optional>
#include <vector>

#include "base/id.h"
#include "base/local_text.h"
#include "base/units.h"
#include "event/serving.h"
#include "event/step.h"
#include "event/unknown.h"

namespace cinder::event {

enum class Diet : std::uint8_t { Vegetarian, Vegan, GlutenFree, DairyFree, Halal, Kosher };

/// What must be declared. The first nine: FDA list of major food allergens (FALCPA 2004 and FASTER
/// Act 2021). The rest: Regulation (EU) 1169/2011, annex II (from memory).
enum class Allergen : std::uint8_t {
    Milk,
    Egg,
    Fish,
    Crustaceans,
    TreeNuts,
    Peanuts,
    Wheat,
    Soybeans,
    Sesame,
    Gluten,
    Celery,
    Mustard,
    Sulphites,
    Lupin,
    Molluscs,
};

struct DietCount {
    Diet diet = Diet::Vegetarian;
    std::int32_t count = 0;
    UnknownMembers unknown;
    friend bool operator==(const DietCount&, const DietCount&) = default;
};

struct AllergenCount {
    Allergen allergen = Allergen::Milk;
    std::int32_t count = 0;
    UnknownMembers unknown;
    friend bool operator==(const AllergenCount&, const AllergenCount&) = default;
};

struct Guests {
    std::int32_t adults = 0;
    std::int32_t children = 0;
    std::vector<DietCount> diets;
    std::vector<AllergenCount> allergens;
    UnknownMembers unknown;
    friend bool operator==(const Guests&, const Guests&) = default;
};

[[nodiscard]] std::int32_t headCount(const Guests& guests);

/// Some pieces are thicker than others and are done later.
struct ThicknessClass {
    LocalText name;
    Length thickness;
    /// Of all pieces; the classes of a dish add up to 100.
    std::int32_t percent = 0;
    UnknownMembers unknown;
    friend bool operator==(const ThicknessClass&, const ThicknessClass&) = default;
};

/// The pieces of a dish as they lie on the grate.
struct Pieces {
    /// Exactly one of the two is set. Per hundred guests, because half a piece each is common.
    std::optional<std::int32_t> total;
    std::optional<std::int32_t> perHundredGuests;
    Length length;
    Length width;
    /// Width of the thin end of a tapered piece; the width itself when it is not tapered.
    Length narrowWidth;
    std::optional<Mass> mass;  ///< of one piece, raw
    std::vector<ThicknessClass> thickness;
    UnknownMembers unknown;
    friend bool operator==(const Pieces&, const Pieces&) = default;
};

/// Where on the line a dish stands: cold dishes first, carved meats last.
enum class Course : std::uint8_t { Cold, Bread, Side, Main, Sauce };

/// What a dish is in the eyes of the food code; decides the published minimum, which the event
/// itself never states.
enum class Food : std::uint8_t { WholeMeat, GroundMeat, Poultry, Fish, Egg, Plant, Dairy, Grain };

/// The animal a whole piece is of.
enum class Meat : std::uint8_t { Beef, Lamb, Pork };

/// How far the cook takes meat or fish; where the pull target comes from when no temperature is
/// wished.
enum class Doneness : std::uint8_t { Rare, MediumRare, Medium, MediumWell, WellDone };

struct Dish {
    DishId id;
    LocalText name;
    Course course = Course::Side;
    Food food = Food::Plant;
    std::optional<Meat> meat;  ///< only of whole meat
    /// Place along the line, from 1.
    std::int32_t order = 1;
    std::vector<Diet> suits;
    std::vector<Allergen> contains;
    std::optional<Pieces> pieces;
    /// Core temperature at which the cook wants to pull it; a wish, no safety limit.
    std::optional<Temperature> pullAt;
    /// Instead of `pullAt`, and only of meat and fish.
    std::optional<Doneness> doneness;
    std::vector<Step> method;
    std::optional<Serving> serving;
    std::vector<Ahead> ahead;
    /// Where durations and yields come from; "common practice - no source" when from nowhere.
    std::optional<std::string> source;
    UnknownMembers unknown;
    friend bool operator==(const Dish&, const Dish&) = default;
};

/// Is it fit for a guest of `diet`: ticked so, or ticked for a diet that leaves out still more?
/// What is vegan is vegetarian and has no milk, by definition of the diet.
[[nodiscard]] bool isFitFor(const Dish& dish, Diet diet);

/// Is there `allergen` in it: declared, or within what is declared, or what the dish itself is?
/// Wheat is a gluten-containing grain (21 CFR 101.91(a)(1)); a dairy dish has milk, an egg dish
/// egg.
[[nodiscard]] bool hasAllergen(const Dish& dish, Allergen allergen);

/// How many pieces `guests` need, rounded up.
[[nodiscard]] std::int32_t pieceCount(const Pieces& pieces, const Guests& guests);

}  // namespace cinder::event
