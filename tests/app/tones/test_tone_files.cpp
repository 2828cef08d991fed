#include <sys/resource.h>
#include <catch2/catch.hpp>

#include <csignal>
#include <fstream>
#include <sstream>

#include "folder.h"
#include "sound/tone_files.h"
#include "sound/tones.h"

using namespace cinder;
using live::TimerKind;
using tones::ToneFiles;

namespace {

namespace fs = std::filesystem;

const ToneFiles::Tone kPull{TimerKind::Pull, 3};

/// While it stands, no file of this process grows past a kilobyte: what a full disk does to one.
class NoRoom {
  public:
    NoRoom() : before_(std::signal(SIGXFSZ, SIG_IGN)) {
        ::getrlimit(RLIMIT_FSIZE, &was_);
        const rlimit small{1024, was_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    NoRoom(const NoRoom&) = delete;
    NoRoom& operator=(const NoRoom&) = delete;
    ~NoRoom() {
        ::setrlimit(RLIMIT_FSIZE, &was_);
        std::signal(SIGXFSZ, before_);
    }

  private:
    rlimit was_{};
    void (*before_)(int);
};

std::string bytesOf(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return all.str();
}

}  // namespace

TEST_CASE("every tone is on the disk before the first is needed, and none is left afterwards") {
    const samples::Folder place;
    {
        ToneFiles files(place.path());
        while (files.writeNext()) {
        }
        CHECK(files.missing().empty());
        for (const TimerKind kind : tones::kKinds)
            for (int loudness = 1; loudness <= tones::kLoudest; ++loudness) {
                const std::string wav = bytesOf(files.file({kind, loudness}).value());
                const auto samples = tones::synthesize(kind, loudness);
                const std::string sound(reinterpret_cast<const char*>(samples.data()),
                                        2 * samples.size());
                CHECK(wav.substr(0, 4) == "RIFF");
                CHECK(wav.find(sound) != std::string::npos);
            }
    }
    CHECK(fs::is_empty(place.path()));
}

TEST_CASE("a tone that cannot be written whole is none, and is tried again") {
    const samples::Folder place;
    ToneFiles files(place.path());
    std::optional<fs::path> written;
    bool isNextWritten = true;
    {
        const NoRoom full;
        written = files.file(kPull);
        isNextWritten = files.writeNext();
    }
    CHECK_FALSE(written);
    CHECK_FALSE(isNextWritten);
    CHECK(files.missing().count(kPull) == 1);

    const auto again = files.file(kPull);
    REQUIRE(again);
    CHECK(fs::file_size(*again) > 1024);
    CHECK(files.missing().count(kPull) == 0);
}

TEST_CASE("where no folder can be made there is no tone, until there is one") {
    const samples::Folder place;
    ToneFiles files(place.path() / "later");
    CHECK_FALSE(files.file(kPull));
    CHECK(files.missing().size() == tones::kKinds.size() * tones::kLoudest);

    fs::create_directory(place.path() / "later");
    CHECK(files.file(kPull));
}

TEST_CASE("a tone that could not be played is written anew") {
    const samples::Folder place;
    ToneFiles files(place.path());
    const fs::path file = files.file(kPull).value();
    const std::string whole = bytesOf(file);
    std::ofstream(file, std::ios::trunc) << "half a";

    files.spoil(kPull);

    CHECK(bytesOf(files.file(kPull).value()) == whole);
}
