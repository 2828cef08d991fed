#include "stage.h"

#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>

#include <QQuickWindow>

#include "event/json.h"
#include "face.h"
#include "fixed_day.h"
#include "lists.h"

namespace cinder::face::scene {

namespace {

/// An event that can be planned, so that there is an answer.
event::Event soundEvent() {
    std::ifstream file(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json");
    const std::string document{std::istreambuf_iterator<char>(file), {}};
    auto parsed = event::parse(document);
    if (!parsed) throw std::runtime_error("demo-data/orchard-harvest-lunch.json is not sound");
    return *std::move(parsed);
}

}  // namespace

std::unique_ptr<Door> doorOf(const QString& place) {
    if (place == QLatin1String("asked"))
        return std::make_unique<fixed::FixedDoor>(fixed::beforeTheFire());
    const bool isRinging = place == QLatin1String("call") || place == QLatin1String("band");
    auto door = std::make_unique<fixed::FixedDoor>(fixed::orchardLunch(isRinging));
    if (!place.startsWith(QLatin1String("promise"))) return door;
    door->written = soundEvent();
    constexpr auto kTooLate = std::chrono::minutes(45);
    if (place == QLatin1String("promiseShort")) door->written->site.arrival->at += kTooLate;
    return door;
}

QString boardOf(const QString& place) {
    static const std::map<QString, QString> kElsewhere{
        {QStringLiteral("call"), QStringLiteral("fire")},
        {QStringLiteral("asked"), QStringLiteral("fire")},
        {QStringLiteral("band"), QStringLiteral("settings")},
        {QStringLiteral("order"), QStringLiteral("line")},
        {QStringLiteral("figure"), QStringLiteral("quantities")},
        {QStringLiteral("number"), QStringLiteral("quantities")},
        {QStringLiteral("promiseShort"), QStringLiteral("promise")}};
    const auto found = kElsewhere.find(place);
    return found == kElsewhere.end() ? place : found->second;
}

void prepare(Face& face, const QString& place) {
    auto* lists = face.window()->property("lists").value<Lists*>();
    if (place == QLatin1String("figure") || place == QLatin1String("number"))
        lists->figures()->open(QStringLiteral("dish/slaw/weight"));
    if (place == QLatin1String("number")) lists->figures()->ask(QStringLiteral("value"));
    if (place == QLatin1String("order")) lists->line()->choose(QStringLiteral("slaw"));
}

}  // namespace cinder::face::scene
