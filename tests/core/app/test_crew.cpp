/// People come, can do other things, and go, in the middle of a day.

#include <catch2/catch.hpp>

#include <algorithm>

#include "demo_day.h"
#include "event/json.h"
#include "live/ways_out.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::CrewMember;
using app::Refusal;
using app::RehearsalCrew;
using live::WayOut;
using samples::Device;

namespace {

struct DemoDay : Device {
    explicit DemoDay(const char* name)
        : Device(event::parse(samples::demo(name)).value().serve.at - 96h) {
        event = session->importEvent(samples::demo(name)).value();
    }
    /// Nobody has done anything by so long after the crew should have come.
    void beLate(Duration by) { clock.advance(session->look()->arrival + by - clock.wall()); }
    /// A crew that does what it should, until `fromBell`.
    void playUntil(Duration fromBell) {
        RehearsalCrew crew(*session);
        clock.advance(session->look()->tasks.front().start - 5min - clock.wall());
        while (clock.wall() < session->look()->serve + fromBell) {
            REQUIRE(crew.act());
            clock.advance(10s);
        }
    }
    [[nodiscard]] std::size_t entries() const { return store->read(event)->size(); }
    [[nodiscard]] live::Remaining rest() const {
        return std::get<live::Remaining>(session->askToReplan().value().wanted);
    }
    [[nodiscard]] CrewMember member(const char* id) const {
        const auto crew = session->crew();
        return *std::find_if(crew.begin(), crew.end(),
                             [&](const auto& one) { return one.person.text() == id; });
    }
    [[nodiscard]] CrewMember without(const char* id) const {
        CrewMember gone = member(id);
        gone.isHere = false;
        return gone;
    }
    /// Whether somebody is to lend a hand from now on.
    [[nodiscard]] bool isNeeded(const PersonId& person) {
        const auto seen = session->look();
        for (const auto& card : seen->tasks) {
            if (card.state == app::TaskState::Done || card.state == app::TaskState::Skipped)
                continue;
            for (const auto& work : card.work)
                if (work.finish > seen->now &&
                    std::find(work.people.begin(), work.people.end(), person) != work.people.end())
                    return true;
        }
        return false;
    }
    EventId event;
};

void expectRefused(const Result<void, Refusal>& taken, Refusal::Why why) {
    REQUIRE_FALSE(taken);
    CHECK(taken.error().why == why);
}

const app::PersonCard* findPerson(const app::Snapshot& day, const std::string& name) {
    const auto found = std::find_if(day.people.begin(), day.people.end(),
                                    [&](const auto& one) { return one.name == name; });
    return found == day.people.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("with one person more a late demo day is as late as was said, and undone as it was") {
    // Orchard: there, planning again alone makes good what one more could.
    const char* const name = GENERATE("pruning-day-supper.json", "last-apple-feast.json");
    INFO(name);
    DemoDay day(name);
    day.beLate(40min);
    const auto rest = day.rest();
    const auto ways = live::waysOut(rest);
    const auto more = std::find_if(ways.begin(), ways.end(), [](const WayOut& way) {
        return way.kind == WayOut::Kind::OnePersonMore;
    });
    REQUIRE(more != ways.end());
    CrewMember newcomer{{}, "+1", {}};
    for (const auto skill : more->skills)
        newcomer.skills.push_back(rest.sheet.problem.skills[static_cast<std::size_t>(skill)].id);
    const auto before = day.session->look();
    const auto sheet = *day.session->sheet();
    const auto crew = day.session->crew();
    const auto entries = day.entries();

    REQUIRE(day.session->changeCrew({newcomer}));

    CHECK(day.entries() == entries + 2);
    auto after = day.session->look();
    CHECK(after->lateness <= more->late);
    const auto* card = findPerson(*after, "+1");
    REQUIRE(card);
    CHECK(card->isHere);
    CHECK(day.isNeeded(card->id));
    REQUIRE(after->undo);
    CHECK(after->undo->what == app::UndoOffer::What::Crew);
    // It survives a dead battery.
    day.restart();
    REQUIRE(day.session->open(day.event));
    CHECK(day.session->crew().size() == crew.size() + 1);
    CHECK(findPerson(*day.session->look(), "+1"));
    // The event from which the next is made knows only who was described.
    CHECK(event::parse(day.session->documentOf(day.event).value())->crew.size() == crew.size());

    REQUIRE(day.session->undo());
    CHECK(*day.session->sheet() == sheet);
    CHECK(day.session->crew() == crew);
    CHECK(day.session->look()->lateness == before->lateness);
}

TEST_CASE("somebody goes in the middle of the day, and the others do it to the end") {
    DemoDay day("last-apple-feast.json");
    const auto [who, when] = GENERATE(table<const char*, Duration>(
        {{"ines", -150min}, {"rowan", -150min}, {"bruna", -60min}, {"eli", -20min}}));
    INFO(who << " goes at " << formatBellOffset(when));
    day.playUntil(when);

    REQUIRE(day.session->changeCrew({day.without(who)}));

    CHECK_FALSE(day.isNeeded(PersonId{who}));
    const auto seen = day.session->look();
    const auto* card = findPerson(*seen, day.member(who).name);
    REQUIRE(card);
    CHECK_FALSE(card->isHere);
    CHECK_FALSE(card->now);
    CHECK_FALSE(card->next);
    RehearsalCrew others(*day.session);
    for (int step = 0; step < 6 * 60 * 12 && !others.isDayOver(); ++step) {
        REQUIRE(others.act());
        day.clock.advance(10s);
    }
    CHECK(others.isDayOver());
    // What was said of the bell was kept.
    CHECK(day.session->look()->lateness <= seen->lateness + 1min);

    SECTION("and comes back with what they can do") {
        CrewMember back = day.member(who);
        back.isHere = true;
        REQUIRE(day.session->changeCrew({back}));
        CHECK(findPerson(*day.session->look(), back.name)->isHere);
    }
}

TEST_CASE("the only one at the fire can go when somebody else takes it") {
    DemoDay day("orchard-harvest-lunch.json");
    day.playUntil(-40min);
    REQUIRE(day.isNeeded(PersonId{"ines"}));
    const auto entries = day.entries();

    const auto alone = day.session->changeCrew({day.without("ines")});
    expectRefused(alone, Refusal::Why::NobodyCan);
    REQUIRE(alone.error().faults.size() == 1);
    CHECK(alone.error().faults[0].found == "fire");
    CHECK(day.entries() == entries);

    CrewMember rowan = day.member("rowan");
    rowan.skills.emplace_back("fire");
    REQUIRE(day.session->changeCrew({day.without("ines"), rowan}));
    CHECK(day.entries() == entries + 2);
    CHECK_FALSE(day.isNeeded(PersonId{"ines"}));
    CHECK(day.isNeeded(PersonId{"rowan"}));
}

TEST_CASE("whoever has gone has gone, also when no plan is found without them") {
    DemoDay day("pruning-day-supper.json");
    // Everybody can do everything; one of two goes when the most is to be done.
    day.playUntil(-60min);
    CrewMember eli = day.member("eli");
    eli.skills = day.member("bruna").skills;
    REQUIRE(day.session->changeCrew({eli}));
    const auto isSaid = [&] {
        const auto seen = day.session->look();
        return std::any_of(seen->notices.begin(), seen->notices.end(), [](const auto& notice) {
            return notice.what == app::Notice::What::OtherCrew;
        });
    };
    CHECK_FALSE(isSaid());
    // Eli takes the pork off the fire while Bruna's other work of then is still to be planned.
    REQUIRE(day.session->changeCrew({day.without("bruna")}));
    CHECK_FALSE(isSaid());
    CHECK(day.session->look()->lateness <= 30min);
    REQUIRE(day.session->undo());
    REQUIRE(day.session->replan());
    day.clock.advance(1s);
    const auto sheet = *day.session->sheet();
    const auto entries = day.entries();
    const auto planning = day.session->askToChangeCrew({day.without("bruna")}).value();
    const Refusal none{Refusal::Why::NoPlan, {}, {}, {}, {}};

    REQUIRE(day.session->publish(planning, fail(none)));

    CHECK(day.entries() == entries + 1);
    CHECK(*day.session->sheet() == sheet);
    CHECK(isSaid());
    CHECK_FALSE(findPerson(*day.session->look(), "Bruna")->isHere);
    // The plan before was made for itself.
    REQUIRE(day.session->undo());
    CHECK(day.entries() == entries + 2);
    CHECK(*day.session->sheet() == sheet);
    CHECK_FALSE(isSaid());
    // A search that was asked to end says nothing of the crew.
    const auto again = day.session->askToReplan().value();
    CHECK_FALSE(day.session->publish(again, fail(none)));
}

TEST_CASE("what cannot be said of a crew is refused, field by field") {
    DemoDay day("orchard-harvest-lunch.json");
    day.playUntil(-60min);
    const auto entries = day.entries();
    const auto fault = [&](const std::vector<CrewMember>& members) {
        const auto taken = day.session->changeCrew(members);
        expectRefused(taken, Refusal::Why::BadEvent);
        REQUIRE(taken.error().faults.size() == 1);
        return taken.error().faults[0].path;
    };
    const CrewMember bo{{}, "Bo", {SkillId{"general"}}};

    CHECK(fault({bo, {{}, "", {SkillId{"general"}}}}) == "/members/1/name");
    CHECK(fault({{{}, std::string(201, 'o'), {SkillId{"general"}}}}) == "/members/0/name");
    CHECK(fault({7, bo}) == "/members");
    CHECK(day.entries() == entries);
    REQUIRE(day.session->changeCrew({6, bo}));
    CHECK(fault({bo}) == "/members");
    // One goes, one comes.
    CHECK(day.session->changeCrew({day.without("rowan"), bo}));

    expectRefused(day.session->changeCrew({}), Refusal::Why::NotNow);
    expectRefused(day.session->changeCrew({day.member("ines")}), Refusal::Why::NotNow);
}

TEST_CASE("a plan that is being made when somebody comes or goes is not published") {
    DemoDay day("orchard-harvest-lunch.json");
    day.playUntil(-60min);
    const auto planning = day.session->askToReplan().value();
    const auto found = app::searchPlan(planning);
    REQUIRE(day.session->changeCrew({{{}, "Bo", {SkillId{"general"}}}}));
    expectRefused(day.session->publish(planning, found), Refusal::Why::Overtaken);
}
