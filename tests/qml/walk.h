#pragma once

/// A crew member with one finger: goes to boards, finds plates, touches, and after every touch
/// looks at the screen and into the journal.

#include <catch2/catch.hpp>

#include <variant>

#include <QQuickItem>
#include <QString>

#include "app/snapshot.h"
#include "real_day.h"
#include "scene.h"

namespace cinder::face::scene {

class Walk {
  public:
    Walk(const Glass& glass, Instant start, CrewDevices* others = nullptr)
        : app(glass, start, others), glassName(glass.name), finger(app.window()) {}

    // --- finding ---
    [[nodiscard]] QQuickItem* find(QAccessible::Role role, const QString& name) const {
        return scene::find(app.root(), named(role, name));
    }
    [[nodiscard]] QQuickItem* button(const QString& name) const {
        return find(QAccessible::Button, name);
    }
    [[nodiscard]] bool isAt(const QString& board) const;
    /// The plate of `task` on the board that is open, scrolled for when it is far away.
    [[nodiscard]] QQuickItem* plateOf(const TaskId& task);
    [[nodiscard]] app::TaskCard card(const TaskId& task);
    /// The call that fills the board; null while none does.
    [[nodiscard]] QQuickItem* call() const {
        return find(QAccessible::AlertMessage, QStringLiteral("Call"));
    }
    [[nodiscard]] QQuickItem* undoButton() const;

    // --- touching ---
    /// Opens demo-data/orchard-harvest-lunch.json from the list of events, for the person of this
    /// name (none: nobody in particular), at the board whose plate begins so.
    void openTheOrchard(const QString& board, const QString& person = {});
    /// Touches what must be reachable, and nothing may be noted by it.
    void touch(QQuickItem* item);
    /// Touches what must be reachable; exactly one operation must follow, a `Body`.
    template <class Body>
    Body note(QQuickItem* item) {
        const auto before = app.journal().size();
        const std::string aim = item == nullptr ? "nothing" : describe(*item);
        const std::string fault = finger.touch(item);
        INFO(glassName << ": " << aim << "; " << fault << "; " << whatIsSaid());
        REQUIRE(fault.empty());
        const auto after = app.journal();
        REQUIRE(after.size() == before + 1);
        const Body* body = newest<Body>(after);
        REQUIRE(body != nullptr);
        return *body;
    }
    /// On the keyboard of the device, into what has the focus.
    void write(const QString& letters);
    /// By the tab at the thumb.
    void go(const QString& board);
    /// A page behind a way.
    void goOn(const QString& board, const QString& page);
    /// Takes the last touch back; it is no longer offered afterwards.
    void undo();
    /// Goes to the call that rings now, by its band if it fills another board.
    void faceTheCall();
    /// Silences whatever calls, one touch each.
    void hearCalls();
    /// Touches the glass over every control that something else hides. Whatever that does, the
    /// hidden control must not feel it: nothing noted, no other board open.
    void touchWhatIsCovered(const std::function<void()>& putBack = [] {});

    RealDay app;
    const char* glassName;
    Finger finger;

  private:
    /// Why the last touch was refused, and what rings; for a touch that came to nothing.
    [[nodiscard]] std::string whatIsSaid() const;
    /// The body of the newest operation if it is a `Body`.
    template <class Body>
    static const Body* newest(const std::vector<journal::Operation>& operations) {
        const journal::Operation* last = nullptr;
        for (const auto& operation : operations)
            if (last == nullptr || journal::comesBefore(*last, operation)) last = &operation;
        return last == nullptr ? nullptr : std::get_if<Body>(&last->body);
    }
};

}  // namespace cinder::face::scene
