#include "network/beacon.h"

#include <algorithm>
#include <utility>
#include <vector>

#include <QList>
#include <QNetworkDatagram>
#include <QNetworkInterface>
#include <QNetworkProxy>

namespace cinder::platform {

namespace {

constexpr const char* kMagic = "cinderbell";
constexpr const char* kVersion = "1";
/// A device's name has 16 characters, a mark too.
constexpr qsizetype kMostBytes = 128;
/// Somebody may shout without end; the boards get their turn in between.
constexpr int kMostAtOnce = 64;

/// Letters and digits.
bool isName(const QByteArray& text) {
    return !text.isEmpty() && std::all_of(text.begin(), text.end(), [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    });
}

/// Everybody in every network of this device. Looked up anew each time: a hotspot comes and goes.
std::vector<QHostAddress> everybody() {
    std::vector<QHostAddress> found;
    constexpr auto kWanted =
        QNetworkInterface::IsUp | QNetworkInterface::IsRunning | QNetworkInterface::CanBroadcast;
    const auto interfaces = QNetworkInterface::allInterfaces();
    for (const QNetworkInterface& one : interfaces) {
        if ((one.flags() & kWanted) != kWanted) continue;
        const auto entries = one.addressEntries();
        for (const QNetworkAddressEntry& entry : entries)
            if (!entry.broadcast().isNull()) found.push_back(entry.broadcast());
    }
    return found;
}

}  // namespace

QByteArray Call::datagram() const {
    return QByteArray(kMagic) + ' ' + kVersion + ' ' + QByteArray::fromStdString(mark) + ' ' +
           QByteArray::fromStdString(device.text()) + ' ' + QByteArray::number(port) + '\n';
}

std::optional<Call> Call::read(const QByteArray& datagram) {
    if (datagram.size() > kMostBytes || !datagram.endsWith('\n')) return std::nullopt;
    const QList<QByteArray> words = datagram.chopped(1).split(' ');
    if (words.size() != 5 || words[0] != kMagic || words[1] != kVersion) return std::nullopt;
    if (!isName(words[2]) || !isName(words[3]) || !isName(words[4])) return std::nullopt;
    bool isNumber = false;
    const std::uint16_t tcp = words[4].toUShort(&isNumber);
    if (!isNumber || tcp == 0) return std::nullopt;
    return Call{words[2].toStdString(), DeviceId{words[3].toStdString()}, tcp};
}

Beacon::Beacon(std::uint16_t port, Call call, Heard heard)
    : port_(port), call_(std::move(call)), heard_(std::move(heard)) {
    socket_.setProxy(QNetworkProxy::NoProxy);
    QObject::connect(&socket_, &QUdpSocket::readyRead, &socket_, [this] { hear(); });
    QObject::connect(&timer_, &QTimer::timeout, &socket_, [this] { callOut(); });
}

void Beacon::begin(std::chrono::milliseconds interval, std::function<void()> called) {
    called_ = std::move(called);
    timer_.start(interval);
    callOut();
}

void Beacon::callOut() {
    // Shared, so that two apps on one machine hear each other.
    if (socket_.state() != QAbstractSocket::BoundState)
        isListening_ = socket_.bind(QHostAddress::AnyIPv4, port_,
                                    QUdpSocket::ShareAddress | QUdpSocket::ReuseAddressHint);
    const std::vector<QHostAddress> everyone = everybody();
    isInNetwork_ = !everyone.empty();
    if (isListening_) {
        for (const QHostAddress& address : everyone)
            answer(address);
        // Everybody on this machine (RFC 1122, section 3.2.1.3).
        answer(QHostAddress(QStringLiteral("127.255.255.255")));
    }
    called_();
}

void Beacon::answer(const QHostAddress& address) {
    // What does not arrive is said again at the next call.
    socket_.writeDatagram(call_.datagram(), address, port_);
}

void Beacon::hear() {
    for (int i = 0; i < kMostAtOnce && socket_.hasPendingDatagrams(); ++i) {
        const QNetworkDatagram datagram = socket_.receiveDatagram(kMostBytes + 1);
        const auto call = Call::read(datagram.data());
        if (!call || call->mark != call_.mark || call->device == call_.device) continue;
        heard_(call->device, datagram.senderAddress(), call->port);
    }
}

}  // namespace cinder::platform
