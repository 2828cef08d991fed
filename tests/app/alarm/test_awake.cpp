/// Whether the screen is kept on: the real asker on a message bus of its own (dbus-run-session),
/// with a screen saver of ours at the other end.

#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <memory>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusVirtualObject>
#include <QDeadlineTimer>

#include "awake/screen_inhibitor.h"

using cinder::platform::ScreenInhibitor;

namespace {

constexpr quint32 kCookie = 4711;

/// Writes down what it is asked, and answers as the draft says: a cookie for every Inhibit.
/// Source: freedesktop.org, "Idle Inhibition Service" draft.
class ScreenSaver final : public QDBusVirtualObject {
  public:
    ScreenSaver() : bus_(QDBusConnection::connectToBus(QDBusConnection::SessionBus, kName)) {
        REQUIRE(bus_.isConnected());
        REQUIRE(bus_.registerVirtualObject(QStringLiteral("/org/freedesktop/ScreenSaver"), this));
        REQUIRE(bus_.registerService(QStringLiteral("org.freedesktop.ScreenSaver")));
    }
    ScreenSaver(const ScreenSaver&) = delete;
    ScreenSaver& operator=(const ScreenSaver&) = delete;
    ~ScreenSaver() override {
        bus_.unregisterService(QStringLiteral("org.freedesktop.ScreenSaver"));
        QDBusConnection::disconnectFromBus(kName);
    }
    [[nodiscard]] QString introspect(const QString&) const override { return {}; }
    bool handleMessage(const QDBusMessage& asked, const QDBusConnection& bus) override {
        const auto words = asked.arguments();
        if (asked.member() == QLatin1String("Inhibit")) {
            calls.push_back("hold for " + words.value(0).toString().toStdString());
            isReasonGiven = !words.value(1).toString().isEmpty();
            bus.send(asked.createReply(QVariant::fromValue(kCookie)));
            return true;
        }
        calls.push_back(asked.member().toStdString() + " " +
                        std::to_string(words.value(0).toUInt()));
        bus.send(asked.createReply());
        return true;
    }

    std::vector<std::string> calls;
    bool isReasonGiven = false;

  private:
    inline static const QString kName = QStringLiteral("the screen saver's end");
    QDBusConnection bus_;
};

/// Lets messages pass until it holds; long enough for a machine under load, so that only what never
/// comes fails.
template <class Condition>
bool comesTrue(Condition holds) {
    const QDeadlineTimer patience(20'000);
    while (!holds() && !patience.hasExpired())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
    return holds();
}

const std::string kHold = "hold for Cinderbell";
const std::string kRelease = "UnInhibit " + std::to_string(kCookie);

}  // namespace

TEST_CASE("the screen saver is held off once, with a reason, and let go by its own cookie") {
    ScreenSaver saver;
    ScreenInhibitor wake;
    wake.hold(true);
    wake.hold(true);
    REQUIRE(comesTrue([&] { return wake.isHeld(); }));
    CHECK(saver.calls == std::vector{kHold});
    CHECK(saver.isReasonGiven);

    wake.hold(false);
    wake.hold(false);
    CHECK_FALSE(wake.isHeld());
    REQUIRE(comesTrue([&] { return saver.calls.size() > 1; }));
    CHECK(saver.calls == std::vector{kHold, kRelease});
}

TEST_CASE("a hold that is given up before the answer came is let go when it comes") {
    ScreenSaver saver;
    ScreenInhibitor wake;
    wake.hold(true);
    wake.hold(false);

    REQUIRE(comesTrue([&] { return saver.calls.size() > 1; }));
    CHECK(saver.calls == std::vector{kHold, kRelease});
    CHECK_FALSE(wake.isHeld());
}

TEST_CASE("a hold that is wanted again before the answer came is asked for once, and kept") {
    ScreenSaver saver;
    ScreenInhibitor wake;
    wake.hold(true);
    wake.hold(false);
    wake.hold(true);

    REQUIRE(comesTrue([&] { return wake.isHeld(); }));
    QCoreApplication::processEvents();
    CHECK(saver.calls == std::vector{kHold});
}

TEST_CASE("an app that is closed lets the screen go") {
    ScreenSaver saver;
    {
        ScreenInhibitor wake;
        wake.hold(true);
        REQUIRE(comesTrue([&] { return wake.isHeld(); }));
    }
    REQUIRE(comesTrue([&] { return saver.calls.size() > 1; }));
    CHECK(saver.calls == std::vector{kHold, kRelease});
}

TEST_CASE("a desktop that has no screen saver is left alone, and asked again with the next day") {
    ScreenInhibitor wake;
    wake.hold(true);
    // The refusal comes after an answer to what was asked later.
    QDBusConnection bus = QDBusConnection::sessionBus();
    bus.call(QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.DBus"), QStringLiteral("/org/freedesktop/DBus"),
        QStringLiteral("org.freedesktop.DBus"), QStringLiteral("GetId")));
    QCoreApplication::processEvents();
    CHECK_FALSE(wake.isHeld());
    wake.hold(false);

    ScreenSaver saver;
    wake.hold(true);
    REQUIRE(comesTrue([&] { return wake.isHeld(); }));
    CHECK(saver.calls == std::vector{kHold});
}

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    return Catch::Session().run(argc, argv);
}
