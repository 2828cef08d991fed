#pragma once

/// Sees every key that is struck in its window, whatever has the focus.

#include <QtQml/qqmlregistration.h>
#include <QPointer>
#include <QQuickItem>
#include <QQuickWindow>

namespace cinder::face {

class KeyWatch : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    /// Keeps the keys to itself: nothing else in the window feels them.
    Q_PROPERTY(bool isKeeping MEMBER isKeeping_ NOTIFY isKeepingChanged)

  public:
    explicit KeyWatch(QQuickItem* parent = nullptr) : QQuickItem(parent) {}

    bool eventFilter(QObject* watched, QEvent* event) override;

  Q_SIGNALS:
    void struck();
    void isKeepingChanged();

  protected:
    void itemChange(ItemChange change, const ItemChangeData& data) override;

  private:
    bool isKeeping_ = false;
    bool isWithheld_ = false;  ///< the key that is down was kept; so is its end
    QPointer<QQuickWindow> watched_;
};

}  // namespace cinder::face
