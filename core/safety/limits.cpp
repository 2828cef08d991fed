#include "safety/limits.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace cinder::safety {

namespace {

using namespace std::chrono_literals;
constexpr Sense kLeast = Sense::AtLeast;
constexpr Sense kMost = Sense::AtMost;

constexpr std::string_view kPractice = "common practice - no source";
constexpr std::string_view kTwoHours = "USDA FSIS, 2-hour rule";

// Every figure as printed in the section beside it.
constexpr std::array kDegrees{
    DegreeLimit{Degree::ColdHold, "coldHold", kMost, 41, 5, "3-501.16(A)(2)", kFoodCode},
    DegreeLimit{Degree::HotHold, "hotHold", kLeast, 135, 57, "3-501.16(A)(1)", kFoodCode},
    DegreeLimit{Degree::HotHoldRoast, "hotHoldRoast", kLeast, 130, 54, "3-501.16(A)(1)", kFoodCode},
    DegreeLimit{Degree::ShellEggAir, "shellEggAir", kMost, 45, 7, "3-501.16(B)", kFoodCode},
    // The two of 3-202.11 from memory.
    DegreeLimit{Degree::ReceiveCold, "receiveCold", kMost, 41, 5, "3-202.11(A)", kFoodCode},
    DegreeLimit{Degree::ReceiveHot, "receiveHot", kLeast, 135, 57, "3-202.11(D)", kFoodCode},
    DegreeLimit{Degree::CookPoultry, "cookPoultry", kLeast, 165, 74, "3-401.11(A)(3)", kFoodCode},
    DegreeLimit{Degree::CookGround, "cookGround", kLeast, 155, 68, "3-401.11(A)(2)", kFoodCode},
    DegreeLimit{Degree::CookIntact, "cookIntact", kLeast, 145, 63, "3-401.11(A)(1)", kFoodCode},
    DegreeLimit{Degree::CookPlant, "cookPlant", kLeast, 135, 57, "3-401.13", kFoodCode},
    DegreeLimit{Degree::CookMicrowave, "cookMicrowave", kLeast, 165, 74, "3-401.12", kFoodCode},
    DegreeLimit{Degree::Reheat, "reheat", kLeast, 165, 74, "3-403.11(A)", kFoodCode},
    DegreeLimit{Degree::ReheatPacked, "reheatPacked", kLeast, 135, 57, "3-403.11(C)", kFoodCode},
    DegreeLimit{Degree::CoolStart, "coolStart", kLeast, 135, 57, "3-501.14(A)", kFoodCode},
    DegreeLimit{Degree::CoolMiddle, "coolMiddle", kMost, 70, 21, "3-501.14(A)(1)", kFoodCode},
    DegreeLimit{Degree::CoolEnd, "coolEnd", kMost, 41, 5, "3-501.14(A)(2)", kFoodCode},
    DegreeLimit{Degree::TimeStartHot, "timeStartHot", kLeast, 135, 57, "3-501.19(B)(1)", kFoodCode},
    DegreeLimit{Degree::TimeStartCold, "timeStartCold", kMost, 41, 5, "3-501.19(B)(1)", kFoodCode},
    DegreeLimit{Degree::TimeStartFresh, "timeStartFresh", kMost, 70, 21, "3-501.19(B)(2)",
                kFoodCode},
    DegreeLimit{Degree::TimeWarmest, "timeWarmest", kMost, 70, 21, "3-501.19(C)", kFoodCode},
};

constexpr std::array kSpans{
    SpanLimit{Span::CookIntactHold, "cookIntactHold", kLeast, 15s, "3-401.11(A)(1)", kFoodCode},
    SpanLimit{Span::CookGroundHold, "cookGroundHold", kLeast, 17s, "3-401.11(A)(2)", kFoodCode},
    SpanLimit{Span::MicrowaveStand, "microwaveStand", kLeast, 2min, "3-401.12", kFoodCode},
    SpanLimit{Span::ReheatHold, "reheatHold", kLeast, 15s, "3-403.11(A)", kFoodCode},
    SpanLimit{Span::ReheatWithin, "reheatWithin", kMost, 2h, "3-403.11(D)", kFoodCode},
    SpanLimit{Span::CoolMiddleWithin, "coolMiddleWithin", kMost, 2h, "3-501.14(A)(1)", kFoodCode},
    SpanLimit{Span::CoolEndWithin, "coolEndWithin", kMost, 6h, "3-501.14(A)(2)", kFoodCode},
    SpanLimit{Span::CoolAmbientWithin, "coolAmbientWithin", kMost, 4h, "3-501.14(B)", kFoodCode},
    SpanLimit{Span::TimeControl, "timeControl", kMost, 4h, "3-501.19(B)", kFoodCode},
    SpanLimit{Span::TimeControlLong, "timeControlLong", kMost, 6h, "3-501.19(C)", kFoodCode},
    // From memory.
    SpanLimit{Span::FirstHeating, "firstHeating", kMost, 60min, "3-401.14", kFoodCode},
    SpanLimit{Span::HandWash, "handWash", kLeast, 20s, "2-301.12(A)", kFoodCode},
    SpanLimit{Span::HandRub, "handRub", kLeast, 10s, "2-301.12(B)(3)", kFoodCode},
    SpanLimit{Span::ChlorineContact, "chlorineContact", kLeast, 10s, "4-703.11(C)(1)", kFoodCode},
    SpanLimit{Span::SanitizerContact, "sanitizerContact", kLeast, 30s, "4-703.11(C)(3)", kFoodCode},
    // Often enough that what is found out of limit can still be put right.
    SpanLimit{Span::HoldEvery, "holdEvery", kMost, 60min, "", kPractice},
    // The consumer figure, because a record nobody wrote cannot show less time out of control.
    SpanLimit{Span::HoldGap, "holdGap", kMost, 2h, "", kTwoHours},
};

constexpr std::array kGround{CookRow{145, 63, 3min}, CookRow{150, 66, 1min}, CookRow{155, 68, 17s},
                             CookRow{158, 70, 0s}};

constexpr std::array kRoast{
    CookRow{130, 54.4, 112min}, CookRow{131, 55.0, 89min}, CookRow{133, 56.1, 56min},
    CookRow{135, 57.2, 36min},  CookRow{136, 57.8, 28min}, CookRow{138, 58.9, 18min},
    CookRow{140, 60.0, 12min},  CookRow{142, 61.1, 8min},  CookRow{144, 62.2, 5min},
    CookRow{145, 62.8, 4min},   CookRow{147, 63.9, 134s},  CookRow{149, 65.0, 85s},
    CookRow{151, 66.1, 54s},    CookRow{153, 67.2, 34s},   CookRow{155, 68.3, 22s},
    CookRow{157, 69.4, 14s},    CookRow{158, 70.0, 0s}};

Temperature onScale(double fahrenheit, double celsius, Scale scale) {
    return scale == Scale::Celsius ? Temperature::fromCelsius(celsius)
                                   : Temperature::fromFahrenheit(fahrenheit);
}

Temperature stricter(Sense sense, Temperature a, Temperature b) {
    return sense == Sense::AtLeast ? std::max(a, b) : std::min(a, b);
}

std::string text(const Reading& reading) {
    const bool isCelsius = reading.scale == Scale::Celsius;
    std::array<char, 32> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.1f %s",
                  isCelsius ? reading.value.celsius() : reading.value.fahrenheit(),
                  isCelsius ? "degC" : "degF");
    return buffer.data();
}

