#pragma once

/// The other devices of a crew without any network: they stand where they are put, and tell when
/// they are told to.

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "devices.h"
#include "sync/crew_code.h"

namespace cinder::face::fixed {

/// Fourteen digits and the two that check them (ISO/IEC 7064, MOD 97-10: the whole leaves 1 when it
/// is divided by 97).
inline constexpr const char* kCode = "3141592653589728";

class FixedCrewDevices final : public CrewDevices {
  public:
    [[nodiscard]] bool isJoined() const override { return !kept.empty(); }
    [[nodiscard]] std::string code() const override { return kept; }
    bool begin() override { return join(kCode); }
    bool join(const std::string& entered) override {
        if (!hasRoom || !sync::isCode(entered)) return false;
        kept = entered;
        return true;
    }
    void leave() override {
        kept.clear();
        seen.clear();
    }
    [[nodiscard]] std::vector<Other> others() const override { return seen; }
    [[nodiscard]] Trouble trouble() const override { return hindrance; }
    void setHolder(const std::string& name) override { holder = name; }
    void tell(std::function<void()> changed, std::function<void()> added) override {
        changed_ = std::move(changed);
        added_ = std::move(added);
    }

    /// What was put here is looked at.
    void sayChanged() const {
        if (changed_) changed_();
    }
    void sayAdded() const {
        sayChanged();
        if (added_) added_();
    }

    std::string kept;     ///< the code; empty: not joined
    bool hasRoom = true;  ///< for making a key
    std::vector<Other> seen;
    Trouble hindrance = Trouble::None;
    std::string holder;  ///< as the others are told

  private:
    std::function<void()> changed_, added_;
};

/// The one who holds it, in reach since ever, with everything on both.
[[nodiscard]] inline CrewDevices::Other nearDevice(const std::string& id, const std::string& holder,
                                                   Instant now) {
    CrewDevices::Other other;
    other.device = DeviceId(id);
    other.holder = holder;
    other.isInReach = true;
    other.lastSeen = now;
    other.peer.device = other.device;
    other.peer.holder = holder;
    other.peer.standing = sync::Standing::UpToDate;
    other.peer.clock = sync::ClockOffset{Duration{300}, Duration{20}};
    return other;
}

}  // namespace cinder::face::fixed
