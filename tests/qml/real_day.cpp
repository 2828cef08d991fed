#include "real_day.h"

#include <QQuickItem>
#include <QQuickWindow>

#include "day.h"
#include "events.h"
#include "journal/sqlite/sqlite_store.h"
#include "ruler.h"
#include "scene.h"
#include "settings.h"

namespace cinder::face::scene {

std::vector<std::filesystem::path> demoEvents() {
    const auto folder = std::filesystem::path(CINDER_SOURCE) / "demo-data";
    return {folder / "orchard-harvest-lunch.json", folder / "pruning-day-supper.json",
            folder / "last-apple-feast.json"};
}

RealDay::RealDay(const Glass& glass, Instant start, CrewDevices* others)
    : clock(start),
      store_(journal::SqliteStore::open(std::filesystem::path(folder_.path().toStdString()) /
                                        "journal.store")
                 .value()),
      session_(std::make_unique<app::Session>(*store_, clock)),
      files_(folder_.filePath(QStringLiteral("files"))),
      face_(std::make_unique<Face>(
          *session_, clock, Devices{loudspeaker, motor_, screen_, nullptr, &paper_, others},
          Places{demoEvents(), folder_.filePath(QStringLiteral("settings.ini")), &files_})) {
    if (!face_->show()) throw std::runtime_error("the face could not be loaded");
    settings().setLanguage(QStringLiteral("en"));
    Ruler::instance().pretend(glass.ppi);
    window().resize(glass.width, glass.height);
    settle(window());
}

RealDay::~RealDay() = default;

void RealDay::pass(Duration length) {
    clock.advance(length);
    face_->beatNow();
    settle(window());
}

void RealDay::passUntil(Instant at) {
    if (at > clock.wall()) pass(at - clock.wall());
}

QQuickWindow& RealDay::window() const {
    return *face_->window();
}

QQuickItem& RealDay::root() const {
    return *face_->window()->contentItem();
}

Settings& RealDay::settings() const {
    return *face_->window()->property("settings").value<Settings*>();
}

Day& RealDay::day() const {
    return *face_->window()->property("day").value<Day*>();
}

void RealDay::settlePlan() {
    face_->settle();
    settle(*face_->window());
}

Events& RealDay::events() const {
    return *face_->window()->property("events").value<Events*>();
}

std::vector<journal::Operation> RealDay::journal() const {
    std::vector<journal::Operation> all;
    const auto events = store_->events();
    for (const auto& event : events.value()) {
        const auto operations = store_->read(event);
        all.insert(all.end(), operations.value().begin(), operations.value().end());
    }
    return all;
}

}  // namespace cinder::face::scene
