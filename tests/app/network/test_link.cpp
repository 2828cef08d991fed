#include <catch2/catch.hpp>

#include <memory>
#include <string>
#include <vector>

#include <QHostAddress>
#include <QSslCipher>
#include <QSslConfiguration>

#include "member.h"
#include "network/link.h"
#include "network/listener.h"
#include "wire.h"

using namespace cinder;
using namespace std::chrono_literals;
using platform::Link;
using platform::Listener;
using samples::Member;
using samples::waitFor;

namespace {

sync::CrewKey keyOf(std::uint8_t first) {
    sync::CrewKey key{};
    key[0] = first;
    return key;
}

/// One end, and all that became of it.
struct End {
    explicit End(std::uint8_t key)
        : link(keyOf(key), {[this] { isOpened = true; },
                            [this](std::string_view bytes) { received.emplace_back(bytes); },
                            [this] { ++ends; }}) {}
    bool isOpened = false;
    int ends = 0;
    std::vector<std::string> received;
    Link link;
};

/// Takes what comes in with one key.
struct Door {
    explicit Door(std::uint8_t key = 1)
        : listener([this, key](qintptr descriptor) {
              ends.push_back(std::make_unique<End>(key));
              ends.back()->link.accept(descriptor);
          }) {
        REQUIRE(listener.begin());
    }
    [[nodiscard]] std::uint16_t port() const { return listener.serverPort(); }
    std::vector<std::unique_ptr<End>> ends;
    Listener listener;
};

const QHostAddress kHere(QHostAddress::LocalHost);

std::string long_(std::size_t bytes) {
    std::string text(bytes, '\0');
    for (std::size_t i = 0; i < bytes; ++i)
        text[i] = static_cast<char>(i * 31 + i / 251);
    return text;
}

}  // namespace

TEST_CASE("messages arrive whole and in order, whatever their length") {
    Door door;
    End end(1);
    end.link.dial(kHere, door.port());
    REQUIRE(waitFor([&] { return end.isOpened && !door.ends.empty() && door.ends[0]->isOpened; }));
    End& there = *door.ends[0];

    const std::vector<std::string> said = {"first", long_(1), long_(70'000),
                                           long_(sync::kMostBytes), "last"};
    for (const auto& one : said)
        end.link.send(one);
    there.link.send({});  // no message
    there.link.send("the other way");

    REQUIRE(waitFor([&] { return there.received.size() == said.size(); }));
    CHECK(there.received == said);
    REQUIRE(waitFor([&] { return !end.received.empty(); }));
    CHECK(end.received == std::vector<std::string>{"the other way"});

    end.link.hangUp();
    REQUIRE(waitFor([&] { return there.ends == 1; }));
    CHECK(end.ends == 1);
    CHECK(there.link.isOver());
}

TEST_CASE("who has another key gets nowhere and says nothing") {
    Door door;
    End end(2);
    end.link.dial(kHere, door.port());
    end.link.send("let me in");

    REQUIRE(
        waitFor([&] { return end.ends == 1 && !door.ends.empty() && door.ends[0]->ends == 1; }));
    CHECK_FALSE(end.isOpened);
    CHECK_FALSE(door.ends[0]->isOpened);
    CHECK(door.ends[0]->received.empty());
}

TEST_CASE("a cipher that would let the key open what was said before is refused") {
    Door door;
    // Without the ephemeral half (RFC 7905, section 2).
    Member member(keyOf(1), door.port(), "PSK-CHACHA20-POLY1305");
    REQUIRE(member.socket().sslConfiguration().ciphers().size() == 1);

    REQUIRE(
        waitFor([&] { return member.isOver() && !door.ends.empty() && door.ends[0]->ends == 1; }));
    CHECK_FALSE(door.ends[0]->isOpened);
}

TEST_CASE("who speaks TLS without the key gets nowhere") {
    Door door;
    QSslSocket plain;
    plain.setPeerVerifyMode(QSslSocket::VerifyNone);
    plain.connectToHostEncrypted(QStringLiteral("127.0.0.1"), door.port());

    REQUIRE(waitFor([&] {
        return plain.state() == QAbstractSocket::UnconnectedState && !door.ends.empty() &&
               door.ends[0]->ends == 1;
    }));
    CHECK_FALSE(door.ends[0]->isOpened);
}

TEST_CASE("where nobody listens a link ends") {
    std::uint16_t port = 0;
    {
        const Door door;
        port = door.port();
    }
    End end(1);
    end.link.dial(kHere, port);
    CHECK(waitFor([&] { return end.ends == 1; }));
}

TEST_CASE("a message may come a byte at a time") {
    Door door;
    Member member(keyOf(1), door.port());
    REQUIRE(waitFor([&] { return member.isOpen(); }));
    CHECK(member.socket().sessionCipher().name() == QLatin1String("ECDHE-PSK-CHACHA20-POLY1305"));

    for (const char c : std::string("\0\0\0\3abc\0\0\0\2de", 13)) {
        member.write(QByteArray(1, c));
        member.socket().flush();
        (void)waitFor([] { return true; });
    }
    REQUIRE(waitFor([&] { return door.ends[0]->received.size() == 2; }));
    CHECK(door.ends[0]->received == std::vector<std::string>{"abc", "de"});

    door.ends[0]->link.send("back");
    REQUIRE(waitFor([&] { return member.heard().size() == 8; }));
    CHECK(member.heard() == QByteArray("\0\0\0\4back", 8));
}

TEST_CASE("a message that claims to be longer than any is not waited for") {
    Door door;
    Member member(keyOf(1), door.port());
    REQUIRE(waitFor([&] { return member.isOpen(); }));
    // One byte more than sync::kMostBytes, which is 2 to the power of 24.
    member.write(QByteArray("\1\0\0\1", 4));
    // Never silent for long: what ends it is the length.
    REQUIRE(waitFor([&] {
        member.write(QByteArray(1, 'x'));
        return door.ends[0]->ends == 1;
    }));
    CHECK(door.ends[0]->received.empty());
}

TEST_CASE("what waits for a device that takes nothing does not grow without end") {
    Door door;
    End end(1);
    end.link.dial(kHere, door.port());
    REQUIRE(waitFor([&] { return end.isOpened; }));

    // Nothing leaves before the event loop runs.
    const std::string much = long_(sync::kMostBytes);
    end.link.send(much);
    CHECK_FALSE(end.link.isOver());
    end.link.send(much);
    CHECK(end.link.isOver());
    CHECK(end.ends == 1);
}

TEST_CASE("who knocks and says nothing, and who came in and says nothing more, is shown out") {
    Door door;
    QTcpSocket mute;
    mute.connectToHost(kHere, door.port());
    Member member(keyOf(1), door.port());
    REQUIRE(waitFor([&] { return member.isOpen() && door.ends.size() == 2; }));
    REQUIRE(waitFor([&] { return mute.state() == QAbstractSocket::ConnectedState; }));

    constexpr auto kMuch = 60s;  // of which a quarter is needed
    REQUIRE(waitFor([&] { return mute.state() == QAbstractSocket::UnconnectedState; }, kMuch));
    REQUIRE(waitFor([&] { return member.isOver(); }, kMuch));
    for (const auto& one : door.ends)
        CHECK(one->ends == 1);
}
