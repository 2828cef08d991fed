#pragma once

/// The composition root: opens the store, picks the devices and hands all to the face.

#include <optional>

#include <QString>
#include <QStringList>

namespace cinder::platform {

struct Launch {
    /// The event to open at once; taken into the store when it is not there yet.
    QString eventFile;
    /// Where the journal is kept; empty: the user's data folder (XDG Base Directory Specification).
    QString storeFolder;
    /// Open the event as a rehearsal at this speed.
    std::optional<int> rehearsal;
    /// The board to begin with: "lead", "fire", "buffet" or "sheet"; empty: the first page asks.
    QString board;
    /// Print "board" when the first one stands, for who measures the start.
    bool announces = false;
    /// Play the event without a screen, write pictures of its boards into this folder and leave.
    QString pictureFolder;
};

/// Reads the command line; ends the process after --help, --version or a wrong word.
[[nodiscard]] Launch readLaunch(const QStringList& arguments);

/// Runs the app until its window is closed. The exit code is that of `bellman --help`.
[[nodiscard]] int runApplication(const Launch& launch);

}  // namespace cinder::platform
