/// A store as version 1 left it on a disk: one lunch on two devices, with every kind of touch. It
/// is read, its chains hold, and it tells of the same day for ever. The file is never written anew.

#include <sqlite3.h>
#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>
#include <set>

#include "../journal/samples.h"
#include "journal/sqlite/sqlite_store.h"
#include "small_day.h"

using namespace samples;
using namespace cinder::journal;

namespace {

/// The store that the text stands for, in a folder that goes away with the test.
class OldStore {
  public:
    OldStore() {
        std::ifstream text(CINDER_SOURCE "/tests/core/live/version1_store.sql", std::ios::binary);
        const std::string sql{std::istreambuf_iterator<char>(text), {}};
        REQUIRE_FALSE(sql.empty());
        sqlite3* handle = nullptr;
        REQUIRE(sqlite3_open(file().c_str(), &handle) == SQLITE_OK);
        char* error = nullptr;
        const int code = sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, &error);
        INFO((error != nullptr ? error : ""));
        REQUIRE(code == SQLITE_OK);
        sqlite3_close(handle);
    }
    [[nodiscard]] std::filesystem::path file() const { return folder_.file("day.journal"); }
    [[nodiscard]] std::unique_ptr<SqliteStore> open() const {
        auto store = SqliteStore::open(file());
        REQUIRE(store);
        return std::move(*store);
    }

  private:
    Folder folder_;
};

const EventId kLunch{"lunch"};

Instant when(int minutesFromBell) {
    return fromBell(std::chrono::minutes{minutesFromBell});
}

live::Day oldDay() {
    return live::fold(OldStore{}.open()->read(kLunch).value());
}

}  // namespace

TEST_CASE("a store of version 1 opens as it is, verifies, and is carried on") {
    const OldStore old;
    const auto store = old.open();

    CHECK(store->access() == Access::Full);
    CHECK(store->device() == DeviceId{"0123456789abcdef"});
    CHECK_FALSE(store->verify().value());
    CHECK(store->events().value() == std::vector{kLunch});
    Operation next;
    next.event = kLunch;
    next.id = store->nextId(kLunch).value();
    next.stamp = {when(90), 0};
    next.body = LastGuestPassed{when(90)};
    CHECK(store->append({&next, 1}));
    CHECK_FALSE(store->verify().value());
}

TEST_CASE("a store of version 1 has every kind of touch, and each is understood") {
    std::set<std::size_t> kinds;
    int unknown = 0;
    const auto operations = OldStore{}.open()->read(kLunch).value();
    for (const Operation& op : operations) {
        kinds.insert(op.body.index());
        unknown += std::holds_alternative<Unknown>(op.body) ? 1 : 0;
    }
    // 35 kinds when it was written; a kind that came later is not in it.
    CHECK(kinds.size() == 35);
    CHECK(unknown == 1);
    CHECK(operations.size() == 42);
}

