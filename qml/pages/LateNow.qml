import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The day as it runs now, where something is said of the day as it was to be.
Item {
    id: root

    required property Day day

    height: said.height + 2 * Space.margin

    Plate { anchors.fill: parent; fill: Theme.emberWash; edge: Theme.ember }
    StateMark { id: shape; x: Space.margin; y: Space.margin + Space.tight; size: Space.icon; mark: "late" }
    Column {
        id: said
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        y: Space.margin
        spacing: Space.small

        Label { width: parent.width; text: qsTr("As the day runs now"); color: Theme.ash }
        Label { width: parent.width; text: root.day.line.ready + " · " + root.day.line.spare; size: Type.title; isStrong: true }
        Label { width: parent.width; visible: root.day.line.weakest !== ""; text: qsTr("Weakest link: %1, %2").arg(root.day.line.weakest).arg(root.day.line.weakestSlack) }
        Label { width: parent.width; text: qsTr("The lead board plans again or moves the bell.") }
    }
}
