#pragma once

/// The one entry from `platform/` into the face: give it a session, a clock and the devices, and it
/// shows the window. Everything QML sees is made behind it.

#include <filesystem>
#include <memory>
#include <vector>

#include <QImage>
#include <QSize>
#include <QString>

#include "base/clock.h"
#include "devices.h"

class QQmlApplicationEngine;
class QQuickWindow;

namespace cinder::app {
class Session;
}

namespace cinder::face {

class Door;

/// Borrowed from the platform; all must outlive the face.
struct Devices {
    AlarmSound& sound;
    Haptics& haptics;
    Wake& wake;
    /// Null where nobody can tell.
    Battery* battery = nullptr;
    /// Null: this device writes no files.
    Printer* printer = nullptr;
    /// Null: this device knows of no others.
    CrewDevices* crewDevices = nullptr;
};

/// What the platform knows about where things lie.
struct Places {
    /// The event documents offered under "open a demo", in the order they are listed.
    std::vector<std::filesystem::path> demos;
    /// Where the choices of this device are kept (language, theme, units); an INI file. Empty: not
    /// kept.
    QString settingsFile;
    /// Where events are written to and read from as files; null: nowhere. Must outlive the face.
    EventFiles* files = nullptr;
    /// The folder of the copies of everything; empty: none can be made.
    std::filesystem::path copies = {};
};

/// One picture of the window: which place, on what screen, in which light and language.
struct View {
    /// "start", "holder", "new", "make" and "make-" with a part of the event, a board or page; a
    /// sheet over the lead board: "bell", "speed"; a part of the record,
    /// "record-close"; a sheet over it: "measure", "pan", "limit", "kept", "whose"; over the fire
    /// board: "firePiece", "fireProbe"; "crewChange"; "devices", as its view model was left.
    QString place;
    QSize size;
    double pixelsPerInch = 0;
    QString theme;
    QString language;
};

class Face {
  public:
    /// Call once, after the QGuiApplication is made; `prepareApplication` before it.
    Face(app::Session& session, const Clock& clock, Devices devices, Places places);
    /// The same on any door: tests and pictures show a fixed day.
    Face(std::unique_ptr<Door> door, const Clock& clock, Devices devices, Places places);
    ~Face();
    Face(const Face&) = delete;
    Face& operator=(const Face&) = delete;

    /// What must be set before the application object exists: control style, surface samples.
    static void prepareApplication();

    /// Loads the window. False when the QML could not be loaded; the reason is on the log.
    [[nodiscard]] bool show();

    /// Shows a board or page by name, as a touch on its way would.
    void go(const QString& place);

    /// Turns the window to `view` and grabs it; null when there is no window.
    [[nodiscard]] QImage draw(const View& view);

    /// For the picture and touch tests.
    void beatNow();
    /// What the last beat asked for, whatever has passed of it.
    [[nodiscard]] Duration untilNextBeat() const;
    /// Waits for every search that runs.
    void settle();
    [[nodiscard]] QQmlApplicationEngine& engine();
    [[nodiscard]] QQuickWindow* window() const;

  private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

}  // namespace cinder::face
