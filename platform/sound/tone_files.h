#pragma once

/// The tones as files, for players that read files. Knows no Qt.

#include <filesystem>
#include <optional>
#include <set>
#include <utility>

#include "live/alarm.h"

namespace cinder::tones {

/// A folder of its own, gone with this object, with one file for each kind and loudness. All are to
/// be written before the first is needed: a disk that fills up in the middle of the day must not
/// silence an alarm, and one that is full already must be seen in time.
class ToneFiles {
  public:
    using Tone = std::pair<live::TimerKind, int>;

    /// `place` is where the folder is made; the system's for passing files unless said.
    explicit ToneFiles(std::filesystem::path place = {});
    ToneFiles(const ToneFiles&) = delete;
    ToneFiles& operator=(const ToneFiles&) = delete;
    ~ToneFiles();

    /// The file of a tone, whole; written now when it is not there. Nothing when it cannot be.
    [[nodiscard]] std::optional<std::filesystem::path> file(Tone tone);
    /// Writes one that is missing; false when there was none, or it cannot be written.
    bool writeNext();
    /// Those that are not on the disk.
    [[nodiscard]] const std::set<Tone>& missing() const { return missing_; }
    /// It was written, but cannot be played: to be written again.
    void spoil(Tone tone) { missing_.insert(tone); }

  private:
    [[nodiscard]] bool write(Tone tone, const std::filesystem::path& file) const;

    std::filesystem::path place_;
    std::filesystem::path folder_;  ///< empty until it could be made
    std::set<Tone> missing_;
};

}  // namespace cinder::tones
