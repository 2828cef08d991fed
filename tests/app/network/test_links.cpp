#include <catch2/catch.hpp>

#include <algorithm>
#include <memory>
#include <string>
#include <vector>

#include <QHostAddress>

#include "crew.h"
#include "member.h"
#include "network/links.h"
#include "network/listener.h"

using namespace cinder;
using platform::Links;
using platform::Listener;
using samples::Cable;
using samples::Device;
using samples::Member;
using samples::waitFor;

namespace {

const QHostAddress kHere(QHostAddress::LocalHost);
const sync::CrewKey kKey{1, 2, 3};

/// A device whose links are made by hand.
struct Knot : Device {
    explicit Knot(const char* holder)
        : Device(samples::kMorning),
          links(*store, *session, kKey, holder, {[this] { ++changes; }, [this] { ++additions; }}),
          listener([this](qintptr descriptor) { links.accept(descriptor); }) {
        REQUIRE(listener.begin());
    }
    void dial(const Knot& other, std::uint16_t port) {
        links.dial(other.store->device(), kHere, port);
    }
    void dial(const Knot& other) { dial(other, other.listener.serverPort()); }
    [[nodiscard]] bool isUpToDateWith(const Knot& other) const {
        for (const auto& one : links.others())
            if (one.device == other.store->device())
                return one.isInReach && one.peer.standing == sync::Standing::UpToDate;
        return false;
    }
    [[nodiscard]] EventId note() {
        const auto event = session->importEvent(samples::orchard());
        REQUIRE(event);
        links.noteAdded({*event});
        return *event;
    }
    [[nodiscard]] std::size_t operations(const EventId& event) const {
        return store->read(event).value().size();
    }

    int changes = 0;
    int additions = 0;
    Links links;
    Listener listener;
};

}  // namespace

TEST_CASE("what comes over one link goes on over the others") {
    Knot first("Nora");
    Knot between("Bo");
    Knot last("Ada");
    first.dial(between);
    between.dial(last);
    REQUIRE(waitFor([&] {
        return first.isUpToDateWith(between) && between.isUpToDateWith(first) &&
               last.isUpToDateWith(between);
    }));

    const EventId event = first.note();

    REQUIRE(waitFor([&] { return last.operations(event) == first.operations(event); }));
    CHECK(last.store->read(event).value() == first.store->read(event).value());
    CHECK(last.additions > 0);
    CHECK(first.additions == 0);
    CHECK_FALSE(first.links.has(last.store->device()));
}

TEST_CASE("a link that is cut is taken up where it was") {
    Knot one("Nora");
    Knot other("Bo");
    Cable cable(other.listener.serverPort());
    one.dial(other, cable.port());
    REQUIRE(waitFor([&] { return one.isUpToDateWith(other) && other.isUpToDateWith(one); }));

    cable.cut();
    REQUIRE(waitFor([&] {
        return !one.links.has(other.store->device()) && !other.links.has(one.store->device());
    }));
    REQUIRE(one.links.others().size() == 1);
    CHECK_FALSE(one.links.others()[0].isInReach);
    CHECK(one.links.others()[0].holder == "Bo");
    const EventId event = one.note();
    one.clock.advance(std::chrono::minutes{3});
    CHECK(one.links.others()[0].lastSeen == samples::kMorning);
    CHECK(other.operations(event) == 0);

    one.dial(other, cable.port());
    REQUIRE(waitFor([&] { return other.operations(event) == one.operations(event); }));
    CHECK(waitFor([&] { return one.isUpToDateWith(other) && other.isUpToDateWith(one); }));
    CHECK(one.links.others()[0].lastSeen == one.clock.wall());
}

TEST_CASE("a link that is cut in the middle of a long message loses nothing") {
    Knot one("Nora");
    Knot other("Bo");
    const EventId event = one.note();
    Cable cable(other.listener.serverPort());

    // Cut a little later each time, until all of it came through.
    std::int64_t most = 2'000;
    for (int cuts = 0; cuts < 100 && !other.isUpToDateWith(one); ++cuts, most += 4'000) {
        const std::int64_t before = cable.bytes();
        one.dial(other, cable.port());
        REQUIRE(
            waitFor([&] { return cable.bytes() - before > most || other.isUpToDateWith(one); }));
        if (other.isUpToDateWith(one)) break;
        cable.cut();
        REQUIRE(waitFor([&] {
            return !one.links.has(other.store->device()) && !other.links.has(one.store->device());
        }));
    }
    CHECK(other.store->read(event).value() == one.store->read(event).value());
    CHECK_FALSE(other.store->verify().value());
}

TEST_CASE("two ways to the same device become one link") {
    Knot one("Nora");
    Knot other("Bo");
    Cable cable(other.listener.serverPort());
    one.dial(other, cable.port());
    one.dial(other);
    REQUIRE(waitFor([&] { return one.isUpToDateWith(other) && other.isUpToDateWith(one); }));
    // Once there is a link, none is begun.
    one.dial(other, cable.port());
    one.dial(other);

    const EventId event = other.note();
    REQUIRE(waitFor([&] { return one.operations(event) == other.operations(event); }));
    CHECK(one.links.others().size() == 1);
    CHECK(other.links.others().size() == 1);
}

