#pragma once

/// What the face asks of the device it runs on. The view models call these; `platform/` provides
/// them; tests use fakes. Whether an alarm rings is decided in the core: a device only makes it
/// heard, felt and seen.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "live/alarm.h"
#include "report/document.h"
#include "sync/exchange.h"

namespace cinder::face {

/// Makes alarms heard.
class AlarmSound {
  public:
    AlarmSound() = default;
    AlarmSound(const AlarmSound&) = delete;
    AlarmSound& operator=(const AlarmSound&) = delete;
    virtual ~AlarmSound() = default;

    /// Plays the pattern of `kind` once, `loudness` from 1 to 5. Called again for every repeat.
    virtual void ring(live::TimerKind kind, int loudness) = 0;
    virtual void silence() = 0;
    /// False when there is nothing to be heard from; said once, quietly, on the boards.
    [[nodiscard]] virtual bool isAudible() const = 0;
};

/// Makes alarms felt.
class Haptics {
  public:
    Haptics() = default;
    Haptics(const Haptics&) = delete;
    Haptics& operator=(const Haptics&) = delete;
    virtual ~Haptics() = default;

    virtual void buzz(live::TimerKind kind, int loudness) = 0;
    [[nodiscard]] virtual bool isAvailable() const = 0;
};

/// Keeps the screen on while a day runs.
class Wake {
  public:
    Wake() = default;
    Wake(const Wake&) = delete;
    Wake& operator=(const Wake&) = delete;
    virtual ~Wake() = default;

    virtual void hold(bool on) = 0;
};

/// Knows how long the device will last.
class Battery {
  public:
    Battery() = default;
    Battery(const Battery&) = delete;
    Battery& operator=(const Battery&) = delete;
    virtual ~Battery() = default;

    /// Hundredths left while it drains; nothing while it charges, or where there is none.
    [[nodiscard]] virtual std::optional<int> percentLeft() = 0;
};

/// Events as files, in a folder that people can reach.
class EventFiles {
  public:
    EventFiles() = default;
    EventFiles(const EventFiles&) = delete;
    EventFiles& operator=(const EventFiles&) = delete;
    virtual ~EventFiles() = default;

    /// The newest first.
    [[nodiscard]] virtual std::vector<std::string> names() const = 0;
    /// Nothing when there is no such file or it cannot be read.
    [[nodiscard]] virtual std::optional<std::string> read(const std::string& name) const = 0;
    /// Where it lies; nothing when it could not be written.
    [[nodiscard]] virtual std::optional<std::string> write(const std::string& name,
                                                           const std::string& bytes) = 0;
};

/// Writes sheets where a person finds them again.
class Printer {
  public:
    Printer() = default;
    Printer(const Printer&) = delete;
    Printer& operator=(const Printer&) = delete;
    virtual ~Printer() = default;

    struct Written {
        QString path;     ///< where it went, or was to go
        QString problem;  ///< why it did not; empty when it did
    };
    /// `name` of the file with its ending; one of that name is replaced.
    [[nodiscard]] virtual Written writePdf(const report::Document& document, bool isLetter,
                                           const QString& name) = 0;
    [[nodiscard]] virtual Written writeText(const std::string& text, const QString& name) = 0;
};

/// The other devices of the crew, on the same local network (a phone's hotspot without the internet
/// is one). What is noted on one is on all that are in reach.
class CrewDevices {
  public:
    CrewDevices() = default;
    CrewDevices(const CrewDevices&) = delete;
    CrewDevices& operator=(const CrewDevices&) = delete;
    virtual ~CrewDevices() = default;

    struct Other {
        DeviceId device;
        std::string holder;  ///< who held it when it was last seen; empty: nobody said
        bool isInReach = false;
        Instant lastSeen;  ///< by the clock of this device; now while it is in reach
        sync::Peer peer;   ///< as it was when it was last seen
    };
    enum class Trouble : std::uint8_t {
        None,
        NoNetwork,    ///< this device is in no local network
        PortTaken,    ///< another program listens where this app would
        NotKept,      ///< joined, but the key could not be written: it is forgotten with the app
        NotEncrypted  ///< this device lacks what the connection is guarded with
    };

    /// A code was made or entered here.
    [[nodiscard]] virtual bool isJoined() const = 0;
    /// The code of the crew, sync::kCodeDigits digits, to be entered on another device; empty while
    /// not joined.
    [[nodiscard]] virtual std::string code() const = 0;
    /// Makes a new code. False when this device cannot (no room to make the key).
    virtual bool begin() = 0;
    /// Joins the devices that share `code`. False when it is none (sync::isCode), or as above.
    virtual bool join(const std::string& code) = 0;
    /// Forgets the code; what came stays.
    virtual void leave() = 0;
    /// Everyone seen since the code was made or entered, by device; those in reach first.
    [[nodiscard]] virtual std::vector<Other> others() const = 0;
    [[nodiscard]] virtual Trouble trouble() const = 0;
    /// Who holds this device, in words, for the others.
    virtual void setHolder(const std::string& name) = 0;
    /// Called when any of the above is other than it was; `added` also when something came into the
    /// store that was noted elsewhere. Neither is called from within a call to this.
    virtual void tell(std::function<void()> changed, std::function<void()> added) = 0;
};

}  // namespace cinder::face
