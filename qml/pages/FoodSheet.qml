pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// One entry of the record, over everything: the keys, a choice, or what is done about a reading out
/// of limit, which cannot be closed without an answer. A call keeps its band on top.
Item {
    id: root

    required property FoodEntry entry
    required property Day day
    property bool isNarrow: false
    signal called(string board)

    Accessible.role: Accessible.Dialog
    Accessible.name: root.entry.ask.title

    Shortcut { sequence: "Esc"; enabled: root.enabled; onActivated: root.entry.close() }
    Rectangle {
        anchors.fill: parent
        color: Theme.scrim
        MouseArea { anchors.fill: parent; onClicked: root.entry.close() }
    }
    Rectangle {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        width: root.isNarrow ? parent.width : Math.min(parent.width, Space.column * 2)
        height: Math.min(parent.height, pages.contentHeight)
        color: Theme.ground
        border.width: root.entry.ask.step === "act" ? Space.small : Space.line
        border.color: root.entry.ask.step === "act" ? Theme.ember : Theme.edge

        MouseArea { anchors.fill: parent }
        Flickable {
            id: pages
            anchors.fill: parent
            contentHeight: body.height + 2 * Space.margin
            clip: true

            Column {
                id: body
                x: Space.margin
                y: Space.margin
                width: parent.width - 2 * Space.margin
                spacing: Space.small

                CallBand {
                    width: parent.width
                    visible: root.day.line.callBoard !== ""
                    day: root.day
                    onClicked: { root.entry.leave(); root.called(root.day.line.callBoard) }
                }
                Row {
                    width: parent.width
                    spacing: Space.gap

                    NotePlate {
                        width: parent.width - away.width - Space.gap
                        visible: root.entry.ask.step === "keys"
                        enabled: root.entry.ask.hasPurpose
                        text: root.entry.ask.title
                        note: root.entry.ask.purpose + " · " + root.entry.ask.limit
                        onClicked: root.entry.askPurpose()
                    }
                    Column {
                        anchors.verticalCenter: parent.verticalCenter
                        visible: root.entry.ask.step !== "keys"
                        width: parent.width - (away.visible ? away.width + Space.gap : 0)
                        spacing: Space.tight

                        Label { width: parent.width; text: root.entry.ask.title; size: Type.lead; isStrong: true }
                        Label { width: parent.width; visible: text !== ""; text: root.entry.ask.question; maximumLineCount: 5 }
                    }
                    PressPlate { id: away; objectName: "foodClose"; visible: root.entry.ask.mayClose; glyph: Icons.cross; Accessible.name: qsTr("Close"); onClicked: root.entry.close() }
                }
                Remark { width: parent.width; text: root.entry.ask.refusal; tint: Theme.ember }
                FoodFinding { width: parent.width; visible: root.entry.ask.step === "act"; finding: root.entry.ask.finding; limit: root.entry.ask.purpose + ": " + root.entry.ask.limit }
                FoodKeys { width: parent.width; visible: root.entry.ask.step === "keys"; entry: root.entry; isNarrow: root.isNarrow }
                FoodChoices { width: parent.width; visible: root.entry.ask.step === "choose" || root.entry.ask.step === "act"; entry: root.entry }
                // Apart from the discarding above it.
                Item {
                    width: parent.width
                    height: slip.height + Space.apart - Space.small
                    visible: root.entry.ask.isOwnUndo && root.day.line.undo !== ""

                    PressPlate {
                        id: slip
                        objectName: "foodSlip"
                        anchors.bottom: parent.bottom
                        width: parent.width
                        glyph: Icons.undo
                        size: Type.body
                        text: qsTr("Slip of the finger: take it back (%1)").arg(root.day.undoLeft)
                        onClicked: root.day.undo()
                    }
                }
            }
        }
    }
}
