#include "alarm_player.h"

#include <algorithm>
#include <cstdint>

#include <QAudioDevice>
#include <QFile>
#include <QMediaDevices>
#include <QSoundEffect>
#include <QUrl>

#include "sound/tones.h"

namespace cinder::platform {

AlarmPlayer::AlarmPlayer() = default;
AlarmPlayer::~AlarmPlayer() {
    silence();
}

void AlarmPlayer::prepare() {
    if (devices_) return;
    devices_ = std::make_unique<QMediaDevices>();
    connect(devices_.get(), &QMediaDevices::audioOutputsChanged, this, &AlarmPlayer::follow);
    follow();
}

void AlarmPlayer::follow() {
    hasOutput_ = !QMediaDevices::defaultAudioOutput().isNull();
    // An effect belongs to one device; the next ring makes one for the device that is there then.
    playing_ = nullptr;
    effects_.clear();
}

void AlarmPlayer::ring(live::TimerKind kind, int loudness) {
    prepare();
    silence();
    if (!hasOutput_) return;
    playing_ = &effect(kind, std::clamp(loudness, 1, tones::kLoudest));
    playing_->play();
}

void AlarmPlayer::silence() {
    // Whether it still plays is not asked: the answer is not reliable without a sound server.
    if (playing_ != nullptr) playing_->stop();
    playing_ = nullptr;
}

bool AlarmPlayer::isAudible() const {
    return hasOutput_;
}

QSoundEffect& AlarmPlayer::effect(live::TimerKind kind, int loudness) {
    std::unique_ptr<QSoundEffect>& effect = effects_[{kind, loudness}];
    if (effect) return *effect;
    const QString file = files_.filePath(
        QStringLiteral("alarm-%1-%2.wav").arg(static_cast<int>(kind)).arg(loudness));
    if (QFile out(file); out.open(QIODevice::WriteOnly)) {
        // An output that wakes up swallows the beginning, and one that is closed the end; let them
        // swallow silence.
        constexpr std::size_t kLeadIn = tones::kSampleRate / 8;
        auto samples = tones::synthesize(kind, loudness);
        samples.insert(samples.begin(), kLeadIn, std::int16_t{0});
        samples.insert(samples.end(), 2 * kLeadIn, std::int16_t{0});
        const std::string wav = tones::wav(samples);
        out.write(wav.data(), static_cast<qint64>(wav.size()));
    }
    effect = std::make_unique<QSoundEffect>(QMediaDevices::defaultAudioOutput());
    effect->setSource(QUrl::fromLocalFile(file));
    return *effect;
}

}  // namespace cinder::platform
