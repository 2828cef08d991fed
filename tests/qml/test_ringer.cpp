/// The last metre of an alarm: what the devices are asked for while the day calls, and when.

#include <catch2/catch.hpp>

#include <tuple>
#include <vector>

#include <QQuickWindow>
#include <QTemporaryDir>

#include "day.h"
#include "fixed_day.h"
#include "ringer.h"

using namespace cinder;
using namespace cinder::face;
using live::TimerKind;
using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;

namespace {

/// A pattern that was asked for, and when by the device's running time.
struct Played {
    Duration at;
    TimerKind kind;
    int loudness;
    friend bool operator==(const Played&, const Played&) = default;
};

std::ostream& operator<<(std::ostream& out, const Played& played) {
    return out << "kind " << static_cast<int>(played.kind) << " at loudness " << played.loudness
               << " after " << played.at.count() << " ms";
}

struct RecordingSound final : AlarmSound {
    explicit RecordingSound(const Clock& theClock) : clock(theClock) {}
    void ring(TimerKind kind, int loudness) override {
        rings.push_back({clock.running(), kind, loudness});
    }
    void silence() override { silences.push_back(clock.running()); }
    [[nodiscard]] bool isAudible() const override { return isHeard; }
    const Clock& clock;
    std::vector<Played> rings;
    std::vector<Duration> silences;
    bool isHeard = true;
};

struct RecordingMotor final : Haptics {
    explicit RecordingMotor(const Clock& theClock) : clock(theClock) {}
    void buzz(TimerKind kind, int loudness) override {
        buzzes.push_back({clock.running(), kind, loudness});
    }
    [[nodiscard]] bool isAvailable() const override { return true; }
    const Clock& clock;
    std::vector<Played> buzzes;
};

struct RecordingScreen final : Wake {
    void hold(bool on) override { holds.push_back(on); }
    std::vector<bool> holds;
};

struct ASetBattery final : Battery {
    [[nodiscard]] std::optional<int> percentLeft() override { return left; }
    std::optional<int> left;
};

const Instant kStart = parseRfc3339("2027-09-18T11:42:00-04:00").value().at;

live::Timer timer(const char* name, TimerKind kind, Instant due) {
    live::Timer called;
    called.name = name;
    called.kind = kind;
    called.task = live::taskOfTimer(name);
    called.due = due;
    return called;
}

/// The lamb is on the grate: its next turn is due five seconds after the start.
struct RingingDay {
    RingingDay() : shown(fixed::orchardLunch()) {
        shown.now = kStart;
        shown.timers = {timer("turn:lamb/1:2", TimerKind::Turn, kStart + seconds(5))};
    }
    /// As the face would: at the whole second, the call or the pattern that comes first, always
    /// `late` after it was wanted.
    void run(Duration length, Duration late = Duration{0}) {
        const Duration end = clock.running() + length;
        while (clock.running() < end) {
            attend();
            Duration next = seconds(1) - clock.running() % seconds(1);
            for (const auto& each : shown.timers)
                if (each.due > shown.now) next = std::min(next, each.due - shown.now);
            next = std::min(next, ringer.untilNext().value_or(next));
            REQUIRE(next > Duration{0});
            clock.advance(next + late);
        }
        attend();
    }
    void attend() {
        shown.now = clock.wall();
        ringer.attend(&shown);
    }

    SimulatedClock clock{kStart};
    RecordingSound sound{clock};
    RecordingMotor motor{clock};
    RecordingScreen screen;
    Ringer ringer{{sound, motor, screen}, clock};
    app::Snapshot shown;
};

/// What `live/alarm.h` (louder every 15 s, up to 5) and `ringer.h` (every 4 s at first, every 1.5 s
/// at its loudest) make of a call that nobody hears for eighty seconds.
std::vector<Played> expectedRings() {
    std::vector<Played> rings;
    Duration at = seconds(5);
    while (at <= seconds(85)) {
        const auto loudnessAt = [](Duration when) {
            return std::min(5, 1 + static_cast<int>((when - seconds(5)) / seconds(15)));
        };
        rings.push_back({at, TimerKind::Turn, loudnessAt(at)});
        // A call that has grown louder meanwhile does not wait as long.
        Duration next = at;
        do
            next += milliseconds(125);
        while (next - at < milliseconds(4000 - 625 * (loudnessAt(next) - 1)));
        at = next;
    }
    return rings;
}

}  // namespace

