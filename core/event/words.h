#pragma once

/// The words a document uses for each enumeration. One table per type; reading, writing, messages
/// and the published schema all speak from it.

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "event/event.h"

namespace cinder::event {

template <class Value>
struct Word {
    Value value;
    std::string_view text;
};

enum class HandsMode : std::uint8_t { None, Whole, Start, Tended };

// Each overload returns the whole table; the argument only picks the type.
[[nodiscard]] std::span<const Word<StepKind>> wordsOf(StepKind);
[[nodiscard]] std::span<const Word<StepEnd>> wordsOf(StepEnd);
[[nodiscard]] std::span<const Word<StepLean>> wordsOf(StepLean);
[[nodiscard]] std::span<const Word<Moment::Anchor>> wordsOf(Moment::Anchor);
[[nodiscard]] std::span<const Word<HandsMode>> wordsOf(HandsMode);
[[nodiscard]] std::span<const Word<EquipmentKind>> wordsOf(EquipmentKind);
[[nodiscard]] std::span<const Word<Diet>> wordsOf(Diet);
[[nodiscard]] std::span<const Word<Allergen>> wordsOf(Allergen);
[[nodiscard]] std::span<const Word<Course>> wordsOf(Course);
[[nodiscard]] std::span<const Word<Food>> wordsOf(Food);
[[nodiscard]] std::span<const Word<Meat>> wordsOf(Meat);
[[nodiscard]] std::span<const Word<Doneness>> wordsOf(Doneness);
[[nodiscard]] std::span<const Word<Vessel>> wordsOf(Vessel);
[[nodiscard]] std::span<const Word<PanSize>> wordsOf(PanSize);
[[nodiscard]] std::span<const Word<PanDepth>> wordsOf(PanDepth);
[[nodiscard]] std::span<const Word<Keeping>> wordsOf(Keeping);

/// The word for a value; "" for a number that is no value of the enumeration.
template <class Value>
[[nodiscard]] std::string_view wordFor(Value value) {
    for (const auto& word : wordsOf(value))
        if (word.value == value) return word.text;
    return {};
}

template <class Value>
[[nodiscard]] std::optional<Value> valueOf(std::string_view text) {
    for (const auto& word : wordsOf(Value{}))
        if (word.text == text) return word.value;
    return std::nullopt;
}

/// "setUp|fire|prep": all words of the type, for Fault::allowed.
template <class Value>
[[nodiscard]] std::string allWords() {
    std::string all;
    for (const auto& word : wordsOf(Value{})) {
        if (!all.empty()) all += '|';
        all += word.text;
    }
    return all;
}

}  // namespace cinder::event
