#include "rows.h"

#include "roles.h"

namespace cinder::face {

const std::vector<Role<LineRow>>& LineRow::roles() {
    static const std::vector<Role<LineRow>> all{
        CINDER_ROLE(LineRow, key), CINDER_ROLE(LineRow, line), CINDER_ROLE(LineRow, text),
        CINDER_ROLE(LineRow, isTicked)};
    return all;
}

const std::vector<Role<TaskRow>>& TaskRow::roles() {
    static const std::vector<Role<TaskRow>> all{
        CINDER_ROLE(TaskRow, key),
        CINDER_ROLE(TaskRow, name),
        CINDER_ROLE(TaskRow, title),
        CINDER_ROLE(TaskRow, batch),
        CINDER_ROLE(TaskRow, station),
        CINDER_ROLE(TaskRow, people),
        CINDER_ROLE(TaskRow, icon),
        CINDER_ROLE(TaskRow, mark),
        CINDER_ROLE(TaskRow, state),
        CINDER_ROLE(TaskRow, isLate),
        CINDER_ROLE(TaskRow, isCritical),
        CINDER_ROLE(TaskRow, slack),
        CINDER_ROLE(TaskRow, startText),
        CINDER_ROLE(TaskRow, finishText),
        CINDER_ROLE(TaskRow, whenText),
        CINDER_ROLE(TaskRow, latestText),
        CINDER_ROLE(TaskRow, awaited),
        CINDER_ROLE(TaskRow, countdown),
        CINDER_ROLE(TaskRow, unit),
        CINDER_ROLE(TaskRow, isList),
        CINDER_ROLE(TaskRow, isDue),
        CINDER_ROLE(TaskRow, progress),
        CINDER_ROLE(TaskRow, turnsDone),
        CINDER_ROLE(TaskRow, turnCount),
        CINDER_ROLE(TaskRow, turnText),
        CINDER_ROLE(TaskRow, canStart),
        CINDER_ROLE(TaskRow, canFinish),
        CINDER_ROLE(TaskRow, canTurn),
        CINDER_ROLE(TaskRow, canSkip),
        CINDER_ROLE(TaskRow, canComeBack),
        CINDER_ROLE(TaskRow, startVerb),
        CINDER_ROLE(TaskRow, finishVerb),
        CINDER_ROLE(TaskRow, caution),
        CINDER_ROLE(TaskRow, detail),
        CINDER_ROLE(TaskRow, heading),
        Role<TaskRow>{"lines", [](const TaskRow& r) { return asList(r.lines); }}};
    return all;
}

const std::vector<Role<PersonRow>>& PersonRow::roles() {
    static const std::vector<Role<PersonRow>> all{
        CINDER_ROLE(PersonRow, key),       CINDER_ROLE(PersonRow, name),
        CINDER_ROLE(PersonRow, now),       CINDER_ROLE(PersonRow, awaited),
        CINDER_ROLE(PersonRow, countdown), CINDER_ROLE(PersonRow, unit),
        CINDER_ROLE(PersonRow, isDue),     CINDER_ROLE(PersonRow, mark),
        CINDER_ROLE(PersonRow, next),      CINDER_ROLE(PersonRow, nextAt),
        CINDER_ROLE(PersonRow, isLate)};
    return all;
}

const std::vector<Role<AlarmRow>>& AlarmRow::roles() {
    static const std::vector<Role<AlarmRow>> all{
        CINDER_ROLE(AlarmRow, key),     CINDER_ROLE(AlarmRow, task), CINDER_ROLE(AlarmRow, call),
        CINDER_ROLE(AlarmRow, title),   CINDER_ROLE(AlarmRow, icon), CINDER_ROLE(AlarmRow, overdue),
        CINDER_ROLE(AlarmRow, actVerb), CINDER_ROLE(AlarmRow, act)};
    return all;
}

const std::vector<Role<NoticeRow>>& NoticeRow::roles() {
    static const std::vector<Role<NoticeRow>> all{
        CINDER_ROLE(NoticeRow, key), CINDER_ROLE(NoticeRow, text), CINDER_ROLE(NoticeRow, icon),
        CINDER_ROLE(NoticeRow, verb)};
    return all;
}

const std::vector<Role<OptionRow>>& OptionRow::roles() {
    static const std::vector<Role<OptionRow>> all{CINDER_ROLE(OptionRow, key),
                                                  CINDER_ROLE(OptionRow, text),
                                                  CINDER_ROLE(OptionRow, note),
                                                  CINDER_ROLE(OptionRow, isEnough),
                                                  CINDER_ROLE(OptionRow, isBeingPlanned),
                                                  CINDER_ROLE(OptionRow, isHeld)};
    return all;
}

const std::vector<Role<CrewRow>>& CrewRow::roles() {
    static const std::vector<Role<CrewRow>> all{
        CINDER_ROLE(CrewRow, key),        CINDER_ROLE(CrewRow, name),
        CINDER_ROLE(CrewRow, isHere),     CINDER_ROLE(CrewRow, isNew),
        CINDER_ROLE(CrewRow, isChanged),  CINDER_ROLE(CrewRow, skills),
        CINDER_ROLE(CrewRow, skillWords), CINDER_ROLE(CrewRow, chosen)};
    return all;
}

const std::vector<Role<EventRow>>& EventRow::roles() {
    static const std::vector<Role<EventRow>> all{
        CINDER_ROLE(EventRow, key),     CINDER_ROLE(EventRow, name),
        CINDER_ROLE(EventRow, when),    CINDER_ROLE(EventRow, isRehearsal),
        CINDER_ROLE(EventRow, isDraft), CINDER_ROLE(EventRow, beingPlanned)};
    return all;
}

const std::vector<Role<DeviceRow>>& DeviceRow::roles() {
    static const std::vector<Role<DeviceRow>> all{
        CINDER_ROLE(DeviceRow, key),      CINDER_ROLE(DeviceRow, name),
        CINDER_ROLE(DeviceRow, standing), CINDER_ROLE(DeviceRow, mark),
        CINDER_ROLE(DeviceRow, clock),    CINDER_ROLE(DeviceRow, parted)};
    return all;
}

const std::vector<Role<BlockRow>>& BlockRow::roles() {
    static const std::vector<Role<BlockRow>> all{
        CINDER_ROLE(BlockRow, key),          CINDER_ROLE(BlockRow, begin),
        CINDER_ROLE(BlockRow, length),       CINDER_ROLE(BlockRow, level),
        CINDER_ROLE(BlockRow, name),         CINDER_ROLE(BlockRow, times),
        CINDER_ROLE(BlockRow, mark),         CINDER_ROLE(BlockRow, isLate),
        CINDER_ROLE(BlockRow, isStanding),   CINDER_ROLE(BlockRow, isCritical),
        CINDER_ROLE(BlockRow, slack),        CINDER_ROLE(BlockRow, plannedLeft),
        CINDER_ROLE(BlockRow, plannedWidth), CINDER_ROLE(BlockRow, isMoved)};
    return all;
}

const std::vector<Role<LaneRow>>& LaneRow::roles() {
    static const std::vector<Role<LaneRow>> all{
        CINDER_ROLE(LaneRow, key), CINDER_ROLE(LaneRow, name), CINDER_ROLE(LaneRow, levels),
        Role<LaneRow>{"blocks", [](const LaneRow& r) { return asList(r.blocks); }}};
    return all;
}

const std::vector<Role<AxisRow>>& AxisRow::roles() {
    static const std::vector<Role<AxisRow>> all{
        CINDER_ROLE(AxisRow, key), CINDER_ROLE(AxisRow, at), CINDER_ROLE(AxisRow, clock),
        CINDER_ROLE(AxisRow, fromBell), CINDER_ROLE(AxisRow, isHour)};
    return all;
}

}  // namespace cinder::face