TEST_CASE("a store of version 1 tells of the tasks and the pieces of its day as it did") {
    const live::Day day = oldDay();

    CHECK(day.sheet == smallSheet());
    CHECK(day.serve == when(10));
    CHECK(day.rehearsal == RehearsalClock::Anchor{when(-180), when(-170), 60});
    const auto& tables = day.tasks.at(kTables);
    CHECK(tables.started == when(-60));
    CHECK(tables.finished == when(-50));
    CHECK(tables.ticks == std::map<std::int32_t, Instant>{{0, when(-58)}, {1, when(-52)}});
    CHECK_FALSE(tables.startedBy);
    const auto& cook = day.tasks.at(kCook);
    CHECK(cook.started == when(-50));
    CHECK(cook.turns == std::map<std::int32_t, Instant>{{1, when(-44)}});
    CHECK(day.tasks.at(kRest).skipped == when(-29));
    CHECK(day.tasks.at(kSlice).skipped == when(-22));
    CHECK(day.leftOut.count(DishId{"trout"}) == 1);
    CHECK(day.acknowledged == std::map<std::string, Instant>{{"turn:lamb/cook:1", when(-44)}});
    CHECK(day.debrief.interrupted == std::set{kCook});
    CHECK(day.debrief.lessons.at("length/lamb/cook") == live::Lesson{true, 1'530'000});

    const live::BatchFacts& batch = day.batches.at(kCook);
    REQUIRE(batch.laid);
    CHECK(batch.laid->at == when(-50));
    CHECK(batch.laid->start == Temperature::fromCelsius(6.5));
    CHECK(batch.laid->kinds == std::vector<LaidKind>{{35'000, 2}, {62'000, 2}});
    CHECK(batch.pieces.at(1).pulled == when(-30));
    CHECK(batch.pieces.at(2).pan == 1);
    CHECK(batch.pieces.at(2).readings.at(when(-40)).temperature == Temperature::fromCelsius(41.3));
    CHECK(batch.pieces.at(2).readings.at(when(-40)).depth == Length::fromMillimetres(25));
    CHECK(batch.pieces.at(2).judgements.at(when(-31)));
    CHECK(batch.pieces.at(3).moves.at(when(-31)));
    const live::GrateFacts& grate = day.grates.at(ResourceId{"g"});
    CHECK(grate.handTests.at(when(-51)) == Duration{3500});
    CHECK(grate.readings.at(when(-49)) == Temperature::fromCelsius(212));
    CHECK(grate.coalAdded.at(when(-48)) == Mass::fromGrams(4500));
}

TEST_CASE("a store of version 1 tells of the event, the line and the record of its day as it did") {
    const live::Day day = oldDay();

    REQUIRE(day.event);
    CHECK(day.event->id == EventId{"every-member"});
    CHECK(day.event->guests.adults == 24);
    CHECK(day.event->guests.children == 3);
    CHECK(day.describedGuests.adults == 20);
    REQUIRE(day.event->quantities);
    CHECK(day.event->quantities->overrides.back().figure == "supply/ice");
    CHECK(day.event->quantities->overrides.back().value == 30.5);
    CHECK(day.event->quantities->overrides.back().note == "a hot day");
    CHECK(day.event->quantities->lineOrder ==
          std::vector{DishId{"meat"}, DishId{"beans"}, DishId{"trout"}});
    REQUIRE(day.draft);
    CHECK(day.draft->id == EventId{"every-member"});
    CHECK(day.crew.back() ==
          CrewChanged::Member{
              PersonId{"came.phone.7.1"}, "Bo, \"the tall\"", {SkillId{"fire"}}, true});
    CHECK_FALSE(day.crew.front().isHere);
    CHECK(day.packed == std::map<std::string, live::PackFacts>{{"line/meat/1", {0, 0, 1}},
                                                               {"pack/chafer", {3, 2, 0}}});
    CHECK(day.service.counts == std::map<std::int32_t, Instant>{{0, when(10)}, {20, when(16)}});
    CHECK(day.service.last == when(22));
    CHECK(day.service.pans.at(DishId{"beans"}).levels.at(1).at(when(15)) == 25);
    CHECK(day.service.pans.at(DishId{"beans"}).set.at(2) == when(17));

    REQUIRE(day.record.size() == 3);
    CHECK(day.record[0].fact == safety::Fact{safety::FoodMeasured{
                                    {DishId{"beans"}, 1},
                                    safety::Purpose::HoldHot,
                                    {Temperature::fromCelsius(48.889), safety::Scale::Fahrenheit},
                                    safety::ThermometerId{"probe-1"},
                                    {},
                                    {},
                                    {},
                                    when(-10)}});
    CHECK(day.record[0].person == PersonId{"nora"});
    CHECK(std::get<safety::ActionTaken>(day.record[1].fact).entry == day.record[0].id);
    CHECK(std::get<safety::ActionTaken>(day.record[1].fact).action == safety::Action::Reheat);
    CHECK(std::get<safety::LocalRulesNamed>(day.record[2].fact).rules.authority ==
          "Orchard County");
    // What no version knows yet, and nothing else.
    CHECK(day.setAside == std::vector{OperationId{DeviceId{"tablet"}, 22}});
}
