#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <string>

#include "battery/power_supply.h"
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

namespace {

/// A power supply folder as the kernel lays it out.
class FakeSupplies {
  public:
    FakeSupplies() : path_(std::filesystem::temp_directory_path() / "cinderbell-test-supplies") {
        std::filesystem::create_directories(path_);
    }
    FakeSupplies(const FakeSupplies&) = delete;
    FakeSupplies& operator=(const FakeSupplies&) = delete;
    ~FakeSupplies() { std::filesystem::remove_all(path_); }
    void put(const char* name, const char* type, const char* scope, const char* status,
             int capacity) const {
        const auto folder = path_ / name;
        std::filesystem::create_directories(folder);
        std::ofstream(folder / "type") << type << "\n";
        std::ofstream(folder / "scope") << scope << "\n";
        std::ofstream(folder / "status") << status << "\n";
        std::ofstream(folder / "capacity") << capacity << "\n";
    }
    [[nodiscard]] std::optional<int> left() const {
        return platform::PowerSupply(path_).percentLeft();
    }

  private:
    std::filesystem::path path_;
};

}  // namespace

TEST_CASE("the battery is the one that drains and belongs to the device") {
    const FakeSupplies supplies;
    CHECK_FALSE(supplies.left());
    supplies.put("mains", "Mains", "System", "Unknown", 100);
    supplies.put("mouse", "Battery", "Device", "Discharging", 3);
    CHECK_FALSE(supplies.left());
    supplies.put("main", "Battery", "System", "Discharging", 14);
    CHECK(supplies.left() == 14);
    supplies.put("second", "Battery", "System", "Discharging", 9);
    CHECK(supplies.left() == 9);
    supplies.put("main", "Battery", "System", "Charging", 14);
    supplies.put("second", "Battery", "System", "Charging", 9);
    CHECK_FALSE(supplies.left());
}

TEST_CASE("a machine that has no battery says nothing of one") {
    CHECK_FALSE(platform::PowerSupply("/nonexistent").percentLeft());
}
