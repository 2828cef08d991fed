/// Prints, when one of the crew goes in the middle of a day, how long the new plan takes and how
/// late it serves; those who stay can do everything. Judges nothing.
///   bench_crew <event.json> ...

#include <chrono>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

#include "app/rehearsal_crew.h"
#include "app/session.h"
#include "journal/sqlite/sqlite_store.h"
#include "live/remaining.h"

namespace {

using namespace cinder;
using std::chrono::minutes;
namespace fs = std::filesystem;

/// The crew without `gone`, everybody able to do everything.
std::vector<app::CrewMember> without(const app::Session& session, std::size_t gone) {
    auto crew = session.crew();
    for (app::CrewMember& member : crew) {
        member.skills.clear();
        for (const event::Skill& skill : session.described()->skills)
            member.skills.push_back(skill.id);
    }
    crew[gone].isHere = false;
    return crew;
}

void plan(app::Session& session, minutes toBell) {
    for (std::size_t gone = 0; gone < session.crew().size(); ++gone) {
        const auto asked = session.askToChangeCrew(without(session, gone));
        if (!asked) {
            std::cout << "  refused: " << describe(asked.error()) << '\n';
            continue;
        }
        const auto& rest = std::get<live::Remaining>(asked->wanted);
        const auto begin = std::chrono::steady_clock::now();
        const auto sheet = live::planRest(rest);
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - begin;
        std::cout << "  " << toBell.count() << " min before the bell, without "
                  << session.crew()[gone].name << ": ";
        if (sheet)
            std::cout << (sheet->bell - rest.serve) / minutes{1} << " min late, ";
        else
            std::cout << "no plan, ";
        std::cout << took.count() << " ms\n";
    }
}

/// A day played by a crew that does what it should, on a clock of its own.
bool play(const std::string& document) {
    const fs::path path = fs::temp_directory_path() / "cinderbell-bench-crew.journal";
    for (const char* suffix : {"", "-wal", "-shm"})
        fs::remove(path.string() + suffix);
    SimulatedClock clock(Instant{std::chrono::hours{24 * 365 * 50}});
    auto store = journal::SqliteStore::open(path);
    if (!store) return false;
    app::Session session(**store, clock);
    if (!session.importEvent(document)) return false;
    const auto first = session.look();
    clock.advance(first->tasks.front().start - minutes{5} - clock.wall());
    app::RehearsalCrew crew(session);
    std::cout << first->name.in("en") << '\n';
    for (const minutes toBell : {minutes{150}, minutes{100}, minutes{60}, minutes{30}}) {
        while (clock.wall() < first->serve - toBell) {
            if (!crew.act()) return false;
            clock.advance(std::chrono::seconds{10});
        }
        plan(session, toBell);
    }
    return true;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::cerr << "usage: bench_crew <event.json> ...\n";
        return 2;
    }
    for (int k = 1; k < argc; ++k) {
        std::ifstream file(argv[k]);
        std::ostringstream text;
        text << file.rdbuf();
        if (!play(text.str())) return 1;
    }
    return 0;
}
