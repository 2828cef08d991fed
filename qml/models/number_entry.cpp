#include "number_entry.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "settings.h"

namespace cinder::face {

/// `base = shown * factor + offset`.
struct NumberEntry::Unit {
    const char* word;
    double factor;
    double offset;
    int places;
};

namespace {

constexpr int kMostDigits = 6;

}  // namespace

std::span<const NumberEntry::Unit> NumberEntry::unitsOf(Kind kind) {
    // Exact factors: NIST Special Publication 811 (2008), appendix B.8.
    static constexpr std::array kTemperature{Unit{"°F", 1 / 1.8, -32 / 1.8, 1},
                                             Unit{"°C", 1, 0, 1}};
    static constexpr std::array kMass{Unit{"lb", 453.59237, 0, 2}, Unit{"oz", 28.349523125, 0, 1},
                                      Unit{"kg", 1000, 0, 3}, Unit{"g", 1, 0, 0}};
    static constexpr std::array kLength{Unit{"in", 25.4, 0, 2}, Unit{"ft", 304.8, 0, 2},
                                        Unit{"cm", 10, 0, 1}, Unit{"m", 1000, 0, 2}};
    static constexpr std::array kVolume{Unit{"qt", 946.352946, 0, 2},
                                        Unit{"gal", 3785.411784, 0, 2}, Unit{"l", 1000, 0, 3},
                                        Unit{"ml", 1, 0, 0}};
    static constexpr std::array kCount{Unit{"", 1, 0, 0}};
    static constexpr std::array kMinutes{Unit{"min", 1, 0, 0}};
    static constexpr std::array kSeconds{Unit{"s", 1, 0, 0}};
    static constexpr std::array kPercent{Unit{"%", 1, 0, 0}};
    switch (kind) {
        case Kind::Temperature:
            return kTemperature;
        case Kind::Mass:
            return kMass;
        case Kind::Length:
            return kLength;
        case Kind::Volume:
            return kVolume;
        case Kind::Minutes:
            return kMinutes;
        case Kind::Seconds:
            return kSeconds;
        case Kind::Percent:
            return kPercent;
        case Kind::Count:
            break;
    }
    return kCount;
}

const NumberEntry::Unit& NumberEntry::measure() const {
    return unitsOf(kind_)[static_cast<std::size_t>(unit_)];
}

QList<QString> NumberEntry::units() const {
    QList<QString> words;
    if (unitsOf(kind_).size() < 2) return words;
    for (const Unit& unit : unitsOf(kind_))
        words += QString::fromUtf8(unit.word);
    return words;
}

QString NumberEntry::unitWord() const {
    return QString::fromUtf8(measure().word);
}
bool NumberEntry::takesPoint() const {
    return measure().places > 0;
}
bool NumberEntry::takesSign() const {
    return (least_ - measure().offset) / measure().factor < 0;
}

QString NumberEntry::written(double base) const {
    const Unit& unit = measure();
    QString text = QString::number((base - unit.offset) / unit.factor, 'f', unit.places);
    if (!text.contains(u'.')) return text;
    while (text.endsWith(u'0'))
        text.chop(1);
    if (text.endsWith(u'.')) text.chop(1);
    return text;
}

double NumberEntry::value() const {
    if (exact_) return *exact_;
    bool isNumber = false;
    const double shown = text_.toDouble(&isNumber);
    if (!isNumber) return 0;
    return shown * measure().factor + measure().offset;
}

bool NumberEntry::isReady() const {
    bool isNumber = false;
    (void)text_.toDouble(&isNumber);
    return isNumber && problem().isEmpty();
}

// Half of the last place shown is forgiven, so that a limit can be typed in every unit.
bool NumberEntry::isWithin(const Unit& unit, double base) const {
    const double slack = 0.5 * std::pow(10.0, -unit.places) * unit.factor;
    return base >= least_ - slack && base <= most_ + slack;
}

/// The other scale, when the number is out of its limits as it stands and would be within them
/// there: the thermometer was read on it.
std::optional<int> NumberEntry::otherScale() const {
    bool isNumber = false;
    (void)text_.toDouble(&isNumber);
    if (kind_ != Kind::Temperature || !isNumber || isWithin(measure(), value())) return {};
    const double shown = (value() - measure().offset) / measure().factor;
    const Unit& other = unitsOf(kind_)[static_cast<std::size_t>(1 - unit_)];
    if (!isWithin(other, shown * other.factor + other.offset)) return {};
    return 1 - unit_;
}

QString NumberEntry::problem() const {
    bool isNumber = false;
    (void)text_.toDouble(&isNumber);
    if (!isNumber || isWithin(measure(), value())) return {};
    const QString unit = unitWord().isEmpty() ? QString() : QChar(QChar::Nbsp) + unitWord();
    const bool isLow = value() < least_;
    const QString limit = written(isLow ? least_ : most_) + unit;
    const auto scale = otherScale();
    if (!scale) return isLow ? tr("At least %1").arg(limit) : tr("At most %1").arg(limit);
    const QString word = QString::fromUtf8(unitsOf(kind_)[static_cast<std::size_t>(*scale)].word);
    return isLow ? tr("At least %1. Is that %2?").arg(limit, word)
                 : tr("At most %1. Is that %2?").arg(limit, word);
}

void NumberEntry::begin(Kind kind, double least, double most, bool isCustomary) {
    kind_ = kind;
    least_ = least;
    most_ = most;
    // The customary unit stands first in each list, the metric one of like size in the later half.
    unit_ = isCustomary ? 0 : static_cast<int>(unitsOf(kind).size() / 2);
    text_.clear();
    exact_.reset();
    isFresh_ = true;
    Q_EMIT changed();
}

void NumberEntry::beginAt(Kind kind, double least, double most, bool isCustomary, double value) {
    begin(kind, least, most, isCustomary);
    text_ = written(value);
    exact_ = value;
    Q_EMIT changed();
}

void NumberEntry::press(const QString& key) {
    if (key.size() != 1) return;
    if (key == u"-") {
        if (!takesSign()) return;
        text_ = text_.startsWith(u'-') ? text_.mid(1) : u'-' + text_;
        exact_.reset();
        isFresh_ = false;
        Q_EMIT changed();
        return;
    }
    if (isFresh_) text_.clear();
    if (key == u".") {
        if (!takesPoint() || text_.contains(u'.')) return;
        text_ += text_.isEmpty() || text_ == u"-" ? QStringLiteral("0.") : QStringLiteral(".");
    } else {
        if (!key.front().isDigit()) return;
        const auto point = text_.indexOf(u'.');
        if (point >= 0 && text_.size() - point > measure().places) return;
        if (std::count_if(text_.begin(), text_.end(), [](QChar c) { return c.isDigit(); }) >=
            kMostDigits)
            return;
        if (text_ == u"0") text_.clear();
        text_ += key;
    }
    isFresh_ = false;
    exact_.reset();
    Q_EMIT changed();
}

void NumberEntry::erase() {
    isFresh_ = false;
    exact_.reset();
    text_.chop(1);
    Q_EMIT changed();
}

void NumberEntry::clear() {
    text_.clear();
    exact_.reset();
    Q_EMIT changed();
}

void NumberEntry::useUnit(int unit) {
    if (unit < 0 || unit >= static_cast<int>(unitsOf(kind_).size()) || unit == unit_) return;
    bool isNumber = false;
    (void)text_.toDouble(&isNumber);
    // "Is that °F?" is answered by the touch of it: the digits stay as they were read.
    if (otherScale() == unit) {
        if (exact_) text_ = written(*exact_);
        exact_.reset();
        unit_ = unit;
        Q_EMIT changed();
        return;
    }
    const double base = value();
    unit_ = unit;
    text_ = isNumber ? written(base) : QString();
    if (isNumber) exact_ = base;
    Q_EMIT changed();
}

bool isCustomaryFor(NumberEntry::Kind kind, const Settings& settings) {
    return kind == NumberEntry::Kind::Temperature ? settings.isFahrenheit()
                                                  : settings.isCustomary();
}

}  // namespace cinder::face
