#pragma once

/// A walk through touches that wait for a plan: moments of the orchard lunch, and what is noted.

#include <catch2/catch.hpp>

#include "crew.h"
#include "day.h"
#include "lists.h"
#include "promise.h"
#include "walk.h"

#include <QAccessible>
#include <QQuickWindow>

namespace cinder::face::scene {

using std::chrono::minutes;

// The crew of demo-data/orchard-harvest-lunch.json has just driven in.
inline const Instant kArrived = parseRfc3339("2027-09-18T11:02:00-04:00").value().at;
// So late that the phone offers to plan again.
inline const Instant kLate = kArrived + minutes(45);
inline const Instant kDaysBefore = parseRfc3339("2027-09-14T09:00:00-04:00").value().at;

inline QString text(const char* words) {
    return QString::fromUtf8(words);
}

struct PlannedWalk : Walk {
    explicit PlannedWalk(const Glass& glass, Instant start) : Walk(glass, start) {
        static_cast<void>(takeComplaints());
    }
    ~PlannedWalk() {
        for (const auto& complaint : takeComplaints())
            FAIL_CHECK(complaint);
    }
    template <class Body>
    [[nodiscard]] int noted() const {
        int count = 0;
        for (const auto& operation : app.journal())
            count += std::holds_alternative<Body>(operation.body) ? 1 : 0;
        return count;
    }
    /// The key that was touched says what it waits for, and feels nothing.
    void expectWaiting() const {
        auto* key = button(text("Planning…"));
        REQUIRE(key != nullptr);
        CHECK_FALSE(key->isEnabled());
    }
    /// What is held, pressed twice by a screen reader, at once: a finger would give the search the
    /// time to end.
    void press(QQuickItem* key) const {
        REQUIRE(key != nullptr);
        auto* face = QAccessible::queryAccessibleInterface(key);
        REQUIRE(face != nullptr);
        for (int time = 0; time < 2; ++time)
            face->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    }
    [[nodiscard]] Promise& promise() const {
        return *app.window().property("promise").value<Promise*>();
    }
    [[nodiscard]] Crew& crew() const { return *app.window().property("crew").value<Crew*>(); }
    [[nodiscard]] Figures& figures() const {
        return *app.window().property("lists").value<Lists*>()->figures();
    }
    [[nodiscard]] event::Guests guests() const { return app.session().described()->guests; }
};

}  // namespace cinder::face::scene
