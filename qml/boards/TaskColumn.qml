pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A heading and the tasks under it; gone when there are none. Where a task may be left out, the key
/// at the foot first shows what is held for it, so that in the hurry nothing but the work is there.
Column {
    id: root

    required property string heading
    required property RowList tasks
    required property Day day
    property string note: ""
    property bool showsCaution: false
    property bool showsLines: false
    property bool isNarrow: false
    property bool showsReturn: false
    property bool offersSkip: false
    property bool showsSkip: false

    visible: root.tasks.count > 0
    spacing: Space.small

    Heading { width: parent.width; text: root.heading; note: root.note }
    Repeater {
        model: root.tasks

        TaskPlate {
            id: plate
            width: root.width
            showsCaution: root.showsCaution
            showsLines: root.showsLines
            columns: root.isNarrow ? 1 : 2
            isSkipBelow: true
            showsSkip: root.showsSkip
            showsReturn: root.showsReturn
            canPlan: !root.day.isPlanning
            onSkip: root.day.skip(plate.key)
            onComeBack: root.day.bringBack(plate.key)
            onStart: root.day.start(plate.key)
            onFinish: root.day.finish(plate.key)
            onTick: line => root.day.tick(plate.key, line)
        }
    }
    Item { width: 1; height: Space.apart - 2 * Space.small; visible: root.showsSkip }
    PressPlate {
        objectName: "offerSkip"
        width: parent.width
        visible: root.offersSkip && !root.day.line.isReadOnly
        tone: "quiet"
        size: Type.body
        text: root.showsSkip ? qsTr("Leave nothing out") : qsTr("Leave a step out …")
        onClicked: root.showsSkip = !root.showsSkip
    }
}
