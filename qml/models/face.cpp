#include "face.h"

#include <algorithm>

#include <QFile>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QSurfaceFormat>
#include <QTimer>
#include <QTranslator>

#include "caution_list.h"
#include "crew.h"
#include "crew_devices.h"
#include "debrief.h"
#include "editor.h"
#include "events.h"
#include "food_record.h"
#include "lists.h"
#include "promise.h"
#include "ringer.h"
#include "ruler.h"
#include "serve.h"
#include "session_door.h"
#include "settings.h"
#include "strike.h"

// Made by the build for each module with C++ types. Naming them keeps the linker from leaving the
// registrations out of a static program.
extern void qml_register_types_Cinderbell_Measure();
extern void qml_register_types_Cinderbell_Models();

namespace cinder::face {

namespace {
void (*const volatile kTypes[])() = {&qml_register_types_Cinderbell_Measure,
                                     &qml_register_types_Cinderbell_Models};
using std::chrono::milliseconds;
// A rehearsal shows many seconds at once; more often than this nobody reads it.
constexpr Duration kShortestBeat = milliseconds(200);
constexpr Duration kBeat = milliseconds(1000);
// A beat that comes a trifle early must not be followed by a storm of them.
constexpr Duration kPromptBeat = milliseconds(5);

QObject* frameOf(const QQuickWindow& window) {
    return window.contentItem()->childItems().value(0);
}
}  // namespace

struct Face::Parts {
    Parts(std::unique_ptr<Door> theDoor, const Clock& theClock, Devices theDevices, Places places)
        : door(std::move(theDoor)),
          devices(theDevices),
          settings(places.settingsFile),
          day(*door, settings),
          events(*door, settings, std::move(places.demos), std::move(places.copies)),
          promise(*door, settings),
          crew(*door, settings),
          record(door->food(), settings),
          editor(*door, settings, places.files),
          lists(door->lists(), day, settings, theDevices.printer),
          cautions(settings),
          serve(*door, settings),
          strike(*door, settings),
          debrief(*door, settings),
          crewDevices(theDevices.crewDevices, day, settings, [this] { return door->deviceTime(); }),
          ringer(theDevices, theClock) {}

    void beat();
    void speak();
    void listenToOthers();
    void showWhatCame();
    [[nodiscard]] Duration untilNextBeat() const;
    QString openRecord(const QString& place);
    QString openFire(const QString& place);
    QString openCrew(const QString& place);

