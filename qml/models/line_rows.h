#pragma once

/// What the rows of the buffet line say, finished. Sizes in millimetres of the line itself, seen
/// from above, the guests below.

#include <memory>

#include <QString>

#include "row_list.h"

namespace cinder::face {

struct StandRow {
    QString key;
    QString number;  ///< of its dish along the line
    QString name;
    double begin = 0;   ///< from the left edge of its table
    double behind = 0;  ///< from the edge away from the guests
    double length = 0;
    double depth = 0;
    bool isOnRiser = false;
    bool isPlaced = false;
    bool isChosen = false;
    bool hasCard = false;  ///< the card of its dish stands before it
    static const std::vector<Role<StandRow>>& roles();
    friend bool operator==(const StandRow&, const StandRow&) = default;
};

struct TableRow {
    QString key;
    QString name;
    double length = 0;
    double depth = 0;
    std::shared_ptr<ListOf<StandRow>> stands;
    static const std::vector<Role<TableRow>>& roles();
    friend bool operator==(const TableRow&, const TableRow&) = default;
};

/// One dish in serving order.
struct OrderRow {
    QString key;
    QString number;
    QString name;
    QString where;  ///< "2 bowls · table 1 · on a riser", or that it waits
    QString card;   ///< what its card says
    bool isWaiting = false;
    bool isChosen = false;
    bool canGoEarlier = false;
    bool canGoLater = false;
    static const std::vector<Role<OrderRow>>& roles();
    friend bool operator==(const OrderRow&, const OrderRow&) = default;
};

}  // namespace cinder::face
