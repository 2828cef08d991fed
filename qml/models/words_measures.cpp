// What is measured: degrees, weights, thicknesses.

#include <cmath>

#include "settings.h"
#include "words.h"

namespace cinder::face {

QString Words::temperature(Temperature t) const {
    return settings_.isFahrenheit() ? QStringLiteral("%1\u00a0°F").arg(std::lround(t.fahrenheit()))
                                    : QStringLiteral("%1\u00a0°C").arg(std::lround(t.celsius()));
}

QString Words::mass(Mass mass) const {
    constexpr double kPound = 0.45359237;  // kg, exact: the same publication as below
    return settings_.isCustomary() ? tr("%1 lb").arg(std::lround(mass.kilograms() / kPound))
                                   : tr("%1 kg").arg(std::lround(mass.kilograms()));
}

QString Words::thickness(Length thickness) const {
    constexpr double kInch = 25.4;  // mm, exact: NIST Special Publication 811 (2008), B.8
    return settings_.isCustomary()
               ? tr("%1 in").arg(QString::number(thickness.millimetres() / kInch, 'f', 1))
               : tr("%1 mm").arg(std::lround(thickness.millimetres()));
}

QString Words::measured(Temperature shown) const {
    const bool isFahrenheit = settings_.isFahrenheit();
    const double degrees = isFahrenheit ? shown.fahrenheit() : shown.celsius();
    if (std::abs(degrees - std::round(degrees)) < 0.05) return temperature(shown);
    return QString::number(degrees, 'f', 1) +
           (isFahrenheit ? QStringLiteral("\u00a0°F") : QStringLiteral("\u00a0°C"));
}

QString Words::minimum(Temperature least, Duration hold, bool isLocal) const {
    const bool isHeld = hold > Duration::zero();
    if (isLocal)
        return isHeld ? tr("Local minimum %1 for %2").arg(measured(least), span(hold))
                      : tr("Local minimum %1").arg(measured(least));
    return isHeld ? tr("Published minimum %1 for %2").arg(temperature(least), span(hold))
                  : tr("Published minimum %1").arg(temperature(least));
}

}  // namespace cinder::face
