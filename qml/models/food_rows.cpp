#include "food_rows.h"

#include "roles.h"

namespace cinder::face {

const std::vector<Role<CheckRow>>& CheckRow::roles() {
    static const std::vector<Role<CheckRow>> all{
        CINDER_ROLE(CheckRow, key),   CINDER_ROLE(CheckRow, dish),
        CINDER_ROLE(CheckRow, what),  CINDER_ROLE(CheckRow, limit),
        CINDER_ROLE(CheckRow, due),   CINDER_ROLE(CheckRow, countdown),
        CINDER_ROLE(CheckRow, mark),  CINDER_ROLE(CheckRow, missed),
        CINDER_ROLE(CheckRow, isDue), CINDER_ROLE(CheckRow, unit)};
    return all;
}

const std::vector<Role<FireRow>>& FireRow::roles() {
    static const std::vector<Role<FireRow>> all{
        CINDER_ROLE(FireRow, key), CINDER_ROLE(FireRow, text), CINDER_ROLE(FireRow, isReady),
        CINDER_ROLE(FireRow, isSkipped)};
    return all;
}

const std::vector<Role<PanRow>>& PanRow::roles() {
    static const std::vector<Role<PanRow>> all{
        CINDER_ROLE(PanRow, key),     CINDER_ROLE(PanRow, title),     CINDER_ROLE(PanRow, standing),
        CINDER_ROLE(PanRow, last),    CINDER_ROLE(PanRow, countdown), CINDER_ROLE(PanRow, clock),
        CINDER_ROLE(PanRow, mark),    CINDER_ROLE(PanRow, isBad),     CINDER_ROLE(PanRow, isOver),
        CINDER_ROLE(PanRow, isClock), CINDER_ROLE(PanRow, leftover),  CINDER_ROLE(PanRow, unit)};
    return all;
}

const std::vector<Role<ForecastRow>>& ForecastRow::roles() {
    static const std::vector<Role<ForecastRow>> all{CINDER_ROLE(ForecastRow, key),
                                                    CINDER_ROLE(ForecastRow, title),
                                                    CINDER_ROLE(ForecastRow, text)};
    return all;
}

const std::vector<Role<EntryRow>>& EntryRow::roles() {
    static const std::vector<Role<EntryRow>> all{
        CINDER_ROLE(EntryRow, key),  CINDER_ROLE(EntryRow, when),      CINDER_ROLE(EntryRow, about),
        CINDER_ROLE(EntryRow, what), CINDER_ROLE(EntryRow, value),     CINDER_ROLE(EntryRow, by),
        CINDER_ROLE(EntryRow, note), CINDER_ROLE(EntryRow, canCorrect)};
    return all;
}

const std::vector<Role<LimitRow>>& LimitRow::roles() {
    static const std::vector<Role<LimitRow>> all{
        CINDER_ROLE(LimitRow, key),     CINDER_ROLE(LimitRow, name),
        CINDER_ROLE(LimitRow, value),   CINDER_ROLE(LimitRow, source),
        CINDER_ROLE(LimitRow, isLocal), CINDER_ROLE(LimitRow, canChange)};
    return all;
}

const std::vector<Role<ChoiceRow>>& ChoiceRow::roles() {
    static const std::vector<Role<ChoiceRow>> all{
        CINDER_ROLE(ChoiceRow, key), CINDER_ROLE(ChoiceRow, text), CINDER_ROLE(ChoiceRow, note),
        CINDER_ROLE(ChoiceRow, isChosen), CINDER_ROLE(ChoiceRow, isGrave)};
    return all;
}

}  // namespace cinder::face
