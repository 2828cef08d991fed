/// Prints how long a touch takes to be on the board of another device, and how long two devices
/// need to join what was noted apart; over real links on the loopback interface, both devices on
/// one thread of one machine. Judges nothing.
///   bench_exchange <event.json>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>
#include <memory>
#include <sstream>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QEventLoop>

#include "app/rehearsal_crew.h"
#include "app/session.h"
#include "folder.h"
#include "journal/sqlite/sqlite_store.h"
#include "network/crew_network.h"

namespace {

using namespace cinder;
using platform::CrewNetwork;
using Timer = std::chrono::steady_clock;

/// Not the port of the app: one may run on this machine.
constexpr std::uint16_t kPort = 62'148;
constexpr int kTouches = 200;
constexpr std::chrono::hours kApart{2};

template <class T>
T sound(Result<T, app::Refusal> result) {
    if (result) return std::move(*result);
    std::cerr << "refused: " << describe(result.error()) << "\n";
    std::exit(1);
}
void must(const Result<void, app::Refusal>& done) {
    if (done) return;
    std::cerr << "refused: " << describe(done.error()) << "\n";
    std::exit(1);
}

struct Device {
    explicit Device(Instant start)
        : clock(start),
          store(std::move(*journal::SqliteStore::open(folder.file("journal.store")))),
          session(std::make_unique<app::Session>(*store, clock)) {}
    void connect() {
        network = std::make_unique<CrewNetwork>(
            *store, *session, folder.file("crew.key"),
            CrewNetwork::Options{kPort, std::chrono::milliseconds{200}});
    }
    [[nodiscard]] bool isInReach() const {
        const auto others = network->others();
        return !others.empty() && others.front().isInReach;
    }
    [[nodiscard]] bool isUpToDate() const {
        const auto others = network->others();
        return !others.empty() && others.front().isInReach &&
               others.front().peer.standing == sync::Standing::UpToDate;
    }
    [[nodiscard]] std::size_t operations(const EventId& event) const {
        return store->read(event)->size();
    }

    samples::Folder folder;
    SimulatedClock clock;
    std::unique_ptr<journal::Store> store;
    std::unique_ptr<app::Session> session;
    std::unique_ptr<CrewNetwork> network;
};

template <class Condition>
void runUntil(Condition isSo) {
    while (!isSo())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

double millisSince(Timer::time_point begin) {
    return std::chrono::duration<double, std::milli>(Timer::now() - begin).count();
}

/// What went over the loopback interface, everything on this machine together.
std::int64_t bytesOverLoopback() {
    std::int64_t bytes = 0;
    std::ifstream("/sys/class/net/lo/statistics/tx_bytes") >> bytes;
    return bytes;
}

struct Pair {
    /// Both in one crew, with the event open, ten minutes before its first task.
    Pair(const std::string& document, Instant morning) : one(morning), other(morning) {
        one.connect();
        other.connect();
        if (!one.network->begin() || !other.network->join(one.network->code())) std::exit(1);
        event = sound(one.session->importEvent(document));
        runUntil([this] {
            return one.isUpToDate() && other.isUpToDate() && other.operations(event) > 0;
        });
        must(other.session->open(event));
        const auto* sheet = one.session->sheet();
        advance(sheet->bell + plan::firstStart(sheet->schedule) - std::chrono::minutes{10} -
                one.clock.wall());
    }
    void advance(Duration by) {
        one.clock.advance(by);
        other.clock.advance(by);
    }
    Device one;
    Device other;
    EventId event;
};

/// The first line that can be ticked.
std::optional<TaskId> ticklist(app::Session& session) {
    for (const auto& card : session.look()->tasks)
        if (!card.checklist.empty()) return card.id;
    return std::nullopt;
}

bool isTicked(app::Session& session, const TaskId& task) {
    for (const auto& card : session.look()->tasks)
        if (card.id == task) return card.checklist.front().isTicked;
    return false;
}

void printTicks(Pair& pair) {
    const auto task = ticklist(*pair.one.session);
    if (!task) {
        std::cout << "no line to tick in this event\n";
        return;
    }
    std::vector<double> millis;
    millis.reserve(kTouches);
    bool isOn = false;
    for (int i = 0; i < kTouches; ++i) {
        runUntil([&] { return pair.one.isUpToDate() && pair.other.isUpToDate(); });
        const auto begin = Timer::now();
        must(isOn ? pair.one.session->undo() : pair.one.session->tick(*task, 0));
        isOn = !isOn;
        runUntil([&] { return isTicked(*pair.other.session, *task) == isOn; });
        millis.push_back(millisSince(begin));
    }
    std::sort(millis.begin(), millis.end());
    const auto at = [&](double share) {
        return millis[static_cast<std::size_t>(share * double(millis.size() - 1))];
    };
    std::cout << "a tick, from touch to the other board: p50 " << at(0.5) << " ms, p95 " << at(0.95)
              << " ms, p99 " << at(0.99) << " ms, worst " << millis.back() << " ms (" << kTouches
              << " times)\n";
}

/// Two hours of the day as a crew would do them, and as many entries more.
void play(Device& device, std::size_t entries) {
    app::RehearsalCrew crew(*device.session);
    const auto* described = device.session->described();
    const ResourceId grate = described->kit.grates.front().id;
    constexpr Duration kStep = std::chrono::seconds{10};
    const auto steps = static_cast<std::size_t>(kApart / kStep);
    std::size_t noted = 0;
    for (std::size_t step = 0; step < steps; ++step) {
        noted += static_cast<std::size_t>(sound(crew.act()));
        for (; noted * steps < entries * step; ++noted)
            must(device.session->testByHand(grate, std::chrono::seconds{4}));
        device.clock.advance(kStep);
    }
}

void printMerge(const std::string& document, Instant morning, std::size_t entries) {
    Pair pair(document, morning);
    pair.one.network.reset();
    pair.other.network.reset();
    const std::size_t before = pair.one.operations(pair.event);
    play(pair.one, entries);
    play(pair.other, entries);
    const std::size_t here = pair.one.operations(pair.event) - before;
    const std::size_t there = pair.other.operations(pair.event) - before;

    const std::int64_t bytes = bytesOverLoopback();
    pair.one.connect();
    pair.other.connect();
    runUntil([&] { return pair.one.isInReach() && pair.other.isInReach(); });
    const auto begin = Timer::now();
    runUntil([&] { return pair.one.isUpToDate() && pair.other.isUpToDate(); });
    const double both = millisSince(begin);
    if (!pair.one.session->look() || !pair.other.session->look()) std::exit(1);
    const double shown = millisSince(begin);
    const std::int64_t over = bytesOverLoopback() - bytes;
    const bool isSame =
        pair.one.store->read(pair.event).value() == pair.other.store->read(pair.event).value();
    std::cout << "two hours apart, " << here << " operations here and " << there
              << " there: both have all after " << both << " ms, both boards show it after "
              << shown << " ms; " << over / 1000 << " kB over the loopback interface"
              << (isSame ? "" : "; THEY DIFFER") << "\n";
}

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc != 2) {
        std::cerr << "usage: bench_exchange <event.json>\n";
        return 2;
    }
    std::ifstream file(argv[1]);
    std::ostringstream text;
    text << file.rdbuf();
    // Any morning will do: the clocks move when told to.
    constexpr Instant kMorning{std::chrono::seconds{1'821'000'000}};
    {
        Pair pair(text.str(), kMorning);
        printTicks(pair);
    }
    for (const std::size_t entries : {400U, 1000U, 2000U})
        printMerge(text.str(), kMorning, entries);
    return 0;
}
