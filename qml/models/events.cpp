#include "events.h"

#include <fstream>
#include <sstream>

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include "settings.h"

namespace cinder::face {

namespace {

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return all.str();
}

/// The event's own name as its document says it; a plain text or one for each language.
QString nameIn(const std::string& document, const QString& language) {
    const auto name = QJsonDocument::fromJson(QByteArray::fromStdString(document))
                          .object()
                          .value(QLatin1String("name"));
    return name.isObject() ? name.toObject().value(language).toString() : name.toString();
}

}  // namespace

Events::Events(Door& door, const Settings& settings, std::vector<std::filesystem::path> demos,
               QObject* parent)
    : QObject(parent), door_(door), settings_(settings), demoFiles_(std::move(demos)) {
    connect(&settings_, &Settings::changed, this, [this] { refresh(); });
    refresh();
}

void Events::refresh() {
    const Words words(settings_);
    std::vector<EventRow> demos;
    for (const auto& file : demoFiles_) {
        const QString key = toText(file.string());
        QString name = nameIn(contentOf(file), settings_.language());
        demos.push_back({key, name.isEmpty() ? toText(file.stem().string()) : name, {}, false});
    }
    demos_.show(std::move(demos));

    const auto entries = door_.events();
    if (!entries) {
        settle(fail(entries.error()));
        return;
    }
    std::vector<EventRow> rows;
    for (const auto& entry : *entries) {
        Words there(settings_);
        there.setPlace(entry.offset, entry.serve);
        rows.push_back({toText(entry.id.text()), there.name(entry.name),
                        there.date(entry.serve, entry.offset) + QStringLiteral(" · ") +
                            there.clock(entry.serve),
                        entry.isRehearsal, entry.isDraft});
    }
    known_.show(std::move(rows));
}

void Events::open(const QString& event) {
    settle(door_.open(EventId(event.toStdString())));
}

void Events::openDemo(const QString& demo, int speed) {
    const auto imported = door_.importEvent(contentOf(demo.toStdString()));
    if (!imported) {
        settle(fail(imported.error()));
        return;
    }
    if (speed <= 0) {
        settle({});
        return;
    }
    const auto rehearsed = door_.rehearse(speed, std::chrono::minutes(5));
    settle(rehearsed ? Taken() : Taken(fail(rehearsed.error())));
}

void Events::settle(const Taken& taken) {
    const QString why = taken ? QString() : Words::refusal(taken.error());
    if (why != refusal_) {
        refusal_ = why;
        Q_EMIT refusalChanged();
    }
    if (!taken) return;
    if (door_.look())
        Q_EMIT opened();
    else
        Q_EMIT draftOpened();
}

}  // namespace cinder::face
