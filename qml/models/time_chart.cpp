#include "time_chart.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>

namespace cinder::face {

namespace {

using std::chrono::minutes;

struct ChartWords {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::ChartWords)
};

/// Where an instant and a temperature lie in the plot.
class Plot {
  public:
    Plot(Instant begin, Instant end) : begin_(begin), end_(std::max(end, begin + minutes(10))) {}

    void reach(Temperature shown) {
        low_ = std::min(low_, shown.celsius());
        high_ = std::max(high_, shown.celsius());
    }
    /// Air above and below what is drawn.
    void open() {
        const double air = std::max(2.0, (high_ - low_) * 0.08);
        low_ -= air;
        high_ += air;
    }
    [[nodiscard]] double along(Instant at) const {
        return std::chrono::duration<double>(at - begin_) /
               std::chrono::duration<double>(end_ - begin_);
    }
    [[nodiscard]] double down(Temperature shown) const {
        return (high_ - shown.celsius()) / (high_ - low_);
    }
    [[nodiscard]] QPointF place(Instant at, Temperature shown) const {
        return {along(at), down(shown)};
    }

    /// Round minutes of the event's wall clock, five at most.
    [[nodiscard]] std::vector<ChartFace::Tick> hours(const Words& words) const {
        constexpr minutes kSteps[] = {minutes(5),  minutes(10), minutes(15), minutes(20),
                                      minutes(30), minutes(60), minutes(120)};
        minutes step = kSteps[0];
        for (const minutes wider : kSteps) {
            step = wider;
            if ((end_ - begin_) / step <= 4) break;
        }
        const auto wall = begin_.time_since_epoch() + words.offset();
        Instant at = begin_ + (step - wall % step) % step;
        std::vector<ChartFace::Tick> ticks;
        for (; at <= end_; at += step)
            ticks.push_back({along(at), words.clock(at)});
        return ticks;
    }
    /// Round degrees as they are read on this device, five at most.
    [[nodiscard]] std::vector<ChartFace::Tick> degrees(const Words& words) const {
        const auto shown = [&](double celsius) {
            return words.isFahrenheit() ? Temperature::fromCelsius(celsius).fahrenheit() : celsius;
        };
        const auto meant = [&](double degrees) {
            return words.isFahrenheit() ? Temperature::fromFahrenheit(degrees)
                                        : Temperature::fromCelsius(degrees);
        };
        double step = 10;
        for (const double wider : {10.0, 20.0, 50.0, 100.0, 200.0}) {
            step = wider;
            if ((shown(high_) - shown(low_)) / step <= 5) break;
        }
        std::vector<ChartFace::Tick> ticks;
        for (double at = std::ceil(shown(low_) / step) * step; at <= shown(high_); at += step)
            ticks.push_back({down(meant(at)), QStringLiteral("%1°").arg(std::lround(at))});
        return ticks;
    }

  private:
    Instant begin_, end_;
    double low_ = 1e6, high_ = -1e6;  // degrees Celsius
};

std::optional<double> inside(double share) {
    if (share < 0 || share > 1) return {};
    return share;
}

}  // namespace

ChartFace coreChart(const app::BatchCard& batch, const app::PieceCard& piece, Instant now,
                    const Words& words) {
    ChartFace face;
    if (piece.kind < 0 || static_cast<std::size_t>(piece.kind) >= batch.kinds.size()) return face;
    const app::KindCard& kind = batch.kinds[static_cast<std::size_t>(piece.kind)];
    if (kind.curve.size() < 2 || !kind.drawnPiece) return face;
    Plot plot(kind.curve.front().at, kind.curve.back().at);
    for (const auto& point : kind.curve) {
        plot.reach(point.core.low);
        plot.reach(point.core.high);
    }
    for (const auto& reading : kind.readings)
        plot.reach(reading.shown);
    plot.reach(batch.pullAt);
    if (batch.minimum) plot.reach(*batch.minimum);
    plot.open();

    face.name =
        *kind.drawnPiece == piece.number
            ? ChartWords::tr("Inside this piece, with the band of 8 times in 10")
            : ChartWords::tr("Inside piece %1, of the same class, with the band of 8 times in 10")
                  .arg(*kind.drawnPiece);
    for (const auto& point : kind.curve) {
        face.likely << plot.place(point.at, point.core.likely);
        face.band << plot.place(point.at, point.core.high);
    }
    for (auto point = kind.curve.rbegin(); point != kind.curve.rend(); ++point)
        face.band << plot.place(point->at, point->core.low);
    for (const auto& reading : kind.readings)
        face.readings << plot.place(reading.at, reading.shown);
    face.levels.push_back({plot.down(batch.pullAt),
                           ChartWords::tr("pull at %1").arg(words.temperature(batch.pullAt)),
                           false});
    if (batch.minimum)
        face.levels.push_back(
            {plot.down(*batch.minimum),
             batch.isMinimumLocal
                 ? ChartWords::tr("local minimum %1").arg(words.measured(*batch.minimum))
                 : ChartWords::tr("published minimum %1").arg(words.temperature(*batch.minimum)),
             true});
    face.hours = plot.hours(words);
    face.degrees = plot.degrees(words);
    face.now = inside(plot.along(now));
    return face;
}

ChartFace fireChart(const app::CoalCard& coal, Instant now, const Words& words) {
    ChartFace face;
    std::optional<Instant> first;
    const auto meet = [&](Instant at) { first = first ? std::min(*first, at) : at; };
    for (const auto& test : coal.handTests)
        if (test.low && test.high) meet(test.at);
    for (const auto& reading : coal.thermometer)
        meet(reading.at);
    if (!first) return face;
    // A little room before the first and after now, so that no mark lies on the edge.
    Plot plot(*first - minutes(3), std::max(now, *first) + minutes(3));
    for (const auto& test : coal.handTests) {
        if (!test.low || !test.high) continue;
        plot.reach(*test.low);
        plot.reach(*test.high);
    }
    for (const auto& reading : coal.thermometer)
        plot.reach(reading.shown);
    plot.open();
    face.name = ChartWords::tr("The fire so far: each bar what cooks call that hand test");
    for (const auto& test : coal.handTests)
        if (test.low && test.high)
            face.spans.push_back(
                {plot.along(test.at), plot.down(*test.high), plot.down(*test.low)});
    for (const auto& reading : coal.thermometer)
        face.readings << plot.place(reading.at, reading.shown);
    face.hours = plot.hours(words);
    face.degrees = plot.degrees(words);
    face.now = inside(plot.along(now));
    return face;
}

}  // namespace cinder::face
