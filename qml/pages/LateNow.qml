pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The day as it runs now, where something is said of the day as it was to be; and what would help.
Column {
    id: root

    required property Day day
    required property WaysOut ways
    readonly property string ready: root.day.line.ready

    spacing: Space.gap
    // While minutes pass and others work, the answers follow.
    onReadyChanged: if (root.visible) root.ways.reckon()
    onVisibleChanged: if (root.visible) root.ways.reckon()
    Component.onCompleted: if (root.visible) root.ways.reckon()

    Item {
        width: parent.width
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
        }
    }
    Heading { width: parent.width; visible: root.ways.isReckoning || root.ways.isNothing || root.ways.rows.count > 0; text: qsTr("What would help from now on") }
    Label { width: parent.width; visible: root.ways.isReckoning && root.ways.rows.count === 0; text: qsTr("Reckoning: every answer is planned, not guessed …"); color: Theme.ash }
    Repeater {
        model: root.ways.rows

        OptionPlate {
            id: way
            width: root.width
            isNarrow: true
            canAccept: !root.ways.isPlanning && !root.day.line.isReadOnly
            onAccept: root.ways.take(way.key)
            onStop: root.ways.stopPlanning()
        }
    }
    Label { width: parent.width; visible: root.ways.isNothing; text: qsTr("No single change was found that helps. Move the bell, and tell the client early.") }
    Label { width: parent.width; text: qsTr("The bell is moved on the lead board; a single step is left out on the Fire or Buffet board."); size: Type.small; color: Theme.ash }
}
