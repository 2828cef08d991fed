#pragma once

/// A small chart of temperature over time, worked out: everything that is drawn has its place as a
/// share of the field, from its left end and from its top. `ChartPicture` only paints it.

#include <optional>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QPolygonF>
#include <QString>

#include "app/fire_cards.h"
#include "words.h"

namespace cinder::face {

struct ChartFace {
    Q_GADGET
    QML_VALUE_TYPE(chartFace)
    /// What it shows, above it and for the screen reader.
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(bool isEmpty READ isEmpty)

  public:
    struct Tick {
        double at = 0;
        QString word;
        friend bool operator==(const Tick&, const Tick&) = default;
    };
    /// A temperature that matters, from end to end.
    struct Level {
        double at = 0;
        QString word;
        bool isMinimum = false;  ///< the published one; else the target
        friend bool operator==(const Level&, const Level&) = default;
    };
    /// A hand test: it tells a range, not a temperature.
    struct Span {
        double along = 0;
        double top = 0, bottom = 0;
        friend bool operator==(const Span&, const Span&) = default;
    };

    [[nodiscard]] bool isEmpty() const {
        return likely.size() < 2 && readings.isEmpty() && spans.empty();
    }

    QString name;
    QPolygonF band;    ///< around what an 80 % band covers
    QPolygonF likely;  ///< the middle of it, ascending in time
    QPolygonF readings;
    std::vector<Span> spans;
    std::vector<Tick> hours, degrees;
    std::vector<Level> levels;
    std::optional<double> now;
    friend bool operator==(const ChartFace&, const ChartFace&) = default;
};

/// The coldest place of the class of `piece` since it was laid and on to its pull, with what probes
/// showed, the pull target and the published minimum. Empty without a forecast.
[[nodiscard]] ChartFace coreChart(const app::BatchCard& batch, const app::PieceCard& piece,
                                  Instant now, const Words& words);

/// The fire since it was first felt: what cooks say the seconds of each hand test mean, and what a
/// thermometer on the grate showed. Empty before that.
[[nodiscard]] ChartFace fireChart(const app::CoalCard& coal, Instant now, const Words& words);

}  // namespace cinder::face
