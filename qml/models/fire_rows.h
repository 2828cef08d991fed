#pragma once

/// What the Fire board says of its grates, batches and pieces, finished. Made by `FireWords`.

#include <memory>
#include <vector>

#include <QPolygonF>
#include <QString>

#include "app/fire_cards.h"
#include "row_list.h"
#include "time_chart.h"

namespace cinder::face {

/// One piece on the map. Lengths are shares of the grate's length (along) and width (across).
struct PieceRow {
    QString key;  ///< "task#number"
    QString task;
    int number = 0;
    QString name;  ///< for the screen reader: "Piece 3, thick, over the coals, 12 min"
    double along = 0, across = 0, alongSize = 0, acrossSize = 0;
    QString time;       ///< "12 min" or a word; empty when nothing is known
    QPolygonF outline;  ///< shares of the grate, as above
    int studs = 0;      ///< 1 for the thinnest class; 0 when the dish has one class only
    bool isChosen = false;
    app::PieceState state = app::PieceState::ToCome;
    static const std::vector<Role<PieceRow>>& roles();
    friend bool operator==(const PieceRow&, const PieceRow&) = default;
};

/// One thickness class of a batch.
struct ClassRow {
    QString key;
    int studs = 0;
    QString name;
    QString onGrate;  ///< "2 of 3 on the grate"
    QString time;     ///< "pull in 12 min (9 to 16)"
    static const std::vector<Role<ClassRow>>& roles();
    friend bool operator==(const ClassRow&, const ClassRow&) = default;
};

/// What the fire will do with one batch.
struct FireBatchRow {
    QString key;
    QString grate;
    QString title;
    QString target;   ///< "Pull at 130 °F"
    QString minimum;  ///< "Published minimum 145 °F for 15 s"
    QString source;   ///< where it was published
    QString warning;  ///< when the target lies below it
    QString spread;   ///< from the first piece to the last
    QString missing;  ///< what has to be told before there is a forecast
    QString start;    ///< how warm the meat was when it was laid
    bool canTellStart = false;
    bool canPull = false;
    std::shared_ptr<ListOf<ClassRow>> classes;
    static const std::vector<Role<FireBatchRow>>& roles();
    friend bool operator==(const FireBatchRow&, const FireBatchRow&) = default;
};

struct GrateRow {
    QString key;
    QString name;
    QString note;          ///< "8 on it, 2 due"
    double ratio = 3;      ///< length by width
    double coolShare = 0;  ///< of the length, at its end
    int onIt = 0;
    QString hand;    ///< the last hand test and what cooks say it means
    QString topUp;   ///< by when to add coal
    QString need;    ///< coal to load for the day
    ChartFace fire;  ///< hand tests and the grate thermometer over time
    bool canTouch = false;
    std::shared_ptr<ListOf<PieceRow>> pieces;
    static const std::vector<Role<GrateRow>>& roles();
    friend bool operator==(const GrateRow&, const GrateRow&) = default;
};

/// A piece that may be pulled with others.
struct PieceChoiceRow {
    QString key;
    QString name;  ///< for the screen reader
    QString number;
    QString time;
    QString mark;
    int studs = 0;
    bool isChosen = false;
    bool isDue = false;
    static const std::vector<Role<PieceChoiceRow>>& roles();
    friend bool operator==(const PieceChoiceRow&, const PieceChoiceRow&) = default;
};

/// One hotel pan as it fills.
struct ShelfRow {
    QString key;
    QString title;  ///< "Pan 1 · Leg of lamb"
    QString note;   ///< "3 of 8 pieces, the last at 12:05"
    double share = 0;
    static const std::vector<Role<ShelfRow>>& roles();
    friend bool operator==(const ShelfRow&, const ShelfRow&) = default;
};

}  // namespace cinder::face
