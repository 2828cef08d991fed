/// Prints what a year of events costs: the list, opening one, a copy of everything, taking it back.
/// One event in fifteen was written with a hundred touches of the editor; every other of those was
/// never planned.
///   bench_events <event.json> [events]

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

#include "app/rehearsal_crew.h"
#include "app/session.h"
#include "event/draft.h"
#include "event/json.h"
#include "journal/sqlite/sqlite_store.h"

namespace {

using namespace cinder;
namespace fs = std::filesystem;

struct Folder {
    fs::path path = fs::temp_directory_path() / "cinderbell-bench-events";
    Folder() {
        fs::remove_all(path);
        fs::create_directories(path);
    }
    ~Folder() { fs::remove_all(path); }
};

template <class Work>
auto timed(const char* what, Work work) {
    const auto begin = std::chrono::steady_clock::now();
    auto made = work();
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
    std::cout << what << ": " << took.count() << " ms\n";
    return made;
}

/// What a punctual crew leaves in the journal of one day.
std::vector<journal::Operation> playedDay(const std::string& document, const fs::path& file) {
    const auto event = event::parse(document);
    auto store = journal::SqliteStore::open(file);
    if (!event || !store) return {};
    SimulatedClock clock(event->serve.at - std::chrono::hours{4});
    app::Session session(**store, clock);
    if (!session.importEvent(document)) return {};
    app::RehearsalCrew crew(session);
    while (session.now() < event->serve.at + std::chrono::hours{4}) {
        clock.advance(std::chrono::seconds{30});
        if (!crew.act()) break;
    }
    return (*store)->read(event->id).value();
}

/// The same day as another event, `number` days later.
std::vector<journal::Operation> again(std::vector<journal::Operation> day, const DeviceId& device,
                                      const std::string& document, int number) {
    auto event = event::parse(document).value();
    event.id = EventId("event-" + std::to_string(number));
    event.serve.at += std::chrono::hours{24 * number};
    if (event.site.arrival) event.site.arrival->at += std::chrono::hours{24 * number};
    for (journal::Operation& op : day) {
        op.event = event.id;
        op.id.device = device;
        if (auto* described = std::get_if<journal::EventDescribed>(&op.body))
            described->document = event::write(event);
    }
    return day;
}

constexpr int kDraftedEach = 15;
constexpr int kTouches = 100;

bool isDrafted(int number) {
    return number % kDraftedEach == 0;
}

/// A hundred touches of the editor, before the day or with no day behind them.
std::vector<journal::Operation> withDrafts(std::vector<journal::Operation> day, int number) {
    const auto described = std::find_if(day.begin(), day.end(), [](const auto& op) {
        return std::holds_alternative<journal::EventDescribed>(op.body);
    });
    auto event = event::parse(std::get<journal::EventDescribed>(described->body).document).value();
    std::vector<journal::Operation> drafts;
    journal::Operation touch = *described;
    touch.stamp.wall -= std::chrono::hours{24};
    for (int n = 0; n < kTouches; ++n) {
        event.guests.adults += n % 2 == 0 ? 1 : -1;
        touch.id.sequence = drafts.size() + 1;
        touch.stamp.wall += std::chrono::seconds{5};
        touch.body = journal::EventDrafted{event::writeDraft(event), "/guests/adults"};
        drafts.push_back(touch);
    }
    const bool isPlanned = number % (2 * kDraftedEach) == 0;
    if (isPlanned)
        for (journal::Operation& op : day) {
            op.id.sequence += kTouches;
            drafts.push_back(std::move(op));
        }
    return drafts;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::cerr << "usage: bench_events <event.json> [events]\n";
        return 2;
    }
    std::ifstream file(argv[1]);
    std::ostringstream text;
    text << file.rdbuf();
    const int count = argc > 2 ? std::stoi(argv[2]) : 300;
    const Folder folder;
    const auto day = playedDay(text.str(), folder.path / "day.store");
    if (day.empty()) return 1;
    const fs::path all = folder.path / "all.store";
    {
        auto store = journal::SqliteStore::open(all).value();
        for (int number = 0; number < count; ++number) {
            auto one = again(day, store->device(), text.str(), number);
            if (isDrafted(number)) one = withDrafts(std::move(one), number);
            if (!store->append(one)) return 1;
        }
    }
    auto store = journal::SqliteStore::open(all).value();
    const SystemClock clock;
    app::Session session(*store, clock);
    const auto events = timed("list, first time", [&] { return session.events(); });
    std::cout << events->size() << " events of " << day.size() << " entries, "
              << static_cast<double>(fs::file_size(all)) / 1e6 << " MB\n";
    timed("list, again", [&] { return session.events(); });
    timed("open one", [&] { return session.open(events->at(events->size() / 2).id); });
    timed("open one with a hundred touches", [&] { return session.open(EventId("event-0")); });
    timed("open one that was never planned",
          [&] { return session.open(EventId("event-" + std::to_string(kDraftedEach))); });
    const fs::path copy = folder.path / "copy.store";
    timed("copy of everything, checked", [&] { return session.backUp(copy); });
    auto empty = journal::SqliteStore::open(folder.path / "empty.store").value();
    app::Session other(*empty, clock);
    timed("take it back on an empty device", [&] { return other.restore(copy); });
    timed("take it back again", [&] { return other.restore(copy); });
    return 0;
}
