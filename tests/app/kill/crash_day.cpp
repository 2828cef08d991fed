/// Plays a rehearsal six hundred times faster than life on a real store, until it is killed. Each
/// operation goes to standard output after, and only after, the store has acknowledged it. Started
/// again it goes on where it stopped.

#include <unistd.h>

#include <chrono>
#include <fstream>
#include <iostream>
#include <sstream>
#include <thread>

#include "app/rehearsal_crew.h"
#include "journal/sqlite/sqlite_store.h"
#include "ledger.h"
#include "passing_store.h"

namespace {

using namespace cinder;

constexpr int kSpeed = 600;

/// Says what was acknowledged.
class ToldStore final : public samples::PassingStore {
  public:
    using PassingStore::PassingStore;

    Stored<void> append(std::span<const journal::Operation> operations) override {
        auto stored = PassingStore::append(operations);
        if (!stored) return stored;
        std::string lines;
        for (const journal::Operation& op : operations)
            lines += ledger::writeLine(op);
        std::cout << lines << std::flush;
        return stored;
    }
};

bool openRehearsal(app::Session& session, const char* document) {
    const auto events = session.events();
    if (!events) return false;
    for (const auto& entry : *events)
        if (entry.isRehearsal) return session.open(entry.id).has_value();
    std::ifstream file(document);
    std::ostringstream text;
    text << file.rdbuf();
    return session.importEvent(text.str()) && session.rehearse(kSpeed, Duration{0});
}

/// Somebody with a thermometer in ice water, so that there is always something being written.
bool probe(app::Session& session) {
    return session.testThermometer(safety::ThermometerId{"probe"}, safety::inCelsius(0))
        .has_value();
}

/// The pan that has waited longest for a reading gets one as it should be, so that the calls of the
/// food move on with the day.
bool readFood(app::Session& session) {
    const auto seen = session.look();
    if (!seen) return false;
    for (const safety::PlannedCheck& check : seen->food.checks) {
        if (check.isDone || check.due > seen->now || check.missing.empty()) continue;
        const bool isCold = check.purpose == safety::Purpose::ArriveCold ||
                            check.purpose == safety::Purpose::HoldCold;
        return session
            .measureFood(check.missing.front(), check.purpose, safety::inCelsius(isCold ? 3 : 80),
                         safety::ThermometerId{"probe"})
            .has_value();
    }
    return true;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "usage: crash_day <store> <event.json>\n";
        return 2;
    }
    auto opened = journal::SqliteStore::open(argv[1]);
    if (!opened) {
        std::cerr << "cannot open: " << opened.error().detail << "\n";
        return 1;
    }
    ToldStore store(**opened);
    const SystemClock clock;
    app::Session session(store, clock);
    if (!openRehearsal(session, argv[2])) {
        std::cerr << "cannot rehearse\n";
        return 1;
    }
    app::RehearsalCrew crew(session);
    while (true) {
        const auto acted = crew.act();
        if (!acted || !probe(session) || !readFood(session)) {
            std::cerr << "a touch was refused\n";
            return 1;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds{1});
    }
}
