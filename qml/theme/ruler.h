#pragma once

/// Millimetres on this screen. A gloved finger is as wide on every screen, so every size of the
/// face is asked for in millimetres and laid out in whole device-independent pixels.

#include <QtQml/qqmlregistration.h>
#include <QObject>

class QJSEngine;
class QQmlEngine;

namespace cinder::face {

class Ruler : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(double pixelsPerMm READ pixelsPerMm NOTIFY changed)
    /// Text drawn larger or smaller by a person's choice, 0.8 to 1.5; touch sizes stay.
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed)

  public:
    static Ruler* create(QQmlEngine*, QJSEngine*);
    static Ruler& instance();

    [[nodiscard]] double pixelsPerMm() const { return pixelsPerMm_; }
    [[nodiscard]] double textScale() const { return textScale_; }
    void setTextScale(double scale);

    /// What the screen says of itself. A screen that reports nothing believable (a projector, a
    /// virtual screen) is taken for a tablet of 149 pixels per inch.
    void measureScreen();
    /// Pixels per inch for tests and pictures, so that they are laid out like the device meant.
    void pretend(double pixelsPerInch);

  Q_SIGNALS:
    void changed();

  private:
    Ruler();
    double pixelsPerMm_ = 0;
    double textScale_ = 1;
};

}  // namespace cinder::face
