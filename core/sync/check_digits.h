#pragma once

/// The two digits behind a number that show a slip in it. Source: ISO/IEC 7064, MOD 97-10.

#include <string>
#include <string_view>

namespace cinder::sync {

/// The number that `digits` write, however long, modulo 97.
[[nodiscard]] constexpr int modulo97(std::string_view digits) {
    int rest = 0;
    for (const char digit : digits)
        rest = (rest * 10 + (digit - '0')) % 97;
    return rest;
}

/// What is put behind `digits`: the whole is then 1 modulo 97. From 02 to 98, as in ISO 13616.
[[nodiscard]] inline std::string checkDigits(std::string_view digits) {
    const int check = 98 - modulo97(std::string(digits) + "00");
    return {static_cast<char>('0' + check / 10), static_cast<char>('0' + check % 10)};
}

}  // namespace cinder::sync
