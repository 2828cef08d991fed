/// Making and changing an event, one touch at a time.

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>

#include "documents.h"
#include "event/draft.h"
#include "event/edit.h"
#include "event/json.h"
#include "event/method_card.h"
#include "event/text_guard.h"

using namespace cinder;
using namespace cinder::event;
using cinder::test::sourceText;

namespace {

Event blank() {
    auto draft = parseDraft(sourceText("assets/templates/plain-charcoal-buffet.json"));
    REQUIRE(draft.has_value());
    return *std::move(draft);
}

Event orchard() {
    auto event = parse(sourceText("demo-data/orchard-harvest-lunch.json"));
    REQUIRE(event.has_value());
    return *std::move(event);
}

Dish card(const std::string& name) {
    auto dish = parseDish(sourceText("assets/methods/" + name + ".json"));
    REQUIRE(dish.has_value());
    return *std::move(dish);
}

/// The edit was taken.
Event taken(Edited edited) {
    if (!edited)
        for (const Fault& fault : edited.error())
            UNSCOPED_INFO(describe(fault));
    REQUIRE(edited.has_value());
    return *std::move(edited);
}

/// The first fault of an edit that was refused.
Fault stopped(const Edited& edited) {
    REQUIRE_FALSE(edited.has_value());
    REQUIRE_FALSE(edited.error().empty());
    return edited.error().front();
}

bool blames(const Faults& faults, const std::string& path) {
    return std::any_of(faults.begin(), faults.end(),
                       [&](const Fault& fault) { return fault.path == path; });
}

}  // namespace

TEST_CASE("A template is a draft that lacks nothing but a menu") {
    const Faults faults = faultsOf(blank());
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().path == "/menu");
}

TEST_CASE("Every card of the library makes the template a whole event") {
    const std::filesystem::path folder(std::string(CINDER_SOURCE) + "/assets/methods");
    int cards = 0;
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
        const Event draft = taken(withCard(blank(), card(file.path().stem().string())));
        INFO(file.path().stem().string());
        for (const Fault& fault : faultsOf(draft))
            UNSCOPED_INFO(describe(fault));
        CHECK(faultsOf(draft).empty());
        ++cards;
    }
    CHECK(cards >= 25);
}

TEST_CASE("A draft with broken rules is kept, and read again as it was") {
    const Event draft = taken(withGuests(blank(), 0, 0));
    const auto again = parseDraft(write(draft));
    REQUIRE(again.has_value());
    CHECK(*again == draft);
    CHECK(blames(faultsOf(draft), "/guests/adults"));
}

TEST_CASE("More guests than the app is for are refused beside their field") {
    const Fault fault = stopped(withGuests(blank(), 5001, 0));
    CHECK(fault.path == "/guests/adults");
    CHECK(fault.found == "5001");
    CHECK(fault.allowed == "0..5000");
    CHECK(taken(withGuests(blank(), 5000, 0)).guests.adults == 5000);
}

TEST_CASE("A diet is counted once and taken out with nought") {
    Event draft = taken(withDiet(blank(), Diet::Vegan, 3));
    draft = taken(withDiet(draft, Diet::Vegan, 5));
    REQUIRE(draft.guests.diets.size() == 1);
    CHECK(draft.guests.diets.front().count == 5);
    draft = taken(withAllergen(draft, Allergen::Sesame, 200));
    CHECK(blames(faultsOf(draft), "/guests/allergens/0/count"));
    draft = taken(withAllergen(draft, Allergen::Sesame, 0));
    CHECK(taken(withDiet(draft, Diet::Vegan, 0)).guests == blank().guests);
}

TEST_CASE("A past event on another day keeps its arrival before the bell, not its overrides") {
    Event past = orchard();
    past.quantities.emplace().overrides.push_back({"dish/slaw/portions", 12, {}, {}});
    const ZonedInstant serve = *parseRfc3339("2028-05-06T18:30:00-05:00");

    const Event draft = renewed(past, EventId("spring"), serve);

    CHECK(draft.id == EventId("spring"));
    REQUIRE(draft.site.arrival);
    CHECK(draft.serve.at - draft.site.arrival->at == std::chrono::hours{2});
    CHECK(draft.site.arrival->offset == serve.offset);
    CHECK(draft.quantities->overrides.empty());
    CHECK(faultsOf(draft).empty());
}

TEST_CASE("The bell moves the arrival with it") {
    const Event before = orchard();
    const ZonedInstant later{before.serve.at + std::chrono::minutes{45}, before.serve.offset};
    const Event draft = taken(withServe(before, later));
    CHECK(draft.site.arrival->at - before.site.arrival->at == std::chrono::minutes{45});
}

