pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// After the line: what must be true before the van leaves, and the work that makes it so.
Flickable {
    id: root

    required property Day day
    required property Strike strike
    property bool isNarrow: false
    signal go(string place)
    readonly property real half: root.isNarrow ? root.width - 2 * Space.margin : Math.floor((root.width - 3 * Space.margin) / 2)

    contentHeight: Math.max(leaving.y + leaving.height, work.y + work.height) + Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Strike")

    Column {
        id: leaving
        x: Space.margin
        y: Space.margin
        width: root.half
        spacing: Space.gap

        Heading { width: parent.width; text: qsTr("Before the van leaves") }
        Item {
            width: parent.width
            height: verdict.height + 2 * Space.gap

            Plate { anchors.fill: parent; edge: root.strike.mayLeave ? Theme.water : Theme.ember; fill: root.strike.mayLeave ? Theme.waterWash : Theme.emberWash }
            Label { id: verdict; x: Space.margin; y: Space.gap; width: parent.width - 2 * Space.margin; text: root.strike.verdict; size: Type.lead; isStrong: true; maximumLineCount: 8 }
        }
        Repeater {
            model: root.strike.lines

            LeavingPlate {
                id: line
                width: leaving.width
                isNarrow: root.isNarrow
                onGo: root.go(line.place)
            }
        }
        Remark { width: parent.width; text: qsTr("Never load warm coals. Ash rides in a metal bin with a lid, outside the cabin. Local fire and health codes decide.") }
    }
    Column {
        id: work
        x: root.isNarrow ? Space.margin : root.half + 2 * Space.margin
        y: root.isNarrow ? leaving.y + leaving.height + Space.wide : Space.margin
        width: root.half
        spacing: Space.gap

        TaskColumn { width: parent.width; heading: qsTr("Strike, step by step"); tasks: root.day.strike; day: root.day; showsLines: true; showsReturn: true; isNarrow: root.isNarrow }
    }
}
