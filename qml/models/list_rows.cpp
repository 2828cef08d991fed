#include "list_rows.h"

#include "roles.h"

namespace cinder::face {

const std::vector<Role<FigureRow>>& FigureRow::roles() {
    static const std::vector<Role<FigureRow>> all{
        CINDER_ROLE(FigureRow, key),  CINDER_ROLE(FigureRow, name),  CINDER_ROLE(FigureRow, amount),
        CINDER_ROLE(FigureRow, note), CINDER_ROLE(FigureRow, isOwn), CINDER_ROLE(FigureRow, opens)};
    return all;
}

const std::vector<Role<FigureGroupRow>>& FigureGroupRow::roles() {
    static const std::vector<Role<FigureGroupRow>> all{
        CINDER_ROLE(FigureGroupRow, key), CINDER_ROLE(FigureGroupRow, heading),
        Role<FigureGroupRow>{"figures", [](const FigureGroupRow& r) { return asList(r.figures); }}};
    return all;
}

const std::vector<Role<LoadRow>>& LoadRow::roles() {
    static const std::vector<Role<LoadRow>> all{
        CINDER_ROLE(LoadRow, key), CINDER_ROLE(LoadRow, text), CINDER_ROLE(LoadRow, counted),
        CINDER_ROLE(LoadRow, isIn), CINDER_ROLE(LoadRow, canCount)};
    return all;
}

const std::vector<Role<LoadGroupRow>>& LoadGroupRow::roles() {
    static const std::vector<Role<LoadGroupRow>> all{
        CINDER_ROLE(LoadGroupRow, key), CINDER_ROLE(LoadGroupRow, heading),
        CINDER_ROLE(LoadGroupRow, note),
        Role<LoadGroupRow>{"rows", [](const LoadGroupRow& r) { return asList(r.rows); }}};
    return all;
}

const std::vector<Role<KitchenRow>>& KitchenRow::roles() {
    static const std::vector<Role<KitchenRow>> all{
        CINDER_ROLE(KitchenRow, key), CINDER_ROLE(KitchenRow, name), CINDER_ROLE(KitchenRow, when),
        CINDER_ROLE(KitchenRow, then), CINDER_ROLE(KitchenRow, limits)};
    return all;
}

}  // namespace cinder::face
