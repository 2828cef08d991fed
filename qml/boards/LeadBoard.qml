pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// For who leads: are we on time, what is the weakest link, who does what.
Flickable {
    id: root

    required property Day day
    property bool isNarrow: false
    signal moveBell()
    signal askPromise()
    signal go(string place)
    readonly property real half: root.isNarrow ? root.width - 2 * Space.margin
                                               : (root.width - 3 * Space.wide) / 2

    contentHeight: Math.max(bell.height, crew.y + crew.height) + 2 * Space.margin
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Lead")

    BellPanel {
        id: bell
        x: root.isNarrow ? Space.margin : Space.wide
        y: Space.gap
        width: root.half
        day: root.day
        isNarrow: root.isNarrow
        onMoveBell: root.moveBell()
        onAskPromise: root.askPromise()
    }
    Column {
        id: crew
        x: root.isNarrow ? Space.margin : root.half + 2 * Space.wide
        y: root.isNarrow ? bell.height + Space.wide : Space.margin
        width: root.half
        spacing: Space.gap

        NoticeColumn { width: parent.width; visible: !root.isNarrow; day: root.day }
        Heading { width: parent.width; visible: root.day.line.isPastBell; text: qsTr("After the bell") }
        Row {
            width: parent.width
            visible: root.day.line.isPastBell
            spacing: Space.gap
            readonly property real share: (width - 2 * spacing) / 3

            PressPlate { width: parent.share; tone: "ember"; size: Type.body; text: qsTr("Serve"); onClicked: root.go("serve") }
            PressPlate { width: parent.share; size: Type.body; text: qsTr("Strike"); onClicked: root.go("strike") }
            PressPlate { width: parent.share; size: Type.body; text: qsTr("Debrief"); onClicked: root.go("debrief") }
        }
        Heading { width: parent.width; text: qsTr("Crew") }
        Repeater {
            model: root.day.people
            PersonPlate { width: crew.width }
        }
        Heading {
            width: parent.width
            visible: weakest.visible
            text: qsTr("Weakest link")
            note: root.day.line.weakestSlack
        }
        Item {
            id: weakest
            width: parent.width
            height: link.height + 2 * Space.gap
            visible: root.day.line.weakest !== ""

            Plate { anchors.fill: parent; edge: Theme.ember; fill: Theme.emberWash }
            Column {
                id: link
                x: Space.margin
                y: Space.gap
                width: parent.width - 2 * Space.margin
                spacing: Space.tight

                Label { width: parent.width; text: root.day.line.weakest; size: Type.lead; isStrong: true }
                Label { width: parent.width; text: root.day.line.weakestLatest; color: Theme.ash }
            }
        }
        ChanceRow { width: parent.width; visible: root.isNarrow && root.day.line.chance !== ""; day: root.day }
        Heading { width: parent.width; visible: root.day.ahead.count > 0; text: qsTr("Coming up") }
        Column {
            width: parent.width

            Repeater {
                model: root.day.ahead
                TaskLine { width: crew.width }
            }
        }
        DayTouches { width: parent.width; visible: root.isNarrow && !root.day.line.isLate; day: root.day; isNarrow: true; onMoveBell: root.moveBell() }
    }
}
