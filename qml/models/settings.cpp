#include "settings.h"

#include <algorithm>

#include <QLocale>
#include <QSettings>

namespace cinder::face {

namespace {
// Sunset moves; a person who wants better chooses by hand.
constexpr int kDuskHour = 19;
constexpr int kDawnHour = 7;

QString oneOf(const QString& value, std::initializer_list<QLatin1String> allowed) {
    const bool isKnown = std::find(allowed.begin(), allowed.end(), value) != allowed.end();
    return isKnown ? value : QString(*allowed.begin());
}
}  // namespace

Settings::Settings(QString file, QObject* parent) : QObject(parent), file_(std::move(file)) {
    const bool isSpanish = QLocale::system().language() == QLocale::Spanish;
    language_ = isSpanish ? QStringLiteral("es") : QStringLiteral("en");
    theme_ = QStringLiteral("noon");
    if (file_.isEmpty()) return;
    const QSettings kept(file_, QSettings::IniFormat);
    language_ = oneOf(kept.value(QStringLiteral("language"), language_).toString(),
                      {QLatin1String("en"), QLatin1String("es")});
    theme_ = oneOf(kept.value(QStringLiteral("theme"), theme_).toString(),
                   {QLatin1String("noon"), QLatin1String("dusk"), QLatin1String("clock")});
    isFahrenheit_ = kept.value(QStringLiteral("fahrenheit"), isFahrenheit_).toBool();
    // Who chose a scale before weights could be chosen apart meant both.
    isCustomary_ = kept.value(QStringLiteral("customary"), isFahrenheit_).toBool();
    isTwelveHour_ = kept.value(QStringLiteral("twelveHour"), isTwelveHour_).toBool();
    isLeftHanded_ = kept.value(QStringLiteral("leftHanded"), isLeftHanded_).toBool();
    isCalm_ = kept.value(QStringLiteral("calm"), isCalm_).toBool();
    dims_ = kept.value(QStringLiteral("dims"), dims_).toBool();
    textScale_ = std::clamp(kept.value(QStringLiteral("textScale"), 1.0).toDouble(), 0.8, 1.5);
}

bool Settings::isDusk() const {
    if (theme_ == QLatin1String("clock")) return hour_ >= kDuskHour || hour_ < kDawnHour;
    return theme_ == QLatin1String("dusk");
}

void Settings::setLanguage(const QString& language) {
    const auto next = oneOf(language, {QLatin1String("en"), QLatin1String("es")});
    if (next == language_) return;
    language_ = next;
    store("language", next);
    Q_EMIT languageChanged();
}

void Settings::setTheme(const QString& theme) {
    keep(theme_,
         oneOf(theme, {QLatin1String("noon"), QLatin1String("dusk"), QLatin1String("clock")}),
         "theme");
}

void Settings::tellHour(int hour) {
    const bool before = isDusk();
    hour_ = hour;
    if (isDusk() != before) Q_EMIT changed();
}

void Settings::store(const char* name, const QVariant& value) const {
    if (!file_.isEmpty())
        QSettings(file_, QSettings::IniFormat).setValue(QLatin1String(name), value);
}

}  // namespace cinder::face
