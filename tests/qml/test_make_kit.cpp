/// New kit by touch stands where it is used; a yield that counted pieces cannot have is corrected
/// beside its ingredient.

#include <catch2/catch.hpp>

#include "event/edit.h"
#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

const Instant kBefore = parseRfc3339("2027-08-20T09:00:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

class Maker {
  public:
    explicit Maker(const Glass& glass) : walk_(glass, kBefore) {
        static_cast<void>(takeComplaints());
        tap("New event");
        tap("Charcoal buffet");
        part("Menu");
        tap("Add from the library");
        tap("Add: Chicken thighs");
    }
    void tap(QQuickItem* item) {
        const std::string fault = walk_.finger.touch(item);
        INFO(walk_.glassName << ": " << fault);
        REQUIRE(fault.empty());
    }
    /// The button whose name begins so.
    void tap(const char* button) {
        INFO(button);
        tap(seek(QAccessible::Button, button));
    }
    void choose(const char* option) {
        INFO(option);
        tap(seek(QAccessible::RadioButton, option));
    }
    void part(const char* name) {
        while (walk_.button(text(name)) == nullptr)
            tap("One page back");
        tap(walk_.button(text(name)));
    }
    void type(const char* field, const char* digits) {
        auto* pad = walk_.find(QAccessible::Grouping, text(field));
        REQUIRE(pad != nullptr);
        for (const QChar digit : text(digits))
            tap(scene::find(*pad, named(QAccessible::Button, digit)));
        tap("Take it");
    }
    [[nodiscard]] bool says(const char* words) const {
        return scene::find(walk_.app.root(), [&](QQuickItem& item) {
                   return item.property("text").toString() == text(words);
               }) != nullptr;
    }
    [[nodiscard]] const event::Event& draft() const { return *walk_.app.session().draft(); }
    /// Behind the face.
    template <class Change>
    void changeTheDish(Change change) {
        REQUIRE(walk_.app.session().edit(
            [change](event::Event e) {
                auto dish = e.menu.front();
                change(dish);
                return event::withDish(std::move(e), dish);
            },
            "/menu/0"));
    }

  private:
    [[nodiscard]] QQuickItem* seek(QAccessible::Role role, const char* begins) const {
        return scene::find(walk_.app.root(), [&](QQuickItem& item) {
            return roleOf(item) == role && nameOf(item).startsWith(text(begins));
        });
    }

    Walk walk_;
};

void placeTheKit(const Glass& glass) {
    Maker maker(glass);
    maker.part("Kit");
    maker.tap("Add: A table");
    CHECK(maker.draft().kit.tables.back().station == StationId("line"));
    maker.tap("Add: A grate");
    CHECK(maker.draft().kit.grates.back().station == StationId("fire"));

    maker.changeTheDish([](event::Dish& dish) {
        for (event::Step& step : dish.method) {
            if (step.kind == event::StepKind::Load) step.station = StationId("prep");
            if (!step.onGrates.empty()) step.station = StationId("line");
        }
    });
    maker.tap("Add: A table");
    CHECK(maker.draft().kit.tables.back().station == StationId("prep"));
    maker.tap("Add: A grate");
    CHECK(maker.draft().kit.grates.back().station == StationId("line"));

    maker.tap("Long grate");
    maker.choose("Van");
    CHECK(maker.draft().kit.grates.front().station == StationId("van"));
    maker.tap("One page back");
    maker.tap("Six-foot line table");
    maker.choose("Prep table");
    CHECK(maker.draft().kit.tables.front().station == StationId("prep"));
}

/// Of nothing on the menu, the work of the event tells.
void placeTheFirstKit(const Glass& glass) {
    Maker maker(glass);
    maker.tap("One page back");
    maker.tap("Chicken thighs");
    maker.tap("Take off the menu");
    REQUIRE(maker.draft().menu.empty());
    maker.part("Kit");
    maker.tap("Add: A table");
    CHECK(maker.draft().kit.tables.back().station == StationId("line"));
    maker.tap("Add: A grate");
    CHECK(maker.draft().kit.grates.back().station == StationId("fire"));
}

/// A card of an older library bought counted pieces by what cooking leaves of them.
void correctAYield(const Glass& glass) {
    Maker maker(glass);
    maker.changeTheDish([](event::Dish& dish) {
        dish.serving->ingredients.front().yieldPercent.reset();
        dish.serving->ingredients.front().yields = {"cy_5094"};
    });
    maker.tap("One page back");
    maker.tap("Chicken thighs");
    const char* problem =
        "Counted pieces are weighed raw: cooking takes nothing from what is bought. Type how much "
        "is left of 100 bought before it is cooked.";
    CHECK(maker.says(problem));
    maker.tap("Chicken thighs: ready of bought: ");
    maker.type("Chicken thighs: ready of bought", "100");
    CHECK(maker.draft().menu.front().serving->ingredients.front().yields.empty());
    CHECK(maker.draft().menu.front().serving->ingredients.front().yieldPercent == 100);
    CHECK_FALSE(maker.says(problem));
}

}  // namespace

TEST_CASE("new kit stands where it is used, and can be put elsewhere") {
    placeTheKit(kTablet);
    placeTheKit(kPhone);
}

TEST_CASE("before there is a dish, new kit stands where the work of the event is") {
    placeTheFirstKit(kTablet);
}

TEST_CASE("a yield of cooking on counted pieces is corrected beside its ingredient") {
    correctAYield(kTablet);
    correctAYield(kPhone);
}
