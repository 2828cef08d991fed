#pragma once

/// From the event as people describe it to what must be bought, loaded and set up.
///
/// Every number here is a figure: a value with its unit, the words of its formula, the figures that
/// went into it and where those come from, so that a person can open it down to the guest count or
/// the printed yield. A person may put an own value in place of any figure that has a key; what was
/// reckoned stays beside it. Where the event lacks what a figure needs, there is no figure but a
/// fault beside the field (event::Fault): never a silent default.
///
/// Rounding is always up, in whole numbers, so that the same event gives the same figures on every
/// device and more guests never get less.

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/local_text.h"
#include "event/event.h"
#include "event/fault.h"

namespace cinder::quantity {

enum class Unit : std::uint8_t {
    Guests,
    Portions,
    Pieces,
    Packs,
    Pans,
    Vessels,
    Chafers,
    Cans,
    Bags,
    Tables,
    Grams,
    Millilitres,
    Millimetres,
    Minutes,
    Percent,
    Ratio,
    GramsPerLitre,
    Adults,
    Children,
};

struct Amount {
    double value = 0;
    Unit unit = Unit::Pieces;
    friend bool operator==(const Amount&, const Amount&) = default;
};

enum class Origin : std::uint8_t {
    Field,           ///< stands in the event at `text`, a JSON Pointer
    Published,       ///< a publication, named in `text`
    CommonPractice,  ///< what crews do; no source
    FromMemory,      ///< believed right, not verified
    Reckoned,        ///< follows from the inputs
};

struct Source {
    Origin origin = Origin::Reckoned;
    std::string text;
    friend bool operator==(const Source&, const Source&) = default;
};

struct Figure {
    /// What an override names: "dish/slaw/portions". Empty for a field of the event, which is
    /// changed where it stands.
    std::string key;
    LocalText name;
    Amount amount;
    LocalText formula;
    /// The same with places for the numbers, {0} for the first of `inputs`, so that a person can
    /// follow it with a pocket reckoner. What adds or takes nothing, a share of 100 %, is left out;
    /// ", rounded up" holds for what stands before it within its brackets. Empty where there is
    /// nothing to reckon.
    LocalText worked;
    Source source;
    std::vector<Figure> inputs;
    /// What the app reckons, when a person put another value in its place.
    std::optional<double> reckoned;
    /// Why, in that person's words.
    std::optional<std::string> note;

    [[nodiscard]] bool isOverridden() const { return reckoned.has_value(); }
    friend bool operator==(const Figure&, const Figure&) = default;
};

/// English and Spanish.
[[nodiscard]] LocalText both(std::string_view english, std::string_view spanish);

/// The figure called `key` among `figures` and all that went into them; null when there is none.
[[nodiscard]] const Figure* findFigure(const std::vector<Figure>& figures, std::string_view key);

/// Makes figures with the overrides of one event, and collects the faults.
class Tally {
  public:
    explicit Tally(const event::Event& event);

    [[nodiscard]] const event::Event& event() const { return event_; }
    /// A figure that follows from others; an override of `figure.key` takes its place.
    [[nodiscard]] Figure reckoned(Figure figure);
    /// A field of the event.
    [[nodiscard]] static Figure field(LocalText name, Amount amount, std::string path);

    void blame(event::Fault::What what, std::string path, std::string found = {},
               std::string allowed = {});
    void missing(std::string path);
    /// Blames overrides that name no figure. To be asked last.
    [[nodiscard]] event::Faults faults() const;

  private:
    const event::Event& event_;
    std::map<std::string, std::size_t, std::less<>> overrides_;
    std::map<std::string, bool, std::less<>> used_;
    event::Faults faults_;
};

/// A million tonnes in grams: nothing here is more, and products of it still fit 64 bits.
inline constexpr std::int64_t kMostCounted = 1'000'000'000'000;

/// Smallest whole number not below `value`, forgiving the last digits of a quotient that should
/// have been whole (100 × 55 % is 55, not 56). `value` is not negative; more than kMostCounted
/// counts as that, because a person's own value may be anything.
[[nodiscard]] std::int64_t roundedUp(double value);
/// Smallest multiple of `step` not below `value`.
[[nodiscard]] std::int64_t roundedUpTo(double value, std::int64_t step);
/// a / b rounded up, both not negative, b positive.
[[nodiscard]] constexpr std::int64_t quotientUp(std::int64_t a, std::int64_t b) {
    return (a + b - 1) / b;
}

}  // namespace cinder::quantity
