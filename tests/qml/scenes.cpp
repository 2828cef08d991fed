#include "scenes.h"

#include <stdexcept>

#include <QQuickItem>
#include <QQuickWindow>

#include "places.h"
#include "ruler.h"
#include "scene.h"
#include "settings.h"
#include "stage.h"

namespace cinder::face::scene {

void forEveryScene(const Manner& manner,
                   const std::function<void(QQuickItem& root, const std::string& name)>& look) {
    Loudspeaker sound;
    NoMotor motor;
    AnyScreen screen;
    for (const char* place : kPlaces) {
        const QString name = QString::fromLatin1(place);
        const SimulatedClock clock{Instant{}};
        const auto others = crewDevicesOf(name);
        Face face(doorOf(name), clock, {sound, motor, screen, nullptr, nullptr, others.get()},
                  {demoEvents(), {}});
        if (!face.show()) throw std::runtime_error("the face could not be loaded");
        face.window()->property("settings").value<Settings*>()->setTextScale(manner.textScale);
        prepare(face, name);
        const View view{boardOf(name),
                        {manner.glass->width, manner.glass->height},
                        manner.glass->ppi,
                        QString::fromLatin1(manner.theme),
                        QString::fromLatin1(manner.language)};
        static_cast<void>(face.draw(view));
        settle(*face.window());
        look(*face.window()->contentItem(), std::string(place) + ", " + manner.glass->name);
        // The ruler outlives the window; the next one is measured anew.
        face.window()->property("settings").value<Settings*>()->setTextScale(1);
    }
}

std::string typeOf(const QQuickItem& item) {
    const QString type = QString::fromLatin1(item.metaObject()->className());
    return type.section(QLatin1String("_QML"), 0, 0).toStdString();
}

bool isInside(const QQuickItem& item, const std::string& type) {
    for (const auto* around = &item; around != nullptr; around = around->parentItem())
        if (typeOf(*around).rfind(type, 0) == 0) return true;
    return false;
}

}  // namespace cinder::face::scene
