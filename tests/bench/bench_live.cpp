/// Prints what the journal and the live day cost; judges nothing.
///   bench_live <event.json>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

#include "app/session.h"
#include "journal/sqlite/sqlite_store.h"
#include "live/outlook.h"

namespace {

using namespace cinder;
namespace fs = std::filesystem;

template <class Work>
void measure(const char* what, int times, Work work) {
    std::vector<double> millis;
    for (int i = 0; i < times; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - begin;
        millis.push_back(took.count());
    }
    std::sort(millis.begin(), millis.end());
    const auto at = [&](double share) {
        return millis[static_cast<std::size_t>(share * double(millis.size() - 1))];
    };
    std::cout << what << ": median " << at(0.5) << " ms, p99 " << at(0.99) << " ms, most "
              << millis.back() << " ms (" << times << " times)\n";
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "usage: bench_live <event.json>\n";
        return 2;
    }
    std::ifstream file(argv[1]);
    std::ostringstream text;
    text << file.rdbuf();
    const fs::path path = fs::temp_directory_path() / "cinderbell-bench.journal";
    for (const char* suffix : {"", "-wal", "-shm"})
        fs::remove(path.string() + suffix);
    auto store = journal::SqliteStore::open(path);
    if (!store) return 1;
    const SystemClock clock;
    app::Session session(**store, clock);
    const auto event = session.importEvent(text.str());
    if (!event || !session.rehearse(1, std::chrono::minutes{-20})) return 1;
    const ResourceId grate = session.described()->kit.grates.front().id;
    const EventId rehearsal = session.look()->event;

    // Begun and taken back in turn, so that every touch changes what the board shows.
    const auto begin =
        std::find_if(session.look()->tasks.begin(), session.look()->tasks.end(),
                     [](const app::TaskCard& card) { return card.state == live::TaskState::Ready; })
            ->id;
    bool isBegun = false;
    measure("one touch, from tap to snapshot", 500, [&] {
        if (!(isBegun ? session.undo() : session.start(begin))) std::abort();
        isBegun = !isBegun;
        if (!session.look()) std::abort();
    });
    measure("one touch, durable and folded", 1000, [&] {
        if (!session.testByHand(grate, std::chrono::seconds{4})) std::abort();
    });
    auto next = (*store)->nextId(rehearsal).value();
    auto operations = (*store)->read(rehearsal).value();
    const journal::Operation pattern = operations.back();
    measure("append of one operation", 2000, [&] {
        journal::Operation op = pattern;
        op.id = next;
        ++next.sequence;
        if (!(*store)->append(std::span(&op, 1))) std::abort();
    });
    measure("read and decode the event", 20,
            [&] { operations = (*store)->read(rehearsal).value(); });
    measure("fold of the event, its documents read anew", 200,
            [&] { (void)live::fold(operations); });
    live::ReadDocuments documents;
    measure("fold of the event, its documents read before", 200,
            [&] { (void)live::fold(operations, documents); });
    std::vector<journal::Operation> many = operations;
    while (many.size() < 10'000) {
        journal::Operation op = pattern;
        op.id.sequence = many.size() + 1;
        op.stamp.counter = static_cast<std::uint32_t>(many.size());
        std::get<journal::HandHeld>(op.body).at += Duration{std::int64_t(many.size())};
        many.push_back(std::move(op));
    }
    measure("fold of 10000 operations", 100, [&] { (void)live::fold(many); });
    std::reverse(many.begin() + 3, many.end());
    measure("fold of 10000 operations out of order", 100, [&] { (void)live::fold(many); });

    const live::Day day = live::fold(operations);
    const plan::Dispatch dispatch(day.sheet->problem, day.sheet->schedule);
    const Instant now = session.now();
    const std::vector<plan::Actual> nothing(day.sheet->problem.tasks.size());
    measure("projection", 1000, [&] { (void)dispatch.project(nothing, now - day.sheet->bell); });
    measure("outlook", 1000, [&] { (void)live::lookAt(day, dispatch, now); });
    measure("snapshot", 200, [&] {
        session.setPerson({});
        session.followWallClock();
        (void)session.look();
    });
    for (const char* suffix : {"", "-wal", "-shm"})
        fs::remove(path.string() + suffix);
    return 0;
}
