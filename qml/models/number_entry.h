#pragma once

/// A number while it is being typed: its digits, its unit, and what is wrong with it. Switching the
/// unit turns what stands there into the other one, so a scale read in pounds may be typed as it
/// is.

#include <optional>
#include <span>

#include <QtQml/qqmlregistration.h>
#include <QList>
#include <QObject>
#include <QString>

namespace cinder::face {

class NumberEntry : public QObject {
    Q_OBJECT
    QML_ELEMENT
    /// As typed, with the decimal mark of this device; empty before the first key.
    Q_PROPERTY(QString text READ text NOTIFY changed)
    /// Short words of the units to choose from; empty for a bare count.
    Q_PROPERTY(QList<QString> units READ units NOTIFY changed)
    Q_PROPERTY(int unit READ unit NOTIFY changed)
    /// "lb" and the like; empty for a bare count.
    Q_PROPERTY(QString unitWord READ unitWord NOTIFY changed)
    Q_PROPERTY(bool takesPoint READ takesPoint NOTIFY changed)
    Q_PROPERTY(bool takesSign READ takesSign NOTIFY changed)
    /// What is wrong and the remedy; empty when nothing is, or nothing was typed.
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    /// A number within its limits stands there.
    Q_PROPERTY(bool isReady READ isReady NOTIFY changed)
    /// In the base unit of its kind; 0 unless ready.
    Q_PROPERTY(double value READ value NOTIFY changed)

  public:
    /// What is counted, and in brackets the base unit that `value` and the limits are in.
    enum class Kind {
        Count,        ///< whole things
        Temperature,  ///< degrees Celsius
        Mass,         ///< grams
        Length,       ///< millimetres
        Volume,       ///< millilitres
        Minutes,      ///< minutes
        Seconds,      ///< seconds
        Percent,      ///< hundredths of the whole
    };
    Q_ENUM(Kind)

    explicit NumberEntry(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] QString text() const { return text_; }
    [[nodiscard]] QList<QString> units() const;
    [[nodiscard]] int unit() const { return unit_; }
    [[nodiscard]] QString unitWord() const;
    [[nodiscard]] bool takesPoint() const;
    [[nodiscard]] bool takesSign() const;
    [[nodiscard]] QString problem() const;
    [[nodiscard]] bool isReady() const;
    [[nodiscard]] double value() const;

    /// A fresh number between `least` and `most`, in the base unit; `isCustomary`: degrees
    /// Fahrenheit, pounds, inches and quarts come first.
    Q_INVOKABLE void begin(cinder::face::NumberEntry::Kind kind, double least, double most,
                           bool isCustomary);
    /// The same with a number that stands there already; the first key replaces it.
    Q_INVOKABLE void beginAt(cinder::face::NumberEntry::Kind kind, double least, double most,
                             bool isCustomary, double value);
    /// "0" to "9", "." or "-"; anything that cannot follow is let go.
    Q_INVOKABLE void press(const QString& key);
    Q_INVOKABLE void erase();
    Q_INVOKABLE void clear();
    Q_INVOKABLE void useUnit(int unit);

  Q_SIGNALS:
    void changed();

  private:
    struct Unit;
    [[nodiscard]] static std::span<const Unit> unitsOf(Kind kind);
    [[nodiscard]] const Unit& measure() const;
    [[nodiscard]] bool isWithin(const Unit& unit, double base) const;
    [[nodiscard]] std::optional<int> otherScale() const;
    [[nodiscard]] QString written(double base) const;

    Kind kind_ = Kind::Count;
    double least_ = 0;
    double most_ = 0;
    int unit_ = 0;
    bool isFresh_ = true;
    QString text_;
    /// What `text_` was written from, until a key changes it: switching units to and fro loses
    /// nothing.
    std::optional<double> exact_;
};

class Settings;

/// Whether this device reads numbers of `kind` in the customary unit first: degrees by the choice
/// of scale, everything else by the choice of weights and lengths.
[[nodiscard]] bool isCustomaryFor(NumberEntry::Kind kind, const Settings& settings);

}  // namespace cinder::face
