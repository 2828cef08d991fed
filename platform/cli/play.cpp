#include <chrono>
#include <map>
#include <thread>

#include "app/rehearsal_crew.h"
#include "app/session.h"
#include "cli/commands.h"
#include "cli/event_file.h"
#include "cli/store_file.h"

namespace cinder::cli {

namespace {

/// How far the day moves between two looks; a crew acts to the quarter minute, not finer.
constexpr Duration kStep{15'000};
/// No day lasts longer; a plan that never ends must not run for ever.
constexpr Duration kLongestDay = std::chrono::hours{48};
constexpr Duration kLead = std::chrono::minutes{1};

/// A folder of its own that is gone again afterwards.
class PassingFolder {
  public:
    explicit PassingFolder(Instant now)
        : path_(std::filesystem::temp_directory_path() /
                ("cinderbell-play-" + std::to_string(now.time_since_epoch().count()))) {
        std::filesystem::create_directories(path_);
    }
    PassingFolder(const PassingFolder&) = delete;
    PassingFolder& operator=(const PassingFolder&) = delete;
    ~PassingFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

/// Says what changed between two looks at the day.
class Teller {
  public:
    Teller(std::ostream& out, std::string language) : out_(out), language_(std::move(language)) {}

    void tell(const app::Snapshot& day) {
        for (const app::TaskCard& card : day.tasks) {
            const auto known = seen_.find(card.id);
            const app::TaskCard* before = known == seen_.end() ? nullptr : &known->second;
            if (before == nullptr || before->state != card.state) tellState(day, card);
            if (before != nullptr && before->turnsDone < card.turnsDone)
                line(day,
                     "turned " + std::to_string(card.turnsDone) + " of " +
                         std::to_string(card.turnCount),
                     card);
            seen_.insert_or_assign(card.id, card);
        }
    }

  private:
    void tellState(const app::Snapshot& day, const app::TaskCard& card) {
        if (card.state == app::TaskState::Running) line(day, "begun", card);
        if (card.state == app::TaskState::Done) line(day, "done", card);
        if (card.state == app::TaskState::Skipped) line(day, "skipped", card);
    }
    void line(const app::Snapshot& day, const std::string& what, const app::TaskCard& card) {
        out_ << formatWallTime(day.now, day.offset) << "  " << formatBellOffset(day.now - day.serve)
             << "  " << what << ": " << card.name.in(language_);
        if (card.batch) out_ << " (" << *card.batch << ")";
        out_ << "\n";
    }

    std::ostream& out_;
    std::string language_;
    std::map<TaskId, app::TaskCard> seen_;
};

Failure refused(const app::Refusal& refusal) {
    using Why = app::Refusal::Why;
    const auto code = [&refusal] {
        switch (refusal.why) {
            case Why::BadEvent:
                return ExitCode::BadEvent;
            case Why::AskFirst:
            case Why::NoPlan:
                return ExitCode::NoPlan;
            default:
                return ExitCode::Store;
        }
    }();
    return {code, app::describe(refusal)};
}

}  // namespace

Outcome<std::string> playEvent(const Options& options, const Clock& clock, std::ostream& out) {
    const auto document = readText(options.file);
    if (!document) return fail(document.error());
    // Faults are told by the reader, which names the file.
    if (const auto event = readEvent(options.file); !event) return fail(event.error());

    const PassingFolder folder(clock.wall());
    journal::SqliteStore::Options limits;
    constexpr std::int64_t kKibibytesPerPage = 4;
    if (options.storeKibibytes) limits.pageLimit = *options.storeKibibytes / kKibibytesPerPage;
    const auto store = openStore(options.store.value_or(folder.path() / "day.store"), limits);
    if (!store) return fail(store.error());

    SimulatedClock time(clock.wall());
    app::Session session(**store, time);
    if (const auto imported = session.importEvent(*document); !imported)
        return fail(refused(imported.error()));
    if (const auto rehearsed = session.rehearse(1, kLead); !rehearsed)
        return fail(refused(rehearsed.error()));

    app::RehearsalCrew crew(session);
    Teller teller(out, options.language);
    for (Duration passed{0}; !crew.isDayOver(); passed += kStep) {
        if (passed > kLongestDay) return fail(Failure{ExitCode::NoPlan, "the day does not end"});
        if (const auto acted = crew.act(); !acted) return fail(refused(acted.error()));
        if (const auto day = session.look()) teller.tell(*day);
        time.advance(kStep);
        if (options.speed) {
            out << std::flush;
            std::this_thread::sleep_for(kStep / *options.speed);
        }
    }
    const auto day = session.look();
    std::string words = "the day is over";
    if (day && day->ready)
        words += "; everything was out by " + formatWallTime(*day->ready, day->offset) + " (" +
                 formatBellOffset(*day->ready - day->serve) + ")";
    return words + "\n";
}

}  // namespace cinder::cli
