#pragma once

/// Makes alarms heard through Qt Multimedia, whatever the device offers to hear them with.

#include <map>
#include <memory>

#include <QObject>

#include "models/devices.h"
#include "sound/tone_files.h"

class QMediaDevices;
class QSoundEffect;

namespace cinder::platform {

/// Plays synthesized samples on the default output, whichever that is at the moment of ringing.
/// A device that comes (a loudspeaker switched on) or goes is followed; with none, `ring` does
/// nothing and `isAudible` is false; so it is while a tone cannot be written or loaded, which the
/// next ring tries again. Sound is prepared at the first ring or at `prepare()`, because looking
/// for devices may take longer than the first board may.
class AlarmPlayer final : public QObject, public face::AlarmSound {
    Q_OBJECT

  public:
    AlarmPlayer();
    ~AlarmPlayer() override;

    void ring(live::TimerKind kind, int loudness) override;
    void silence() override;
    /// Until the devices have been looked at, the crew is not worried: true.
    [[nodiscard]] bool isAudible() const override;

    /// Looks for devices and starts watching them, and writes the tones. Call when the first board
    /// is on the screen.
    void prepare();

  private:
    using Tone = tones::ToneFiles::Tone;

    void follow();
    void writeTones();
    /// Null when its tone cannot be written.
    [[nodiscard]] QSoundEffect* effect(Tone tone);
    /// An effect that could not be loaded is let go.
    void look(Tone tone);

    /// QSoundEffect reads files; gone with the player.
    tones::ToneFiles files_;
    std::map<Tone, std::unique_ptr<QSoundEffect>> effects_;
    std::unique_ptr<QMediaDevices> devices_;
    QSoundEffect* playing_ = nullptr;
    bool hasOutput_ = true;
    bool isWritten_ = true;
};

}  // namespace cinder::platform
