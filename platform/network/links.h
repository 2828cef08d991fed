#pragma once

/// Every connection to the crew's devices, each with its exchange: one for a device, and few enough
/// that nobody who only knocks keeps the others out. What comes over one goes on over the others.

#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include <QObject>

#include "app/session.h"
#include "journal/store.h"
#include "models/devices.h"
#include "sync/crew_code.h"

class QHostAddress;

namespace cinder::platform {

class Links {
  public:
    struct Ways {
        /// `others` is other than it was.
        std::function<void()> changed;
        /// Something came into the store.
        std::function<void()> added;
    };
    /// Two to eight people work an event, each with a device at most, and one is this. Our choice.
    static constexpr std::size_t kMostPeers = 8;
    /// At a time, in each direction, of those that have not shown yet that they have the key.
    static constexpr std::size_t kMostKnocking = 8;

    /// `store` and `session` must outlive this. `ways` are called from within; they must not end
    /// this.
    Links(journal::Store& store, app::Session& session, const sync::CrewKey& key,
          std::string holder, Ways ways);
    Links(const Links&) = delete;
    Links& operator=(const Links&) = delete;
    ~Links();

    /// A connection came in, with the number the system gave it.
    void accept(qintptr descriptor);
    /// Goes to a device, unless there is a link with it or one is being made.
    void dial(const DeviceId& device, const QHostAddress& address, std::uint16_t port);
    [[nodiscard]] bool has(const DeviceId& device) const;

    void noteAdded(const std::set<EventId>& events);
    void setHolder(const std::string& holder);
    /// To be called every few seconds (sync::Exchange::beat).
    void beat();

    /// Everyone there was a link with; those in reach first, each by device.
    [[nodiscard]] std::vector<face::CrewDevices::Other> others() const;

  private:
    struct Connection;

    Connection& add(bool isIncoming);
    void makeRoom(bool isIncoming);
    void opened(Connection& connection);
    void received(Connection& connection, std::string_view bytes);
    void arrived(const Connection& from, const std::vector<journal::Entry>& entries);
    void ended(Connection& connection);
    /// The device at the other end said which it is.
    void admit(Connection& connection);
    /// Takes down how it stands with the device at the other end.
    void look(const Connection& connection);
    void sweep();

    journal::Store& store_;
    app::Session& session_;
    sync::CrewKey key_;
    std::string holder_;
    Ways ways_;
    /// In the order in which they began.
    std::vector<std::unique_ptr<Connection>> connections_;
    std::map<DeviceId, face::CrewDevices::Other> known_;
    bool isSweepDue_ = false;
    /// What is put off until later ends with this.
    QObject context_;
};

}  // namespace cinder::platform
