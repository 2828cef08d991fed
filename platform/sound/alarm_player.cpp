#include "alarm_player.h"

#include <algorithm>

#include <QAudioDevice>
#include <QMediaDevices>
#include <QSoundEffect>
#include <QTimer>
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
    writeTones();
}

void AlarmPlayer::writeTones() {
    // One at a time: a board that was just shown is touched meanwhile.
    if (files_.writeNext())
        QTimer::singleShot(0, this, &AlarmPlayer::writeTones);
    else
        isWritten_ = files_.missing().empty();
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
    playing_ = effect({kind, std::clamp(loudness, 1, tones::kLoudest)});
    if (playing_ == nullptr) {
        isWritten_ = false;
        return;
    }
    playing_->play();
    // Where there is room again for one tone there may be for those that were missing.
    if (!isWritten_) writeTones();
}

void AlarmPlayer::silence() {
    // Whether it still plays is not asked: the answer is not reliable without a sound server.
    if (playing_ != nullptr) playing_->stop();
    playing_ = nullptr;
}

bool AlarmPlayer::isAudible() const {
    return hasOutput_ && isWritten_;
}

QSoundEffect* AlarmPlayer::effect(Tone tone) {
    const auto file = files_.file(tone);
    if (!file) return nullptr;
    std::unique_ptr<QSoundEffect>& effect = effects_[tone];
    if (effect) return effect.get();
    effect = std::make_unique<QSoundEffect>(QMediaDevices::defaultAudioOutput());
    connect(effect.get(), &QSoundEffect::statusChanged, this, [this, tone] { look(tone); });
    effect->setSource(QUrl::fromLocalFile(QString::fromStdString(file->string())));
    // What cannot be loaded may have said so already.
    const auto made = effects_.find(tone);
    return made != effects_.end() ? made->second.get() : nullptr;
}

void AlarmPlayer::look(Tone tone) {
    const auto found = effects_.find(tone);
    if (found == effects_.end() || !found->second || found->second->status() != QSoundEffect::Error)
        return;
    // Kept, it would stay silent for ever; the next ring makes it anew.
    if (playing_ == found->second.get()) playing_ = nullptr;
    found->second.release()->deleteLater();
    effects_.erase(found);
    files_.spoil(tone);
    isWritten_ = false;
}

}  // namespace cinder::platform
