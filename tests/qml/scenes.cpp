#include "scenes.h"

#include <stdexcept>

#include <QQuickItem>
#include <QQuickWindow>

#include "fixed_day.h"
#include "lists.h"
#include "places.h"
#include "ruler.h"
#include "scene.h"
#include "settings.h"

namespace cinder::face::scene {

void forEveryScene(const Manner& manner,
                   const std::function<void(QQuickItem& root, const std::string& name)>& look) {
    Loudspeaker sound;
    NoMotor motor;
    AnyScreen screen;
    std::vector<const char*> places(std::begin(kPlaces), std::end(kPlaces));
    places.insert(places.end(), {"band", "number", "order"});
    for (const char* place : places) {
        const QString name = QString::fromLatin1(place);
        const bool isCall = name == QLatin1String("call");
        const bool isBand = name == QLatin1String("band");
        const bool isNumber = name == QLatin1String("number");
        const bool isFigure = name == QLatin1String("figure") || isNumber;
        const bool isOrder = name == QLatin1String("order");
        const SimulatedClock clock{Instant{}};
        const bool isAsked = name == QLatin1String("asked");
        Face face(std::make_unique<fixed::FixedDoor>(
                      isAsked ? fixed::beforeTheFire() : fixed::orchardLunch(isCall || isBand)),
                  clock, {sound, motor, screen}, {demoEvents(), {}});
        if (!face.show()) throw std::runtime_error("the face could not be loaded");
        face.window()->property("settings").value<Settings*>()->setTextScale(manner.textScale);
        auto* figures = face.window()->property("lists").value<Lists*>()->figures();
        if (isFigure) figures->open(QStringLiteral("dish/slaw/weight"));
        if (isNumber) figures->ask(QStringLiteral("value"));
        if (isOrder)
            face.window()->property("lists").value<Lists*>()->line()->choose(
                QStringLiteral("slaw"));
        const View view{isCall || isAsked ? QStringLiteral("fire")
                        : isBand          ? QStringLiteral("settings")
                        : isOrder         ? QStringLiteral("line")
                        : isFigure        ? QStringLiteral("quantities")
                                          : name,
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
