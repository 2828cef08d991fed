#include "network/link.h"

#include <algorithm>
#include <array>
#include <utility>

#include <QHostAddress>
#include <QNetworkProxy>
#include <QSslCipher>
#include <QSslConfiguration>
#include <QSslPreSharedKeyAuthenticator>
#include <QtEndian>

#include "sync/message.h"

namespace cinder::platform {

namespace {

/// By its name in OpenSSL; RFC 7905 calls it TLS_ECDHE_PSK_WITH_CHACHA20_POLY1305_SHA256.
constexpr const char* kCipher = "ECDHE-PSK-CHACHA20-POLY1305";
/// A device that lets more wait than this has gone, or takes nothing. Our choice: two messages.
constexpr qint64 kMostWaiting = 2 * static_cast<qint64>(sync::kMostBytes);
constexpr qsizetype kHead = sizeof(quint32);

/// Empty where the library has no such cipher.
QList<QSslCipher> ciphers() {
    QList<QSslCipher> found = QSslConfiguration::supportedCiphers();
    found.removeIf([](const QSslCipher& one) { return one.name() != QLatin1String(kCipher); });
    return found;
}

/// The key proves who the other one is; there is no certificate to look at.
QSslConfiguration guarded() {
    QSslConfiguration configuration;
    // Or the certificates of the whole system are read at every handshake.
    configuration.setCaCertificates({});
    configuration.setProtocol(QSsl::TlsV1_2);
    configuration.setPeerVerifyMode(QSslSocket::VerifyNone);
    configuration.setCiphers(ciphers());
    return configuration;
}

}  // namespace

Link::Link(const sync::CrewKey& key, Ways ways)
    : key_(reinterpret_cast<const char*>(key.data()), static_cast<qsizetype>(key.size())),
      ways_(std::move(ways)) {
    guard();
    // An HTTP proxy is of no use on the grass, and must not learn who is there.
    socket_.setProxy(QNetworkProxy::NoProxy);
    patience_.setSingleShot(true);
    QObject::connect(&patience_, &QTimer::timeout, &socket_, [this] { hangUp(); });
    QObject::connect(&socket_, &QSslSocket::encrypted, &socket_, [this] { open(); });
    QObject::connect(&socket_, &QSslSocket::readyRead, &socket_, [this] { take(); });
    QObject::connect(&socket_, &QSslSocket::errorOccurred, &socket_, [this] { hangUp(); });
    QObject::connect(&socket_, &QSslSocket::disconnected, &socket_, [this] { hangUp(); });
}

Link::~Link() {
    isOver_ = true;
    socket_.disconnect();
    socket_.abort();
}

bool Link::isPossible() {
    return QSslSocket::supportsSsl() && !ciphers().isEmpty();
}

void Link::guard() {
    socket_.setSslConfiguration(guarded());
    QObject::connect(&socket_, &QSslSocket::preSharedKeyAuthenticationRequired, &socket_,
                     [this](QSslPreSharedKeyAuthenticator* asked) {
                         asked->setIdentity(QByteArrayLiteral("cinderbell"));
                         asked->setPreSharedKey(key_);
                     });
}

void Link::dial(const QHostAddress& address, std::uint16_t port) {
    patience_.start(kMostHandshake);
    socket_.connectToHostEncrypted(address.toString(), port);
}

void Link::accept(qintptr descriptor) {
    patience_.start(kMostHandshake);
    if (!socket_.setSocketDescriptor(descriptor)) return hangUp();
    socket_.startServerEncryption();
}

std::chrono::milliseconds Link::silence() const {
    return isOpen() ? kMostSilence - patience_.remainingTimeAsDuration()
                    : std::chrono::milliseconds{0};
}

void Link::open() {
    isOpen_ = true;
    // A tick is a few hundred bytes that somebody waits for.
    socket_.setSocketOption(QAbstractSocket::LowDelayOption, 1);
    patience_.start(kMostSilence);
    ways_.opened();
}

void Link::send(std::string_view bytes) {
    if (!isOpen()) return;
    const qint64 waiting = socket_.bytesToWrite() + socket_.encryptedBytesToWrite();
    if (bytes.size() > sync::kMostBytes ||
        waiting + static_cast<qint64>(bytes.size()) > kMostWaiting)
        return hangUp();
    std::array<char, kHead> head{};
    qToBigEndian(static_cast<quint32>(bytes.size()), head.data());
    socket_.write(head.data(), kHead);
    socket_.write(bytes.data(), static_cast<qint64>(bytes.size()));
}

void Link::take() {
    if (!isOpen()) return;
    patience_.start(kMostSilence);
    heard_ += socket_.readAll();
    qsizetype read = 0;
    while (!isOver_ && heard_.size() - read >= kHead) {
        const auto length = qFromBigEndian<quint32>(heard_.constData() + read);
        if (length > sync::kMostBytes) return hangUp();
        if (heard_.size() - read - kHead < static_cast<qsizetype>(length)) break;
        if (length > 0) ways_.received({heard_.constData() + read + kHead, length});
        read += kHead + static_cast<qsizetype>(length);
    }
    heard_.remove(0, read);
}

void Link::hangUp() {
    if (std::exchange(isOver_, true)) return;
    patience_.stop();
    socket_.disconnect();
    socket_.abort();
    ways_.ended();
}

}  // namespace cinder::platform
