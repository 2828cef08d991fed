pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Can this crew with this kit keep the promise; how late may they come; what would help.
Flickable {
    id: root

    required property Promise promise
    required property Day day
    property bool isNarrow: false
    signal back()

    contentHeight: all.height + 2 * Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Promise")
    Component.onCompleted: root.promise.reckon()

    Column {
        id: all
        x: root.isNarrow ? Space.margin : Space.wide
        y: Space.margin
        width: root.width - 2 * x
        spacing: Space.gap

        Row {
            width: parent.width
            spacing: Space.margin

            PressPlate { id: way; objectName: "promiseBack"; glyph: Icons.back; Accessible.name: qsTr("Back to the lead board"); onClicked: root.back() }
            Column {
                anchors.verticalCenter: way.verticalCenter
                width: parent.width - way.width - Space.margin
                spacing: Space.tight

                Label { width: parent.width; text: root.day.line.name; size: Type.title; isStrong: true; maximumLineCount: 3 }
                Label { width: parent.width; text: root.promise.asked; color: Theme.ash }
            }
        }
        Item {
            width: parent.width
            height: said.height + 2 * Space.margin
            visible: root.promise.answer !== ""

            Plate {
                anchors.fill: parent
                fill: root.promise.isKept ? Theme.waterWash : Theme.emberWash
                edge: root.promise.isKept ? Theme.water : Theme.ember
            }
            StateMark { id: shape; x: Space.margin; y: Space.margin + Space.tight; size: Space.icon; mark: root.promise.isKept ? "done" : "late" }
            Column {
                id: said
                anchors.left: shape.right
                anchors.leftMargin: Space.gap
                anchors.right: parent.right
                anchors.rightMargin: Space.margin
                y: Space.margin
                spacing: Space.small

                Label { width: parent.width; text: root.promise.answer; size: Type.title; isStrong: true }
                Label { width: parent.width; text: root.promise.latest; size: Type.lead }
                Label { width: parent.width; text: root.promise.bound }
                Label { width: parent.width; visible: text !== ""; text: root.promise.weakest }
            }
        }
        Remark { width: parent.width; text: root.promise.refusal; tint: Theme.ember }
        Label {
            width: parent.width
            visible: root.promise.isReckoning
            text: qsTr("Reckoning: every answer is planned, not guessed …")
            color: Theme.ash
        }
        Heading { width: parent.width; visible: root.promise.options.count > 0; text: qsTr("What would help, smallest change of each kind") }
        Repeater {
            model: root.promise.options

            OptionPlate {
                id: option
                width: all.width
                isNarrow: root.isNarrow
                canAccept: !root.promise.isReckoning && !root.day.line.isReadOnly
                onAccept: root.promise.accept(option.key)
            }
        }
    }
}
