#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

#include <sqlite3.h>

#include <QHostAddress>
#include <QSslSocket>
#include <QUdpSocket>

#include "crew.h"

using namespace cinder;
using face::CrewDevices;
using platform::CrewNetwork;
using samples::pair;
using samples::stateOf;
using samples::Tablet;
using samples::waitFor;

namespace {

const TaskId kFirst{"unload"};

EventId planOrchard(Tablet& on) {
    const auto event = on.session->importEvent(samples::orchard());
    REQUIRE(event);
    return *event;
}

/// The same operations, in the same order.
bool haveSame(const Tablet& one, const Tablet& other, const EventId& event) {
    return one.store->read(event).value() == other.store->read(event).value();
}

}  // namespace

TEST_CASE("devices with the same code find each other and have all of both") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    CHECK_FALSE(nora.network->isJoined());
    CHECK(nora.network->code().empty());
    CHECK(nora.network->others().empty());
    CHECK(nora.network->trouble() == CrewDevices::Trouble::None);

    pair(nora, bo);

    CHECK(bo.network->isJoined());
    CHECK(bo.network->code() == nora.network->code());
    const auto others = nora.network->others();
    REQUIRE(others.size() == 1);
    CHECK(others[0].device == bo.store->device());
    CHECK(others[0].holder == "Bo");
    CHECK(others[0].isInReach);
    CHECK(others[0].lastSeen == nora.clock.wall());
    CHECK(bo.network->others().at(0).holder == "Nora");
    CHECK(nora.network->trouble() == CrewDevices::Trouble::None);
    CHECK(nora.changes > 0);
    CHECK(nora.additions == 0);

    bo.network->setHolder("Ada");
    CHECK(waitFor([&] { return nora.network->others().at(0).holder == "Ada"; }));
}

TEST_CASE("what is planned and done on one device is on the board of the other") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    pair(nora, bo);

    const EventId event = planOrchard(nora);
    CHECK(bo.additions == 0);  // not from within a call
    REQUIRE(waitFor([&] { return bo.additions > 0 && haveSame(nora, bo, event); }));
    REQUIRE(bo.session->open(event));

    REQUIRE(nora.session->start(kFirst));
    REQUIRE(waitFor([&] { return stateOf(bo, kFirst) == live::TaskState::Running; }));
    REQUIRE(bo.session->finish(kFirst));
    REQUIRE(waitFor([&] { return stateOf(nora, kFirst) == live::TaskState::Done; }));
    CHECK(haveSame(nora, bo, event));
    CHECK_FALSE(bo.store->verify().value());
}

TEST_CASE("what was noted apart is on both once they meet") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    pair(nora, bo);
    const EventId event = planOrchard(nora);
    REQUIRE(waitFor([&] { return haveSame(nora, bo, event); }));
    REQUIRE(bo.session->open(event));

    bo.closeNetwork();
    REQUIRE(waitFor([&] { return nora.inReach() == 0; }));
    REQUIRE(nora.network->others().size() == 1);
    REQUIRE(nora.session->start(kFirst));
    nora.clock.advance(std::chrono::minutes{1});
    bo.clock.advance(std::chrono::minutes{1});
    REQUIRE(bo.session->tick(kFirst, 0));
    bo.openNetwork();

    REQUIRE(waitFor([&] { return nora.isUpToDate(1) && bo.isUpToDate(1); }));
    CHECK(haveSame(nora, bo, event));
    CHECK(stateOf(bo, kFirst) == live::TaskState::Running);
}

TEST_CASE("three devices are all in touch") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    Tablet ada("Ada");
    const EventId event = planOrchard(ada);
    pair(nora, bo);
    REQUIRE(ada.network->join(nora.network->code()));

    REQUIRE(waitFor([&] {
        return nora.isUpToDate(2) && bo.isUpToDate(2) && ada.isUpToDate(2) &&
               haveSame(nora, ada, event) && haveSame(bo, ada, event);
    }));
    REQUIRE(ada.session->start(kFirst));
    REQUIRE(nora.session->open(event));
    REQUIRE(bo.session->open(event));
    CHECK(waitFor([&] {
        return stateOf(nora, kFirst) == live::TaskState::Running &&
               stateOf(bo, kFirst) == live::TaskState::Running;
    }));
}

TEST_CASE("a device that was opened again is in its crew without a word") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    pair(nora, bo);
    CHECK(std::filesystem::exists(bo.keyFile()));

    bo.closeNetwork();
    bo.restart();
    bo.openNetwork();

    CHECK(bo.network->isJoined());
    CHECK(bo.network->code() == nora.network->code());
    CHECK(waitFor([&] { return nora.isUpToDate(1) && bo.isUpToDate(1); }));
}

