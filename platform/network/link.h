#pragma once

/// One connection to another device of the crew: whole messages, one after the other, that nobody
/// without the key can read, change or send. Guarded by TLS 1.2 (RFC 5246) with the key of the crew
/// in place of certificates (RFC 4279): ECDHE_PSK (RFC 5489) with ChaCha20-Poly1305 (RFC 7905), so
/// that who learns the key later still cannot read what was said before. On the wire each message
/// has its length in front, four bytes, the most significant first. An empty one is no message: it
/// only shows that somebody is there.

#include <chrono>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include <QByteArray>
#include <QSslSocket>
#include <QTimer>

#include "sync/crew_code.h"

class QHostAddress;

namespace cinder::platform {

class Link {
  public:
    struct Ways {
        /// The other end has the key too.
        std::function<void()> opened;
        /// One message.
        std::function<void(std::string_view bytes)> received;
        /// Nothing comes or goes any more, whoever ended it. Called once, never by the destructor.
        std::function<void()> ended;
    };
    /// Our choice. A handshake takes a tenth of a second; while a connection stands each end asks
    /// the other something every five seconds.
    static constexpr std::chrono::seconds kMostHandshake{10};
    static constexpr std::chrono::seconds kMostSilence{15};

    Link(const sync::CrewKey& key, Ways ways);
    Link(const Link&) = delete;
    Link& operator=(const Link&) = delete;
    ~Link();

    /// Whether this device has what a connection is guarded with. Loads it, the first time.
    [[nodiscard]] static bool isPossible();

    /// Goes to another device. May end at once.
    void dial(const QHostAddress& address, std::uint16_t port);
    /// Takes a connection that came in, by the number the system gave it. May end at once.
    void accept(qintptr descriptor);

    [[nodiscard]] bool isOpen() const { return isOpen_ && !isOver_; }
    [[nodiscard]] bool isOver() const { return isOver_; }
    /// How long nothing was heard.
    [[nodiscard]] std::chrono::milliseconds silence() const;

    /// Ends the connection instead when the other device no longer takes what waits for it.
    void send(std::string_view bytes);
    void hangUp();

  private:
    void guard();
    void open();
    void take();

    QByteArray key_;
    Ways ways_;
    QSslSocket socket_;
    /// Ends a handshake or a silence that lasts too long.
    QTimer patience_;
    QByteArray heard_;
    bool isOpen_ = false;
    bool isOver_ = false;
};

}  // namespace cinder::platform
