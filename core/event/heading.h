#pragma once

/// What a list of events says of one, without reading the rest of its document.

#include <optional>
#include <string_view>

#include "base/local_text.h"
#include "base/time.h"

namespace cinder::event {

struct Heading {
    LocalText name;
    ZonedInstant serve;
    friend bool operator==(const Heading&, const Heading&) = default;
};

/// Reads as far as both are known and no further: the rest of the document is not checked. Nothing
/// when one of them is not there, or the text before them is not JSON.
[[nodiscard]] std::optional<Heading> readHeading(std::string_view document);

}  // namespace cinder::event
