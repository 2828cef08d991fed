#include "cook/lethality.h"

#include <cmath>

namespace cinder::cook {

double lethalRate(const ThermalDeath& death, Temperature t) {
    return std::pow(10.0, (t - death.reference) / death.tenfold);
}

Result<Lethality, CookError> lethalityOf(std::span<const MeasuredPoint> history,
                                         const ThermalDeath& death, Duration longestGap) {
    if (history.size() < 2) return fail(CookError{CookError::Kind::TooFewReadings, "history"});
    Lethality total;
    double seconds = 0;
    for (std::size_t i = 1; i < history.size(); ++i) {
        const Duration passed = history[i].at - history[i - 1].at;
        if (passed < Duration(0)) return fail(CookError{CookError::Kind::OutOfOrder, "history"});
        if (passed > longestGap) {
            ++total.gaps;
            continue;
        }
        const double before = lethalRate(death, history[i - 1].reading);
        const double after = lethalRate(death, history[i].reading);
        const double logs = std::log(after / before);
        const double mean = std::abs(logs) < 1e-6 ? before : (after - before) / logs;
        seconds += mean * std::chrono::duration<double>(passed).count();
    }
    total.equivalent = Duration(static_cast<Duration::rep>(std::llround(seconds * 1000.0)));
    return total;
}

}  // namespace cinder::cook