TEST_CASE("A dish takes its place on the line and its overrides along when it goes") {
    Event draft = orchard();
    draft.quantities.emplace();
    draft.quantities->lineOrder = {DishId("slaw"), DishId("lamb")};
    draft.quantities->overrides = {{"dish/slaw/portions", 12, {}, {}}, {"water", 30, {}, {}}};
    const std::size_t dishes = draft.menu.size();

    // In the demo another dish is loaded after the slaw.
    CHECK(stopped(withoutDish(draft, DishId("slaw"))).what == Fault::What::Contradiction);
    draft = taken(withNobodyWaitingFor(draft, DishId("slaw")));
    draft = taken(withoutDish(draft, DishId("slaw")));

    CHECK(draft.menu.size() == dishes - 1);
    CHECK(draft.quantities->lineOrder == std::vector{DishId("lamb")});
    REQUIRE(draft.quantities->overrides.size() == 1);
    CHECK(draft.quantities->overrides.front().figure == "water");
    CHECK(faultsOf(draft).empty());
}

TEST_CASE("A dish that other work waits for stays, and the link is named") {
    Event draft = taken(withCard(blank(), card("pork-loin")));
    After after;
    after.step = fullName(draft.menu[0].id, draft.menu[0].method[0].id);
    draft.work.back().after.push_back(after);

    const Fault fault = stopped(withoutDish(draft, draft.menu[0].id));

    const std::string last = joinPath("/work", draft.work.size() - 1);
    CHECK(fault.path == joinPath(last + "/after", draft.work.back().after.size() - 1) + "/step");
    CHECK(fault.allowed == "/menu/0");
}

TEST_CASE("A copy of a dish is a dish of its own") {
    Event draft = taken(withCard(blank(), card("pork-loin")));
    draft = taken(withCopyOf(draft, draft.menu[0].id));
    REQUIRE(draft.menu.size() == 2);
    CHECK(draft.menu[1].id != draft.menu[0].id);
    CHECK(faultsOf(draft).empty());
    CHECK(taken(withoutDish(draft, draft.menu[0].id)).menu.size() == 1);
}

TEST_CASE("A copy waits for the dishes that its original waits for, and for its own steps") {
    const Event draft = taken(withCopyOf(orchard(), DishId("lamb")));
    const auto waits = [](const Dish& dish) {
        std::vector<std::string> names;
        for (const Step& step : dish.method)
            for (const After& after : step.after)
                names.push_back(step.id.text() + " after " + after.step.text());
        return names;
    };
    const auto lamb = std::find_if(draft.menu.begin(), draft.menu.end(),
                                   [](const Dish& dish) { return dish.id == DishId("lamb"); });
    auto expected = waits(*lamb);
    CHECK(std::count(expected.begin(), expected.end(), "load after slaw/load") == 1);
    for (std::string& name : expected)
        if (const auto own = name.find(" lamb/"); own != std::string::npos)
            name.replace(own, 6, " lamb-2/");
    CHECK(waits(draft.menu.back()) == expected);
    CHECK(faultsOf(draft).empty());
}

TEST_CASE("Every copy of a dish has a name of its own in both languages") {
    const Event draft = taken(withCard(blank(), card("lamb-leg")));
    Event twice = taken(withCopyOf(draft, draft.menu[0].id));
    twice = taken(withCopyOf(std::move(twice), draft.menu[0].id));
    const auto name = [](const Dish& dish, const char* language) {
        return std::string(dish.name.in(language));
    };
    for (const char* language : {"en", "es"}) {
        CHECK(name(twice.menu[1], language) == name(draft.menu[0], language) + " 2");
        CHECK(name(twice.menu[2], language) == name(draft.menu[0], language) + " 3");
    }
}

TEST_CASE("A dish keeps the steps that others wait for") {
    Event draft = taken(withCard(blank(), card("lamb-leg")));
    draft = taken(withCard(std::move(draft), card("potato-salad")));
    Step step = draft.menu[1].method.back();
    After after;
    after.step = fullName(draft.menu[0].id, draft.menu[0].method.front().id);
    step.after.push_back(after);
    draft = taken(withStep(std::move(draft), draft.menu[1].id, step));

    Dish shorter = draft.menu[0];
    shorter.method.erase(shorter.method.begin());
    for (Step& one : shorter.method)
        std::erase_if(one.after, [&](const After& link) { return link.step == after.step; });
    const Fault no = stopped(withDish(draft, shorter));
    CHECK(no.what == Fault::What::Contradiction);
    CHECK(no.path.starts_with("/menu/1/method/"));
    CHECK(no.allowed == "/menu/0");
}

