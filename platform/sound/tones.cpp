#include "tones.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cinder::tones {

namespace {

using std::chrono::milliseconds;

// Notes of the equal-tempered scale, A4 = 440 Hz (ISO 16).
constexpr double kD5 = 587.33;
constexpr double kFSharp5 = 739.99;
constexpr double kA5 = 880.0;
constexpr double kC6 = 1046.50;
constexpr double kE6 = 1318.51;
constexpr double kG6 = 1567.98;
constexpr double kB6 = 1975.53;
constexpr double kD7 = 2349.32;

constexpr Note note(int at, int length, double hertz) {
    return {milliseconds{at}, milliseconds{length}, hertz};
}

/// The pattern once, as it sounds at first call.
Recipe pattern(live::TimerKind kind) {
    switch (kind) {
        case live::TimerKind::Turn:  // over and back: a see-saw
            return {
                {note(0, 150, kA5), note(170, 150, kE6), note(480, 150, kA5), note(650, 300, kE6)},
                false};
        case live::TimerKind::Pull:  // a run upwards that ends on a long top note
            return {{note(0, 90, kC6), note(110, 90, kE6), note(220, 520, kG6)}, false};
        case live::TimerKind::RestOver:  // two slow strokes of a bell: nothing burns
            return {{note(0, 560, kFSharp5), note(600, 560, kD5)}, true};
        case live::TimerKind::StartNow:  // long, short, short: a knock
            return {
                {note(0, 340, kC6), note(380, 110, kC6), note(530, 110, kC6), note(820, 200, kC6)},
                false};
        case live::TimerKind::Check:  // high and thin: drip, drip
            return {{note(0, 70, kD7), note(330, 70, kD7), note(430, 70, kB6)}, false};
    }
    return {};
}

int within(int loudness) {
    return std::clamp(loudness, 1, kLoudest);
}

/// Shares of the harmonics; a louder call is also a sharper one, which carries through wind.
struct Timbre {
    double second;
    double third;
};
Timbre timbre(int loudness) {
    const double sharpness = within(loudness) / static_cast<double>(kLoudest);
    return {0.30 * sharpness, 0.18 * sharpness};
}

/// Strength at `since` seconds into a note of `length` seconds; 0 at both ends, so nothing clicks.
double envelope(double since, double length, bool isStruck) {
    constexpr double kAttack = 0.005;
    constexpr double kRelease = 0.015;
    const double edge = std::min({since / kAttack, (length - since) / kRelease, 1.0});
    return std::max(edge, 0.0) * (isStruck ? std::exp(-4.0 * since / length) : 1.0);
}

std::size_t samplesIn(Duration duration) {
    return static_cast<std::size_t>(duration.count() * kSampleRate / 1000);
}

void add(const Note& note, bool isStruck, Timbre timbre, std::vector<double>& wave) {
    const std::size_t first = samplesIn(note.at);
    const std::size_t count = samplesIn(note.length);
    const double length = static_cast<double>(count) / kSampleRate;
    for (std::size_t i = 0; i < count && first + i < wave.size(); ++i) {
        const double since = static_cast<double>(i) / kSampleRate;
        const double phase = 2 * std::numbers::pi * note.hertz * since;
        wave[first + i] += envelope(since, length, isStruck) *
                           (std::sin(phase) + timbre.second * std::sin(2 * phase) +
                            timbre.third * std::sin(3 * phase));
    }
}

}  // namespace

Duration Recipe::length() const {
    Duration end{0};
    for (const Note& note : notes)
        end = std::max(end, note.at + note.length);
    return end;
}

Recipe recipe(live::TimerKind kind, int loudness) {
    constexpr Duration kBreath{160};
    Recipe result = pattern(kind);
    if (within(loudness) >= 3) {
        const Duration offset = result.length() + kBreath;
        const std::size_t once = result.notes.size();
        for (std::size_t i = 0; i < once; ++i) {
            Note again = result.notes[i];
            again.at += offset;
            result.notes.push_back(again);
        }
    }
    if (within(loudness) == kLoudest) {
        for (Note& note : result.notes) {
            note.at = note.at * 4 / 5;
            note.length = note.length * 4 / 5;
        }
    }
    return result;
}

double peak(int loudness) {
    // About 3 dB apart, up to 1 dB below full scale.
    constexpr std::array kPeaks = {0.22, 0.32, 0.45, 0.63, 0.89};
    return kPeaks.at(static_cast<std::size_t>(within(loudness) - 1));
}

std::vector<std::int16_t> synthesize(live::TimerKind kind, int loudness) {
    const Recipe notes = recipe(kind, loudness);
    std::vector<double> wave(samplesIn(notes.length()) + 1, 0.0);
    for (const Note& note : notes.notes)
        add(note, notes.isStruck, timbre(loudness), wave);

    double highest = 0;
    for (const double sample : wave)
        highest = std::max(highest, std::abs(sample));
    const double scale = highest > 0 ? 32767.0 * peak(loudness) / highest : 0.0;
    std::vector<std::int16_t> samples;
    samples.reserve(wave.size());
    for (const double sample : wave)
        samples.push_back(static_cast<std::int16_t>(std::lround(sample * scale)));
    return samples;
}

std::string wav(std::span<const std::int16_t> samples) {
    std::string file;
    const auto append = [&file](std::uint32_t value, int bytes) {
        for (int i = 0; i < bytes; ++i)
            file.push_back(static_cast<char>((value >> (8 * i)) & 0xff));
    };
    const auto size = static_cast<std::uint32_t>(samples.size() * 2);
    file += "RIFF";
    append(36 + size, 4);
    file += "WAVEfmt ";
    append(16, 4);
    append(1, 2);  // PCM
    append(1, 2);  // mono
    append(kSampleRate, 4);
    append(kSampleRate * 2, 4);
    append(2, 2);
    append(16, 2);
    file += "data";
    append(size, 4);
    for (const std::int16_t sample : samples)
        append(static_cast<std::uint16_t>(sample), 2);
    return file;
}

}  // namespace cinder::tones
