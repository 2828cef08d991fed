/// What the first page says of events, copies and a journal that cannot be written.

#include <catch2/catch.hpp>

#include <fstream>

#include <QTemporaryDir>

#include "events.h"
#include "fixed_day.h"
#include "settings.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::fixed;

namespace {

using Why = app::Refusal::Why;
using Storage = journal::StoreError::Why;

struct FirstPage {
    [[nodiscard]] std::filesystem::path copies() const {
        return std::filesystem::path(folder.path().toStdString());
    }
    [[nodiscard]] std::string copied() const { return events.copied().toStdString(); }
    std::string afterRestore(app::Restored restored) {
        door.restored = std::move(restored);
        events.restore(QStringLiteral("all.store"));
        return copied();
    }
    std::string afterBackUp(app::Refusal refusal) {
        door.backedUp = fail(std::move(refusal));
        events.backUp();
        return copied();
    }

    QTemporaryDir folder;
    FixedDoor door{orchardLunch(false)};
    Settings settings{QString()};
    Events events{door, settings, {}, copies()};
};

}  // namespace

TEST_CASE("what became of a copy that was taken back is said as it is") {
    FirstPage page;
    const EventId barn{"barn"};
    CHECK(page.afterRestore({0, 0, {}, {}}) == "All of this copy is on this device already.");
    CHECK(page.afterRestore({2, 514, {}, {}}) == "Taken back: 2 events, 514 entries in all.");

    const std::string differing = page.afterRestore({0, 0, {barn}, {}});
    CHECK_THAT(differing, Catch::StartsWith("Nothing was added.") &&
                              Catch::Contains("stays as it is: 1 event"));
    CHECK_THAT(differing, !Catch::Contains("already"));

    const std::string broken = page.afterRestore({1, 30, {}, {barn}});
    CHECK_THAT(broken, Catch::StartsWith("Taken back: 1 event, 30 entries") &&
                           Catch::Contains("not taken: barn."));
}

TEST_CASE("a copy of a record that was altered is kept, and the event is named") {
    FirstPage page;
    page.door.backedUp = std::optional(
        journal::BrokenChain{EventId{"barn"}, {}, journal::BrokenChain::What::Altered});
    page.events.backUp();
    CHECK_THAT(page.copied(), Catch::StartsWith("Everything on this device is in") &&
                                  Catch::Contains("event barn is not as it was written"));
}

TEST_CASE("each fault of the storage has its own remedy") {
    FirstPage page;
    const auto of = [](Storage storage) {
        return app::Refusal{Why::NotSaved, "why", {}, {}, storage};
    };
    CHECK_THAT(page.afterBackUp(of(Storage::DiskFull)), Catch::Contains("Free some space"));
    CHECK_THAT(page.afterBackUp(of(Storage::Damaged)), Catch::Contains("damaged"));
    CHECK_THAT(page.afterBackUp(of(Storage::Locked)), Catch::Contains("Another program"));
    CHECK_THAT(page.afterBackUp(of(Storage::CannotOpen)), Catch::Contains("its folder"));
    CHECK_THAT(page.afterBackUp(of(Storage::Occupied)), Catch::Contains("left as it is"));
}

TEST_CASE("what a copy that was cut off left behind goes with the next one, what is new stays") {
    FirstPage page;
    const auto old = page.copies() / "2027-01-02-0304.store.part";
    const auto fresh = page.copies() / "2027-09-18-1200.store.part";
    const auto whole = page.copies() / "2027-01-02-0303.store";
    for (const auto& file : {old, fresh, whole})
        std::ofstream(file) << "a copy";
    for (const auto& file : {old, whole})
        std::filesystem::last_write_time(
            file, std::filesystem::file_time_type::clock::now() - std::chrono::hours(24));

    page.events.backUp();

    CHECK_FALSE(std::filesystem::exists(old));
    CHECK(std::filesystem::exists(fresh));
    CHECK(std::filesystem::exists(whole));
}

TEST_CASE("an event that cannot be read is shown as one, after those that can") {
    FirstPage page;
    app::EventEntry lost;
    lost.id = EventId{"barn"};
    lost.isUnreadable = true;
    page.door.others = {lost};

    page.events.refresh();

    auto* coming = page.events.coming();
    REQUIRE(coming->rowCount() > 0);
    const auto last = coming->index(coming->rowCount() - 1);
    const auto names = coming->roleNames();
    CHECK(coming->data(last, names.key("name")).toString() == QLatin1String("barn"));
    CHECK(coming->data(last, names.key("when")).toString().contains(QLatin1String("Damaged")));
}

TEST_CASE("a journal that cannot be written is said on the first page, before anything is lost") {
    FirstPage page;
    CHECK(page.events.refusal().isEmpty());
    page.door.readOnly = app::Refusal{Why::ReadOnly, "the store", {}, {}, Storage::ReadOnly};

    page.events.refresh();

    CHECK(page.events.refusal().contains(QLatin1String("full or write-protected")));
    page.door.readOnly.reset();
    page.events.refresh();
    CHECK(page.events.refusal().isEmpty());
}