TEST_CASE("Kit in use stays, and every user of it is named") {
    const Event draft = taken(withCard(blank(), card("pork-loin")));
    const auto edited = withoutKit(draft, draft.kit.grates.front().id);
    CHECK(stopped(edited).path.starts_with("/menu/0/method/"));
    const Event without = taken(withoutKit(blank(), draft.kit.grates.front().id));
    CHECK(without.kit.grates.empty());
}

TEST_CASE("Sizes that contradict each other are blamed on the field that is too large") {
    Grate grate = blank().kit.grates.front();
    grate.coolSide = grate.length;
    const Event draft = taken(withGrate(blank(), grate));
    CHECK(draft.kit.grates.size() == blank().kit.grates.size());
    CHECK(blames(faultsOf(draft), "/kit/grates/0/coolSideMm"));
}

TEST_CASE("A new person gets a free id, and the last one cannot go") {
    Person third;
    third.name = "Third";
    Event draft = taken(withPerson(blank(), third));
    REQUIRE(draft.crew.size() == 3);
    CHECK(draft.crew[2].id == PersonId("person-3"));
    draft = taken(withoutPerson(draft, PersonId("person-1")));
    CHECK(taken(withPerson(draft, third)).crew.back().id != PersonId("person-3"));
    draft = taken(withoutPerson(draft, PersonId("person-2")));
    CHECK(stopped(withoutPerson(draft, PersonId("person-3"))).path == "/crew");
    CHECK_FALSE(faultsOf(draft).empty());  // nobody is left who knows the fire
}

TEST_CASE("A new place lies a minute from every other, and goes with its walks") {
    const auto before = orchard();
    Station station;
    station.name = LocalText("Bar");
    const auto with = withStation(before, station);
    REQUIRE(with);
    REQUIRE(with->site.stations.size() == before.site.stations.size() + 1);
    CHECK(with->site.walks.size() == before.site.walks.size() + before.site.stations.size());
    CHECK(with->site.walks.back().time == std::chrono::minutes{1});
    const auto without = withoutStation(*with, with->site.stations.back().id);
    REQUIRE(without);
    CHECK(*without == before);
}

TEST_CASE("A skill that steps need stays, and each is named; one that none needs goes from all") {
    auto draft = orchard();
    const auto stopped = withoutSkill(draft, draft.skills.front().id);
    REQUIRE_FALSE(stopped);
    CHECK(stopped.error().front().allowed == "/skills");
    CHECK(stopped.error().front().path.ends_with("/hands/skill"));

    Skill skill;
    skill.name = LocalText("Bar");
    draft = withSkill(draft, skill).value();
    const SkillId id = draft.skills.back().id;
    draft.crew.front().skills.push_back(id);
    const auto without = withoutSkill(draft, id);
    REQUIRE(without);
    CHECK(*without == orchard());
    CHECK_FALSE(withoutSkill(orchard(), SkillId("nothing")));
}

TEST_CASE("A station with work or kit stays") {
    Site site = blank().site;
    std::erase_if(site.stations, [](const Station& one) { return one.id == StationId("fire"); });
    CHECK(stopped(withSite(blank(), site)).path == "/kit/grates/0/station");
}

TEST_CASE("A step is changed in its place, and stays while another comes after it") {
    Event draft = taken(withCard(blank(), card("pork-loin")));
    Step step = draft.menu[0].method[0];
    step.duration.low = step.duration.usual + std::chrono::minutes{1};
    const DishId dish = draft.menu[0].id;
    const Event changed = taken(withStep(draft, dish, step));
    CHECK(changed.menu[0].method.size() == draft.menu[0].method.size());
    CHECK(blames(faultsOf(changed), "/menu/0/method/0/minutes/low"));

    step.duration.low = std::chrono::hours{25};
    CHECK(stopped(withStep(draft, dish, step)).path == "/menu/0/method/0/minutes/low");
    CHECK(stopped(withoutStep(draft, {}, StepId("burn-in"))).what == Fault::What::Contradiction);
    CHECK(stopped(withoutStep(draft, dish, StepId("nothing"))).what == Fault::What::Dangling);
}

TEST_CASE("Dishes nobody has are dangling, not guessed") {
    CHECK(stopped(withoutDish(blank(), DishId("soup"))).what == Fault::What::Dangling);
    CHECK(stopped(withCopyOf(blank(), DishId("soup"))).path == "/menu");
    CHECK(stopped(withDish(blank(), card("pork-loin"))).path == "/menu");
    CHECK(stopped(withStep(blank(), DishId("soup"), Step{})).path == "/menu");
}
