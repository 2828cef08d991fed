#pragma once

/// What a second server, a second side or a moved stop buys, each played out with the same guests.

#include "service/flow.h"

namespace cinder::service {

struct Change {
    enum class What : std::uint8_t {
        SecondServer,   ///< one more at `stop`, and wherever its servers go
        SecondSide,     ///< guests on both sides, the servers shared
        SideAndServer,  ///< both: a second side, and one more server at `stop`
        MoveToTheEnd,   ///< `stop` becomes the last before the cutlery
        TableOfItsOwn,  ///< `stop` stands apart: the queue before it is in nobody's way
    };
    What what = What::SecondServer;
    std::size_t stop = 0;  ///< index of Buffet::stops
    friend bool operator==(const Change&, const Change&) = default;
};

struct Gain {
    Change change;
    Flow flow;
    /// Of the usual time to pass all, and of the longest wait; negative when it makes things worse.
    Duration saved{0};
    Duration waitSaved{0};
    friend bool operator==(const Gain&, const Gain&) = default;
};

[[nodiscard]] Buffet withChange(Buffet buffet, const Change& change);

/// Every change that can be made to this buffet, the one that saves most first. `now` is the flow
/// of the buffet as it stands, from the same crowd, seed and number of services.
[[nodiscard]] std::vector<Gain> whatHelps(const Buffet& buffet, const Crowd& crowd, const Flow& now,
                                          std::uint64_t seed = 1,
                                          std::int32_t services = kServices);

}  // namespace cinder::service
