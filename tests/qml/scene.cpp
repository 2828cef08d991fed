#include "scene.h"

#include <algorithm>
#include <sstream>

#include <QColor>
#include <QCoreApplication>
#include <QImage>
#include <QPointer>
#include <QQmlContext>
#include <QQmlIncubationController>
#include <QQmlProperty>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

namespace cinder::face::scene {

namespace {

bool isClear(const QQuickItem& item) {
    return !item.isVisible() || item.opacity() <= 0;
}

void paint(QQuickItem& item, std::vector<QQuickItem*>& order) {
    if (isClear(item)) return;
    auto children = item.childItems();
    std::stable_sort(children.begin(), children.end(),
                     [](const QQuickItem* a, const QQuickItem* b) { return a->z() < b->z(); });
    for (auto* child : children)
        if (child->z() < 0) paint(*child, order);
    order.push_back(&item);
    for (auto* child : children)
        if (child->z() >= 0) paint(*child, order);
}

bool hasHandler(const QQuickItem& item) {
    const auto& parts = item.children();
    return std::any_of(parts.begin(), parts.end(), [](const QObject* part) {
        return part->inherits("QQuickPointerHandler") && part->property("enabled").toBool();
    });
}

/// Whether `item` hides what lies behind it, or takes its touches.
bool isSolid(const QQuickItem& item) {
    if (item.acceptedMouseButtons() != Qt::NoButton || item.acceptTouchEvents() || hasHandler(item))
        return true;
    if (!item.flags().testFlag(QQuickItem::ItemHasContents)) return false;
    const QVariant colour = item.property("color");
    return !colour.isValid() || colour.value<QColor>().alpha() > 0;
}

QPointF middleOf(const QQuickItem& item) {
    return item.mapRectToScene(item.boundingRect()).center();
}

}  // namespace

QString nameOf(QQuickItem& item) {
    const auto* heard = QAccessible::queryAccessibleInterface(&item);
    return heard == nullptr ? QString() : heard->text(QAccessible::Name);
}

QAccessible::Role roleOf(QQuickItem& item) {
    // What the QML says. The accessible interface of Qt 6.4 calls every button template a button,
    // whatever role is attached to it.
    const QQmlProperty role(&item, QStringLiteral("Accessible.role"), qmlContext(&item));
    return static_cast<QAccessible::Role>(role.read().toInt());
}

bool isChecked(QQuickItem& item) {
    return QQmlProperty::read(&item, QStringLiteral("Accessible.checked"), qmlContext(&item))
        .toBool();
}

std::vector<QQuickItem*> shown(QQuickItem& root) {
    std::vector<QQuickItem*> order;
    paint(root, order);
    return order;
}

QRectF visiblePart(const QQuickItem& item) {
    QRectF part = item.mapRectToScene(item.boundingRect());
    for (const auto* around = item.parentItem(); around != nullptr; around = around->parentItem())
        if (around->clip()) part &= around->mapRectToScene(around->boundingRect());
    return part & QRectF(QPointF(0, 0), item.window()->size());
}

QQuickItem* coverOf(QQuickItem& target, QPointF point) {
    const auto order = shown(*target.window()->contentItem());
    auto at = std::find(order.rbegin(), order.rend(), &target);
    for (auto over = order.rbegin(); over != at; ++over) {
        auto& item = **over;
        if (target.isAncestorOf(&item) || !isSolid(item)) continue;
        if (item.contains(item.mapFromScene(point)) && visiblePart(item).contains(point))
            return &item;
    }
    return nullptr;
}

bool isTarget(const QQuickItem& item) {
    return item.inherits("QQuickAbstractButton") || item.inherits("QQuickMouseArea");
}

QQuickItem* scrollerOf(const QQuickItem& item) {
    for (auto* around = item.parentItem(); around != nullptr; around = around->parentItem())
        if (around->inherits("QQuickFlickable")) return around;
    return nullptr;
}

std::string describe(QQuickItem& item) {
    std::ostringstream text;
    const QString name = nameOf(item);
    const QString type = QString::fromLatin1(item.metaObject()->className());
    const QRectF place = item.mapRectToScene(item.boundingRect());
    text << type.section(QLatin1String("_QML"), 0, 0).toStdString() << " \"" << name.toStdString()
         << "\" at " << qRound(place.x()) << "," << qRound(place.y()) << " "
         << qRound(place.width()) << "x" << qRound(place.height());
    return text.str();
}

Wanted named(QAccessible::Role role, const QString& name) {
    return [role, name](QQuickItem& item) {
        return roleOf(item) == role && (name.isEmpty() || nameOf(item) == name);
    };
}

QQuickItem* find(QQuickItem& root, const Wanted& wanted) {
    for (auto* item : shown(root))
        if (wanted(*item)) return item;
    return nullptr;
}

bool isReadable(QQuickItem& root, const QString& words) {
    for (auto* item : shown(root)) {
        const QVariant text = item->property("text");
        if (!item->inherits("QQuickText") || text.toString() != words) continue;
        const QRectF part = visiblePart(*item);
        if (!part.isEmpty() && coverOf(*item, part.center()) == nullptr) return true;
    }
    return false;
}

void settle(QQuickWindow& window) {
    const auto isStill = [&window] {
        // Rows beyond the edge of a list are made a few at a time, and lie anywhere until then.
        const auto* rows = window.incubationController();
        if (rows != nullptr && rows->incubatingObjectCount() > 0) return false;
        const auto order = shown(*window.contentItem());
        return std::none_of(order.begin(), order.end(), [](const QQuickItem* item) {
            return item->inherits("QQuickFlickable") && item->property("moving").toBool();
        });
    };
    // Drawing lays out; a list that was laid out may ask for more of itself once.
    for (int pass = 0; pass < 2; ++pass) {
        QCoreApplication::processEvents();
        static_cast<void>(window.grabWindow());
        static_cast<void>(QTest::qWaitFor(isStill, 3000));
    }
}

Finger::Finger(QQuickWindow& window) : window_(window), glass_(nullptr) {
    static QPointingDevice* const glass = QTest::createTouchDevice();
    glass_ = glass;
}

void Finger::down(QPointF point) {
    QTest::touchEvent(&window_, glass_).press(0, point.toPoint(), &window_);
}

void Finger::up(QPointF point) {
    QTest::touchEvent(&window_, glass_).release(0, point.toPoint(), &window_);
    settle(window_);
}

void Finger::touchAt(QPointF point) {
    down(point);
    up(point);
}

void Finger::drag(QPointF from, QPointF by) {
    constexpr int kSteps = 5;
    down(from);
    for (int step = 1; step <= kSteps; ++step) {
        const QPointF at = from + by * step / kSteps;
        QTest::qWait(4);
        QTest::touchEvent(&window_, glass_).move(0, at.toPoint(), &window_);
    }
    // A finger that rests a tenth of a second before it lifts does not fling.
    QTest::qWait(110);
    up(from + by);
}

bool Finger::scroll(QQuickItem& scroller, QPointF by) {
    const QRectF part = visiblePart(scroller);
    const QPointF before(scroller.property("contentX").toDouble(),
                         scroller.property("contentY").toDouble());
    // Not further than the finger has room for on the part of the board that is seen.
    by.setX(std::clamp(by.x(), -0.7 * part.width(), 0.7 * part.width()));
    by.setY(std::clamp(by.y(), -0.7 * part.height(), 0.7 * part.height()));
    drag(part.center() - by / 2, by);
    // Drawn past its end it glides back, and a touch meanwhile would only stop it.
    static_cast<void>(QTest::qWaitFor([&] { return !scroller.property("moving").toBool(); }, 2000));
    const QPointF after(scroller.property("contentX").toDouble(),
                        scroller.property("contentY").toDouble());
    return (after - before).manhattanLength() > 1;
}

std::string Finger::reach(QQuickItem* item) {
    if (item == nullptr) return "it is not on the screen";
    constexpr int kMostDrags = 60;
    // A finger comes down on a whole pixel: at the very edge of a list that may be just outside it.
    constexpr int kEdge = 2;
    for (int drags = 0; drags <= kMostDrags; ++drags) {
        const QPointF middle = middleOf(*item);
        const QRectF part = visiblePart(*item);
        if (isClear(*item)) return describe(*item) + " is not shown";
        if (!item->isEnabled()) return describe(*item) + " is not enabled";
        auto* scroller = scrollerOf(*item);
        const bool isInView = part.adjusted(kEdge, kEdge, -kEdge, -kEdge).contains(middle);
        auto* cover = isInView ? coverOf(*item, middle) : nullptr;
        if (isInView && cover == nullptr) return {};
        const std::string fault = cover != nullptr
                                      ? describe(*item) + " lies under " + describe(*cover)
                                      : describe(*item) + " is out of view";
        if (scroller == nullptr) return fault + " and nothing scrolls";
        const QPointF aim = visiblePart(*scroller).center();
        if (!scroll(*scroller, aim - middle)) return fault + " and cannot be scrolled further";
    }
    return describe(*item) + " was not reached by scrolling";
}

std::string Finger::touch(QQuickItem* item) {
    if (auto fault = reach(item); !fault.empty()) return fault;
    const QPointF at = middleOf(*item);
    const QPointer<QQuickItem> target(item);
    down(at);
    // A button that was let go of, or was no more, before the finger lifted makes no touch.
    const bool isGone = target.isNull();
    const QVariant felt = isGone ? QVariant() : target->property("pressed");
    const std::string moved =
        isGone || middleOf(*target) == at ? "" : " and has moved to " + describe(*target);
    up(at);
    if (isGone) return "it went away under the finger";
    if (felt.isValid() && !felt.toBool())
        return (target.isNull() ? std::string("what is gone now") : describe(*target)) +
               " did not feel the finger" + moved;
    return {};
}

std::string Finger::hold(QQuickItem* item, int milliseconds) {
    if (auto fault = reach(item); !fault.empty()) return fault;
    const QPointF at = middleOf(*item);
    down(at);
    QTest::qWait(milliseconds);
    up(at);
    return {};
}

QQuickItem* Finger::seek(QQuickItem& scroller, const Wanted& wanted) {
    const auto draw = [&](double share) {
        return scroll(scroller, {0, share * visiblePart(scroller).height()});
    };
    if (auto* here = find(scroller, wanted)) return here;
    while (!scroller.property("atYBeginning").toBool() && draw(0.6)) {
        if (auto* here = find(scroller, wanted)) return here;
    }
    do {
        if (auto* here = find(scroller, wanted)) return here;
    } while (!scroller.property("atYEnd").toBool() && draw(-0.6));
    return nullptr;
}

}  // namespace cinder::face::scene
