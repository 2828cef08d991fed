#include "walk.h"

#include <algorithm>
#include <utility>

#include <QCoreApplication>
#include <QKeyEvent>
#include <QQuickWindow>

#include "day.h"

namespace cinder::face::scene {

namespace {

/// The board itself: the largest thing in view that scrolls.
QQuickItem* boardOf(QQuickItem& root) {
    QQuickItem* largest = nullptr;
    for (auto* item : shown(root)) {
        if (!item->inherits("QQuickFlickable")) continue;
        const auto area = [](const QQuickItem& i) { return i.width() * i.height(); };
        if (largest == nullptr || area(*item) > area(*largest)) largest = item;
    }
    return largest;
}

}  // namespace

bool Walk::isAt(const QString& board) const {
    return find(QAccessible::Pane, board) != nullptr || find(QAccessible::List, board) != nullptr;
}

QQuickItem* Walk::plateOf(const TaskId& task) {
    const QString key = QString::fromStdString(task.text());
    const Wanted plate = [&key](QQuickItem& item) {
        return roleOf(item) == QAccessible::ListItem && item.property("key").toString() == key;
    };
    if (auto* here = scene::find(app.root(), plate)) return here;
    auto* board = boardOf(app.root());
    return board == nullptr ? nullptr : finger.seek(*board, plate);
}

app::TaskCard Walk::card(const TaskId& task) {
    const auto day = app.look();
    const auto at = std::find_if(day->tasks.begin(), day->tasks.end(),
                                 [&](const auto& c) { return c.id == task; });
    REQUIRE(at != day->tasks.end());
    return *at;
}

QQuickItem* Walk::undoButton() const {
    return scene::find(app.root(), [](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button &&
               nameOf(item).startsWith(QStringLiteral("Undo"));
    });
}

std::string Walk::whatIsSaid() const {
    std::string said = "refused: \"" + app.day().refusal().toStdString() + "\"";
    if (auto* ringing = call()) said += ", under " + describe(*ringing);
    return said;
}

void Walk::touch(QQuickItem* item) {
    const auto before = app.journal().size();
    const std::string fault = finger.touch(item);
    INFO(glassName << ": " << fault);
    REQUIRE(fault.empty());
    REQUIRE(app.journal().size() == before);
}

void Walk::write(const QString& letters) {
    for (const QChar letter : letters)
        for (const auto kind : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent key(kind, Qt::Key_unknown, Qt::NoModifier, letter);
            QCoreApplication::sendEvent(&app.window(), &key);
        }
}

void Walk::go(const QString& board) {
    INFO("going to " << board.toStdString());
    touch(find(QAccessible::PageTab, board));
}

void Walk::goOn(const QString& board, const QString& page) {
    go(board);
    touch(button(page));
}

void Walk::undo() {
    REQUIRE(app.look()->undo.has_value());
    const auto undone = note<journal::Undone>(undoButton());
    REQUIRE(undone.operation.sequence > 0);
}

void Walk::touchWhatIsCovered(const std::function<void()>& putBack) {
    const auto order = shown(app.root());
    const auto isOnAnotherTarget = [&](QPointF point) {
        return std::any_of(order.begin(), order.end(), [&](auto* item) {
            return isTarget(*item) && visiblePart(*item).contains(point) &&
                   coverOf(*item, point) == nullptr;
        });
    };
    std::vector<std::pair<QPointF, std::string>> hidden;
    for (auto* item : order) {
        const QRectF part = visiblePart(*item);
        if (isTarget(*item) && !part.isEmpty() && coverOf(*item, part.center()) != nullptr &&
            !isOnAnotherTarget(part.center()))
            hidden.emplace_back(part.center(), describe(*item));
    }
    for (const auto& [point, what] : hidden) {
        const auto before = app.journal().size();
        const auto* board = boardOf(app.root());
        finger.touchAt(point);
        INFO(glassName << ": felt through its cover: " << what);
        CHECK(app.journal().size() == before);
        CHECK(boardOf(app.root()) == board);
        putBack();
    }
}

void Walk::openTheOrchard(const QString& board, const QString& person) {
    const std::string fault =
        finger.touch(button(QStringLiteral("Open Harvest lunch in the orchard")));
    INFO(fault);
    REQUIRE(fault.empty());
    app.settlePlan();
    if (!person.isEmpty()) touch(button(person));
    touch(scene::find(app.root(), [&](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(board);
    }));
    REQUIRE(isAt(board));
}

void Walk::faceTheCall() {
    if (call() == nullptr) touch(find(QAccessible::AlertMessage, app.day().line().callText));
    REQUIRE(call() != nullptr);
}

void Walk::hearCalls() {
    while (app.day().ringing()->count() > 0) {
        faceTheCall();
        auto* heard = scene::find(*call(), named(QAccessible::Button, QStringLiteral("Heard")));
        const auto silenced = note<journal::AlarmAcknowledged>(heard);
        for (const auto& timer : app.look()->timers)
            if (timer.name == silenced.alarm) REQUIRE(timer.acknowledged.has_value());
    }
}

}  // namespace cinder::face::scene
