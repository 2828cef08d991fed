#include "network/links.h"

#include <algorithm>
#include <optional>
#include <utility>

#include <QHostAddress>
#include <QLoggingCategory>
#include <QMetaObject>

#include "network/link.h"
#include "sync/exchange.h"

namespace cinder::platform {

namespace {

/// A link that was silent for so long is as good as gone when the same device comes anew: each end
/// asks the other something every five seconds. Our choice.
constexpr std::chrono::seconds kLong{7};

}  // namespace

struct Links::Connection {
    struct Target {
        DeviceId device;
        QHostAddress address;
        std::uint16_t port = 0;
        bool operator==(const Target& b) const {
            return device == b.device && address == b.address && port == b.port;
        }
    };

    Connection(Links& links, bool cameIn)
        : link(links.key_,
               {[this, &links] { links.opened(*this); },
                [this, &links](std::string_view bytes) { links.received(*this, bytes); },
                [this, &links] { links.ended(*this); }}),
          exchange(links.store_, links.holder_,
                   {[this](const std::string& bytes) { link.send(bytes); },
                    [&links] { return links.session_.deviceTime(); },
                    [this, &links](const std::vector<journal::Entry>& entries) {
                        links.arrived(*this, entries);
                    }}),
          isIncoming(cameIn) {}

    [[nodiscard]] bool isKnocking() const { return !link.isOver() && !device; }
    [[nodiscard]] bool isWith(const DeviceId& other) const {
        return !link.isOver() && device == other;
    }

    Link link;
    sync::Exchange exchange;
    bool isIncoming;
    /// Where this device went, and whom it hoped to find there.
    std::optional<Target> target;
    /// Who is there, once it said so and may stay.
    std::optional<DeviceId> device;
    Instant heard{};
};

Links::Links(journal::Store& store, app::Session& session, const sync::CrewKey& key,
             std::string holder, Ways ways)
    : store_(store),
      session_(session),
      key_(key),
      holder_(std::move(holder)),
      ways_(std::move(ways)) {}

Links::~Links() = default;

Links::Connection& Links::add(bool isIncoming) {
    makeRoom(isIncoming);
    return *connections_.emplace_back(std::make_unique<Connection>(*this, isIncoming));
}

void Links::makeRoom(bool isIncoming) {
    const auto isOne = [isIncoming](const std::unique_ptr<Connection>& one) {
        return one->isKnocking() && one->isIncoming == isIncoming;
    };
    const auto count = std::count_if(connections_.begin(), connections_.end(), isOne);
    if (count < static_cast<std::ptrdiff_t>(kMostKnocking)) return;
    // Who has the key shows it in a tenth of a second; who stays longer only keeps others out.
    (*std::find_if(connections_.begin(), connections_.end(), isOne))->link.hangUp();
}

void Links::accept(qintptr descriptor) {
    add(true).link.accept(descriptor);
}

void Links::dial(const DeviceId& device, const QHostAddress& address, std::uint16_t port) {
    const Connection::Target target{device, address, port};
    std::size_t peers = 0;
    for (const auto& one : connections_) {
        if (one->isWith(device) || (one->isKnocking() && one->target == target)) return;
        if (!one->link.isOver() && one->device) ++peers;
    }
    if (peers >= kMostPeers) return;
    Connection& connection = add(false);
    connection.target = target;
    connection.link.dial(address, port);
}

bool Links::has(const DeviceId& device) const {
    return std::any_of(connections_.begin(), connections_.end(),
                       [&](const auto& one) { return one->isWith(device); });
}

void Links::opened(Connection& connection) {
    // A device can be heard in two networks at once; one way to it is enough.
    if (connection.target)
        for (const auto& one : connections_)
            if (one.get() != &connection && one->isKnocking() && one->target &&
                one->target->device == connection.target->device)
                one->link.hangUp();
    connection.exchange.begin();
}

void Links::received(Connection& connection, std::string_view bytes) {
    connection.heard = session_.deviceTime();
    if (!connection.exchange.receive(bytes)) return connection.link.hangUp();
    if (!connection.device) admit(connection);
    look(connection);
}

void Links::admit(Connection& connection) {
    const auto device = connection.exchange.peer().device;
    if (!device) return;
    if (*device == store_.device()) return connection.link.hangUp();
    for (const auto& one : connections_) {
        if (!one->isWith(*device)) continue;
        if (one->link.silence() < kLong) return connection.link.hangUp();
        one->link.hangUp();
    }
    const auto peers = std::count_if(connections_.begin(), connections_.end(), [](const auto& one) {
        return !one->link.isOver() && one->device;
    });
    if (peers >= static_cast<std::ptrdiff_t>(kMostPeers)) return connection.link.hangUp();
    connection.device = device;
}

void Links::look(const Connection& connection) {
    if (!connection.device || connection.link.isOver()) return;
    const sync::Peer& peer = connection.exchange.peer();
    auto& known = known_[*connection.device];
    if (known.isInReach && known.peer == peer) return;
    known = {*connection.device, peer.holder, true, connection.heard, peer};
    ways_.changed();
}

void Links::arrived(const Connection& from, const std::vector<journal::Entry>& entries) {
    if (const auto noted = session_.takeNote(entries); !noted)
        qWarning("what came from another device is kept but not shown: %s",
                 app::describe(noted.error()).c_str());
    std::set<EventId> events;
    for (const journal::Entry& entry : entries)
        events.insert(entry.operation.event);
    for (const auto& one : connections_) {
        if (one.get() == &from || !one->link.isOpen()) continue;
        for (const EventId& event : events)
            one->exchange.noteAdded(event);
        look(*one);
    }
    ways_.added();
}

void Links::noteAdded(const std::set<EventId>& events) {
    for (const auto& one : connections_) {
        if (!one->link.isOpen()) continue;
        for (const EventId& event : events)
            one->exchange.noteAdded(event);
        look(*one);
    }
}

void Links::setHolder(const std::string& holder) {
    holder_ = holder;
    for (const auto& one : connections_)
        one->exchange.setHolder(holder);
}

void Links::beat() {
    for (const auto& one : connections_) {
        if (!one->link.isOpen()) continue;
        one->exchange.beat();
        // With another version nothing is asked or answered, and the link would fall silent.
        if (one->exchange.peer().standing == sync::Standing::OtherVersion) one->link.send({});
        look(*one);
    }
}

std::vector<face::CrewDevices::Other> Links::others() const {
    std::vector<face::CrewDevices::Other> all;
    all.reserve(known_.size());
    for (const auto& [device, other] : known_) {
        all.push_back(other);
        if (other.isInReach) all.back().lastSeen = session_.deviceTime();
    }
    std::stable_partition(all.begin(), all.end(), [](const auto& one) { return one.isInReach; });
    return all;
}

void Links::ended(Connection& connection) {
    if (connection.device) {
        auto& known = known_[*connection.device];
        known.isInReach = false;
        known.lastSeen = connection.heard;
        ways_.changed();
    }
    // Not now: this is called from within the connection.
    if (std::exchange(isSweepDue_, true)) return;
    QMetaObject::invokeMethod(
        &context_, [this] { sweep(); }, Qt::QueuedConnection);
}

void Links::sweep() {
    isSweepDue_ = false;
    std::erase_if(connections_, [](const auto& one) { return one->link.isOver(); });
}

}  // namespace cinder::platform
