#include "stage.h"

#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>

#include <QQuickWindow>

#include "crew_devices.h"
#include "event/json.h"
#include "face.h"
#include "fixed_crew_devices.h"
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

/// One with everything, one that catches up, one out of reach, one whose clock is wrong.
std::vector<CrewDevices::Other> fourOthers() {
    using std::chrono::minutes;
    const Instant now = fixed::orchardLunch().now;
    auto even = fixed::nearDevice("3f2a91c4", "Rowan", now);
    auto behind = fixed::nearDevice("b07d5512", "Inés", now);
    behind.peer.standing = sync::Standing::Exchanging;
    behind.peer.clock->ahead = std::chrono::seconds(3);
    behind.peer.toCome = 12;
    behind.peer.toGo = 3;
    behind.peer.parted = {EventId("last-year")};
    auto away = fixed::nearDevice("c2e8407b", "Guadalupe Hernández-Villaseñor", now - minutes(25));
    away.isInReach = false;
    auto astray = fixed::nearDevice("9d10aa3e", "", now);
    astray.peer.standing = sync::Standing::ClocksApart;
    astray.peer.clock->ahead = -minutes(61);
    return {even, behind, astray, away};
}

}  // namespace

std::unique_ptr<CrewDevices> crewDevicesOf(const QString& place) {
    auto devices = std::make_unique<fixed::FixedCrewDevices>();
    if (place == QLatin1String("devices")) devices->seen = fourOthers();
    if (place == QLatin1String("devicesCode")) devices->seen = {fourOthers().front()};
    if (place == QLatin1String("leadAway")) devices->seen = {fourOthers().back()};
    if (!devices->seen.empty()) devices->kept = fixed::kCode;
    return devices;
}

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
        {QStringLiteral("promiseShort"), QStringLiteral("promise")},
        {QStringLiteral("leadAway"), QStringLiteral("lead")},
        {QStringLiteral("devicesCode"), QStringLiteral("devices")},
        {QStringLiteral("devicesEnter"), QStringLiteral("devices")},
        {QStringLiteral("devicesNone"), QStringLiteral("devices")}};
    const auto found = kElsewhere.find(place);
    return found == kElsewhere.end() ? place : found->second;
}

void prepare(Face& face, const QString& place) {
    auto* lists = face.window()->property("lists").value<Lists*>();
    if (place == QLatin1String("figure") || place == QLatin1String("number"))
        lists->figures()->open(QStringLiteral("dish/slaw/weight"));
    if (place == QLatin1String("number")) lists->figures()->ask(QStringLiteral("value"));
    if (place == QLatin1String("order")) lists->line()->choose(QStringLiteral("slaw"));
    auto* devices = face.window()->property("crewDevices").value<CrewDevicesView*>();
    if (place == QLatin1String("devicesCode")) devices->showCode();
    if (place != QLatin1String("devicesEnter")) return;
    devices->ask();
    for (const char* digit = fixed::kCode; digit < fixed::kCode + 9; ++digit)
        devices->press(QString(QLatin1Char(*digit)));
}

}  // namespace cinder::face::scene
