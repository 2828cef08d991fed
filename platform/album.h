#pragma once

/// Pictures of the boards of a real event, drawn without a screen: a crew that is not there plays
/// the day on a clock of its own and the boards are grabbed at a few moments of it.

#include <filesystem>
#include <string>
#include <vector>

#include <QString>

namespace cinder::platform {

/// Takes `document` into a journal of its own under `folder`, plays it and writes PNG files there:
/// moment, place, screen, light and language in their names. Returns how many, or -1 after saying
/// on standard error what failed.
/// `demos` are shown on the first page.
[[nodiscard]] int drawAlbum(const std::string& document,
                            const std::vector<std::filesystem::path>& demos, const QString& folder);

}  // namespace cinder::platform
