#pragma once

/// What many services tell together: how long the line takes, how long the queue gets, and the stop
/// that holds everybody up.

#include "service/guest_line.h"

namespace cinder::service {

/// Enough for a tenth to be a tenth: 20 services beyond each edge. Our choice.
inline constexpr std::int32_t kServices = 200;
/// The grid of the queue over time. Our choice.
inline constexpr Duration kQueueEvery = std::chrono::seconds{30};

struct Flow {
    /// Until the last guest is through: half of the services are quicker, and the edges between
    /// which four of five lie.
    Duration usual{0};
    Duration early{0};
    Duration late{0};
    /// In the queue before the first stop: of all guests in the mean, and of the one who waits
    /// longest in the usual service.
    Duration meanWait{0};
    Duration longestWait{0};
    /// Guests in the queue at 0, 30 s, 60 s …, in the mean of the services; ends with a zero.
    std::vector<double> queue;
    /// For each stop, the part of the service during which a place there helps somebody, 0 to 1;
    /// servers who are shared are as busy at every stop as at all together.
    std::vector<double> load;
    /// The stop with the highest load, the first of them; nothing without stops.
    std::optional<std::size_t> bottleneck;
    friend bool operator==(const Flow&, const Flow&) = default;
};

[[nodiscard]] Flow flowOf(const Buffet& buffet, const Crowd& crowd, std::uint64_t seed = 1,
                          std::int32_t services = kServices);

/// Where a hand at the stop can help at the same time: servers, or one guest a side.
[[nodiscard]] std::int32_t placesAt(const Buffet& buffet, std::size_t stop);

}  // namespace cinder::service
