#include "cook/coal_bed.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cook/coal.h"

namespace cinder::cook {

namespace {

constexpr double kHalfLifeMinutes = 60;
constexpr double kSlopeSpread = 0.35;   // of the slope
constexpr double kLevelSpread = 0.35;   // of the logarithm of the first heat, see fire.h
constexpr double kRepeatSpread = 0.15;  // of the logarithm, test to test
/// No bed is believed to last longer without more coal than half-lives of 240 min.
constexpr double kLeastSlope = std::numbers::ln2 / 240;
constexpr double kWeakShare = 0.5;

double minutesOf(Duration d) {
    return std::chrono::duration<double, std::ratio<60>>(d).count();
}

struct Slope {
    double mean = 0;
    double deviation = 0;
};

/// What coal added so far makes of the heat at `at`, against a bed without it.
double boost(const CoalBed& bed, Instant at, double perMinute) {
    double heat = 1;
    for (const AddedCoal& coal : bed.added) {
        const Instant joins = coal.at + bed.burnIn;
        if (joins <= at && joins > bed.ready)
            heat += coal.share * std::exp(perMinute * minutesOf(joins - bed.ready));
    }
    return heat;
}

/// The readings of one instrument, with a level of its own: normal equations of two unknowns, of
/// which the level is eliminated. What added coal did is taken off, as it is by `perMinute`.
class Series {
  public:
    Series(const CoalBed& bed, const std::vector<FireReading>& readings, double perMinute)
        : bed_(bed), readings_(readings), perMinute_(perMinute) {}

    /// `level` is believed in; without it nothing says what the instrument shows of the fire that
    /// is wanted.
    void addTo(std::optional<double> level, double& precision, double& slope) const {
        const double own = level ? 1.0 / (kLevelSpread * kLevelSpread) : 0.0;
        const double weight = 1.0 / (kRepeatSpread * kRepeatSpread);
        double ofLevel = own, logs = 0, minutes = 0;
        for (const FireReading& reading : readings_) {
            if (reading.at < bed_.ready) continue;
            const double at = minutesOf(reading.at - bed_.ready);
            const double log = std::log(reading.belief.atHundred.wattsPerSquareMetre /
                                        boost(bed_, reading.at, perMinute_));
            if (!level) level = log;
            ofLevel += weight;
            logs += weight * (log - *level);
            minutes += weight * at;
            precision += weight * at * at;
            slope -= weight * at * (log - *level);
        }
        if (ofLevel <= 0) return;
        precision -= minutes * minutes / ofLevel;
        slope += minutes * logs / ofLevel;
    }

  private:
    const CoalBed& bed_;
    const std::vector<FireReading>& readings_;
    double perMinute_;
};

double wantedLog() {
    // A count that the table of fire.h knows, so it always has a flux.
    return std::log(fireFromHandTest(kWantedHand)->atHundred.wattsPerSquareMetre);
}

/// Slope of the logarithm per minute. What added coal does depends on it, so it is looked for in a
/// few rounds.
Slope fitSlope(const CoalBed& bed) {
    const double believed = std::numbers::ln2 / kHalfLifeMinutes;
    const double spread = kSlopeSpread * believed;
    Slope fitted{believed, spread};
    const int rounds = bed.added.empty() ? 1 : 5;
    for (int round = 0; round < rounds; ++round) {
        const double perMinute = std::max(fitted.mean, kLeastSlope);
        double precision = 1.0 / (spread * spread);
        double slope = precision * believed;
        Series(bed, bed.hand, perMinute).addTo(wantedLog(), precision, slope);
        Series(bed, bed.thermometer, perMinute).addTo(std::nullopt, precision, slope);
        fitted = {slope / precision, 1.0 / std::sqrt(precision)};
    }
    return fitted;
}

/// The heat at an instant, of what the bed gave when it was ready.
struct Heat {
    Instant at;
    double share = 1;
};

/// The newest reading of either instrument, against the strongest of that instrument and, for a
/// hand, the fire that is wanted.
std::optional<Heat> lastFelt(const CoalBed& bed) {
    std::optional<Heat> felt;
    for (const auto* readings : {&bed.thermometer, &bed.hand}) {
        double strongest = readings == &bed.hand ? wantedLog() : -1e300;
        for (const FireReading& reading : *readings) {
            if (reading.at < bed.ready) continue;
            const double log = std::log(reading.belief.atHundred.wattsPerSquareMetre);
            strongest = std::max(strongest, log);
            if (!felt || reading.at >= felt->at) felt = Heat{reading.at, std::exp(log - strongest)};
        }
    }
    return felt;
}

/// When half of the heat is left for good, from `known` on and with the coal that joins after it.
Instant weakFrom(const CoalBed& bed, const Heat& known, double perMinute) {
    const double slope = std::max(perMinute, kLeastSlope);
    double heat = known.share;
    Instant last = known.at;
    for (const AddedCoal& coal : bed.added) {
        const Instant joins = coal.at + bed.burnIn;
        if (joins <= known.at) continue;
        heat += coal.share * std::exp(slope * minutesOf(joins - known.at));
        last = joins;
    }
    const double minutes = std::log(heat / kWeakShare) / slope;
    const Instant weak = known.at + Duration(std::llround(std::max(0.0, minutes) * 60000.0));
    // A weak bed that what was added does not bring back stays weak.
    return known.share < kWeakShare && weak < last ? known.at : weak;
}

}  // namespace

Result<BedOutlook, CookError> bedOutlook(const CoalBed& bed) {
    if (bed.burnIn <= Duration(0)) return fail(CookError{CookError::Kind::NotPositive, "burnIn"});
    const Slope slope = fitSlope(bed);
    const auto felt = lastFelt(bed);
    const double reach = kBandReach * slope.deviation;
    const auto from = [&](const Heat& known) {
        return Band<Instant>{weakFrom(bed, known, slope.mean + reach),
                             weakFrom(bed, known, slope.mean),
                             weakFrom(bed, known, slope.mean - reach)};
    };
    BedOutlook outlook{from({bed.ready, 1}), {}};
    outlook.topUpBy = outlook.weak.likely - bed.burnIn;
    if (!felt || felt->share >= kWeakShare) return outlook;

    // What the hand feels outranks the line; coal that still burns in brings the bed back later.
    const Band<Instant> back = from(*felt);
    const Instant by = felt->at;
    const bool isAnswered = !bed.added.empty() && bed.added.back().at > by;
    const Band<Instant> line = outlook.weak;
    outlook.weak = isAnswered ? back
                              : Band<Instant>{std::min(line.low, by), std::min(line.likely, by),
                                              std::min(line.high, by)};
    outlook.topUpBy = (back.likely > by ? back.likely : outlook.weak.likely) - bed.burnIn;
    return outlook;
}

}  // namespace cinder::cook
