#include "album.h"

#include <algorithm>
#include <iostream>

#include <QDir>
#include <QTemporaryDir>

#include "app/rehearsal_crew.h"
#include "app/session.h"
#include "event/json.h"
#include "face.h"
#include "journal/sqlite/sqlite_store.h"

namespace cinder::platform {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;

struct NoSound final : face::AlarmSound {
    void ring(live::TimerKind, int) override {}
    void silence() override {}
    [[nodiscard]] bool isAudible() const override { return true; }
};
struct NoHaptics final : face::Haptics {
    void buzz(live::TimerKind, int) override {}
    [[nodiscard]] bool isAvailable() const override { return false; }
};
struct NoWake final : face::Wake {
    void hold(bool) override {}
};

struct Screen {
    const char* name;
    QSize size;
    double pixelsPerInch;
};
/// A 10-inch tablet lying and a 6.2-inch phone standing, in device-independent pixels.
const Screen kScreens[] = {{"tablet", {1280, 800}, 149}, {"phone", {412, 915}, 161}};

/// How long before the bell, and what is worth seeing then.
struct Moment {
    const char* name;
    Duration beforeBell;
    std::vector<const char*> places;
};
/// Ends a little before the quarter minutes the plan is made of, so that something is just due.
const Moment kMoments[] = {
    {"arrival",
     minutes(118),
     {"start", "holder", "new", "make", "make-menu", "make-guests", "fire", "buffet"}},
    // The grate when the meat has just gone on, half way, and while the pieces come off.
    {"laid", minutes(74), {"fire"}},
    {"fire",
     minutes(62) + seconds(20),
     {"lead",       "promise", "fire",    "buffet", "sheet",    "more",     "lists",
      "quantities", "load",    "kitchen", "line",   "paper",    "settings", "bell",
      "speed",      "record",  "measure", "pan",    "cautions", "serve",    "crew"}},
    {"pulling", minutes(50), {"fire", "firePiece", "fireSeveral"}},
    {"line", minutes(9) - seconds(20), {"lead", "fire", "buffet"}},
    {"strike", -minutes(75), {"lead", "strike", "debrief"}}};

/// What a cook tells beside the tasks: how hot the fire is, how warm the meat was when it went on,
/// and each piece as it comes off. False when a touch could not be saved.
bool tellFire(app::Session& session) {
    const auto seen = session.look();
    if (!seen) return true;
    for (const app::BatchCard& batch : seen->fire.batches) {
        if (!batch.isLaid || batch.isOver || batch.missing.notMeat) continue;
        if (batch.missing.fire && !session.testByHand(batch.grate, seconds(3))) return false;
        if (batch.missing.start && !session.layPieces(batch.task, Temperature::fromCelsius(8)))
            return false;
        for (const app::PieceCard& piece : batch.pieces)
            if (piece.state == app::PieceState::Due &&
                !session.pullPieces(batch.task, {piece.number}, 1))
                return false;
    }
    return true;
}

/// Lets the crew work until `until`; false when a touch could not be saved.
bool playUntil(app::Session& session, app::RehearsalCrew& crew, SimulatedClock& clock,
               Instant until) {
    constexpr Duration kStep = seconds(15);
    while (session.now() < until) {
        clock.advance(std::min(kStep, until - session.now()));
        if (!tellFire(session) || !crew.act()) return false;
    }
    return true;
}

bool keep(const QImage& picture, const QString& file) {
    if (!picture.isNull() && picture.save(file)) return true;
    std::cerr << "cinderbell: cannot write " << file.toStdString() << "\n";
    return false;
}

/// How many pictures were written, or -1. What is slow to change, the language, changes least
/// often.
int drawMoment(face::Face& face, const Moment& moment, const QString& folder) {
    int count = 0;
    for (const char* language : {"en", "es"})
        for (const char* theme : {"noon", "dusk"})
            for (const Screen& screen : kScreens)
                for (const char* place : moment.places) {
                    const QImage picture =
                        face.draw({QLatin1String(place), screen.size, screen.pixelsPerInch,
                                   QLatin1String(theme), QLatin1String(language)});
                    const QString file = QStringLiteral("%1/%2-%3-%4-%5-%6.png")
                                             .arg(folder, QLatin1String(moment.name),
                                                  QLatin1String(place), QLatin1String(screen.name),
                                                  QLatin1String(theme), QLatin1String(language));
                    if (!keep(picture, file)) return -1;
                    ++count;
                }
    return count;
}

}  // namespace

int drawAlbum(const std::string& document, const std::vector<std::filesystem::path>& demos,
              const QString& folder) {
    const QTemporaryDir place;
    const auto store = journal::SqliteStore::open(
        std::filesystem::path(place.path().toStdString()) / "album.store");
    const auto event = event::parse(document);
    if (!QDir().mkpath(folder) || !store || !event) {
        std::cerr << "cinderbell: cannot make an album in " << folder.toStdString() << "\n";
        return -1;
    }
    const Instant bell = event->serve.at;
    SimulatedClock clock(bell - kMoments[0].beforeBell - minutes(10));
    app::Session session(**store, clock);
    if (const auto imported = session.importEvent(document); !imported) {
        std::cerr << "cinderbell: " << app::describe(imported.error()) << "\n";
        return -1;
    }
    NoSound sound;
    NoHaptics haptics;
    NoWake wake;
    face::Face face(session, clock, {sound, haptics, wake}, {demos, {}});
    if (!face.show()) return -1;
    app::RehearsalCrew crew(session);
    int count = 0;
    for (const Moment& moment : kMoments) {
        if (!playUntil(session, crew, clock, bell - moment.beforeBell)) return -1;
        face.beatNow();
        const int drawn = drawMoment(face, moment, folder);
        if (drawn < 0) return -1;
        count += drawn;
    }
    return count;
}

}  // namespace cinder::platform
