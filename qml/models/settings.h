#pragma once

/// The choices of this device: how it speaks and looks. Not of the event, so not in the journal.

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariant>

namespace cinder::face {

class Settings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// "en" or "es".
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
    /// "noon", "dusk", or "clock": dusk from seven in the evening to seven in the morning.
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY changed)
    Q_PROPERTY(bool isDusk READ isDusk NOTIFY changed)
    Q_PROPERTY(bool isFahrenheit READ isFahrenheit WRITE setFahrenheit NOTIFY changed)
    /// Weights, lengths and volumes in pounds, inches and quarts; else in kilograms, cm and litres.
    Q_PROPERTY(bool isCustomary READ isCustomary WRITE setCustomary NOTIFY changed)
    Q_PROPERTY(bool isTwelveHour READ isTwelveHour WRITE setTwelveHour NOTIFY changed)
    /// The rail and the hurried buttons lie at the left.
    Q_PROPERTY(bool isLeftHanded READ isLeftHanded WRITE setLeftHanded NOTIFY changed)
    Q_PROPERTY(bool isCalm READ isCalm WRITE setCalm NOTIFY changed)
    /// Darkens when nobody has touched it for a while.
    Q_PROPERTY(bool dims READ dims WRITE setDims NOTIFY changed)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed)

  public:
    /// `file` is an INI file; empty: nothing is kept.
    explicit Settings(QString file, QObject* parent = nullptr);

    [[nodiscard]] QString language() const { return language_; }
    [[nodiscard]] QString theme() const { return theme_; }
    [[nodiscard]] bool isDusk() const;
    [[nodiscard]] bool isFahrenheit() const { return isFahrenheit_; }
    [[nodiscard]] bool isCustomary() const { return isCustomary_; }
    [[nodiscard]] bool isTwelveHour() const { return isTwelveHour_; }
    [[nodiscard]] bool isLeftHanded() const { return isLeftHanded_; }
    [[nodiscard]] bool isCalm() const { return isCalm_; }
    [[nodiscard]] bool dims() const { return dims_; }
    [[nodiscard]] double textScale() const { return textScale_; }

    void setLanguage(const QString& language);
    void setTheme(const QString& theme);
    void setFahrenheit(bool on) { keep(isFahrenheit_, on, "fahrenheit"); }
    void setCustomary(bool on) { keep(isCustomary_, on, "customary"); }
    void setTwelveHour(bool on) { keep(isTwelveHour_, on, "twelveHour"); }
    void setLeftHanded(bool on) { keep(isLeftHanded_, on, "leftHanded"); }
    void setCalm(bool on) { keep(isCalm_, on, "calm"); }
    void setDims(bool on) { keep(dims_, on, "dims"); }
    void setTextScale(double scale) { keep(textScale_, scale, "textScale"); }

    /// The hour on the event's wall, for the theme that follows the clock.
    void tellHour(int hour);

  Q_SIGNALS:
    void languageChanged();
    void changed();

  private:
    template <class T>
    void keep(T& member, T value, const char* name) {
        if (member == value) return;
        member = value;
        store(name, QVariant(value));
        Q_EMIT changed();
    }
    void store(const char* name, const QVariant& value) const;

    QString file_;
    QString language_;
    QString theme_;
    bool isFahrenheit_ = true;
    bool isCustomary_ = true;
    bool isTwelveHour_ = false;
    bool isLeftHanded_ = false;
    bool isCalm_ = false;
    bool dims_ = true;
    double textScale_ = 1;
    int hour_ = 12;
};

}  // namespace cinder::face