std::string text(Duration length) {
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(length).count();
    return seconds % 60 == 0 ? std::to_string(seconds / 60) + " min"
                             : std::to_string(seconds) + " s";
}

template <class Table>
auto find(const Table& table, std::string_view field) {
    return std::find_if(table.begin(), table.end(),
                        [&](const auto& row) { return row.field == field; });
}

std::string orStricter(Sense sense, const std::string& figure) {
    return figure + (sense == Sense::AtLeast ? " or more" : " or less");
}

std::optional<LimitFault> objection(const DegreeLimit& limit, const Reading& given) {
    using Why = LimitFault::Why;
    const Reading own{onScale(limit.fahrenheit, limit.celsius, given.scale), given.scale};
    LimitFault fault{Why::Looser, std::string(limit.field), text(given),
                     orStricter(limit.sense, text(own))};
    if (stricter(limit.sense, given.value, own.value) != given.value) return fault;
    fault.why = Why::OutOfRange;
    fault.remedy = "-30 to 120 degC";
    if (given.value.celsius() < -30 || given.value.celsius() > 120) return fault;
    return std::nullopt;
}

std::optional<LimitFault> objection(const SpanLimit& limit, Duration given) {
    using Why = LimitFault::Why;
    LimitFault fault{Why::Looser, std::string(limit.field), text(given),
                     orStricter(limit.sense, text(limit.length))};
    const bool isLooser =
        limit.sense == Sense::AtLeast ? given < limit.length : given > limit.length;
    if (isLooser) return fault;
    fault.why = Why::OutOfRange;
    fault.remedy = "1 s to 24 h";
    if (given < 1s || given > 24h) return fault;
    return std::nullopt;
}

