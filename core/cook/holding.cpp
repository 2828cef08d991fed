#include "cook/holding.h"

#include <algorithm>
#include <cmath>

namespace cinder::cook {

namespace {

constexpr double kReadingKelvin = 0.7;
const double kTauSpread = std::log(1.6);

double hours(Duration d) {
    return std::chrono::duration<double>(d).count() / 3600.0;
}
Duration fromHours(double h) {
    return Duration(static_cast<Duration::rep>(h * 3.6e6));
}

/// Sums over the readings of one level: between two openings of the lid.
struct Level {
    double weight = 0, time = 0, log = 0, timeTime = 0, timeLog = 0;
    void add(double t, double y, double w) {
        weight += w;
        time += w * t;
        log += w * y;
        timeTime += w * t * t;
        timeLog += w * t * y;
    }
};

struct Fit {
    double logTau = 0, spread = 0;  ///< hours
    double level = 0;               ///< log of the excess at the last reading
    double levelSpread = 0;
};

/// Least squares of log excess on time with one slope and a level per lid opening, and the prior on
/// log tau, by Newton's iteration on log tau.
Fit fitCooling(const Cooling& cooling, std::span<const MeasuredPoint> used, double around) {
    std::vector<Level> levels(1);
    auto opening = cooling.openings.begin();
    const Instant last = used.back().at;
    for (const MeasuredPoint& point : used) {
        while (opening != cooling.openings.end() && *opening <= point.at) {
            ++opening;
            if (levels.back().weight > 0) levels.emplace_back();
        }
        const double excess = point.reading.celsius() - around;
        levels.back().add(hours(point.at - last), std::log(excess),
                          excess * excess / (kReadingKelvin * kReadingKelvin));
    }
    double bend = 0, pull = 0;  // of the slope: Σ w (t - t̄)², Σ w (t - t̄)(y - ȳ)
    for (const Level& l : levels) {
        bend += l.timeTime - l.time * l.time / l.weight;
        pull += l.timeLog - l.time * l.log / l.weight;
    }
    const double priorLog = std::log(cooling.vessel == Vessel::InsulatedBox ? 8.0 : 1.5);
    const double priorWeight = 1.0 / (kTauSpread * kTauSpread);
    double logTau = priorLog;
    double curvature = priorWeight;
    for (int i = 0; i < 50; ++i) {
        const double rate = std::exp(-logTau);  // y = level - rate·t
        const double gradient = -(rate * bend + pull) * rate + priorWeight * (logTau - priorLog);
        curvature = bend * rate * rate + priorWeight;
        const double step = std::clamp(-gradient / curvature, -0.5, 0.5);
        logTau += step;
        if (std::abs(step) < 1e-10) break;
    }
    const Level& now = levels.back();
    const double rate = std::exp(-logTau);
    return {logTau, 1.0 / std::sqrt(curvature), (now.log + rate * now.time) / now.weight,
            1.0 / std::sqrt(now.weight)};
}

/// Hours from the last reading until the excess is down to the limit.
double hoursLeft(double logTau, double level, double limitExcess) {
    return std::max(0.0, std::exp(logTau) * (level - std::log(limitExcess)));
}

Result<void, CookError> check(const Cooling& cooling, Temperature limit) {
    if (cooling.readings.empty()) {
        return fail(CookError{CookError::Kind::TooFewReadings, "readings"});
    }
    for (std::size_t i = 0; i < cooling.readings.size(); ++i) {
        if (i > 0 && cooling.readings[i].at <= cooling.readings[i - 1].at) {
            return fail(CookError{CookError::Kind::OutOfOrder, "readings"});
        }
        if (cooling.readings[i].reading <= cooling.surroundings) {
            return fail(CookError{CookError::Kind::OutOfRange, "reading"});
        }
    }
    if (!std::is_sorted(cooling.openings.begin(), cooling.openings.end())) {
        return fail(CookError{CookError::Kind::OutOfOrder, "openings"});
    }
    if (limit <= cooling.surroundings) {
        return fail(CookError{CookError::Kind::NeverReached, "limit"});
    }
    return {};
}

}  // namespace

Result<HoldingForecast, CookError> forecastHolding(const Cooling& cooling, Temperature limit) {
    if (const auto checked = check(cooling, limit); !checked) return fail(checked.error());
    std::span<const MeasuredPoint> used(cooling.readings);
    const Instant settled = used.front().at + cooling.settling;
    const auto later = static_cast<std::size_t>(
        std::count_if(used.begin(), used.end(), [&](const auto& r) { return r.at >= settled; }));
    if (later >= 2) used = used.last(later);

    const double around = cooling.surroundings.celsius();
    const Fit fit = fitCooling(cooling, used, around);
    const double left = hoursLeft(fit.logTau, fit.level, limit.celsius() - around);

    // What each uncertainty moves, one at a time; they are nearly independent.
    const double limitExcess = limit.celsius() - around;
    const double byTau = hoursLeft(fit.logTau + fit.spread, fit.level, limitExcess) - left;
    const double byLevel = hoursLeft(fit.logTau, fit.level + fit.levelSpread, limitExcess) - left;
    const double colder = around - cooling.surroundingsSpread.kelvin();
    const Fit inCold = fitCooling(cooling, used, colder);
    const double byAir = hoursLeft(inCold.logTau, inCold.level, limit.celsius() - colder) - left;
    const double spread =
        left > 0 ? std::sqrt(byTau * byTau + byLevel * byLevel + byAir * byAir) / left : 0.0;

    const auto tau = [&](double side) {
        return fromHours(std::exp(fit.logTau + side * kBandReach * fit.spread));
    };
    const auto falls = [&](double side) {
        return used.back().at + fromHours(left * std::exp(side * kBandReach * spread));
    };
    return HoldingForecast{{tau(-1), tau(0), tau(1)}, {falls(-1), falls(0), falls(1)}};
}

}  // namespace cinder::cook
