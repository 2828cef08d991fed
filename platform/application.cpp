#include "application.h"

#include <filesystem>
#include <iostream>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTimer>

#include "album.h"
#include "app/session.h"
#include "awake/screen_inhibitor.h"
#include "battery/power_supply.h"
#include "event/json.h"
#include "face.h"
#include "files/event_folder.h"
#include "files/folder_lock.h"
#include "haptics/led_vibrator.h"
#include "journal/sqlite/sqlite_store.h"
#include "network/crew_network.h"
#include "print/paper_folder.h"
#include "sound/alarm_player.h"

namespace cinder::platform {

namespace {

constexpr int kBadEvent = 3;
constexpr int kNoPlan = 4;
constexpr int kStore = 5;
constexpr int kNoFile = 6;

int say(int code, const std::string& words) {
    std::cerr << "cinderbell: " << words << "\n";
    return code;
}

/// Folders where the demo events may lie: installed, or in the tree this was built from.
std::vector<std::filesystem::path> demos() {
    const QStringList folders = {
        QCoreApplication::applicationDirPath() + QStringLiteral("/../share/cinderbell/demo-data"),
        QCoreApplication::applicationDirPath() + QStringLiteral("/../../demo-data")};
    for (const QString& folder : folders) {
        std::vector<std::filesystem::path> found;
        const auto files =
            QDir(folder).entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
        for (const QFileInfo& file : files)
            found.emplace_back(file.absoluteFilePath().toStdString());
        if (!found.empty()) return found;
    }
    return {};
}

/// Empty when it can be.
std::string whyNotWritten(journal::Access access) {
    switch (access) {
        case journal::Access::Full:
            break;
        case journal::Access::ReadOnlyFile:
            return "cannot be written: its disk is full or write-protected; it is shown as it is";
        case journal::Access::Newer:
            return "was written by a newer version; it is shown as it is";
    }
    return {};
}

/// As `bellman play` ends where the same is refused.
int codeOf(const app::Refusal& refusal) {
    using Why = app::Refusal::Why;
    if (refusal.why == Why::BadEvent) return kBadEvent;
    return refusal.why == Why::NoPlan || refusal.why == Why::AskFirst ? kNoPlan : kStore;
}

/// Opens the event of the command line; 0, or the exit code after saying why not.
int openEvent(app::Session& session, const Launch& launch) {
    if (launch.eventFile.isEmpty()) return 0;
    QFile file(launch.eventFile);
    if (!file.open(QIODevice::ReadOnly))
        return say(kNoFile, "cannot read " + launch.eventFile.toStdString());
    const std::string document = file.read(event::kMostBytes + 1).toStdString();
    if (const auto imported = session.importEvent(document); !imported)
        return say(codeOf(imported.error()), app::describe(imported.error()));
    if (launch.rehearsal) {
        constexpr Duration kLead = std::chrono::minutes{1};
        if (const auto begun = session.rehearse(*launch.rehearsal, kLead); !begun)
            return say(codeOf(begun.error()), app::describe(begun.error()));
    }
    return 0;
}

int makePictures(const Launch& launch) {
    QFile file(launch.eventFile);
    if (!file.open(QIODevice::ReadOnly))
        return say(kNoFile, "--pictures wants an event to show: name it with --event");
    const std::string document = file.read(event::kMostBytes + 1).toStdString();
    if (const auto described = event::parse(document); !described)
        return say(kBadEvent, launch.eventFile.toStdString() +
                                  " is not a sound event; `bellman check` names its faults");
    const int count = drawAlbum(document, demos(), launch.pictureFolder);
    if (count < 0) return kNoFile;
    std::cout << count << " pictures in " << launch.pictureFolder.toStdString() << "\n";
    return 0;
}

}  // namespace

int runApplication(const Launch& launch) {
    if (!launch.pictureFolder.isEmpty()) return makePictures(launch);
    const QString folder = launch.storeFolder.isEmpty()
                               ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)
                               : launch.storeFolder;
    QDir().mkpath(folder);
    const FolderLock lock(folder.toStdString());
    if (lock.isTaken())
        return say(kStore, "the journal in " + folder.toStdString() +
                               " is open in another window; go on there, or name another folder "
                               "with --store");
    const auto store =
        journal::SqliteStore::open(std::filesystem::path(folder.toStdString()) / "journal.store");
    if (!store)
        return say(kStore, "the journal in " + folder.toStdString() +
                               " cannot be opened; name another folder with --store (" +
                               store.error().detail + ")");

    if (const auto why = whyNotWritten((*store)->access()); !why.empty())
        say(0, "the journal in " + folder.toStdString() + " " + why);

    const SystemClock clock;
    app::Session session(**store, clock);
    if (const int code = openEvent(session, launch); code != 0) return code;

    AlarmPlayer sound;
    LedVibrator haptics;
    ScreenInhibitor wake;
    PowerSupply battery;
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) +
                              QStringLiteral("/Cinderbell");
    EventFolder files(documents);
    PaperFolder paper(documents);
    CrewNetwork network(**store, session, std::filesystem::path(folder.toStdString()) / "crew.key");
    face::Face face(session, clock, {sound, haptics, wake, &battery, &paper, &network},
                    {demos(), folder + QStringLiteral("/settings.ini"), &files,
                     std::filesystem::path(documents.toStdString())});
    if (!face.show()) return 1;
    if (session.look() && !launch.board.isEmpty()) face.go(launch.board);
    if (launch.announces)
        QObject::connect(
            face.window(), &QQuickWindow::frameSwapped, face.window(),
            [] { std::cout << "board" << std::endl; }, Qt::SingleShotConnection);
    // Looking for loudspeakers may take longer than the first board may.
    QTimer::singleShot(0, &sound, &AlarmPlayer::prepare);
    return QGuiApplication::exec();
}

}  // namespace cinder::platform
