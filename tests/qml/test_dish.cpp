/// A dish by touch: how far its meat is taken, and the library that remembers what the days taught.

#include <catch2/catch.hpp>

#include <algorithm>

#include <QFile>

#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

const Instant kAfter = parseRfc3339("2027-09-20T09:00:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

void tap(Walk& walk, QQuickItem* item) {
    const std::string fault = walk.finger.touch(item);
    INFO(walk.glassName << ": " << fault);
    REQUIRE(fault.empty());
}

void tap(Walk& walk, const char* button) {
    INFO(button);
    QQuickItem* item = nullptr;
    // A page that was just gone to may still be being made on a busy machine.
    static_cast<void>(
        QTest::qWaitFor([&] { return (item = walk.button(text(button))) != nullptr; }, 3000));
    tap(walk, item);
}

void choose(Walk& walk, const char* option) {
    INFO(option);
    tap(walk, walk.find(QAccessible::RadioButton, text(option)));
}

const event::Dish& lamb(const Walk& walk) {
    for (const event::Dish& dish : walk.app.session().draft()->menu)
        if (dish.id == DishId("lamb")) return dish;
    FAIL("no lamb");
    return walk.app.session().draft()->menu.front();
}

/// Words anywhere on the page, in view or not.
bool isSaid(const Walk& walk, const char* words) {
    return scene::find(walk.app.root(), [&](QQuickItem& item) {
               return item.property("text").toString() == text(words);
           }) != nullptr;
}

void changeTheLamb(const Glass& glass) {
    static_cast<void>(takeComplaints());
    Walk walk(glass, kAfter);
    QFile file(QStringLiteral(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json"));
    REQUIRE(file.open(QIODevice::ReadOnly));
    REQUIRE(walk.app.session().importEvent(file.readAll().toStdString()));
    tap(walk, "New event");
    // An invented authority.
    REQUIRE(walk.app.session().nameLocalRules(
        {"Orchard County", {{"cookGround", safety::inFahrenheit(165)}}}));
    tap(walk, "Harvest lunch in the orchard");
    tap(walk, "Menu");
    tap(walk, "Butterflied leg of lamb");
    REQUIRE(lamb(walk).pullAt);
    CHECK(isSaid(
        walk, "Published minimum 145\u00a0°F for 15\u00a0s (FDA Food Code 2022, 3-401.11(A)(1))"));
    CHECK(lamb(walk).meat == event::Meat::Lamb);

    choose(walk, "Medium, pulled at 135\u00a0°F");
    CHECK(lamb(walk).doneness == event::Doneness::Medium);
    CHECK_FALSE(lamb(walk).pullAt);
    choose(walk, "Pork");
    choose(walk, "Medium, pulled at 140\u00a0°F");
    CHECK(lamb(walk).meat == event::Meat::Pork);
    CHECK(walk.find(QAccessible::RadioButton, text("Rare, pulled at 117\u00a0°F")) == nullptr);
    choose(walk, "Own temperature");
    CHECK_FALSE(lamb(walk).doneness);
    CHECK(lamb(walk).pullAt->celsius() == Approx(60));
    choose(walk, "Ground, injected, tenderized");
    // What the record will be held against, though nothing is planned yet.
    CHECK(isSaid(walk,
                 "Local minimum 165\u00a0°F for 17\u00a0s (Orchard County; FDA Food Code 2022, "
                 "3-401.11(A)(2)). The target lies below it: only a thermometer tells whether a "
                 "piece reached it."));
    CHECK_FALSE(lamb(walk).meat);

    tap(walk, "Lamb rests in the hot box");
    const auto waits = [&] {
        const auto& method = lamb(walk).method;
        return std::find_if(method.begin(), method.end(),
                            [](const event::Step& one) { return one.id == StepId("rest"); })
            ->after.size();
    };
    const auto before = waits();
    tap(walk, "Wait for something more");
    tap(walk, "Wait for it: Hand-wash station");
    CHECK(waits() == before + 1);
    tap(walk, "Take out: No longer wait for Hand-wash station");
    CHECK(waits() == before);
    tap(walk, "One page back");

    // The lunch is past; what it was cooked like is in the library, to be taken again.
    tap(walk, "One page back");
    tap(walk, "Add from the library");
    tap(walk, "Apple and fennel slaw");
    const auto dishes = walk.app.session().draft()->menu.size();
    tap(walk, scene::find(walk.app.root(), [](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button &&
                   nameOf(item).startsWith(text("Add: As first cooked on"));
        }));
    CHECK(walk.app.session().draft()->menu.size() == dishes + 1);
    for (const auto& complaint : takeComplaints())
        FAIL_CHECK(complaint);
}

}  // namespace

TEST_CASE("how far meat is taken is chosen by touch on a tablet") {
    changeTheLamb(kTablet);
}

TEST_CASE("how far meat is taken is chosen by touch on a phone") {
    changeTheLamb(kPhone);
}
