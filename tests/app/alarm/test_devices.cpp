#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <string>

#include "haptics/led_vibrator.h"

using namespace cinder;
using live::TimerKind;

namespace {

/// A folder that looks like the kernel's, gone again afterwards.
class FakeDevice {
  public:
    FakeDevice() : path_(std::filesystem::temp_directory_path() / "cinderbell-test-vibrator") {
        std::filesystem::create_directories(path_);
        std::ofstream(path_ / "trigger") << "none";
    }
    FakeDevice(const FakeDevice&) = delete;
    FakeDevice& operator=(const FakeDevice&) = delete;
    ~FakeDevice() { std::filesystem::remove_all(path_); }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::string read(const char* name) const {
        std::string text;
        std::ifstream(path_ / name) >> text;
        return text;
    }

  private:
    std::filesystem::path path_;
};

}  // namespace

TEST_CASE("a device without a motor says so and is not written to") {
    platform::LedVibrator none("/sys/class/leds/there-is-no-such-motor");

    none.buzz(TimerKind::Turn, 5);

    CHECK_FALSE(none.isAvailable());
}

TEST_CASE("a motor runs for the time of its alarm, longer when louder") {
    const FakeDevice device;
    platform::LedVibrator motor(device.path());

    motor.buzz(TimerKind::Pull, 5);

    CHECK(motor.isAvailable());
    CHECK(device.read("trigger") == "transient");
    CHECK(device.read("activate") == "1");
    CHECK(device.read("duration") ==
          std::to_string(platform::buzzLength(TimerKind::Pull, 5).count()));
    CHECK(platform::buzzLength(TimerKind::Pull, 5) > platform::buzzLength(TimerKind::Pull, 1));
}
