#pragma once

/// How the devices of a crew find each other: each calls out, every few seconds, which crew it
/// belongs to and where it can be reached. Whoever hears it learns nothing that helps to get in.
/// One datagram (UDP, RFC 768) to everybody in each network this device is in (RFC 919), of one
/// line of ASCII:
///
///     cinderbell 1 <sync::crewMark> <device> <TCP port>

#include <chrono>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>

#include <QByteArray>
#include <QHostAddress>
#include <QTimer>
#include <QUdpSocket>

#include "base/id.h"

namespace cinder::platform {

/// What is called out.
struct Call {
    std::string mark;
    DeviceId device;
    std::uint16_t port = 0;
    friend bool operator==(const Call&, const Call&) = default;

    [[nodiscard]] QByteArray datagram() const;
    /// Nothing when it is no call: a datagram may come from anybody and be anything.
    [[nodiscard]] static std::optional<Call> read(const QByteArray& datagram);
};

class Beacon {
  public:
    /// Another device of this crew, and where it can be reached.
    using Heard = std::function<void(const DeviceId& device, const QHostAddress& address,
                                     std::uint16_t port)>;

    /// `port` is the same for every device.
    Beacon(std::uint16_t port, Call call, Heard heard);
    Beacon(const Beacon&) = delete;
    Beacon& operator=(const Beacon&) = delete;

    /// Calls out at once and then every `interval`; `called` each time it did.
    void begin(std::chrono::milliseconds interval, std::function<void()> called);
    /// To one device: some access points pass on what is for everybody in one direction only.
    void answer(const QHostAddress& address);

    /// As it was at the last call. False: another program listens at the port.
    [[nodiscard]] bool isListening() const { return isListening_; }
    [[nodiscard]] bool isInNetwork() const { return isInNetwork_; }

  private:
    void callOut();
    void hear();

    std::uint16_t port_;
    Call call_;
    Heard heard_;
    std::function<void()> called_;
    QUdpSocket socket_;
    QTimer timer_;
    bool isListening_ = true;
    bool isInNetwork_ = true;
};

}  // namespace cinder::platform
