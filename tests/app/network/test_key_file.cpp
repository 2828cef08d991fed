#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "folder.h"
#include "network/key_file.h"

using namespace cinder;
using platform::KeyFile;
using platform::Membership;
namespace fs = std::filesystem;

namespace {

Membership crew() {
    Membership made{sync::newCode(), {}};
    for (std::size_t i = 0; i < made.key.size(); ++i)
        made.key[i] = static_cast<std::uint8_t>(7 * i);
    return made;
}

std::string text(const fs::path& file) {
    std::ostringstream all;
    all << std::ifstream(file).rdbuf();
    return all.str();
}

}  // namespace

TEST_CASE("the key is kept for its owner alone, and gone when the crew is left") {
    const samples::Folder folder;
    const KeyFile file(folder.file("crew.key"));
    const Membership kept = crew();
    CHECK_FALSE(file.read());

    REQUIRE(file.write(kept));
    CHECK(file.read() == kept);
    CHECK((fs::status(folder.file("crew.key")).permissions() & fs::perms::mask) ==
          (fs::perms::owner_read | fs::perms::owner_write));

    const Membership next = crew();
    REQUIRE(file.write(next));
    CHECK(file.read() == next);
    file.remove();
    CHECK_FALSE(fs::exists(folder.file("crew.key")));
    CHECK_FALSE(file.read());
}

TEST_CASE("a damaged key is none, wherever it is damaged") {
    const samples::Folder folder;
    const KeyFile file(folder.file("crew.key"));
    REQUIRE(file.write(crew()));
    const std::string sound = text(folder.file("crew.key"));

    for (std::size_t i = 0; i < sound.size(); ++i) {
        std::string altered = sound;
        altered[i] = altered[i] == '1' ? '2' : '1';
        std::ofstream(folder.file("crew.key")) << altered;
        CHECK_FALSE(file.read());
        std::ofstream(folder.file("crew.key")) << sound.substr(0, i);
        CHECK_FALSE(file.read());
    }
    std::ofstream(folder.file("crew.key")) << sound << sound;
    CHECK_FALSE(file.read());
}

TEST_CASE("where the key cannot be kept, none is") {
    const samples::Folder folder;
    // A folder stands where the file was to go.
    fs::create_directory(folder.file("crew.key"));
    const KeyFile file(folder.file("crew.key"));

    CHECK_FALSE(file.write(crew()));
    CHECK_FALSE(file.read());
}
