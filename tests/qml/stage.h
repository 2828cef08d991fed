#pragma once

/// What stands behind each place of places.h: which day, on which board, and what was touched there
/// before anybody looks.

#include <memory>

#include <QString>

#include "devices.h"
#include "door.h"

namespace cinder::face {

class Face;

namespace scene {

/// The day to show at `place`. Throws std::runtime_error where a demo event is missing.
[[nodiscard]] std::unique_ptr<Door> doorOf(const QString& place);
/// The other devices of the crew there. They know of none where it is not about them.
[[nodiscard]] std::unique_ptr<CrewDevices> crewDevicesOf(const QString& place);
/// The place of a View at which it is shown.
[[nodiscard]] QString boardOf(const QString& place);
/// Opens what is open at `place`; the face is shown.
void prepare(Face& face, const QString& place);

}  // namespace scene
}  // namespace cinder::face