TEST_CASE("a call that nobody hears rings at once, and louder and oftener until it is loudest") {
    RingingDay day;

    day.run(seconds(80));

    const auto& rings = day.sound.rings;
    const auto expected = expectedRings();
    REQUIRE(rings.size() >= 25);
    CHECK(rings == std::vector(expected.begin(),
                               expected.begin() + static_cast<std::ptrdiff_t>(rings.size())));
    // As documented, in plain numbers: from the first to the second, and between the last two.
    CHECK(rings[0] == Played{seconds(5), TimerKind::Turn, 1});
    CHECK(rings[1] == Played{seconds(9), TimerKind::Turn, 1});
    CHECK(rings.back().loudness == 5);
    CHECK(rings.back().at - rings[rings.size() - 2].at == milliseconds(1500));
    CHECK(day.motor.buzzes == rings);
    CHECK(day.sound.silences.empty());
}

TEST_CASE("a beat that is a trifle late makes no pattern late by more than that") {
    constexpr Duration kLate = milliseconds(3);
    RingingDay day;

    day.run(seconds(100), kLate);

    const auto& rings = day.sound.rings;
    REQUIRE(rings.size() > 25);
    for (std::size_t i = 1; i < rings.size(); ++i) {
        INFO(rings[i - 1] << ", then " << rings[i]);
        const Duration slowest = milliseconds(4000 - 625 * (rings[i - 1].loudness - 1));
        const Duration soonest = milliseconds(4000 - 625 * (rings[i].loudness - 1));
        CHECK(rings[i].at - rings[i - 1].at >= soonest);
        CHECK(rings[i].at - rings[i - 1].at <= slowest + kLate);
    }
}

TEST_CASE("a new call is played at once, however loud an old one has become") {
    RingingDay day;
    day.run(seconds(70));
    REQUIRE(day.sound.rings.back().loudness == 5);
    const Instant due = day.shown.now + milliseconds(700);
    day.shown.timers.push_back(timer("start-now:chafers", TimerKind::StartNow, due));

    day.run(seconds(5));

    const auto& rings = day.sound.rings;
    const Played fresh{due - kStart, TimerKind::StartNow, 1};
    const auto found = std::find(rings.begin(), rings.end(), fresh);
    REQUIRE(found != rings.end());
    // Then the loudest again, after its time; the new one once only while it is softer.
    REQUIRE(found + 1 != rings.end());
    CHECK(*(found + 1) == Played{fresh.at + milliseconds(1500), TimerKind::Turn, 5});
    CHECK(std::count_if(rings.begin(), rings.end(), [](const Played& played) {
              return played.kind == TimerKind::StartNow;
          }) == 1);
}

TEST_CASE("of calls that are as loud the newest rings, and when it is heard the other at once") {
    RingingDay day;
    day.shown.timers.push_back(
        timer("start-now:chafers", TimerKind::StartNow, kStart + seconds(5)));
    day.run(seconds(10));
    CHECK(day.sound.rings == std::vector<Played>{{seconds(5), TimerKind::StartNow, 1},
                                                 {seconds(9), TimerKind::StartNow, 1}});

    day.shown.timers.back().acknowledged = day.shown.now;
    day.attend();

    CHECK(day.sound.rings.back() == Played{seconds(10), TimerKind::Turn, 1});
    CHECK(day.sound.silences.empty());
}

TEST_CASE("a call that is heard falls silent at the next beat, once, and rings no more") {
    RingingDay day;
    day.run(seconds(6));
    REQUIRE(day.sound.rings.size() == 1);

    day.shown.timers.front().acknowledged = day.shown.now;
    day.run(seconds(30));

    CHECK(day.sound.silences == std::vector<Duration>{seconds(6)});
    CHECK(day.sound.rings.size() == 1);
    CHECK(day.motor.buzzes.size() == 1);
    CHECK_FALSE(day.ringer.untilNext());
}

TEST_CASE("nothing rings for what is not due, or for a task that is over") {
    RingingDay day;
    day.run(seconds(4));
    CHECK(day.sound.rings.empty());

    for (auto& card : day.shown.tasks)
        if (card.id == TaskId("lamb/1")) card.state = app::TaskState::Done;
    day.run(seconds(30));

    CHECK(day.sound.rings.empty());
    CHECK(day.sound.silences.empty());
}

