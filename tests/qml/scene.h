#pragma once

/// The live scene as an eye and a finger find it: what is shown, what lies over it, and touches
/// synthesized at the window, never calls past the screen.

#include <functional>
#include <string>
#include <vector>

#include <QAccessible>
#include <QPointF>
#include <QRectF>
#include <QString>

class QPointingDevice;
class QQuickItem;
class QQuickWindow;

namespace cinder::face::scene {

/// What a screen reader would say of an item; empty and NoRole when it says nothing.
[[nodiscard]] QString nameOf(QQuickItem& item);
[[nodiscard]] QAccessible::Role roleOf(QQuickItem& item);
[[nodiscard]] bool isChecked(QQuickItem& item);

/// Every item that is shown, in the order it is painted, hindmost first.
[[nodiscard]] std::vector<QQuickItem*> shown(QQuickItem& root);
/// The part of `item` that no clipping ancestor and no edge of the window cuts off, in window
/// coordinates.
[[nodiscard]] QRectF visiblePart(const QQuickItem& item);
/// What is painted over `target` at `point`, or takes the touch meant for it; null when nothing.
[[nodiscard]] QQuickItem* coverOf(QQuickItem& target, QPointF point);
/// Whether `item` is something to be touched: a button of any shape, a tick, a tab.
[[nodiscard]] bool isTarget(const QQuickItem& item);
/// The nearest thing around `item` that scrolls; null when nothing does.
[[nodiscard]] QQuickItem* scrollerOf(const QQuickItem& item);
/// Type, name and place, for a person who must find it in the sources.
[[nodiscard]] std::string describe(QQuickItem& item);

using Wanted = std::function<bool(QQuickItem&)>;
/// By role and name; an empty name means any.
[[nodiscard]] Wanted named(QAccessible::Role role, const QString& name);
/// The first shown item below `root` that is wanted, whether or not it is scrolled away.
[[nodiscard]] QQuickItem* find(QQuickItem& root, const Wanted& wanted);
/// Whether `words` stand somewhere in view with nothing over them.
[[nodiscard]] bool isReadable(QQuickItem& root, const QString& words);

/// Lets the scene come to rest: layouts polished, loaders done, nothing gliding.
void settle(QQuickWindow& window);

/// One finger on the glass.
class Finger {
  public:
    explicit Finger(QQuickWindow& window);

    /// Scrolls as a person does until the middle of `item` is in view, then touches it there.
    /// Empty when it was touched; else why it could not be.
    [[nodiscard]] std::string touch(QQuickItem* item);
    /// The same, kept down for `milliseconds`.
    [[nodiscard]] std::string hold(QQuickItem* item, int milliseconds);
    /// Touches the glass at `point`, whatever lies there.
    void touchAt(QPointF point);
    /// Draws a line from `from`, `by` far, and lets go at rest.
    void drag(QPointF from, QPointF by);
    /// Scrolls `scroller` from its beginning to its end until something wanted appears below it.
    [[nodiscard]] QQuickItem* seek(QQuickItem& scroller, const Wanted& wanted);

  private:
    [[nodiscard]] std::string reach(QQuickItem* item);
    [[nodiscard]] bool scroll(QQuickItem& scroller, QPointF by);
    void down(QPointF point);
    void up(QPointF point);

    QQuickWindow& window_;
    QPointingDevice* glass_;
};

}  // namespace cinder::face::scene
