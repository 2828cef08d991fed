#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "sound/tones.h"

using namespace cinder;
using live::TimerKind;
using std::chrono::milliseconds;

namespace {

using Samples = std::vector<std::int16_t>;

/// Strength of one frequency in a stretch of samples (Goertzel, Amer. Math. Monthly 65, 1958).
double strength(const Samples& samples, std::size_t first, std::size_t count, double hertz) {
    const double turn = 2 * std::cos(2 * std::numbers::pi * hertz / tones::kSampleRate);
    double before = 0;
    double last = 0;
    for (std::size_t i = first; i < first + count && i < samples.size(); ++i) {
        const double next = samples[i] + turn * last - before;
        before = last;
        last = next;
    }
    return std::sqrt(last * last + before * before - turn * last * before);
}

/// The strongest pitch between 400 and 5000 Hz, to the nearest twelfth of an octave.
double dominantPitch(const Samples& samples, std::size_t first, std::size_t count) {
    double best = 0;
    double strongest = -1;
    for (int step = 0; step <= 44; ++step) {
        const double hertz = 391.995 * std::pow(2.0, step / 12.0);  // from G4 upwards
        const double here = strength(samples, first, count, hertz);
        if (here > strongest) {
            strongest = here;
            best = hertz;
        }
    }
    return best;
}

/// Where sound begins after at least 10 ms of near silence, in milliseconds.
std::vector<double> onsets(const Samples& samples) {
    const int floor = *std::max_element(samples.begin(), samples.end()) / 100;
    std::vector<double> found;
    std::size_t quiet = tones::kSampleRate;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (std::abs(samples[i]) <= floor) {
            ++quiet;
            continue;
        }
        if (quiet > tones::kSampleRate / 100)
            found.push_back(static_cast<double>(i) * 1000 / tones::kSampleRate);
        quiet = 0;
    }
    return found;
}

double semitones(double a, double b) {
    return 12 * std::abs(std::log2(a / b));
}

double effective(const Samples& samples) {
    double sum = 0;
    for (const double sample : samples)
        sum += sample * sample;
    return std::sqrt(sum / static_cast<double>(samples.size()));
}

/// The rhythm without its tempo: gaps between onsets relative to the first.
std::vector<double> rhythm(const Samples& samples) {
    const auto at = onsets(samples);
    std::vector<double> gaps;
    for (std::size_t i = 1; i < at.size(); ++i)
        gaps.push_back((at[i] - at[i - 1]) / at[1]);
    return gaps;
}

std::size_t sampleAt(Duration at) {
    return static_cast<std::size_t>(at.count() * tones::kSampleRate / 1000);
}

}  // namespace

TEST_CASE("a ring is as long as its recipe, and short enough to repeat") {
    const auto kind = GENERATE(from_range(tones::kKinds));
    const auto loudness = GENERATE(1, 2, 3, 4, 5);

    const auto samples = tones::synthesize(kind, loudness);

    const auto length = tones::recipe(kind, loudness).length();
    CHECK(samples.size() == sampleAt(length) + 1);
    CHECK(length >= milliseconds{400});
    CHECK(length <= milliseconds{2600});
}

TEST_CASE("a ring reaches its peak, never clips, and begins and ends in silence") {
    const auto kind = GENERATE(from_range(tones::kKinds));
    const auto loudness = GENERATE(1, 2, 3, 4, 5);

    const auto samples = tones::synthesize(kind, loudness);

    int highest = 0;
    for (const int sample : samples)
        highest = std::max(highest, std::abs(sample));
    CHECK(highest == Approx(32767 * tones::peak(loudness)).margin(1));
    CHECK(highest < 32767 * 0.9);
    CHECK(samples.front() == 0);
    CHECK(std::abs(samples.back()) < highest / 100);
}

TEST_CASE("the onsets heard are the onsets written") {
    const auto kind = GENERATE(from_range(tones::kKinds));
    const auto loudness = GENERATE(1, 3, 5);

    const auto heard = onsets(tones::synthesize(kind, loudness));

    const auto written = tones::recipe(kind, loudness).notes;
    REQUIRE(heard.size() == written.size());
    for (std::size_t i = 0; i < heard.size(); ++i)
        CHECK(heard[i] == Approx(static_cast<double>(written[i].at.count())).margin(3));
}

