#include "fire_rows.h"

#include "roles.h"

namespace cinder::face {

const std::vector<Role<PieceRow>>& PieceRow::roles() {
    static const std::vector<Role<PieceRow>> all{
        CINDER_ROLE(PieceRow, key),       CINDER_ROLE(PieceRow, task),
        CINDER_ROLE(PieceRow, number),    CINDER_ROLE(PieceRow, name),
        CINDER_ROLE(PieceRow, along),     CINDER_ROLE(PieceRow, across),
        CINDER_ROLE(PieceRow, alongSize), CINDER_ROLE(PieceRow, acrossSize),
        CINDER_ROLE(PieceRow, time),      CINDER_ROLE(PieceRow, isChosen)};
    return all;
}

const std::vector<Role<ClassRow>>& ClassRow::roles() {
    static const std::vector<Role<ClassRow>> all{
        CINDER_ROLE(ClassRow, key), CINDER_ROLE(ClassRow, studs), CINDER_ROLE(ClassRow, name),
        CINDER_ROLE(ClassRow, onGrate), CINDER_ROLE(ClassRow, time)};
    return all;
}

const std::vector<Role<FireBatchRow>>& FireBatchRow::roles() {
    static const std::vector<Role<FireBatchRow>> all{
        CINDER_ROLE(FireBatchRow, key),
        CINDER_ROLE(FireBatchRow, grate),
        CINDER_ROLE(FireBatchRow, title),
        CINDER_ROLE(FireBatchRow, target),
        CINDER_ROLE(FireBatchRow, minimum),
        CINDER_ROLE(FireBatchRow, source),
        CINDER_ROLE(FireBatchRow, warning),
        CINDER_ROLE(FireBatchRow, spread),
        CINDER_ROLE(FireBatchRow, missing),
        CINDER_ROLE(FireBatchRow, start),
        CINDER_ROLE(FireBatchRow, canTellStart),
        CINDER_ROLE(FireBatchRow, canPull),
        Role<FireBatchRow>{"classes", [](const FireBatchRow& r) { return asList(r.classes); }}};
    return all;
}

const std::vector<Role<GrateRow>>& GrateRow::roles() {
    static const std::vector<Role<GrateRow>> all{
        CINDER_ROLE(GrateRow, key),
        CINDER_ROLE(GrateRow, name),
        CINDER_ROLE(GrateRow, note),
        CINDER_ROLE(GrateRow, ratio),
        CINDER_ROLE(GrateRow, coolShare),
        CINDER_ROLE(GrateRow, onIt),
        CINDER_ROLE(GrateRow, hand),
        CINDER_ROLE(GrateRow, topUp),
        CINDER_ROLE(GrateRow, need),
        CINDER_ROLE(GrateRow, canTouch),
        Role<GrateRow>{"fire", [](const GrateRow& r) { return QVariant::fromValue(r.fire); }},
        Role<GrateRow>{"pieces", [](const GrateRow& r) { return asList(r.pieces); }}};
    return all;
}

const std::vector<Role<PieceChoiceRow>>& PieceChoiceRow::roles() {
    static const std::vector<Role<PieceChoiceRow>> all{
        CINDER_ROLE(PieceChoiceRow, key),      CINDER_ROLE(PieceChoiceRow, name),
        CINDER_ROLE(PieceChoiceRow, number),   CINDER_ROLE(PieceChoiceRow, time),
        CINDER_ROLE(PieceChoiceRow, mark),     CINDER_ROLE(PieceChoiceRow, studs),
        CINDER_ROLE(PieceChoiceRow, isChosen), CINDER_ROLE(PieceChoiceRow, isDue)};
    return all;
}

const std::vector<Role<ShelfRow>>& ShelfRow::roles() {
    static const std::vector<Role<ShelfRow>> all{
        CINDER_ROLE(ShelfRow, key), CINDER_ROLE(ShelfRow, title), CINDER_ROLE(ShelfRow, note),
        CINDER_ROLE(ShelfRow, share)};
    return all;
}

}  // namespace cinder::face
