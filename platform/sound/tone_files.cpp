#include "tone_files.h"

#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <string>

#include "tones.h"

namespace cinder::tones {

namespace {

namespace fs = std::filesystem;

/// An output that wakes up swallows the beginning, and one that is closed the end; let them swallow
/// silence.
std::string withSilence(ToneFiles::Tone tone) {
    constexpr std::size_t kLeadIn = kSampleRate / 8;
    auto samples = synthesize(tone.first, tone.second);
    samples.insert(samples.begin(), kLeadIn, std::int16_t{0});
    samples.insert(samples.end(), 2 * kLeadIn, std::int16_t{0});
    return wav(samples);
}

/// A new folder in `place`; empty when none can be made.
fs::path folderIn(const fs::path& place) {
    if (place.empty()) return {};  // not beside the program, wherever it was started
    std::string name = (place / "cinderbell-tones-XXXXXX").string();
    return ::mkdtemp(name.data()) != nullptr ? fs::path(name) : fs::path();
}

}  // namespace

ToneFiles::ToneFiles(fs::path place) : place_(std::move(place)) {
    std::error_code none;
    if (place_.empty()) place_ = fs::temp_directory_path(none);
    for (const live::TimerKind kind : kKinds)
        for (int loudness = 1; loudness <= kLoudest; ++loudness)
            missing_.insert({kind, loudness});
}

ToneFiles::~ToneFiles() {
    std::error_code ignored;
    if (!folder_.empty()) fs::remove_all(folder_, ignored);
}

std::optional<fs::path> ToneFiles::file(Tone tone) {
    if (folder_.empty()) folder_ = folderIn(place_);
    if (folder_.empty()) return std::nullopt;
    const fs::path file = folder_ / ("alarm-" + std::to_string(static_cast<int>(tone.first)) + "-" +
                                     std::to_string(tone.second) + ".wav");
    if (missing_.count(tone) == 0) return file;
    if (!write(tone, file)) return std::nullopt;
    missing_.erase(tone);
    return file;
}

bool ToneFiles::writeNext() {
    return !missing_.empty() && file(*missing_.begin()).has_value();
}

bool ToneFiles::write(Tone tone, const fs::path& file) const {
    const std::string bytes = withSilence(tone);
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    // What is left in a buffer fails only here.
    out.close();
    if (out) return true;
    std::error_code ignored;
    fs::remove(file, ignored);
    return false;
}

}  // namespace cinder::tones
