#pragma once

/// Keeps the screen on by asking the desktop's screen saver to hold off.
/// Source: freedesktop.org, "Idle Inhibition Service" draft, org.freedesktop.ScreenSaver.

#include <optional>

#include <QObject>

#include "models/devices.h"

namespace cinder::platform {

/// Asks without waiting. A desktop without the service is left alone: the screen then sleeps as
/// its settings say, and the alarms still ring.
class ScreenInhibitor final : public QObject, public face::Wake {
    Q_OBJECT

  public:
    ScreenInhibitor() = default;
    ~ScreenInhibitor() override;

    void hold(bool on) override;
    /// True once the desktop has confirmed.
    [[nodiscard]] bool isHeld() const { return cookie_.has_value(); }

  private:
    void ask();
    void letGo();

    bool isWanted_ = false;
    bool isAsked_ = false;
    bool isWantedAgain_ = false;  ///< asked for once more before the answer came
    std::optional<quint32> cookie_;
};

}  // namespace cinder::platform
