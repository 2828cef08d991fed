#include "base/time.h"

#include <array>
#include <cstdio>

namespace cinder {

namespace {

using namespace std::chrono;

/// Reads exactly `digits` decimal digits at `pos` and moves past them.
std::optional<int> readDigits(std::string_view text, std::size_t& pos, std::size_t digits) {
    if (pos + digits > text.size()) return std::nullopt;
    int value = 0;
    for (std::size_t i = 0; i < digits; ++i) {
        const char c = text[pos + i];
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    pos += digits;
    return value;
}

bool readChar(std::string_view text, std::size_t& pos, char upper) {
    if (pos >= text.size()) return false;
    const char c = text[pos];
    const bool matches = c == upper || (upper >= 'A' && upper <= 'Z' && c == upper - 'A' + 'a');
    if (matches) ++pos;
    return matches;
}

std::optional<Duration> readFraction(std::string_view text, std::size_t& pos) {
    if (pos >= text.size() || text[pos] != '.') return Duration{0};
    ++pos;
    int millis = 0;
    int scale = 100;
    const std::size_t first = pos;
    while (pos < text.size() && text[pos] >= '0' && text[pos] <= '9') {
        millis += (text[pos] - '0') * scale;
        scale /= 10;
        ++pos;
    }
    if (pos == first) return std::nullopt;
    return Duration{millis};
}

std::optional<UtcOffset> readOffset(std::string_view text, std::size_t& pos) {
    if (readChar(text, pos, 'Z')) return UtcOffset{0};
    const bool east = pos < text.size() && text[pos] == '+';
    const bool west = pos < text.size() && text[pos] == '-';
    if (!east && !west) return std::nullopt;
    ++pos;
    const auto hour = readDigits(text, pos, 2);
    if (!hour || !readChar(text, pos, ':')) return std::nullopt;
    const auto minute = readDigits(text, pos, 2);
    if (!minute || *hour > 23 || *minute > 59) return std::nullopt;
    const UtcOffset size = hours{*hour} + minutes{*minute};
    return east ? size : -size;
}

template <class... Args>
std::string print(const char* format, Args... args) {
    std::array<char, 64> buffer{};
    const int length = std::snprintf(buffer.data(), buffer.size(), format, args...);
    return {buffer.data(), static_cast<std::size_t>(length)};
}

}  // namespace

std::optional<ZonedInstant> parseRfc3339(std::string_view text) {
    std::size_t pos = 0;
    const auto yearRead = readDigits(text, pos, 4);
    if (!yearRead || !readChar(text, pos, '-')) return std::nullopt;
    const auto monthRead = readDigits(text, pos, 2);
    if (!monthRead || !readChar(text, pos, '-')) return std::nullopt;
    const auto dayRead = readDigits(text, pos, 2);
    if (!dayRead || !readChar(text, pos, 'T')) return std::nullopt;
    const auto hour = readDigits(text, pos, 2);
    if (!hour || !readChar(text, pos, ':')) return std::nullopt;
    const auto minute = readDigits(text, pos, 2);
    if (!minute || !readChar(text, pos, ':')) return std::nullopt;
    const auto second = readDigits(text, pos, 2);
    if (!second) return std::nullopt;
    const auto fraction = readFraction(text, pos);
    if (!fraction) return std::nullopt;
    const auto offset = readOffset(text, pos);
    if (!offset || pos != text.size()) return std::nullopt;

    const year_month_day date{year{*yearRead}, month{static_cast<unsigned>(*monthRead)},
                              day{static_cast<unsigned>(*dayRead)}};
    if (!date.ok() || *hour > 23 || *minute > 59 || *second > 60) return std::nullopt;
    const Instant local =
        sys_days{date} + hours{*hour} + minutes{*minute} + seconds{*second} + *fraction;
    return ZonedInstant{local - *offset, *offset};
}

std::string formatRfc3339(ZonedInstant instant) {
    const Instant local = instant.at + instant.offset;
    const auto midnight = floor<days>(local);
    const year_month_day date{midnight};
    const hh_mm_ss clock{local - midnight};
    std::string out =
        print("%04d-%02u-%02uT%02d:%02d:%02d", int{date.year()}, unsigned{date.month()},
              unsigned{date.day()}, static_cast<int>(clock.hours().count()),
              static_cast<int>(clock.minutes().count()), static_cast<int>(clock.seconds().count()));
    if (clock.subseconds().count() != 0) {
        out += print(".%03d", static_cast<int>(clock.subseconds().count()));
    }
    if (instant.offset.count() == 0) return out + "Z";
    const auto size = abs(instant.offset).count();
    return out + print("%c%02d:%02d", instant.offset.count() < 0 ? '-' : '+',
                       static_cast<int>(size / 60), static_cast<int>(size % 60));
}

std::string formatWallTime(Instant at, UtcOffset offset) {
    const Instant local = at + offset;
    const hh_mm_ss clock{local - floor<days>(local)};
    return print("%02d:%02d", static_cast<int>(clock.hours().count()),
                 static_cast<int>(clock.minutes().count()));
}

std::string formatBellOffset(Duration fromBell) {
    const auto whole = duration_cast<minutes>(abs(fromBell)).count();
    return print("T%c%d:%02d", fromBell.count() > 0 ? '+' : '-', static_cast<int>(whole / 60),
                 static_cast<int>(whole % 60));
}

}  // namespace cinder
