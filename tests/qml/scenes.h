#pragma once

/// Every board, page, sheet and call of the face, shown one after the other from a day that stands
/// still with something in every state.

#include <functional>
#include <string>
#include <vector>

#include "real_day.h"

class QQuickItem;

namespace cinder::face::scene {

/// How a device is set up.
struct Manner {
    const Glass* glass = &kTablet;
    const char* theme = "noon";
    const char* language = "en";
    double textScale = 1;
};

/// Calls `look` with the root of each scene and its name, "fire, tablet 1280x800".
void forEveryScene(const Manner& manner,
                   const std::function<void(QQuickItem& root, const std::string& name)>& look);

/// "PressPlate": the QML type of an item, without what the engine adds to it.
[[nodiscard]] std::string typeOf(const QQuickItem& item);
/// Whether `item` lies inside something of this QML type.
[[nodiscard]] bool isInside(const QQuickItem& item, const std::string& type);

}  // namespace cinder::face::scene
