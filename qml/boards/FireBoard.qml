pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// For who cooks: what is on the grate and when it wants turning; what rests; what comes next; and
/// what may be done before the next turn.
Flickable {
    id: root

    required property Day day
    required property FoodRecord record
    property bool isNarrow: false
    readonly property real half: root.isNarrow ? root.width - 2 * Space.margin
                                               : (root.width - 3 * Space.margin) / 2

    contentHeight: Math.max(grate.height, rest.y + rest.height) + 2 * Space.margin
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Fire")

    Column {
        id: grate
        x: Space.margin
        y: Space.gap
        width: root.half
        spacing: Space.small

        FireQuestions { width: parent.width; visible: root.record.tally.asksFire; record: root.record; isNarrow: root.isNarrow }
        CheckColumn { width: parent.width; record: root.record; checks: root.record.dueAtFire; isNarrow: root.isNarrow }
        Heading { width: parent.width; text: qsTr("On the grate") }
        Label {
            width: parent.width
            visible: root.day.grate.count === 0
            text: qsTr("Nothing on the grate.")
            color: Theme.ash
        }
        Repeater {
            model: root.day.grate

            BatchPlate {
                id: batch
                isNarrow: root.isNarrow
                width: grate.width
                onTurn: root.day.turn(batch.key)
                onPull: root.day.finish(batch.key)
            }
        }
        CheckColumn { width: parent.width; record: root.record; checks: root.record.soonAtFire; heading: qsTr("To measure soon"); isNarrow: root.isNarrow }
        Remark { width: parent.width; visible: root.day.grate.count > 0; text: root.day.fire.thermometerCaution }
        Remark { width: parent.width; visible: root.day.grate.count > 0; text: root.day.fire.greaseCaution; glyph: Icons.flame }
        TaskColumn {
            width: parent.width
            heading: qsTr("Coals")
            tasks: root.day.coals
            day: root.day
            showsCaution: true
        }
        TaskColumn { width: parent.width; heading: qsTr("Next at the fire"); tasks: root.day.nextAtFire; day: root.day; offersSkip: true }
        Remark { width: parent.width; text: root.day.line.deference; glyph: Icons.flame }
    }
    Column {
        id: rest
        x: root.isNarrow ? Space.margin : root.half + 2 * Space.margin
        y: root.isNarrow ? grate.height + Space.wide : Space.gap
        width: root.half
        spacing: Space.gap

        Repeater {
            model: root.day.fire.grates

            GratePlate { board: root.day.fire; isNarrow: root.isNarrow; width: rest.width }
        }
        Repeater {
            model: root.day.fire.batches

            FireBatchPlate { fire: root.day.fire; width: rest.width }
        }
        PanShelf { width: parent.width; pans: root.day.fire.pans }
        TaskColumn { width: parent.width; heading: qsTr("Resting"); tasks: root.day.rests; day: root.day }
        TaskColumn { width: parent.width; heading: qsTr("Before the next turn you may"); tasks: root.day.between; day: root.day; isNarrow: root.isNarrow; showsLines: true }
        NoticeColumn { width: parent.width; day: root.day }
    }
}
