#include <catch2/catch.hpp>

#include <vector>

#include <QNetworkDatagram>

#include "base/rng.h"
#include "network/beacon.h"
#include "wire.h"

using namespace cinder;
using namespace std::chrono_literals;
using platform::Beacon;
using platform::Call;
using samples::ownPort;
using samples::waitFor;

namespace {

const Call kCall{"0123456789abcdef", DeviceId{"fedcba9876543210"}, 50'000};
const QHostAddress kEverybody(QStringLiteral("127.255.255.255"));

struct Ear {
    Beacon::Heard heard() {
        return [this](const DeviceId& device, const QHostAddress&, std::uint16_t port) {
            calls.push_back({{}, device, port});
        };
    }
    std::vector<Call> calls;
};

}  // namespace

TEST_CASE("a call is read as it was written") {
    CHECK(Call::read(kCall.datagram()) == kCall);
    CHECK(kCall.datagram() == "cinderbell 1 0123456789abcdef fedcba9876543210 50000\n");
}

TEST_CASE("a datagram that is no call is none") {
    const QByteArray sound = kCall.datagram();
    for (const auto& bytes :
         {QByteArray(), QByteArray("\n"), QByteArray(9000, 'x'), QByteArray(64, '\0'), sound + "x",
          sound + sound, sound.chopped(1), QByteArray("cinderbell 2 a b 1\n"),
          QByteArray("cinderbell 1 a b 0\n"), QByteArray("cinderbell 1 a b 65536\n"),
          QByteArray("cinderbell 1 a b -1\n"), QByteArray("cinderbell 1 a b +1\n"),
          QByteArray("cinderbell 1 a  1\n"), QByteArray("cinderbell 1 a b 1 \n"),
          QByteArray("cinderbell 1 a b\xc3\xa9 1\n")})
        CHECK_FALSE(Call::read(bytes));
    for (qsizetype i = 0; i < sound.size(); ++i)
        CHECK_FALSE(Call::read(sound.left(i)));
}

TEST_CASE("whatever is made of a call is read as what it says or not at all") {
    Rng rng(1);
    for (int i = 0; i < 20'000; ++i) {
        QByteArray bytes = kCall.datagram();
        for (std::uint32_t changes = 1 + rng.below(3); changes > 0; --changes)
            bytes[rng.below(static_cast<std::uint32_t>(bytes.size()))] =
                static_cast<char>(rng.below(256));
        // A number may have noughts in front.
        if (const auto call = Call::read(bytes)) CHECK(Call::read(call->datagram()) == call);
    }
}

TEST_CASE("a beacon hears the others of its mark and nothing else") {
    if (!samples::canCallOut()) return;
    Ear ear;
    Beacon beacon(ownPort(), {"aaaa", DeviceId{"1"}, 1001}, ear.heard());
    Ear deaf;
    Beacon other(ownPort(), {"bbbb", DeviceId{"2"}, 1002}, deaf.heard());
    int called = 0;
    other.begin(50ms, [&] { ++called; });
    beacon.begin(50ms, [] {});
    CHECK(called == 1);
    CHECK(beacon.isListening());

    QUdpSocket anybody;
    Rng rng(2);
    for (int i = 0; i < 200; ++i) {
        QByteArray noise(rng.below(2000), '\0');
        for (char& c : noise)
            c = static_cast<char>(rng.below(256));
        anybody.writeDatagram(noise, kEverybody, ownPort());
    }
    // Again and again: where there is much noise, something may be lost.
    REQUIRE(waitFor([&] {
        anybody.writeDatagram(Call{"aaaa", DeviceId{"1"}, 1003}.datagram(), kEverybody, ownPort());
        anybody.writeDatagram(Call{"aaaa", DeviceId{"3"}, 1004}.datagram(), kEverybody, ownPort());
        return !ear.calls.empty() && called > 3;
    }));
    for (const Call& call : ear.calls)
        CHECK(call == Call{{}, DeviceId{"3"}, 1004});
    CHECK(deaf.calls.empty());
}

TEST_CASE("a beacon waits for its port as long as another program has it") {
    if (!samples::canCallOut()) return;
    QUdpSocket another;
    REQUIRE(another.bind(QHostAddress::AnyIPv4, ownPort(), QUdpSocket::DontShareAddress));
    Ear ear;
    Beacon beacon(ownPort(), {"aaaa", DeviceId{"1"}, 1001}, ear.heard());
    beacon.begin(50ms, [] {});
    CHECK_FALSE(beacon.isListening());

    another.close();
    REQUIRE(waitFor([&] { return beacon.isListening(); }));
    another.writeDatagram(Call{"aaaa", DeviceId{"3"}, 1004}.datagram(), kEverybody, ownPort());
    CHECK(waitFor([&] { return !ear.calls.empty(); }));
}
