#pragma once

/// A device of a crew: a store of its own, the session and the network, as the app joins them.

#include <catch2/catch.hpp>

#include <chrono>
#include <cstdint>
#include <memory>
#include <string>

#include "core/app/demo_day.h"
#include "network/crew_network.h"
#include "wire.h"

namespace samples {

inline constexpr Instant kMorning{std::chrono::milliseconds{1'821'000'000'000}};

class Tablet : public Device {
  public:
    explicit Tablet(const char* holder, std::uint16_t port = ownPort());

    /// The app is opened, and closed.
    void openNetwork();
    void closeNetwork() { network.reset(); }

    [[nodiscard]] std::filesystem::path keyFile() const { return folder.path() / "crew.key"; }
    /// So many are in reach, and each has everything.
    [[nodiscard]] bool isUpToDate(std::size_t others) const;
    [[nodiscard]] std::size_t inReach() const;
    [[nodiscard]] std::size_t operations() const;

    int changes = 0;
    int additions = 0;
    std::unique_ptr<platform::CrewNetwork> network;

  private:
    std::string holder_;
    std::uint16_t port_;
};

/// Both in one crew and up to date.
void pair(Tablet& one, Tablet& other);

/// The state of a task as the board of this device shows it; it must have the event open.
[[nodiscard]] live::TaskState stateOf(const Device& device, const TaskId& task);

}  // namespace samples
