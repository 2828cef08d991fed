#include "wire.h"

#include <catch2/catch.hpp>

#include <unistd.h>

#include <QDeadlineTimer>
#include <QEventLoop>
#include <QHostAddress>
#include <QTimer>
#include <QUdpSocket>

namespace samples {

bool waitFor(const std::function<bool()>& isSo, std::chrono::seconds most) {
    const QDeadlineTimer deadline(most);
    while (!isSo()) {
        if (deadline.hasExpired()) return false;
        QEventLoop loop;
        QTimer::singleShot(std::chrono::milliseconds{2}, &loop, &QEventLoop::quit);
        loop.exec();
    }
    return true;
}

std::uint16_t ownPort() {
    // The dynamic ports (RFC 6335, section 6) that Linux does not hand out by itself (kernel
    // documentation, ip_local_port_range).
    constexpr int kFirst = 61'000;
    constexpr int kPorts = 4'500;
    return static_cast<std::uint16_t>(kFirst + ::getpid() % kPorts);
}

bool canCallOut() {
    QUdpSocket socket;
    const QHostAddress everybody(QStringLiteral("127.255.255.255"));
    const bool can = socket.bind(QHostAddress::AnyIPv4, 0) &&
                     socket.writeDatagram("x", everybody, socket.localPort()) == 1 &&
                     socket.waitForReadyRead(2000);
    if (!can) WARN("skipped: no datagram to everybody on this machine comes back");
    return can;
}

Cable::Cable(std::uint16_t to) : to_(to) {
    QObject::connect(&server_, &QTcpServer::newConnection, &server_, [this] { join(); });
    REQUIRE(server_.listen(QHostAddress::LocalHost));
}

void Cable::join() {
    Pair pair{std::unique_ptr<QTcpSocket>(server_.nextPendingConnection()),
              std::make_unique<QTcpSocket>()};
    pair.in->setParent(nullptr);
    pair.out->connectToHost(QHostAddress(QHostAddress::LocalHost), to_);
    pass(*pair.in, *pair.out);
    pass(*pair.out, *pair.in);
    pairs_.push_back(std::move(pair));
}

void Cable::pass(QTcpSocket& from, QTcpSocket& to) {
    QObject::connect(&from, &QTcpSocket::readyRead, &to, [this, &from, &to] {
        const QByteArray read = from.readAll();
        bytes_ += read.size();
        to.write(read);
    });
    QObject::connect(&from, &QTcpSocket::disconnected, &to, [&to] { to.disconnectFromHost(); });
}

void Cable::cut() {
    for (const Pair& pair : pairs_) {
        pair.in->abort();
        pair.out->abort();
    }
}

}  // namespace samples
