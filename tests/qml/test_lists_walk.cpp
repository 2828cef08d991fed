/// Quantities, van and kitchen by touch alone: every touch is found as a person finds it, shows on
/// the screen and stands in the journal.

#include <catch2/catch.hpp>

#include "event/menu.h"
#include "lists.h"
#include "walk.h"

#include <QFile>
#include <QQuickWindow>

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

// The evening before demo-data/orchard-harvest-lunch.json.
const Instant kEvening = parseRfc3339("2027-09-17T18:00:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

/// The orchard open, and a page of its lists.
struct ListsWalk : Walk {
    ListsWalk(const Glass& glass, const char* page) : Walk(glass, kEvening) {
        openTheOrchard(text("Lead"), text("Inés"));
        goOn(text("More"), text("Lists"));
        touch(button(text(page)));
    }
    [[nodiscard]] Lists& lists() const { return *app.window().property("lists").value<Lists*>(); }
    /// What is sought, scrolled for.
    [[nodiscard]] QQuickItem* seek(const Wanted& wanted) {
        if (auto* here = scene::find(app.root(), wanted)) return here;
        for (auto* item : shown(app.root()))
            if (item->inherits("QQuickFlickable"))
                if (auto* found = finger.seek(*item, wanted)) return found;
        return nullptr;
    }
    [[nodiscard]] QQuickItem* seekButton(const QString& begins) {
        return seek([begins](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(begins);
        });
    }
    [[nodiscard]] double figure(const char* key) {
        const auto all = app.session().lists();
        return quantity::findFigure(all->all, key)->amount.value;
    }
    void type(const char* digits) {
        for (const char* digit = digits; *digit != 0; ++digit)
            touch(button(QString(QLatin1Char(*digit))));
    }
};

void overridePlates(const Glass& glass) {
    ListsWalk walk(glass, "Quantities");
    const double plates = walk.figure("supply/plates");
    walk.touch(walk.seekButton(text("Plates")));
    CHECK(walk.lists().figures()->isOpen());
    CHECK(isReadable(walk.app.root(), text("What went into it")));
    walk.touch(walk.seekButton(text("Use your own figure")));
    walk.type("150");
    const auto set = walk.note<journal::FigureSet>(walk.button(text("Keep")));
    CHECK(set.figure == "supply/plates");
    CHECK(set.value == 150);
    CHECK(walk.figure("supply/plates") == 150);
    CHECK(walk.lists().figures()->isOwn());
    walk.note<journal::FigureSet>(walk.seekButton(text("Back to reckoned")));
    CHECK(walk.figure("supply/plates") == plates);
    walk.undo();
    CHECK(walk.figure("supply/plates") == 150);
    walk.touch(walk.seekButton(text("Back")));
    CHECK_FALSE(walk.lists().figures()->isOpen());
}

void tryOtherGuests(const Glass& glass) {
    ListsWalk walk(glass, "Quantities");
    const double plates = walk.figure("supply/plates");
    walk.touch(walk.button(text("5 adults more")));
    walk.touch(walk.button(text("1 child more")));
    CHECK(walk.lists().figures()->isTrial());
    CHECK(walk.figure("supply/plates") == plates);
    const auto before = walk.app.session().described()->guests;
    const auto fault = walk.finger.touch(walk.seekButton(text("So many come")));
    REQUIRE(fault.empty());
    walk.app.settlePlan();
    const auto after = walk.app.session().described()->guests;
    CHECK(after.adults == before.adults + 5);
    CHECK(after.children == before.children + 1);
    CHECK(walk.figure("supply/plates") > plates);
    CHECK_FALSE(walk.lists().figures()->isTrial());
}

void loadTheVan(const Glass& glass) {
    ListsWalk walk(glass, "Load");
    const auto isTile = [](QQuickItem& item) {
        return roleOf(item) == QAccessible::CheckBox && !isChecked(item) && item.isEnabled();
    };
    auto* tile = walk.seek(isTile);
    REQUIRE(tile != nullptr);
    const auto packed = walk.note<journal::Packed>(tile);
    CHECK(packed.where == journal::Packed::Where::Out);
    CHECK(packed.count >= 1);
    walk.undo();
    const auto empty = walk.app.session().lists();
    for (const auto& card : empty->pack)
        CHECK(card.out == 0);

    walk.touch(walk.seekButton(text("Count")));
    walk.type("1");
    CHECK(walk.note<journal::Packed>(walk.button(text("Keep"))).count == 1);

    // All of it goes out; on the way home one thing is left behind.
    std::string kept;
    const auto lists = walk.app.session().lists();
    for (const auto& card : lists->pack) {
        REQUIRE(walk.app.session().pack(card.key, journal::Packed::Where::Out, card.wanted));
        if (card.comesBack) kept = card.key;
    }
    for (const auto& card : lists->pack)
        if (card.comesBack && card.key != kept)
            REQUIRE(walk.app.session().pack(card.key, journal::Packed::Where::Home, card.wanted));
    walk.app.pass(std::chrono::seconds{20});
    auto* home = walk.seek([](QQuickItem& item) {
        return roleOf(item) == QAccessible::RadioButton && nameOf(item) == text("On the way home");
    });
    walk.touch(home);
    CHECK(walk.lists().load()->missing().startsWith(text("Missing: ")));
    CHECK(isReadable(walk.app.root(), walk.lists().load()->missing()));
    walk.note<journal::Packed>(walk.seek(isTile));
    CHECK(walk.lists().load()->missing().isEmpty());
}

}  // namespace

