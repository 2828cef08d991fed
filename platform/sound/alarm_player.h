#pragma once

/// Makes alarms heard through Qt Multimedia, whatever the device offers to hear them with.

#include <map>
#include <memory>
#include <utility>

#include <QObject>
#include <QTemporaryDir>

#include "models/devices.h"

class QMediaDevices;
class QSoundEffect;

namespace cinder::platform {

/// Plays synthesized samples on the default output, whichever that is at the moment of ringing.
/// A device that comes (a loudspeaker switched on) or goes is followed; with none, `ring` does
/// nothing and `isAudible` is false. Sound is prepared at the first ring or at `prepare()`, because
/// looking for devices may take longer than the first board may.
class AlarmPlayer final : public QObject, public face::AlarmSound {
    Q_OBJECT

  public:
    AlarmPlayer();
    ~AlarmPlayer() override;

    void ring(live::TimerKind kind, int loudness) override;
    void silence() override;
    /// Until the devices have been looked at, the crew is not worried: true.
    [[nodiscard]] bool isAudible() const override;

    /// Looks for devices and starts watching them. Call when the first board is on the screen.
    void prepare();

  private:
    void follow();
    [[nodiscard]] QSoundEffect& effect(live::TimerKind kind, int loudness);

    /// QSoundEffect reads files; these are written when first needed and gone with the player.
    QTemporaryDir files_;
    std::map<std::pair<live::TimerKind, int>, std::unique_ptr<QSoundEffect>> effects_;
    std::unique_ptr<QMediaDevices> devices_;
    QSoundEffect* playing_ = nullptr;
    bool hasOutput_ = true;
};

}  // namespace cinder::platform
