#pragma once

/// The whole app as a device runs it: its own store on the disk, the real session, the real face.
/// Only time and the loudspeaker are ours.

#include <filesystem>
#include <memory>
#include <vector>

#include <QTemporaryDir>

#include "app/session.h"
#include "base/clock.h"
#include "face.h"
#include "files/event_folder.h"
#include "journal/operation.h"
#include "print/paper_folder.h"

class QQuickItem;
class QQuickWindow;

namespace cinder::journal {
class SqliteStore;
}

namespace cinder::face {

class Day;
class Events;
class Settings;

namespace scene {

/// A screen of the size and sharpness of a real one.
struct Glass {
    const char* name;
    int width, height;  ///< in device-independent pixels
    double ppi;
};
/// A tablet of 10.1 inches, and a phone of 6.2, upright.
inline constexpr Glass kTablet{"tablet 1280x800", 1280, 800, 149};
inline constexpr Glass kPhone{"phone 412x915", 412, 915, 161};

/// A loudspeaker that only counts.
struct Loudspeaker final : AlarmSound {
    void ring(live::TimerKind, int) override { ++rings; }
    void silence() override {}
    [[nodiscard]] bool isAudible() const override { return true; }
    int rings = 0;
};
struct NoMotor final : Haptics {
    void buzz(live::TimerKind, int) override {}
    [[nodiscard]] bool isAvailable() const override { return false; }
};
struct AnyScreen final : Wake {
    void hold(bool) override {}
};

/// The demo events as the app offers them.
[[nodiscard]] std::vector<std::filesystem::path> demoEvents();

class RealDay {
  public:
    /// `others` may be null: this device knows of none. They must outlive the day.
    RealDay(const Glass& glass, Instant start, CrewDevices* others = nullptr);
    ~RealDay();
    RealDay(const RealDay&) = delete;
    RealDay& operator=(const RealDay&) = delete;

    /// Time passes, and the boards look again.
    void pass(Duration length);
    void passUntil(Instant at);

    [[nodiscard]] QQuickWindow& window() const;
    [[nodiscard]] QQuickItem& root() const;
    [[nodiscard]] Settings& settings() const;
    [[nodiscard]] Day& day() const;
    [[nodiscard]] Events& events() const;
    /// Waits for every plan and answer that was asked for.
    void settlePlan();
    [[nodiscard]] app::Session& session() const { return *session_; }
    [[nodiscard]] std::shared_ptr<const app::Snapshot> look() { return session_->look(); }
    /// The boards look again, without a pause for the screen to follow.
    void beat() { face_->beatNow(); }
    /// Every operation of every event, as the disk has them now.
    [[nodiscard]] std::vector<journal::Operation> journal() const;

    /// Where events are written to as files.
    [[nodiscard]] QString filesFolder() const { return folder_.filePath(QStringLiteral("files")); }

    SimulatedClock clock;
    Loudspeaker loudspeaker;

  private:
    QTemporaryDir folder_;
    std::unique_ptr<journal::SqliteStore> store_;
    std::unique_ptr<app::Session> session_;
    platform::EventFolder files_;
    NoMotor motor_;
    AnyScreen screen_;
    platform::PaperFolder paper_{folder_.filePath(QStringLiteral("paper"))};
    std::unique_ptr<Face> face_;
};

/// What Qt complained about since the last call; a clean walk has none.
[[nodiscard]] std::vector<std::string> takeComplaints();

}  // namespace scene
}  // namespace cinder::face
