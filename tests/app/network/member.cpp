#include "member.h"

#include <QHostAddress>
#include <QSslCipher>
#include <QSslConfiguration>
#include <QSslPreSharedKeyAuthenticator>

namespace samples {

Member::Member(const sync::CrewKey& key, std::uint16_t port, const char* cipher)
    : key_(reinterpret_cast<const char*>(key.data()), static_cast<qsizetype>(key.size())) {
    QSslConfiguration configuration;
    configuration.setCaCertificates({});
    configuration.setProtocol(QSsl::TlsV1_2);
    configuration.setPeerVerifyMode(QSslSocket::VerifyNone);
    configuration.setCiphers(QString::fromLatin1(cipher));
    socket_.setSslConfiguration(configuration);
    QObject::connect(&socket_, &QSslSocket::preSharedKeyAuthenticationRequired, &socket_,
                     [this](QSslPreSharedKeyAuthenticator* asked) {
                         asked->setIdentity("cinderbell");
                         asked->setPreSharedKey(key_);
                     });
    QObject::connect(&socket_, &QSslSocket::readyRead, &socket_,
                     [this] { heard_ += socket_.readAll(); });
    socket_.connectToHostEncrypted(QStringLiteral("127.0.0.1"), port);
}

void Member::say(const std::string& bytes) {
    const auto length = static_cast<std::uint32_t>(bytes.size());
    for (const unsigned shift : {24U, 16U, 8U, 0U})
        socket_.write(QByteArray(1, static_cast<char>((length >> shift) & 0xFFU)));
    socket_.write(bytes.data(), static_cast<qint64>(bytes.size()));
}

void Member::greet(const std::string& device) {
    say(sync::write(sync::Greet{sync::kVersion, DeviceId{device}, "somebody"}));
}

}  // namespace samples
