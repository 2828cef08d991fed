#include "cook/lethality.h"

#include <cmath>

namespace cinder::cook {

namespace {

struct RoastRow {
    int fahrenheit;
    int secondsSixAndAHalf;
    int secondsSeven;
};

// Source: USDA FSIS Appendix A (1999); see the header.
constexpr RoastRow kRoastTable[] = {
    {130, 6720, 7260}, {131, 5340, 5820}, {132, 4260, 4620}, {133, 3360, 3720}, {134, 2700, 2820},
    {135, 2160, 2220}, {136, 1680, 1920}, {137, 1380, 1440}, {138, 1080, 1140}, {139, 900, 900},
    {140, 720, 720},   {141, 540, 600},   {142, 480, 480},   {143, 360, 360},   {144, 300, 300},
    {145, 240, 240},   {146, 169, 182},   {147, 134, 144},   {148, 107, 115},   {149, 85, 91},
    {150, 67, 72},     {151, 54, 58},     {152, 43, 46},     {153, 34, 37},     {154, 27, 29},
    {155, 22, 23},     {156, 17, 19},     {157, 14, 15},     {158, 0, 0},       {159, 0, 0},
    {160, 0, 0}};

}  // namespace

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

std::optional<Duration> publishedRoastHold(Temperature t, Reduction reduction) {
    const RoastRow* row = nullptr;
    for (const RoastRow& candidate : kRoastTable) {
        if (Temperature::fromFahrenheit(candidate.fahrenheit) <= t) row = &candidate;
    }
    if (row == nullptr) return std::nullopt;
    return std::chrono::seconds(reduction == Reduction::Seven ? row->secondsSeven
                                                              : row->secondsSixAndAHalf);
}

}  // namespace cinder::cook
