// Somebody else is in the same network: without the key nothing can be read, written or stopped.

#include <catch2/catch.hpp>

#include <memory>
#include <vector>

#include <QHostAddress>
#include <QNetworkDatagram>
#include <QUdpSocket>

#include "base/rng.h"
#include "crew.h"
#include "member.h"
#include "network/beacon.h"
#include "network/links.h"

using namespace cinder;
using platform::Call;
using samples::Member;
using samples::pair;
using samples::stateOf;
using samples::Tablet;
using samples::waitFor;

namespace {

const TaskId kFirst{"unload"};
const QHostAddress kHere(QHostAddress::LocalHost);

/// Hears what every device of the network calls out.
class Eavesdropper {
  public:
    Eavesdropper() {
        REQUIRE(socket_.bind(QHostAddress::AnyIPv4, samples::ownPort(),
                             QUdpSocket::ShareAddress | QUdpSocket::ReuseAddressHint));
    }
    [[nodiscard]] Call callOf(const Tablet& tablet) {
        std::optional<Call> found;
        REQUIRE(waitFor([&] {
            while (socket_.hasPendingDatagrams() && !found) {
                found = Call::read(socket_.receiveDatagram().data());
                if (found && found->device != tablet.store->device()) found.reset();
            }
            return found.has_value();
        }));
        return *found;
    }
    void callOut(const Call& call) {
        socket_.writeDatagram(call.datagram(), QHostAddress(QStringLiteral("127.255.255.255")),
                              samples::ownPort());
    }

  private:
    QUdpSocket socket_;
};

/// Two devices in the middle of a day.
struct Crew {
    Crew() {
        pair(nora, bo);
        const auto planned = nora.session->importEvent(samples::orchard());
        REQUIRE(planned);
        event = *planned;
        REQUIRE(waitFor([&] { return bo.operations() == nora.operations() && bo.additions > 0; }));
        REQUIRE(bo.session->open(event));
    }
    /// What is done on one is on the other.
    [[nodiscard]] bool goesOn() {
        REQUIRE(nora.session->start(kFirst));
        return waitFor([&] { return stateOf(bo, kFirst) == live::TaskState::Running; });
    }
    Tablet nora{"Nora"};
    Tablet bo{"Bo"};
    EventId event;
};

}  // namespace

TEST_CASE("another code is another crew: nothing is read and nothing written") {
    if (!samples::canCallOut()) return;
    Crew crew;
    Tablet stranger("stranger");
    REQUIRE(stranger.network->begin());
    Eavesdropper ear;
    // Far more calls than it takes to find each other.
    for (int i = 0; i < 10; ++i)
        (void)ear.callOf(stranger);

    CHECK(stranger.network->others().empty());
    CHECK(stranger.operations() == 0);
    CHECK(crew.nora.network->others().size() == 1);
    CHECK(crew.goesOn());
}

TEST_CASE("who calls out the mark of a crew without its key is not let in") {
    if (!samples::canCallOut()) return;
    Crew crew;
    Eavesdropper ear;
    const Call call = ear.callOf(crew.nora);
    const std::size_t had = crew.nora.operations();

    Member guess(sync::CrewKey{1, 2, 3}, call.port);
    REQUIRE(waitFor([&] { return guess.isOver(); }));
    CHECK_FALSE(guess.isOpen());
    CHECK(guess.heard().isEmpty());

    // Lured to ports where somebody else answers, or nobody: by the first name there is, and by the
    // last, so that each device goes and waits in turn.
    QTcpServer trap;
    REQUIRE(trap.listen(QHostAddress::AnyIPv4));
    for (const char* name : {"0", "zzzz"})
        for (const std::uint16_t port : {trap.serverPort(), std::uint16_t{1}})
            for (int i = 0; i < 20; ++i)
                ear.callOut({call.mark, DeviceId{name}, port});
    REQUIRE(waitFor([&] { return trap.hasPendingConnections(); }));

    CHECK(crew.nora.operations() == had);
    CHECK(crew.nora.network->others().size() == 1);
    CHECK(crew.goesOn());
}

TEST_CASE("noise, silence and endless lengths change nothing, and the crew goes on") {
    if (!samples::canCallOut()) return;
    Crew crew;
    Eavesdropper ear;
    const std::uint16_t port = ear.callOf(crew.nora).port;
    Rng rng(1);
    QByteArray noise(100'000, '\0');
    for (char& c : noise)
        c = static_cast<char>(rng.below(256));
    const std::vector<QByteArray> said = {
        noise, QByteArray("\xff\xff\xff\xff", 4), QByteArray("GET / HTTP/1.1\r\n\r\n"),
        // A TLS record (RFC 5246, section 6.2.1) that announces more than it brings.
        QByteArray("\x16\x03\x01\x3f\xff\x01", 6)};

    std::vector<std::unique_ptr<QTcpSocket>> strangers;
    for (int i = 0; i < 40; ++i) {
        auto socket = std::make_unique<QTcpSocket>();
        socket->connectToHost(kHere, port);
        // Half of them say nothing at all.
        if (i % 2 == 0) socket->write(said[static_cast<std::size_t>(i / 2) % said.size()]);
        strangers.push_back(std::move(socket));
    }
    // The first gave way to those who came later.
    REQUIRE(waitFor([&] {
        std::size_t open = 0;
        for (const auto& one : strangers)
            if (one->state() != QAbstractSocket::UnconnectedState) ++open;
        return open <= platform::Links::kMostKnocking;
    }));

    CHECK(crew.goesOn());
    CHECK(crew.nora.network->others().size() == 1);

    // While some still stand in the door, a device that comes back is let in.
    crew.bo.closeNetwork();
    REQUIRE(waitFor([&] { return crew.nora.inReach() == 0; }));
    crew.bo.openNetwork();
    CHECK(waitFor([&] { return crew.nora.isUpToDate(1) && crew.bo.isUpToDate(1); }));
}