TEST_CASE("who leaves is out of reach and remembers no key; what came stays") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    pair(nora, bo);
    const EventId event = planOrchard(nora);
    REQUIRE(waitFor([&] { return haveSame(nora, bo, event); }));
    const auto had = bo.operations();

    bo.network->leave();

    CHECK_FALSE(bo.network->isJoined());
    CHECK(bo.network->code().empty());
    CHECK(bo.network->others().empty());
    CHECK_FALSE(std::filesystem::exists(bo.keyFile()));
    REQUIRE(waitFor([&] { return nora.inReach() == 0; }));
    REQUIRE(nora.session->start(kFirst));
    bo.closeNetwork();
    bo.openNetwork();
    CHECK_FALSE(bo.network->isJoined());
    CHECK(bo.operations() == had);
}

TEST_CASE("a new code is a new crew") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    pair(nora, bo);
    const std::string old = nora.network->code();

    REQUIRE(nora.network->begin());
    CHECK(nora.network->code() != old);
    CHECK(nora.network->others().empty());
    REQUIRE(waitFor([&] { return bo.inReach() == 0; }));

    CHECK_FALSE(bo.network->join("1234"));
    CHECK(bo.network->code() == old);
    REQUIRE(bo.network->join(nora.network->code()));
    CHECK(waitFor([&] { return nora.isUpToDate(1) && bo.isUpToDate(1); }));
}

TEST_CASE("a damaged key is as if no code had been entered") {
    Tablet nora("Nora");
    REQUIRE(nora.network->begin());
    nora.closeNetwork();
    std::ofstream(nora.keyFile()) << "cinderbell crew 1\n";

    nora.openNetwork();

    CHECK_FALSE(nora.network->isJoined());
    CHECK(nora.network->begin());
}

TEST_CASE("a key that cannot be kept is said, and works until the app is closed") {
    if (!samples::canCallOut()) return;
    Tablet nora("Nora");
    Tablet bo("Bo");
    std::filesystem::create_directory(nora.keyFile());

    pair(nora, bo);

    CHECK(nora.network->trouble() == CrewDevices::Trouble::NotKept);
    CHECK(bo.network->trouble() == CrewDevices::Trouble::None);
}

TEST_CASE("another program at the port is said, and no longer once it is gone") {
    if (!samples::canCallOut()) return;
    QUdpSocket another;
    REQUIRE(another.bind(QHostAddress::AnyIPv4, samples::ownPort(), QUdpSocket::DontShareAddress));
    Tablet nora("Nora");
    Tablet bo("Bo");
    REQUIRE(nora.network->begin());
    CHECK(nora.network->trouble() == CrewDevices::Trouble::PortTaken);
    REQUIRE(waitFor([&] { return nora.changes == 1; }));

    another.close();
    REQUIRE(waitFor([&] { return nora.network->trouble() != CrewDevices::Trouble::PortTaken; }));
    CHECK(waitFor([&] { return nora.changes == 2; }));
    REQUIRE(bo.network->join(nora.network->code()));
    CHECK(waitFor([&] { return nora.isUpToDate(1) && bo.isUpToDate(1); }));
}

TEST_CASE("a device that lacks what links are guarded with says so, and calls nobody") {
    // Qt's backend that reads certificates and guards nothing; it can only be chosen before any.
    if (!QSslSocket::setActiveBackend(QStringLiteral("cert-only"))) {
        WARN("skipped: another test of this process has loaded the library");
        return;
    }
    Tablet nora("Nora");
    CHECK(nora.network->trouble() == CrewDevices::Trouble::None);

    REQUIRE(nora.network->begin());

    CHECK(nora.network->trouble() == CrewDevices::Trouble::NotEncrypted);
    CHECK(waitFor([&] { return nora.changes > 0; }));
    CHECK(nora.network->others().empty());
    nora.network->leave();
    CHECK(nora.network->trouble() == CrewDevices::Trouble::None);
}

TEST_CASE("with a record of a newer app nothing is exchanged") {
    Tablet nora("Nora");
    REQUIRE(nora.network->begin());
    nora.closeNetwork();
    nora.session.reset();
    nora.store.reset();
    sqlite3* database = nullptr;
    REQUIRE(sqlite3_open(nora.folder.file("day.journal").c_str(), &database) == SQLITE_OK);
    REQUIRE(sqlite3_exec(database, "PRAGMA user_version = 9999", nullptr, nullptr, nullptr) ==
            SQLITE_OK);
    sqlite3_close(database);

    nora.restart();
    nora.openNetwork();

    CHECK_FALSE(nora.network->isJoined());
    CHECK_FALSE(nora.network->begin());
    CHECK(nora.network->others().empty());
}
