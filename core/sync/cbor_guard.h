#pragma once

/// Looks at CBOR before it is parsed. The parser calls itself at each level and at each piece of a
/// text of unknown length, so that bytes made for it could exhaust the stack, and it makes a value
/// of every byte of an array, so that they could exhaust the memory.

#include <string_view>

namespace cinder::sync {

/// Whether `bytes` are one well-formed data item (RFC 8949, section 5.3.1) of lengths that are
/// known and lie within the bytes, without tags, no deeper and no more of them than any message
/// has.
[[nodiscard]] bool isPlainCbor(std::string_view bytes);

}  // namespace cinder::sync