    std::unique_ptr<Door> door;
    Devices devices;
    Settings settings;
    Day day;
    Events events;
    Promise promise;
    Crew crew;
    FoodRecord record;
    Editor editor;
    Lists lists;
    CautionList cautions;
    Serve serve;
    Strike strike;
    Debrief debrief;
    CrewDevicesView crewDevices;
    Ringer ringer;
    QTimer pulse;  ///< the one timer of the face
    QTranslator translator;
    QQmlApplicationEngine engine;
};

/// The next whole second of the day, the next call or the next pattern of one, whichever is first.
Duration Face::Parts::untilNextBeat() const {
    const auto& seen = day.snapshot();
    if (!seen) return kBeat;
    Duration left = kBeat - seen->now.time_since_epoch() % kBeat;
    for (const auto& timer : seen->timers)
        if (!timer.acknowledged && timer.due > seen->now)
            left = std::min(left, timer.due - seen->now);
    if (seen->speed > 1) left = std::max(left / seen->speed, kShortestBeat);
    // The device's own time, in a rehearsal too.
    left = std::min(left, ringer.untilNext().value_or(left));
    return std::max(left, kPromptBeat);
}

void Face::Parts::beat() {
    day.beat();
    lists.beat();
    day.tellMute(!devices.sound.isAudible());
    if (devices.battery != nullptr) day.tellBattery(devices.battery->percentLeft());
    day.tellDevices(crewDevices.notice());
    ringer.attend(day.snapshot().get());
    pulse.start(untilNextBeat());
}

/// What other devices tell, and what they are told of this one.
void Face::Parts::listenToOthers() {
    QObject::connect(&day, &Day::personChanged, &crewDevices, &CrewDevicesView::tellHolder);
    QObject::connect(&day, &Day::isOpenChanged, &crewDevices, &CrewDevicesView::retell);
    if (devices.crewDevices == nullptr) return;
    devices.crewDevices->tell(
        [this] {
            crewDevices.look();
            day.tellDevices(crewDevices.notice());
        },
        [this] { showWhatCame(); });
}

/// Something came into the store: a tick of another device is on the boards at once. The list of
/// events is read again wherever it is, or is one touch away; a day's ways to it read it anyway.
void Face::Parts::showWhatCame() {
    const auto shown = engine.rootObjects();
    auto* window = shown.isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(shown.first());
    if (window == nullptr || !frameOf(*window)->property("hasRail").toBool()) events.refresh();
    beat();
}

/// A whole roast read below its minimum: was it kept there for the time of the chart?
void askKept(FoodEntry& entry) {
    entry.openPan(QStringLiteral("lamb#0"));
    entry.choose(QStringLiteral("measure"));
    entry.choose(QString::number(static_cast<int>(safety::Purpose::Cook)));
    for (const char* digit : {"1", "3", "4"})
        entry.number()->press(QString::fromLatin1(digit));
    entry.save();
}

/// A limit made stricter: whose rule is it?
void askWhose(FoodEntry& entry) {
    entry.makeStricter(QStringLiteral("hotHold"));
    for (const char* digit : {"1", "4", "0"})
        entry.number()->press(QString::fromLatin1(digit));
    entry.save();
}

/// The page of `place`; a sheet over the record page is opened on it.
QString Face::Parts::openRecord(const QString& place) {
    auto& entry = *record.entry();
    entry.leave();
    const auto keyAt = [](RowList* list, int row = 0) {
        return list->data(list->index(row), Qt::UserRole).toString();
    };
    if (place == QLatin1String("measure"))
        entry.measureCheck(keyAt(record.checks()));
    else if (place == QLatin1String("pan"))
        entry.openPan(keyAt(record.pans(), 2));
    else if (place == QLatin1String("limit"))
        entry.answer(record.tally().owedPan);
    else if (place == QLatin1String("kept"))
        askKept(entry);
    else if (place == QLatin1String("whose"))
        askWhose(entry);
    else if (place.startsWith(QLatin1String("record")))
        record.setPart(place == QLatin1String("record") ? QStringLiteral("checks") : place.mid(7));
    else
        return place;
    return QStringLiteral("record");
}

void Face::Parts::speak() {
    QCoreApplication::removeTranslator(&translator);
    if (translator.load(QStringLiteral(":/i18n/cinderbell_%1.qm").arg(settings.language())))
        QCoreApplication::installTranslator(&translator);
    engine.retranslate();
    day.retell();
    promise.retell();
    crew.retell();
    crewDevices.retell();
    day.tellDevices(crewDevices.notice());
    editor.retell();
    lists.retell();
    cautions.tell();
    events.refresh();
}

Face::Face(app::Session& session, const Clock& clock, Devices devices, Places places)
    : Face(std::make_unique<SessionDoor>(session), clock, devices, std::move(places)) {}

Face::Face(std::unique_ptr<Door> door, const Clock& clock, Devices devices, Places places)
    : parts_(std::make_unique<Parts>(std::move(door), clock, devices, std::move(places))) {
    auto* parts = parts_.get();
    parts->pulse.setSingleShot(true);
    parts->pulse.setTimerType(Qt::PreciseTimer);
    QObject::connect(&parts->pulse, &QTimer::timeout, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->events, &Events::opened, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->events, &Events::draftOpened, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->promise, &Promise::accepted, &parts->day, [parts] { parts->beat(); });
    QObject::connect(parts->promise.waysOut(), &WaysOut::accepted, &parts->day,
                     [parts] { parts->beat(); });
    QObject::connect(parts->promise.waysOut(), &WaysOut::refused, &parts->day, &Day::refuse);
    QObject::connect(&parts->crew, &Crew::accepted, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->day, &Day::looked, &parts->crew, &Crew::look);
    QObject::connect(parts->promise.waysOut(), &WaysOut::personAsked, &parts->crew, &Crew::add);
    QObject::connect(&parts->serve, &Serve::noted, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->day, &Day::looked, &parts->serve,
                     [parts] { parts->serve.show(parts->day.snapshot()); });
    QObject::connect(&parts->day, &Day::looked, &parts->strike,
                     [parts] { parts->strike.show(parts->day.snapshot()); });
    QObject::connect(&parts->debrief, &Debrief::noted, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->record, &FoodRecord::noted, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->record, &FoodRecord::refused, &parts->day, &Day::refuse);
    QObject::connect(&parts->day, &Day::recordAsked, &parts->record, &FoodRecord::answerCall);
    QObject::connect(&parts->day, &Day::looked, &parts->record,
                     [parts] { parts->record.show(parts->day.snapshot()); });
    QObject::connect(&parts->editor, &Editor::begun, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->editor, &Editor::planned, &parts->day, [parts] { parts->beat(); });
    QObject::connect(&parts->settings, &Settings::languageChanged, &parts->day,
                     [parts] { parts->speak(); });
    parts->listenToOthers();
    parts->engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    for (QObject* owned :
         {static_cast<QObject*>(&parts->settings), static_cast<QObject*>(&parts->day),
          static_cast<QObject*>(&parts->events), static_cast<QObject*>(&parts->promise),
          static_cast<QObject*>(&parts->record), static_cast<QObject*>(&parts->editor),
          static_cast<QObject*>(&parts->lists), static_cast<QObject*>(&parts->cautions),
          static_cast<QObject*>(&parts->serve), static_cast<QObject*>(&parts->strike),
          static_cast<QObject*>(&parts->debrief), static_cast<QObject*>(&parts->crew),
          static_cast<QObject*>(&parts->crewDevices)})
        QQmlEngine::setObjectOwnership(owned, QQmlEngine::CppOwnership);
}

Face::~Face() {
    // Pages that were left wait for an event loop to take them away, and there may be none any
    // more: with the application they would go after its fonts, and ask for them.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    if (parts_->devices.crewDevices != nullptr) parts_->devices.crewDevices->tell({}, {});
}

void Face::prepareApplication() {
    Q_UNUSED(kTypes[0]);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QSurfaceFormat format = QSurfaceFormat::defaultFormat();
    format.setSamples(4);  // the marks are drawn as shapes and want smooth edges
    QSurfaceFormat::setDefaultFormat(format);
}

bool Face::show() {
    Ruler::instance().measureScreen();
    parts_->speak();
    parts_->beat();
    parts_->engine.setInitialProperties({
        {QStringLiteral("settings"), QVariant::fromValue(&parts_->settings)},
        {QStringLiteral("day"), QVariant::fromValue(&parts_->day)},
        {QStringLiteral("events"), QVariant::fromValue(&parts_->events)},
        {QStringLiteral("promise"), QVariant::fromValue(&parts_->promise)},
        {QStringLiteral("crew"), QVariant::fromValue(&parts_->crew)},
        {QStringLiteral("crewDevices"), QVariant::fromValue(&parts_->crewDevices)},
        {QStringLiteral("serve"), QVariant::fromValue(&parts_->serve)},
        {QStringLiteral("strike"), QVariant::fromValue(&parts_->strike)},
        {QStringLiteral("debrief"), QVariant::fromValue(&parts_->debrief)},
        {QStringLiteral("record"), QVariant::fromValue(&parts_->record)},
        {QStringLiteral("editor"), QVariant::fromValue(&parts_->editor)},
        {QStringLiteral("lists"), QVariant::fromValue(&parts_->lists)},
        {QStringLiteral("cautions"), QVariant::fromValue(&parts_->cautions)},
    });
    parts_->engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Cinderbell/Shell/Main.qml")));
    return !parts_->engine.rootObjects().isEmpty();
}

void Face::go(const QString& place) {
    if (auto* shown = window()) frameOf(*shown)->setProperty("place", place);
}

/// The board of `place`; a sheet of the fire is opened on it.
QString Face::Parts::openFire(const QString& place) {
    Fire& fire = *day.fire();
    fire.close();
    const auto& seen = day.snapshot();
    if (!place.startsWith(QLatin1String("fire")) || !seen || seen->fire.batches.empty())
        return place;
    const auto& batches = seen->fire.batches;
    if (place == QLatin1String("fireSeveral"))
        for (const auto& batch : batches)
            if (batch.isForecast) fire.openSeveral(toText(batch.task.text()));
    if (place == QLatin1String("firePiece") || place == QLatin1String("fireProbe")) {
        for (const auto& batch : batches)
            if (!batch.pieces.empty() && batch.isLaid && !batch.isOver)
                fire.openPiece(pieceKey(batch.task, batch.pieces.front().number));
        if (place == QLatin1String("fireProbe")) fire.askProbe();
    }
    return QStringLiteral("fire");
}

/// The page of `place`; one of the crew goes, another takes over, and somebody comes.
QString Face::Parts::openCrew(const QString& place) {
    if (!place.startsWith(QLatin1String("crew"))) return place;
    crew.forget();
    const auto keyAt = [&](int row) {
        return crew.rows()->data(crew.rows()->index(row), Qt::UserRole).toString();
    };
    if (place == QLatin1String("crewChange")) {
        crew.setHere(keyAt(0), false);
        crew.toggleSkill(keyAt(1), QStringLiteral("fire"));
        crew.add({QStringLiteral("general")});
    }
    return QStringLiteral("crew");
}

QImage Face::draw(const View& view) {
    auto* shown = window();
    if (shown == nullptr) return {};
    Ruler::instance().pretend(view.pixelsPerInch);
    parts_->settings.setTheme(view.theme);
    parts_->settings.setLanguage(view.language);
    shown->resize(view.size);
    const bool isSheet =
        view.place == QLatin1String("bell") || view.place == QLatin1String("speed");
    // "make-guests" is the editor at its part "guests".
    const bool isMaking = view.place.startsWith(QLatin1String("make"));
    if (isMaking) parts_->editor.go(view.place.mid(5));
    if (view.place == QLatin1String("new")) parts_->editor.prepare();
    const QString page = isMaking
                             ? QStringLiteral("make")
                             : parts_->openCrew(parts_->openFire(parts_->openRecord(view.place)));
    const bool isLocked = view.place == QLatin1String("lock");
    go(isSheet || isLocked ? QStringLiteral("lead") : page);
    frameOf(*shown)->setProperty("isLocked", isLocked);
    frameOf(*shown)->setProperty("sheet", isSheet ? view.place : QString());
    // Twice: what is laid out by the first round may lay out something else.
    QCoreApplication::processEvents();
    settle();
    QCoreApplication::processEvents();
    return shown->grabWindow();
}

QQmlApplicationEngine& Face::engine() {
    return parts_->engine;
}

void Face::settle() {
    parts_->events.settle();
    parts_->editor.settle();
    parts_->day.settle();
    parts_->lists.figures()->settle();
    parts_->promise.settle();
    parts_->crew.settle();
}

void Face::beatNow() {
    parts_->beat();
}

Duration Face::untilNextBeat() const {
    return parts_->pulse.intervalAsDuration();
}

QQuickWindow* Face::window() const {
    const auto roots = parts_->engine.rootObjects();
    return roots.isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(roots.first());
}

}  // namespace cinder::face