TEST_CASE("eight devices are in touch, a ninth is not, and none is there twice") {
    Knot here("Nora");
    std::vector<std::unique_ptr<Member>> members;
    for (int i = 0; i < 8; ++i) {
        members.push_back(std::make_unique<Member>(kKey, here.listener.serverPort()));
        REQUIRE(waitFor([&] { return members.back()->isOpen(); }));
        members.back()->greet("device" + std::to_string(i));
    }
    REQUIRE(waitFor([&] { return here.links.others().size() == 8; }));

    Member ninth(kKey, here.listener.serverPort());
    REQUIRE(waitFor([&] { return ninth.isOpen(); }));
    ninth.greet("device8");
    REQUIRE(waitFor([&] { return ninth.isOver(); }));
    Member again(kKey, here.listener.serverPort());
    REQUIRE(waitFor([&] { return again.isOpen(); }));
    again.greet("device3");
    REQUIRE(waitFor([&] { return again.isOver(); }));
    Member self(kKey, here.listener.serverPort());
    REQUIRE(waitFor([&] { return self.isOpen(); }));
    self.greet(here.store->device().text());
    REQUIRE(waitFor([&] { return self.isOver(); }));

    for (const auto& member : members)
        CHECK(member->isOpen());
    CHECK(here.links.others().size() == 8);
}

TEST_CASE("who only stands in the door gives way to who comes later") {
    Knot here("Nora");
    Knot other("Bo");
    std::vector<std::unique_ptr<QTcpSocket>> mutes;
    for (int i = 0; i < 40; ++i) {
        mutes.push_back(std::make_unique<QTcpSocket>());
        mutes.back()->connectToHost(kHere, here.listener.serverPort());
    }
    const auto open = [&] {
        return static_cast<std::size_t>(std::count_if(mutes.begin(), mutes.end(), [](auto& one) {
            return one->state() != QAbstractSocket::UnconnectedState;
        }));
    };
    // Not all at once, as they would go when they stood there for too long.
    REQUIRE(waitFor([&] { return open() <= Links::kMostKnocking; }));
    CHECK(open() == Links::kMostKnocking);
    CHECK(mutes.back()->state() == QAbstractSocket::ConnectedState);

    other.dial(here);
    CHECK(waitFor([&] { return here.isUpToDateWith(other) && other.isUpToDateWith(here); }));
}

TEST_CASE("a device whose link fell silent is let in anew") {
    Knot here("Nora");
    Member silent(kKey, here.listener.serverPort());
    REQUIRE(waitFor([&] { return silent.isOpen(); }));
    silent.greet("phone");
    REQUIRE(waitFor([&] { return here.links.has(DeviceId{"phone"}); }));
    Member old(kKey, here.listener.serverPort());
    REQUIRE(waitFor([&] { return old.isOpen(); }));
    old.greet("tablet");
    REQUIRE(waitFor([&] { return here.links.has(DeviceId{"tablet"}); }));

    // It went out of reach without a word and came back: turned away as long as the old link may
    // be alive, which is less than the silence that ends a link by itself.
    std::unique_ptr<Member> back;
    bool hasGreeted = false;
    REQUIRE(waitFor([&] {
        if (!back || back->isOver()) {
            back = std::make_unique<Member>(kKey, here.listener.serverPort());
            hasGreeted = false;
        } else if (back->isOpen() && !hasGreeted) {
            back->greet("tablet");
            hasGreeted = true;
        }
        return old.isOver();
    }));
    CHECK(back->isOpen());
    CHECK(silent.isOpen());
    CHECK(here.links.has(DeviceId{"tablet"}));
    CHECK(here.links.others().size() == 2);
}

TEST_CASE("a device with a newer app stays in reach, so that it can be named") {
    Knot here("Nora");
    Member newer(kKey, here.listener.serverPort());
    REQUIRE(waitFor([&] { return newer.isOpen(); }));
    newer.say(sync::write(sync::Greet{sync::kVersion + 1, DeviceId{"tablet"}, "Bo"}));
    REQUIRE(waitFor([&] { return here.links.has(DeviceId{"tablet"}); }));
    REQUIRE(here.links.others().size() == 1);
    CHECK(here.links.others()[0].peer.standing == sync::Standing::OtherVersion);

    // Nothing is asked that it could answer, but each end shows that it is there.
    const auto before = newer.heard().size();
    here.links.beat();
    newer.say({});
    REQUIRE(waitFor([&] { return newer.heard().size() == before + 4; }));
    CHECK(newer.isOpen());
}

TEST_CASE("who has the key and makes no sense is shown out, and nothing comes of it") {
    Knot here("Nora");
    Knot other("Bo");
    other.dial(here);
    REQUIRE(waitFor([&] { return here.isUpToDateWith(other); }));
    for (const std::string& nonsense :
         {std::string(1, '\0'), std::string(5000, '\xff'), std::string("{}"),
          sync::write(sync::Greet{}).substr(0, 9)}) {
        Member member(kKey, here.listener.serverPort());
        REQUIRE(waitFor([&] { return member.isOpen(); }));
        member.say(nonsense);
        CHECK(waitFor([&] { return member.isOver(); }));
    }
    CHECK(here.store->events().value().empty());
    CHECK(here.links.others().size() == 1);

    const EventId event = here.note();
    CHECK(waitFor([&] { return other.operations(event) == here.operations(event); }));
}