TEST_CASE("every note sounds at its pitch, within half a semitone") {
    const auto kind = GENERATE(from_range(tones::kKinds));
    const auto loudness = GENERATE(1, 5);
    const auto samples = tones::synthesize(kind, loudness);

    for (const auto& note : tones::recipe(kind, loudness).notes) {
        const double heard = dominantPitch(samples, sampleAt(note.at), sampleAt(note.length));

        CHECK(semitones(heard, note.hertz) < 0.5);
        CHECK(note.hertz >= 500);  // ISO 7731:2003, the band of danger signals (from memory)
        CHECK(note.hertz <= 2500);
    }
}

TEST_CASE("any two kinds differ in rhythm, even played at another tempo") {
    for (const auto a : tones::kKinds) {
        for (const auto b : tones::kKinds) {
            if (a >= b) continue;
            const auto one = rhythm(tones::synthesize(a, 1));
            const auto other = rhythm(tones::synthesize(b, 1));

            double apart = one.size() == other.size() ? 0.0 : 1.0;
            for (std::size_t i = 0; i < std::min(one.size(), other.size()); ++i)
                apart = std::max(apart, std::abs(one[i] - other[i]) / std::max(one[i], other[i]));
            CAPTURE(static_cast<int>(a), static_cast<int>(b));
            CHECK(apart > 0.25);
        }
    }
}

TEST_CASE("any two kinds differ in the pitch that carries most, by two semitones or more") {
    for (const auto a : tones::kKinds) {
        for (const auto b : tones::kKinds) {
            if (a >= b) continue;
            const auto one = tones::synthesize(a, 1);
            const auto other = tones::synthesize(b, 1);

            CAPTURE(static_cast<int>(a), static_cast<int>(b));
            CHECK(semitones(dominantPitch(one, 0, one.size()),
                            dominantPitch(other, 0, other.size())) >= 1.9);
        }
    }
}

TEST_CASE("no ring is an evacuation signal or a carbon monoxide alarm") {
    const auto kind = GENERATE(from_range(tones::kKinds));

    const auto notes = tones::recipe(kind, 1).notes;

    // ISO 8201: three equal pulses of half a second. Temporal four: four equal pulses of 100 ms.
    // (Both from memory.)
    const bool allEqual = std::all_of(notes.begin(), notes.end(), [&notes](const auto& note) {
        return note.length == notes.front().length;
    });
    CHECK_FALSE((allEqual && (notes.size() == 3 && notes.front().length > milliseconds{300})));
    CHECK_FALSE((allEqual && notes.size() == 4));
}

TEST_CASE("each step of loudness is louder, and from the third the call is denser") {
    const auto kind = GENERATE(from_range(tones::kKinds));

    for (int loudness = 2; loudness <= 5; ++loudness) {
        CHECK(effective(tones::synthesize(kind, loudness)) >
              1.15 * effective(tones::synthesize(kind, loudness - 1)));
    }
    CHECK(tones::recipe(kind, 3).notes.size() == 2 * tones::recipe(kind, 2).notes.size());
    CHECK(tones::recipe(kind, 5).length() < tones::recipe(kind, 4).length());
}

TEST_CASE("a loudness outside its range is taken as the nearest") {
    CHECK(tones::synthesize(TimerKind::Pull, -3) == tones::synthesize(TimerKind::Pull, 1));
    CHECK(tones::synthesize(TimerKind::Pull, 99) == tones::synthesize(TimerKind::Pull, 5));
}

TEST_CASE("a written ring is a WAV file that says what it holds") {
    // Multimedia Programming Interface and Data Specifications 1.0 (IBM, Microsoft, 1991), "WAVE".
    const auto samples = tones::synthesize(TimerKind::Turn, 1);

    const auto file = tones::wav(samples);

    CHECK(file.size() == 44 + 2 * samples.size());
    CHECK(file.substr(0, 4) == "RIFF");
    CHECK(file.substr(8, 8) == "WAVEfmt ");
    CHECK(file.substr(24, 4) == std::string("\x80\xbb\x00\x00", 4));  // 48000
}
