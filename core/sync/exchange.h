#pragma once

/// Two devices bring each other's journal up to date, and keep it so while they are in reach. One
/// of these stands at each end of a connection and is told what arrives; it knows no network.
///
/// A journal is a set of chains, one for each device in each event, each numbered from 1. Where
/// both say how far each chain goes, what one lacks is a range of numbers, and a long absence costs
/// only what is new. Both ends greet, compare clocks, say their heads, and then each sends what the
/// other lacks, one message at a time and the next when it was taken; what is recorded meanwhile
/// follows at once. Entries travel as they were sealed. A chain that went two ways shows by its
/// seals; its event is left alone on both devices and named.

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/time.h"
#include "journal/store.h"
#include "sync/clock_offset.h"
#include "sync/message.h"

namespace cinder::sync {

/// Clocks that differ by more exchange nothing: what the other device noted would stand at the
/// wrong place of the day, and deadlines with it. Our choice.
inline constexpr Duration kMostApart = std::chrono::minutes{5};

/// How it stands between this device and the other one.
enum class Standing : std::uint8_t {
    Greeting,      ///< connected, not yet compared
    Exchanging,    ///< something is on its way
    UpToDate,      ///< both have all of both
    ClocksApart,   ///< nothing is exchanged until one of the clocks is set right
    OtherVersion,  ///< it speaks another version of these messages: update the older app
    NotNoted,      ///< the other device, or this one, cannot note what arrives (storage)
};

struct Peer {
    std::optional<DeviceId> device;  ///< once it greeted
    std::string holder;
    Standing standing = Standing::Greeting;
    std::optional<ClockOffset> clock;
    /// Entries that it has and this device lacks, and the other way round.
    std::uint64_t toCome = 0;
    std::uint64_t toGo = 0;
    /// Events whose record went two ways; left as they are on both.
    std::set<EventId> parted;
    friend bool operator==(const Peer&, const Peer&) = default;
};

class Exchange {
  public:
    struct Ways {
        /// Sends one message; it arrives whole and in order, or the connection is over.
        std::function<void(std::string bytes)> send;
        /// The clock the day goes by on this device.
        std::function<Instant()> now;
        /// These are in the store now.
        std::function<void(const std::vector<journal::Entry>&)> arrived;
    };

    /// `store` must outlive the exchange; `ways` must not call back into it.
    Exchange(journal::Store& store, std::string holder, Ways ways);

    /// Greets, once the connection stands.
    void begin();
    /// One message of the other device. False: what it sends makes no sense; hang up.
    [[nodiscard]] bool receive(std::string_view bytes);
    /// Something was added to this event here, by a touch or from a third device.
    void noteAdded(const EventId& event);
    /// Somebody else holds this device now.
    void setHolder(const std::string& holder);
    /// To be called every few seconds: compares the clocks again, and tries again what could not be
    /// noted.
    void beat();

    [[nodiscard]] const Peer& peer() const { return peer_; }

  private:
    /// What one device recorded of one event.
    using Chain = std::pair<EventId, DeviceId>;
    struct End {
        std::uint64_t sequence = 0;
        journal::Seal seal{};
    };
    using Ends = std::map<Chain, End>;
    struct Sent {
        Chain chain;
        std::uint64_t last = 0;
    };

    // One for each message; false when it breaks the order.
    bool take(const Greet& said);
    bool take(const Ask& said);
    bool take(const Answer& said);
    bool take(const Heads& said);
    bool take(const Entries& said);
    bool take(const TakenOver& said);
    bool take(const Refused& said);

    [[nodiscard]] static Ends endsOf(const std::vector<journal::ChainHead>& heads);
    [[nodiscard]] static std::uint64_t reached(const Ends& ends, const Chain& chain);
    static void advance(Ends& ends, const Chain& chain, const End& end);

    void send(const Message& message) { ways_.send(write(message)); }
    void greet();
    void ask();
    [[nodiscard]] bool clocksAgree() const;
    /// Says how far everything goes here. What is sent from then on is noted.
    void sayHeads();
    /// False when the store cannot be read; nothing is exchanged until it can.
    bool lookAgain(const EventId& event);
    /// Whether what both have of each chain is the same.
    void compare();
    void part(const EventId& event);
    void refuse(const EventId& event, journal::StoreError::Why why);
    /// Gives what comes next, and says how it stands.
    void goOn();
    void giveNext();
    /// False when the next of this chain cannot be read or is too long to be said.
    bool give(const Chain& chain, std::uint64_t after);
    void countMissing();
    [[nodiscard]] Standing standing() const;

    journal::Store& store_;
    std::string holder_;
    Ways ways_;
    Peer peer_;
    bool hasBegun_ = false;
    bool isOtherVersion_ = false;
    int asksOpen_ = 0;
    ClockFilter clocks_;
    /// How far everything goes here, once that was said; absent again while nothing is exchanged.
    std::optional<Ends> ours_;
    /// How far it goes there, as far as we were told; the last Heads and what was taken since.
    std::optional<Ends> theirs_;
    std::optional<Sent> onTheWay_;
    bool cannotRead_ = false;
    bool cannotNote_ = false;
    /// Mirrors `cannotNote_` of the other side: from Refused until it says its heads anew or takes
    /// something.
    bool theyCannotNote_ = false;
    /// What could not be read or is too long to be said; passed over until the next try.
    std::set<Chain> setAside_;
};

}  // namespace cinder::sync
