#include "ruler.h"

#include <algorithm>

#include <QGuiApplication>
#include <QJSEngine>
#include <QScreen>

namespace cinder::face {

namespace {
constexpr double kMmPerInch = 25.4;
constexpr double kTabletPpi = 149;  // 1280 x 800 on a diagonal of 10.1 in
// Outside these a screen's own word is not believed: wall displays and broken EDID at one end,
// no hand-held screen counted in device-independent pixels at the other.
constexpr double kLeastPpi = 70;
constexpr double kMostPpi = 240;
}  // namespace

Ruler::Ruler() {
    measureScreen();
}

Ruler& Ruler::instance() {
    static Ruler ruler;
    return ruler;
}

Ruler* Ruler::create(QQmlEngine*, QJSEngine*) {
    QJSEngine::setObjectOwnership(&instance(), QJSEngine::CppOwnership);
    return &instance();
}

void Ruler::setTextScale(double scale) {
    scale = std::clamp(scale, 0.8, 1.5);
    if (scale == textScale_) return;
    textScale_ = scale;
    Q_EMIT changed();
}

void Ruler::measureScreen() {
    const QScreen* screen = QGuiApplication::primaryScreen();
    const double told = screen != nullptr ? screen->physicalDotsPerInch() : 0;
    pretend(told >= kLeastPpi && told <= kMostPpi ? told : kTabletPpi);
}

void Ruler::pretend(double pixelsPerInch) {
    const double next = pixelsPerInch / kMmPerInch;
    if (next == pixelsPerMm_) return;
    pixelsPerMm_ = next;
    Q_EMIT changed();
}

}  // namespace cinder::face
