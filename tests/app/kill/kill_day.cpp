/// Starts the day, kills it at a random instant, and looks at what is left; many times over. After
/// each kill every acknowledged operation must be in the store, the chains must hold, and every
/// timer of a session opened on the store must be the one that follows from what was acknowledged
/// (and from at most the one touch that was stored but not yet told).

#include <fcntl.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <functional>
#include <iostream>
#include <thread>

#include "app/session.h"
#include "base/rng.h"
#include "journal/sqlite/sqlite_store.h"
#include "ledger.h"

namespace {

using namespace cinder;
namespace fs = std::filesystem;

struct Told {
    std::map<std::pair<EventId, journal::OperationId>, journal::Operation> operations;
};

/// Waits for as long as the program is to live.
using Wait = std::function<void(pid_t child)>;

/// Runs the program with its output written to `log`, and kills it after `wait`. False when it had
/// ended by itself, which it never should.
bool runAndKill(const char* program, const fs::path& store, const char* event, const fs::path& log,
                const Wait& wait) {
    const pid_t child = fork();
    if (child < 0) return false;
    if (child == 0) {
        const int file = open(log.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
        dup2(file, STDOUT_FILENO);
        execl(program, program, store.c_str(), event, static_cast<char*>(nullptr));
        _exit(127);
    }
    wait(child);
    ::kill(child, SIGKILL);
    int status = 0;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
}

/// Adds the complete lines of the log.
void listen(const fs::path& log, Told& told) {
    std::ifstream file(log);
    std::string line;
    while (std::getline(file, line)) {
        if (file.eof()) break;  // cut off by the kill
        if (auto op = ledger::readLine(line)) {
            const auto key = std::pair(op->event, op->id);
            told.operations.insert_or_assign(key, std::move(*op));
        }
    }
}

/// What is in the store before anybody touches anything: the event, its plan and the rehearsal's.
constexpr std::size_t kBeforeTheDay = 4;

bool hasBegun(const Told& told) {
    return told.operations.size() >= kBeforeTheDay;
}

/// Until the day has begun, however slow the machine plans, or the program ended by itself.
void untilBegun(pid_t child, const fs::path& log, const Told& before) {
    using std::chrono::milliseconds;
    using std::chrono::minutes;
    siginfo_t ended{};
    for (Duration waited{0}; waited < minutes(10); waited += milliseconds(50)) {
        std::this_thread::sleep_for(milliseconds(50));
        Told now = before;
        listen(log, now);
        if (hasBegun(now)) return;
        if (waitid(P_PID, static_cast<id_t>(child), &ended, WEXITED | WNOHANG | WNOWAIT) == 0 &&
            ended.si_pid == child)
            return;
    }
}

struct Tally {
    int lost = 0;
    int brokenChains = 0;
    int wrongTimers = 0;
    int untold = 0;
    std::size_t timers = 0;
    std::size_t foodTimers = 0;
};

void compareOperations(const std::vector<journal::Operation>& stored, const EventId& event,
                       Told& told, Tally& tally) {
    std::map<journal::OperationId, const journal::Operation*> here;
    for (const journal::Operation& op : stored)
        here.emplace(op.id, &op);
    for (const auto& [key, op] : told.operations) {
        if (key.first != event) continue;
        const auto found = here.find(key.second);
        if (found == here.end() || !(*found->second == op)) ++tally.lost;
        here.erase(key.second);
    }
    tally.untold += static_cast<int>(here.size());
    // From now on these are known too: the day goes on from them.
    for (const auto& [id, op] : here)
        told.operations.emplace(std::pair(event, id), *op);
}

/// The timers of the event as a session on `store` shows them; nothing when it cannot.
std::optional<std::vector<live::Timer>> timersOf(journal::Store& store, const EventId& event,
                                                 const Clock& clock) {
    app::Session session(store, clock);
    if (!session.open(event)) return std::nullopt;
    const auto seen = session.look();
    return seen ? seen->timers : std::vector<live::Timer>{};
}

/// `untouched` has everything that is known and was never killed; both are asked at one instant.
void compareTimers(journal::Store& store, journal::Store& untouched, const EventId& event,
                   const Told& told, Tally& tally) {
    std::vector<journal::Operation> known;
    for (const auto& [key, op] : told.operations)
        if (key.first == event) known.push_back(op);
    const SimulatedClock now(SystemClock().wall());
    const auto expected = untouched.append(known) ? timersOf(untouched, event, now) : std::nullopt;
    const auto found = timersOf(store, event, now);
    if (!expected || found != expected) ++tally.wrongTimers;
    for (const live::Timer& timer : expected.value_or(std::vector<live::Timer>{}))
        ++(timer.name.starts_with("food:") ? tally.foodTimers : tally.timers);
}

void look(const fs::path& file, journal::Store& untouched, Told& told, Tally& tally) {
    auto store = journal::SqliteStore::open(file);
    if (!store) {
        tally.lost += static_cast<int>(told.operations.size());
        return;
    }
    const auto broken = (*store)->verify();
    if (!broken || *broken) ++tally.brokenChains;
    std::size_t present = 0;
    for (const EventId& event : (*store)->events().value_or(std::vector<EventId>{})) {
        const auto stored = (*store)->read(event);
        if (!stored) continue;
        present += stored->size();
        compareOperations(*stored, event, told, tally);
        compareTimers(**store, untouched, event, told, tally);
    }
    if (present < told.operations.size())
        tally.lost += static_cast<int>(told.operations.size() - present);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 5) {
        std::cerr << "usage: kill_day <crash_day> <event.json> <kills> <seed>\n";
        return 2;
    }
    const int kills = std::stoi(argv[3]);
    Rng rng(std::stoull(argv[4]));
    const fs::path folder =
        fs::temp_directory_path() / ("cinderbell-kill-" + std::to_string(getpid()));
    fs::create_directories(folder);
    const fs::path store = folder / "day.journal";
    auto untouched = journal::SqliteStore::open(folder / "untouched.journal");
    if (!untouched) {
        std::cerr << "cannot open: " << untouched.error().detail << "\n";
        return 2;
    }
    Told told;
    Tally tally;
    int early = 0;
    for (int i = 0; i < kills; ++i) {
        // While it is planned for the first quarter of the kills, so that planning sometimes ends
        // and sometimes does not; then a day must begin.
        const Duration life{1 + rng.below(hasBegun(told) ? 200 : 4000)};
        const bool mustBegin = !hasBegun(told) && i >= kills / 4;
        const auto wait = [&](pid_t child) {
            if (mustBegin)
                untilBegun(child, folder / "told", told);
            else
                std::this_thread::sleep_for(life);
        };
        if (!runAndKill(argv[1], store, argv[2], folder / "told", wait)) ++early;
        listen(folder / "told", told);
        if (fs::exists(store)) look(store, **untouched, told, tally);
    }
    fs::remove_all(folder);
    std::cout << "kills " << kills << ", operations acknowledged or found "
              << told.operations.size() << ", stored but not yet told " << tally.untold << ", lost "
              << tally.lost << ", broken chains " << tally.brokenChains << ", timers compared "
              << tally.timers << " and of food " << tally.foodTimers << ", days with a wrong timer "
              << tally.wrongTimers << ", ended by itself " << early << "\n";
    const bool isSound = tally.lost == 0 && tally.brokenChains == 0 && tally.wrongTimers == 0 &&
                         early == 0 && tally.timers > 0 && tally.foodTimers > 0;
    return isSound ? 0 : 1;
}
