#include "key_watch.h"

#include <utility>

#include <QKeyEvent>

namespace cinder::face {

void KeyWatch::itemChange(ItemChange change, const ItemChangeData& data) {
    if (change == ItemSceneChange) {
        if (watched_) watched_->removeEventFilter(this);
        watched_ = data.window;
        if (watched_) watched_->installEventFilter(this);
    }
    QQuickItem::itemChange(change, data);
}

bool KeyWatch::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
        case QEvent::KeyPress:
            // A key that stays down goes on as it began.
            if (!static_cast<QKeyEvent*>(event)->isAutoRepeat()) isWithheld_ = isKeeping_;
            Q_EMIT struck();
            return isWithheld_;
        case QEvent::ShortcutOverride:
            if (isKeeping_) event->accept();  // no shortcut either
            return isKeeping_;
        case QEvent::KeyRelease:
            return static_cast<QKeyEvent*>(event)->isAutoRepeat()
                       ? isWithheld_
                       : std::exchange(isWithheld_, false);
        default:
            return QQuickItem::eventFilter(watched, event);
    }
}

}  // namespace cinder::face
