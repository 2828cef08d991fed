#pragma once

#include <filesystem>
#include <string>

#include "cli/failure.h"
#include "event/event.h"

namespace cinder::cli {

/// The text of an event file. Reads no more than an event may have, whatever the file's size.
[[nodiscard]] Outcome<std::string> readText(const std::filesystem::path& file);

/// The event in a file; on failure one line for each fault.
[[nodiscard]] Outcome<event::Event> readEvent(const std::filesystem::path& file);

}  // namespace cinder::cli
