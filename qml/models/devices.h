#pragma once

/// What the face asks of the device it runs on. The view models call these; `platform/` provides
/// them; tests use fakes. Whether an alarm rings is decided in the core: a device only makes it
/// heard, felt and seen.

#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "live/alarm.h"
#include "report/document.h"

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

}  // namespace cinder::face
