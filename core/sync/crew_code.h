#pragma once

/// The code with which the devices of a crew find and trust each other. It is shown on one and
/// entered on the others, once; the key that guards what they say is made from it.

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace cinder::sync {

/// Digits of a code: fourteen by chance and two that check them.
inline constexpr std::size_t kCodeDigits = 16;

/// A new one, by chance. The last two digits are those of ISO/IEC 7064, MOD 97-10. Empty where the
/// device has no source of chance.
[[nodiscard]] std::string newCode();

/// Whether `code` is sixteen digits whose last two fit the others: a slip in one digit, or two that
/// changed places, never fits.
[[nodiscard]] bool isCode(std::string_view code);

/// What the devices of one crew share.
using CrewKey = std::array<std::uint8_t, 32>;

/// Argon2id (RFC 9106) of the code, from libsodium: takes some 64 MiB and a fraction of a second,
/// so that codes cannot be tried by the million. Nothing when `isCode` says no, or when the device
/// has no room for it.
[[nodiscard]] std::optional<CrewKey> crewKey(std::string_view code);

/// What a device may call out loud so that the others of its crew know it: keyed BLAKE2b (RFC 7693)
/// of the key, as 16 hexadecimal digits. Says nothing about the key.
[[nodiscard]] std::string crewMark(const CrewKey& key);

}  // namespace cinder::sync
