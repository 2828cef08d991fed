#pragma once

/// The alarms as sound, made by us from numbers: no recording, no file, no player.
///
/// Every kind of alarm has a recipe: which notes, when, how high. Two kinds differ in rhythm and in
/// pitch, so that either alone tells them apart: wind carries rhythm away, a poor loudspeaker
/// pitch. Pitches lie between 600 and 2400 Hz, where a tablet is loud and a middle-aged ear still
/// good. Source: ISO 7731:2003 asks danger signals for components between 500 and 2500 Hz (from
/// memory).
///
/// Two rhythms are left to those they belong to: three equal half-second pulses mean "leave the
/// building" (ISO 8201), and four quick ones in a row are what a carbon monoxide alarm says
/// (from memory: NFPA 72, temporal pattern four). Beside a charcoal fire nobody may confuse them.

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "base/time.h"
#include "live/alarm.h"

namespace cinder::tones {

inline constexpr int kSampleRate = 48000;
inline constexpr int kLoudest = 5;
inline constexpr std::array kKinds = {live::TimerKind::Turn, live::TimerKind::Pull,
                                      live::TimerKind::RestOver, live::TimerKind::StartNow,
                                      live::TimerKind::Check};

struct Note {
    Duration at;
    Duration length;
    double hertz = 0;
    friend bool operator==(const Note&, const Note&) = default;
};

/// The notes of one ring, in order of `at`.
struct Recipe {
    std::vector<Note> notes;
    /// Struck like a bell, dying away over the note; otherwise held at full strength.
    bool isStruck = false;
    /// From the first onset to the end of the last note.
    [[nodiscard]] Duration length() const;
};

/// `loudness` from 1 to 5 (values outside are taken as the nearest). From 3 on the pattern comes
/// twice, at 5 also faster; the rhythm within the pattern stays what it is.
[[nodiscard]] Recipe recipe(live::TimerKind kind, int loudness);

/// The largest sample a ring of this loudness reaches, as a fraction of full scale; below 0.9.
[[nodiscard]] double peak(int loudness);

/// One ring: signed 16-bit mono at `kSampleRate`, silent at both ends, the same bits every time.
[[nodiscard]] std::vector<std::int16_t> synthesize(live::TimerKind kind, int loudness);

/// The same as a WAV file (RIFF, PCM).
[[nodiscard]] std::string wav(std::span<const std::int16_t> samples);

}  // namespace cinder::tones
