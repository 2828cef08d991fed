/// No word is cut: every text of every scene has room for all it says, in both languages, on both
/// screens, and at the largest size of text.

#include <catch2/catch.hpp>

#include <algorithm>

#include <QFile>
#include <QQuickItem>
#include <QQuickWindow>

#include "event/json.h"
#include "fixed_day.h"
#include "real_day.h"
#include "scene.h"
#include "scenes.h"
#include "settings.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

// A pixel of rounding at each edge.
constexpr double kRounding = 2;

/// The nearest thing with an edge around `text`: a plate, a button, what scrolls, the window.
const QQuickItem& boxOf(const QQuickItem& text) {
    const auto* box = text.parentItem();
    while (box->parentItem() != nullptr && !box->clip() && !box->inherits("QQuickRectangle") &&
           !box->inherits("QQuickAbstractButton"))
        box = box->parentItem();
    return *box;
}

/// What is wrong with `text`; empty when all of it can be read.
std::string cutOf(QQuickItem& text) {
    if (text.property("truncated").toBool()) return "is cut short";
    const double width = text.property("contentWidth").toDouble();
    const double height = text.property("contentHeight").toDouble();
    if (width > text.width() + kRounding) return "is wider than its place";
    if (height > text.height() + kRounding) return "is higher than its place";
    const auto& box = boxOf(text);
    const QRectF place = box.mapRectFromItem(&text, text.boundingRect());
    const bool isScroller = box.inherits("QQuickFlickable");
    if (place.left() < -kRounding || place.right() > box.width() + kRounding)
        return "crosses the side of " + describe(const_cast<QQuickItem&>(box));
    if (!isScroller && (place.top() < -kRounding || place.bottom() > box.height() + kRounding))
        return "crosses the top or foot of " + describe(const_cast<QQuickItem&>(box));
    return {};
}

/// Who or where, at the edge of the run sheet's chart.
bool isLaneName(const QQuickItem& item) {
    return item.objectName() == QLatin1String("laneName");
}

void readEverything(const Manner& manner) {
    int read = 0;
    forEveryScene(manner, [&](QQuickItem& root, const std::string& scene) {
        for (auto* item : shown(root)) {
            // The chart slides, and a stretch on it is as wide as it is long; its names are whole
            // in the list beside. Who and where stay in view.
            const bool isOfChart = isInside(*item, "RunChart") && !isLaneName(*item);
            if (!item->inherits("QQuickText") || isOfChart ||
                item->property("text").toString().isEmpty())
                continue;
            ++read;
            const std::string cut = cutOf(*item);
            INFO(scene << ", " << manner.language << ", text " << manner.textScale << ": "
                       << describe(*item) << " " << cut);
            CHECK(cut.empty());
        }
    });
    CHECK(read > 150);
}

/// Every name at the edge of the chart, by person and by station.
void readTheChart(const app::Snapshot& day, const Manner& manner) {
    Loudspeaker sound;
    NoMotor motor;
    AnyScreen screen;
    const SimulatedClock clock{day.now};
    Face face(std::make_unique<fixed::FixedDoor>(day), clock, {sound, motor, screen}, {{}, {}});
    REQUIRE(face.show());
    face.window()->property("settings").value<Settings*>()->setTextScale(manner.textScale);
    static_cast<void>(face.draw({QStringLiteral("sheet"),
                                 {manner.glass->width, manner.glass->height},
                                 manner.glass->ppi,
                                 QString::fromLatin1(manner.theme),
                                 QString::fromLatin1(manner.language)}));
    for (const char* lanes : {"person", "station"}) {
        auto* page = find(*face.window()->contentItem(),
                          [](QQuickItem& item) { return typeOf(item) == "RunSheetPage"; });
        REQUIRE(page != nullptr);
        page->setProperty("shown", QString::fromLatin1(lanes));
        settle(*face.window());
        std::size_t names = 0;
        for (auto* item : shown(*page)) {
            if (!isLaneName(*item)) continue;
            const std::string cut = cutOf(*item);
            INFO(manner.glass->name << ", " << lanes << ", " << manner.language << ", text "
                                    << manner.textScale << ": " << describe(*item) << " " << cut);
            CHECK(cut.empty());
            ++names;
        }
        CHECK(names == (*lanes == 'p' ? day.people.size() : day.stations.size()));
    }
    face.window()->property("settings").value<Settings*>()->setTextScale(1);
}

void readTheChart(const app::Snapshot& day) {
    for (const auto* glass : {&kTablet, &kPhone})
        for (const char* language : {"en", "es"})
            for (const double textScale : {1.0, 1.3})
                readTheChart(day, {glass, "noon", language, textScale});
}

/// Two hundred tasks for a crew of eight at twelve stations, all of them with much to say.
app::Snapshot largeDay() {
    app::Snapshot day = fixed::orchardLunch();
    const auto tasks = day.tasks;
    while (day.tasks.size() < 200)
        for (app::TaskCard card : tasks) {
            card.id = TaskId(card.id.text() + "-" + std::to_string(day.tasks.size()));
            day.tasks.push_back(std::move(card));
        }
    while (day.people.size() < 8) {
        app::PersonCard person = day.people.front();
        person.id = PersonId("person" + std::to_string(day.people.size()));
        person.name = "Guadalupe Hernández-Villaseñor " + std::to_string(day.people.size());
        day.people.push_back(std::move(person));
    }
    while (day.stations.size() < 12) {
        const std::string number = std::to_string(day.stations.size());
        day.stations.emplace_back("station" + number);
        day.stationNames.emplace_back("Long charcoal grill beside the lower orchard wall " +
                                      number);
    }
    for (std::size_t i = 0; i < day.tasks.size(); ++i)
        day.tasks[i].station = day.stations[i % day.stations.size()];
    return day;
}

}  // namespace

TEST_CASE("no word is cut on a tablet") {
    readEverything({&kTablet, "noon", "en", 1});
    readEverything({&kTablet, "noon", "es", 1});
}

TEST_CASE("no word is cut on a phone") {
    readEverything({&kPhone, "noon", "en", 1});
    readEverything({&kPhone, "noon", "es", 1});
}

TEST_CASE("no word is cut when text is set a third larger") {
    for (const auto* glass : {&kTablet, &kPhone})
        for (const char* language : {"en", "es"})
            readEverything({glass, "noon", language, 1.3});
}

TEST_CASE("who and where are whole at the edge of the run sheet of every demo event") {
    for (const auto& file : demoEvents()) {
        QFile document(QString::fromStdString(file.string()));
        REQUIRE(document.open(QIODevice::ReadOnly));
        const std::string words = document.readAll().toStdString();
        RealDay real(kTablet, event::parse(words).value().serve.at - std::chrono::hours(2));
        REQUIRE(real.session().importEvent(words));
        readTheChart(*real.session().look());
    }
}

TEST_CASE("who and where are whole at the edge of the run sheet of a day of 200 tasks") {
    readTheChart(largeDay());
}