TEST_CASE("the screen is held on from the opening of a day to its closing, asked once each") {
    RingingDay day;
    day.ringer.attend(nullptr);
    CHECK(day.screen.holds.empty());

    day.run(seconds(20));
    CHECK(day.screen.holds == std::vector<bool>{true});

    day.ringer.attend(nullptr);
    day.ringer.attend(nullptr);
    CHECK(day.screen.holds == std::vector<bool>{true, false});
    CHECK(day.sound.silences.size() == 1);
}

namespace {

/// The face on devices that write down what they are asked, shown a day whose clock is ours.
struct WatchedFace {
    WatchedFace() {
        auto owned = std::make_unique<fixed::FixedDoor>(fixed::orchardLunch());
        door = owned.get();
        door->day.now = kStart;
        face = std::make_unique<Face>(
            std::move(owned), clock, Devices{sound, motor, screen, &battery, nullptr},
            Places{{}, folder.filePath(QStringLiteral("settings.ini")), nullptr, {}});
        REQUIRE(face->show());
    }
    [[nodiscard]] Day& day() const { return *face->window()->property("day").value<Day*>(); }
    [[nodiscard]] bool hasMuteNotice() const {
        auto* notices = day().notices();
        for (int row = 0; row < notices->count(); ++row)
            if (notices->data(notices->index(row), Qt::UserRole).toString() ==
                QStringLiteral("mute"))
                return true;
        return false;
    }
    void pass(Duration length) {
        clock.advance(length);
        door->day.now += length;
        face->beatNow();
    }

    QTemporaryDir folder;
    SimulatedClock clock{kStart};
    RecordingSound sound{clock};
    RecordingMotor motor{clock};
    RecordingScreen screen;
    ASetBattery battery;
    std::unique_ptr<Face> face;
    fixed::FixedDoor* door = nullptr;
};

}  // namespace

TEST_CASE("the face beats when a call is due and when its next pattern is, between the seconds") {
    WatchedFace watched;
    watched.door->day.timers = {
        timer("turn:lamb/1:2", TimerKind::Turn, kStart + milliseconds(2300))};
    watched.pass(seconds(2));
    CHECK(watched.sound.rings.empty());
    CHECK(watched.face->untilNextBeat() == milliseconds(300));

    watched.pass(milliseconds(300));
    CHECK(watched.sound.rings == std::vector<Played>{{milliseconds(2300), TimerKind::Turn, 1}});
    CHECK(watched.face->untilNextBeat() == milliseconds(700));

    // At its loudest, after a minute.
    watched.pass(seconds(60));
    REQUIRE(watched.sound.rings.back().loudness == 5);
    watched.pass(milliseconds(700));
    CHECK(watched.face->untilNextBeat() == milliseconds(800));
    watched.pass(milliseconds(800));
    CHECK(watched.sound.rings.back() == Played{milliseconds(63'800), TimerKind::Turn, 5});
    CHECK(watched.motor.buzzes == watched.sound.rings);

    // A rehearsal that runs faster makes no alarm slower.
    watched.door->day.speed = 120;
    watched.door->day.timers.front().due = watched.door->day.now - minutes(2);
    watched.pass(milliseconds(1400));
    CHECK(watched.face->untilNextBeat() == milliseconds(100));
}

TEST_CASE("a face holds the screen on while it shows a day, and lets it go without one") {
    WatchedFace watched;
    CHECK(watched.screen.holds == std::vector<bool>{true});
    watched.door->isOpen = false;
    watched.pass(seconds(1));
    CHECK(watched.screen.holds.back() == false);
}

TEST_CASE("a device that cannot be heard says so among the notices while it cannot") {
    WatchedFace watched;
    CHECK_FALSE(watched.hasMuteNotice());
    watched.sound.isHeard = false;
    watched.pass(seconds(1));
    CHECK(watched.hasMuteNotice());
    watched.sound.isHeard = true;
    watched.pass(seconds(1));
    CHECK_FALSE(watched.hasMuteNotice());
}

TEST_CASE("a battery that runs low is named with what is left, and no longer once it charges") {
    WatchedFace watched;
    const auto shownAt = [&](std::optional<int> left) {
        watched.battery.left = left;
        watched.pass(seconds(1));
        return watched.day().battery();
    };
    CHECK(shownAt(21).isEmpty());
    CHECK(shownAt(20).contains(QStringLiteral("20")));
    CHECK(shownAt(7).contains(QStringLiteral("7")));
    CHECK(shownAt({}).isEmpty());
}
