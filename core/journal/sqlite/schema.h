#pragma once

/// The tables and how older files become current ones. Each migration runs once, in a transaction
/// of its own, and is never edited after it has shipped: a change of mind is a new migration.

#include <span>

namespace cinder::journal {

/// "Cndr": marks a file as ours (PRAGMA application_id).
inline constexpr int kApplicationId = 0x436e6472;

/// migrations()[n] takes a file from user_version n to n + 1.
[[nodiscard]] std::span<const char* const> migrations();

}  // namespace cinder::journal
