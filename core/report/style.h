#pragma once

/// How numbers, times and names are written on paper: one language, one set of units.

#include <string>
#include <string_view>

#include "base/local_text.h"
#include "base/time.h"
#include "quantity/figure.h"
#include "quantity/pack_list.h"

namespace cinder::report {

enum class Measures : std::uint8_t { Metric, Customary };
enum class Hours : std::uint8_t { Twelve, TwentyFour };

struct Style {
    std::string language = "en";  ///< "en" or "es"
    Measures measures = Measures::Metric;
    Hours hours = Hours::TwentyFour;

    [[nodiscard]] std::string say(std::string_view english, std::string_view spanish) const {
        return std::string(language == "es" ? spanish : english);
    }
    [[nodiscard]] std::string name(const LocalText& text) const {
        return std::string(text.in(language));
    }
};

/// "4.5 kg" or "9 lb 15 oz"; rounded up, because a list that rounds down leaves somebody short.
[[nodiscard]] std::string massText(Mass mass, const Style& style);
/// US liquid quart (NIST Handbook 44, appendix C).
inline constexpr double kLitresOfQuart = 0.946352946;
/// "12.4 L" or "13.2 qt", rounded up.
[[nodiscard]] std::string volumeText(Volume volume, const Style& style);
/// "74 °C (165 °F)" or "165 °F (74 °C)".
[[nodiscard]] std::string temperatureText(Temperature temperature, const Style& style);
/// "1.83 m" or "6 ft 0 in".
[[nodiscard]] std::string lengthText(Length length, const Style& style);
/// The length there is, never more than that: rounded down to the inch.
[[nodiscard]] std::string roomText(Length room, const Style& style);
/// "13:05" or "1:05 pm" on the wall of the site.
[[nodiscard]] std::string timeText(Instant at, UtcOffset offset, const Style& style);
/// The weekday and date: "Sat 18 Sep 13:05" or "sáb 18 sep 13:05".
[[nodiscard]] std::string dayText(Instant at, UtcOffset offset, const Style& style);
/// "1 h 5 min".
[[nodiscard]] std::string spanText(Duration span, const Style& style);
/// Any amount with its unit: "3 packs", "4.5 kg", "2 h 55 min".
[[nodiscard]] std::string amountText(quantity::Amount amount, const Style& style);

[[nodiscard]] std::string word(event::Allergen allergen, const Style& style);
[[nodiscard]] std::string word(event::Diet diet, const Style& style);
[[nodiscard]] std::string word(event::Vessel vessel, const Style& style);
[[nodiscard]] std::string word(event::Keeping keeping, const Style& style);
[[nodiscard]] std::string word(quantity::Ride ride, const Style& style);

}  // namespace cinder::report
