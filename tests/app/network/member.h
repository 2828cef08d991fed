#pragma once

/// A device of the crew that is not ours: speaks the wire by its published parts alone, and says
/// what it is told to.

#include <cstdint>
#include <string>

#include <QByteArray>
#include <QSslSocket>

#include "sync/crew_code.h"
#include "sync/message.h"

namespace samples {

using namespace cinder;

class Member {
  public:
    /// Begins to connect to a port of this machine, with this cipher and no other.
    Member(const sync::CrewKey& key, std::uint16_t port,
           const char* cipher = "ECDHE-PSK-CHACHA20-POLY1305");

    /// As they are, with no length in front.
    void write(const QByteArray& bytes) { socket_.write(bytes); }
    /// One message.
    void say(const std::string& bytes);
    void greet(const std::string& device);

    [[nodiscard]] bool isOpen() const { return socket_.isEncrypted() && !isOver(); }
    [[nodiscard]] bool isOver() const {
        return socket_.state() == QAbstractSocket::UnconnectedState;
    }
    /// All that came, with the lengths.
    [[nodiscard]] const QByteArray& heard() const { return heard_; }
    [[nodiscard]] QSslSocket& socket() { return socket_; }

  private:
    QByteArray key_;
    QByteArray heard_;
    QSslSocket socket_;
};

}  // namespace samples