std::optional<LimitFault> objection(const LocalLimit& local) {
    const LimitFault wrong{LimitFault::Why::WrongKind, local.field, {}, {}};
    if (const auto degree = find(kDegrees, local.field); degree != kDegrees.end()) {
        const auto* reading = std::get_if<Reading>(&local.value);
        if (reading) return objection(*degree, *reading);
        return LimitFault{wrong.why, local.field, "a time", "a temperature"};
    }
    if (const auto span = find(kSpans, local.field); span != kSpans.end()) {
        const auto* length = std::get_if<Duration>(&local.value);
        if (length) return objection(*span, *length);
        return LimitFault{wrong.why, local.field, "a temperature", "a time"};
    }
    return LimitFault{
        LimitFault::Why::UnknownField, local.field, {}, "one of the published limits"};
}

}  // namespace

std::span<const DegreeLimit> publishedDegrees() {
    return kDegrees;
}
std::span<const SpanLimit> publishedSpans() {
    return kSpans;
}
const DegreeLimit& published(Degree degree) {
    return kDegrees[static_cast<std::size_t>(degree)];
}
const SpanLimit& published(Span span) {
    return kSpans[static_cast<std::size_t>(span)];
}
bool isJudged(Degree degree) {
    return degree != Degree::ShellEggAir && degree != Degree::CookMicrowave;
}

bool isJudged(Span span) {
    switch (span) {
        case Span::MicrowaveStand:
        case Span::ReheatHold:
        case Span::CoolAmbientWithin:
        case Span::FirstHeating:
        case Span::HandWash:
        case Span::HandRub:
        case Span::ChlorineContact:
        case Span::SanitizerContact:
            return false;
        default:
            return true;
    }
}

std::span<const CookRow> groundRows() {
    return kGround;
}
std::span<const CookRow> roastRows() {
    return kRoast;
}

const CookRow* rowMet(std::span<const CookRow> rows, const Reading& reading, Duration held) {
    if (isTooHotForFood(reading)) return nullptr;
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const CookRow& one) {
        return reading.value >= onScale(one.fahrenheit, one.celsius, reading.scale) &&
               held >= one.hold;
    });
    return row == rows.end() ? nullptr : &*row;
}

std::string describe(const LimitFault& fault) {
    using Why = LimitFault::Why;
    switch (fault.why) {
        case Why::NoAuthority:
            return "authority: say whose rule it is";
        case Why::UnknownField:
            return fault.field + ": there is no such limit; name " + fault.remedy;
        case Why::WrongKind:
            return fault.field + ": " + fault.given + " where " + fault.remedy + " belongs";
        case Why::Looser:
            return fault.field + ": " + fault.given + " is looser than the published limit; give " +
                   fault.remedy;
        case Why::OutOfRange:
            return fault.field + ": " + fault.given + " is no limit; give " + fault.remedy;
    }
    return fault.field;
}

Result<Limits, LimitFault> Limits::with(LocalRules rules) {
    if (rules.authority.empty())
        return fail(LimitFault{LimitFault::Why::NoAuthority, "authority", {}, {}});
    for (const LocalLimit& local : rules.limits)
        if (auto fault = objection(local)) return fail(std::move(*fault));
    Limits limits;
    limits.rules_ = std::move(rules);
    return limits;
}

Temperature Limits::figure(Degree degree, Scale scale) const {
    const DegreeLimit& limit = published(degree);
    Temperature figure = onScale(limit.fahrenheit, limit.celsius, scale);
    for (const LocalLimit& local : rules_.limits)
        if (const auto* reading = std::get_if<Reading>(&local.value);
            reading && local.field == limit.field)
            figure = stricter(limit.sense, figure, reading->value);
    return figure;
}

bool Limits::meets(Degree degree, const Reading& reading) const {
    const Temperature figure = this->figure(degree, reading.scale);
    if (published(degree).sense == Sense::AtMost) return reading.value <= figure;
    return reading.value >= figure && !isTooHotForFood(reading);
}

Duration Limits::length(Span span) const {
    const SpanLimit& limit = published(span);
    Duration length = limit.length;
    for (const LocalLimit& local : rules_.limits)
        if (const auto* own = std::get_if<Duration>(&local.value);
            own && local.field == limit.field)
            length =
                limit.sense == Sense::AtLeast ? std::max(length, *own) : std::min(length, *own);
    return length;
}

bool Limits::isLocal(Degree degree) const {
    return figure(degree, Scale::Celsius) !=
           onScale(published(degree).fahrenheit, published(degree).celsius, Scale::Celsius);
}

bool Limits::isLocal(Span span) const {
    return length(span) != published(span).length;
}

}  // namespace cinder::safety