TEST_CASE("a figure is opened, given an own value and set back by touch") {
    overridePlates(kTablet);
    overridePlates(kPhone);
}

TEST_CASE("other guests are tried by touch, and come when somebody says so") {
    tryOtherGuests(kTablet);
    tryOtherGuests(kPhone);
}

TEST_CASE("the van is loaded by touch, and what did not come home is named") {
    loadTheVan(kTablet);
    loadTheVan(kPhone);
}

TEST_CASE("the kitchen page names every limit of what is cooked ahead") {
    ListsWalk walk(kPhone, "Kitchen");
    const auto all = walk.app.session().lists();
    REQUIRE_FALSE(all->all.kitchen.empty());
    CHECK(walk.lists().load()->kitchen()->count() == static_cast<int>(all->all.kitchen.size()));
    CHECK(walk.seek([](QQuickItem& item) {
        return nameOf(item).contains(text("FDA Food Code 2022, 3-501.14(A)(1)"));
    }) != nullptr);
}

namespace {

void rearrange(const Glass& glass) {
    ListsWalk walk(glass, "Buffet line");
    const auto before = walk.app.look()->line;
    const auto first = before.front().dish;
    const QString name = QString::fromStdString(std::string(before.front().name.in("en")));
    walk.touch(walk.seekButton(text("Show ") + name));
    const auto later = walk.note<journal::LineOrdered>(walk.seekButton(text("Later")));
    REQUIRE(later.dishes.size() > 2);
    CHECK(later.dishes[1] == first);
    CHECK_FALSE(walk.app.look()->line.front().dish == first);
    walk.undo();
    CHECK(walk.app.look()->line.front().dish == first);

    // By its grip, two rows down.
    auto* grip = walk.seekButton(text("Drag ") + name);
    REQUIRE(grip != nullptr);
    const QPointF from = grip->mapToScene(QPointF(grip->width() / 2, grip->height() / 2));
    const auto operations = walk.app.journal().size();
    walk.finger.drag(from, from + QPointF(0, 2.05 * (grip->height() + 8)));
    REQUIRE(walk.app.journal().size() == operations + 1);
    const auto after = walk.app.session().described()->quantities->lineOrder;
    REQUIRE(after.size() > 2);
    CHECK_FALSE(after[0] == first);

    // The board's set-up list is the line as it now stands.
    walk.go(text("Buffet"));
    auto* tile = walk.seek([](QQuickItem& item) {
        return roleOf(item) == QAccessible::CheckBox && nameOf(item).startsWith(text("1 · "));
    });
    const auto placed = walk.note<journal::Packed>(tile);
    CHECK(placed.where == journal::Packed::Where::Line);
    CHECK(placed.row == walk.app.look()->line.front().key);
    CHECK(walk.app.look()->line.front().isPlaced);
}

void writePapers(const Glass& glass) {
    ListsWalk walk(glass, "Paper");
    auto* papers = walk.lists().papers();
    for (const QString& name : papers->names()) {
        INFO(name.toStdString());
        walk.touch(walk.seek(named(QAccessible::RadioButton, name)));
        walk.touch(walk.seek(named(QAccessible::RadioButton, text("A4"))));
        walk.touch(walk.seekButton(text("Write PDF")));
        REQUIRE(papers->isWritten());
        const QString path = papers->said().mid(papers->said().indexOf(QLatin1Char('/')));
        QFile file(path);
        REQUIRE(file.open(QIODevice::ReadOnly));
        CHECK(file.read(5) == QByteArray("%PDF-"));
        CHECK(isReadable(walk.app.root(), papers->said()));
        if (!papers->hasTable()) continue;
        walk.touch(walk.seekButton(text("Write CSV")));
        CHECK(papers->isWritten());
        QFile list(papers->said().mid(papers->said().indexOf(QLatin1Char('/'))));
        REQUIRE(list.open(QIODevice::ReadOnly));
        CHECK(list.readAll().contains("\r\n"));
    }
}

}  // namespace

TEST_CASE("a dish goes along the line by touch, and the set-up list follows") {
    rearrange(kTablet);
}

TEST_CASE("every sheet is written by touch, and it is said where the file went") {
    writePapers(kTablet);
    writePapers(kPhone);
}
