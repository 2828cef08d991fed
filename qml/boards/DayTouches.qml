import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// What may be done with the whole day: its bell moved, the rest planned again.
Row {
    id: root

    required property Day day
    property bool isNarrow: false
    readonly property real share: (width - spacing) / 2
    signal moveBell()

    spacing: Space.gap

    PressPlate {
        objectName: "moveBell"
        width: root.isNarrow ? root.share : implicitWidth
        size: root.isNarrow ? Type.body : Type.lead
        glyph: root.isNarrow ? "" : Icons.bell
        text: qsTr("Move the bell")
        enabled: !root.day.line.isReadOnly
        onClicked: root.moveBell()
    }
    PressPlate {
        objectName: "replan"
        width: root.isNarrow ? root.share : implicitWidth
        size: root.isNarrow ? Type.body : Type.lead
        visible: !root.day.line.isReadOnly
        tone: root.day.line.isLate && !root.day.isPlanning ? "ember" : "plain"
        glyph: root.isNarrow ? "" : Icons.sheet
        enabled: !root.day.isPlanning
        text: root.day.isPlanning ? qsTr("Planning…") : qsTr("Plan again")
        onClicked: root.day.replan()
    }
}
