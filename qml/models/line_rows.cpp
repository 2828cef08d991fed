#include "line_rows.h"

#include "roles.h"

namespace cinder::face {

const std::vector<Role<StandRow>>& StandRow::roles() {
    static const std::vector<Role<StandRow>> all{
        CINDER_ROLE(StandRow, key),      CINDER_ROLE(StandRow, number),
        CINDER_ROLE(StandRow, name),     CINDER_ROLE(StandRow, begin),
        CINDER_ROLE(StandRow, behind),   CINDER_ROLE(StandRow, length),
        CINDER_ROLE(StandRow, depth),    CINDER_ROLE(StandRow, isOnRiser),
        CINDER_ROLE(StandRow, isPlaced), CINDER_ROLE(StandRow, isChosen),
        CINDER_ROLE(StandRow, hasCard)};
    return all;
}

const std::vector<Role<TableRow>>& TableRow::roles() {
    static const std::vector<Role<TableRow>> all{
        CINDER_ROLE(TableRow, key), CINDER_ROLE(TableRow, name), CINDER_ROLE(TableRow, length),
        CINDER_ROLE(TableRow, depth),
        Role<TableRow>{"stands", [](const TableRow& r) {
                           return QVariant::fromValue(static_cast<RowList*>(r.stands.get()));
                       }}};
    return all;
}

const std::vector<Role<OrderRow>>& OrderRow::roles() {
    static const std::vector<Role<OrderRow>> all{
        CINDER_ROLE(OrderRow, key),       CINDER_ROLE(OrderRow, number),
        CINDER_ROLE(OrderRow, name),      CINDER_ROLE(OrderRow, where),
        CINDER_ROLE(OrderRow, card),      CINDER_ROLE(OrderRow, isWaiting),
        CINDER_ROLE(OrderRow, isChosen),  CINDER_ROLE(OrderRow, canGoEarlier),
        CINDER_ROLE(OrderRow, canGoLater)};
    return all;
}

}  // namespace cinder::face
