#pragma once

/// The first look at a document's text, before anything is built from it: its size, its encoding,
/// its grammar, how deep it nests, and members named twice.

#include <string_view>

#include "event/fault.h"

namespace cinder::event {

/// Enough to repair any document made by a person; keeps a hostile one from filling the memory.
inline constexpr std::size_t kMostFaults = 1000;

/// One more step of a JSON Pointer, with "~" and "/" escaped (RFC 6901 section 3).
[[nodiscard]] std::string joinPath(std::string_view path, std::string_view member);
[[nodiscard]] std::string joinPath(std::string_view path, std::size_t index);

struct GuardedText {
    Faults faults;
    /// False when there is no point in reading on: only DuplicateKey lets the rest be checked too.
    bool isReadable = true;
};

/// Constant stack; memory grows with the document's depth and its largest object.
[[nodiscard]] GuardedText guardText(std::string_view document);

}  // namespace cinder::event
