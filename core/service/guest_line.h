#pragma once

/// Guests along the buffet, one by one: a discrete-event model of one service.
///
/// The buffet is a row of stops. At a stop with nobody behind it a guest helps himself, one guest
/// at a time on each side; at a stop with servers one server helps one guest. Stops of one team
/// share its servers, who go where they are needed, first to the stop nearest the end; their way
/// there takes no time. A guest who is done walks on when there is room before the next stop, and
/// stands in the way until then. Two sides have the same stops each and share the servers. Nobody
/// overtakes on a side, except past another guest who is still being helped by another server.
///
/// What a guest takes and how long he needs depends on the seed, his number and the stop alone, so
/// that two arrangements can be compared with the same guests ("common random numbers", A. M. Law,
/// Simulation Modeling and Analysis, from memory).

#include <cstdint>
#include <optional>
#include <vector>

#include "base/id.h"
#include "service/spread.h"

namespace cinder::service {

/// A dish at a stop, and the guests who take it.
struct Option {
    DishId dish;
    /// A guest takes it whose number for `draw`, between 0 and 1, lies in [from, from + share).
    double from = 0;
    double share = 1;
    Spread time;
    /// Options with the same number share the guests' draw: who takes one main leaves the other.
    std::uint32_t draw = 0;
    friend bool operator==(const Option&, const Option&) = default;
};

struct Stop {
    /// Empty: everybody stops for `everybody` (plates, cutlery).
    std::vector<Option> options;
    Spread everybody;
    /// What it takes to walk past without taking anything.
    Duration past{0};
    /// 0: guests help themselves.
    std::int32_t servers = 0;
    /// Stops of the same number above 0 have the same servers; 0: they serve here alone.
    std::uint32_t team = 0;
    /// Guests who can wait between the stop before and this one, on each side; absent: any number.
    /// The first stop has any number before it: the queue.
    std::optional<std::int32_t> room;
    /// Of the guests' times here; every stop has a number of its own.
    std::uint32_t draw = 0;
    /// What a second dish on the same plate takes, from the same hands.
    Spread further;
    friend bool operator==(const Stop&, const Stop&) = default;
};

struct Buffet {
    std::vector<Stop> stops;
    std::int32_t sides = 1;
    friend bool operator==(const Buffet&, const Buffet&) = default;
};

/// How the guests come to the line.
struct Release {
    enum class How : std::uint8_t {
        AllAtOnce,
        EachTable,  ///< a table is sent every `every`
        WhenShort,  ///< the next table is sent when at most `waiting` stand in the queue
        OneByOne,   ///< at random, `every` apart in the mean: the textbook's M
    };
    How how = How::AllAtOnce;
    std::int32_t seats = 8;  ///< of one table; people at one table come together
    Duration every{0};
    std::int32_t waiting = 0;
    /// From the table to the line.
    Duration walk{0};
    friend bool operator==(const Release&, const Release&) = default;
};

struct Crowd {
    std::int32_t guests = 0;
    Release release;
    friend bool operator==(const Crowd&, const Crowd&) = default;
};

/// One guest, from the opening of the line.
struct Pass {
    Duration joined{0};   ///< stands in the queue
    Duration started{0};  ///< has a plate in the hand
    Duration passed{0};   ///< is through with food
    friend bool operator==(const Pass&, const Pass&) = default;
};

struct Service {
    std::vector<Pass> guests;
    /// For each stop, the time during which guests were helped there, all sides and servers added
    /// up; standing in the way is not counted.
    std::vector<Duration> busy;
    /// Until the last guest is through.
    Duration length{0};
    friend bool operator==(const Service&, const Service&) = default;
};

/// Plays one service to its end. No guests or no stops: an empty service. Time grows with guests
/// times stops times the logarithm of the guests.
[[nodiscard]] Service playService(const Buffet& buffet, const Crowd& crowd, std::uint64_t seed);

/// For each stop the first stop with the same servers, itself when there is no other.
[[nodiscard]] std::vector<std::size_t> poolsOf(const Buffet& buffet);

/// Whether `guest`, from 0, takes the dish.
[[nodiscard]] bool takes(const Option& option, std::uint64_t seed, std::int32_t guest);

}  // namespace cinder::service
