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

    readonly property real share: root.isNarrow || !root.hasLine ? all.width : (all.width - Space.wide) / 2
    /// The answer is of the day as it was to be; a day that has got late says so first.
    readonly property bool isOvertaken: root.day.line.isUnderWay && root.day.line.isLate
    readonly property bool hasLine: root.promise.line.through !== ""

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
                y: Math.max(0, Math.round((way.height - height) / 2))
                width: parent.width - way.width - Space.margin
                spacing: Space.tight

                Label { width: parent.width; text: root.day.line.name; size: Type.title; isStrong: true; maximumLineCount: 3 }
                Label { width: parent.width; text: root.promise.asked; color: Theme.ash }
            }
        }
        Grid {
            width: parent.width
            columns: root.isNarrow ? 1 : 2
            spacing: Space.wide

            Column {
                id: promised
                width: root.share
                spacing: Space.gap

                LateNow { width: parent.width; visible: root.isOvertaken; day: root.day; ways: root.promise.waysOut }
                Heading { width: parent.width; visible: root.isOvertaken; text: qsTr("As it was promised before the day") }
                Item {
                    width: parent.width
                    height: said.height + 2 * Space.margin
                    visible: root.promise.answer !== ""

                    Plate {
                        anchors.fill: parent
                        fill: root.promise.isKept ? Theme.waterWash : Theme.emberWash
                        edge: root.promise.isKept ? Theme.water : Theme.ember
                    }
                    StateMark { id: shape; x: Space.margin; y: Space.margin + Space.tight; size: Space.icon; mark: root.promise.isKept ? "done" : "late"; color: root.promise.isKept ? Theme.water : Theme.ember }
                    Column {
                        id: said
                        anchors.left: shape.right
                        anchors.leftMargin: Space.gap
                        anchors.right: parent.right
                        anchors.rightMargin: Space.margin
                        y: Space.margin
                        spacing: Space.small

                        Label { width: parent.width; text: root.promise.answer; size: Type.title; isStrong: true; maximumLineCount: 12 }
                        Label { width: parent.width; text: root.promise.latest; size: Type.lead; maximumLineCount: 12 }
                        Label { width: parent.width; text: root.promise.bound; maximumLineCount: 12 }
                        Label { width: parent.width; visible: text !== ""; text: root.promise.weakest; maximumLineCount: 12 }
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
                Remark { width: parent.width; text: root.promise.options.count > 0 ? root.promise.locked : ""; glyph: Icons.lock; tint: Theme.ink; lines: 12 }
                Repeater {
                    model: root.promise.options

                    OptionPlate {
                        id: option
                        width: promised.width
                        isNarrow: root.isNarrow || root.hasLine
                        canAccept: !root.promise.isReckoning && !root.promise.isPlanning && root.promise.locked === ""
                        onAccept: root.promise.accept(option.key)
                        onStop: root.promise.stopPlanning()
                    }
                }
                Heading { width: parent.width; visible: root.promise.shorter.count > 0; text: qsTr("What would shorten the line") }
                Repeater {
                    model: root.promise.shorter

                    Column {
                        id: change
                        required property string text
                        required property string note
                        width: promised.width
                        spacing: Space.tight

                        Label { width: parent.width; text: change.text; isStrong: true; maximumLineCount: 12 }
                        Label { width: parent.width; text: change.note; size: Type.small; color: Theme.ash; maximumLineCount: 12 }
                    }
                }
            }
            Column {
                id: line
                width: root.share
                visible: root.hasLine
                spacing: Space.gap

                Heading { width: parent.width; text: qsTr("The guests in line, a forecast") }
                Label { width: parent.width; text: root.promise.line.through; size: Type.title; isStrong: true; maximumLineCount: 12 }
                Label { width: parent.width; text: root.promise.line.band; color: Theme.ash; maximumLineCount: 12 }
                Label { width: parent.width; text: root.promise.line.wait; size: Type.lead; maximumLineCount: 12 }
                Label { width: parent.width; visible: text !== ""; text: root.promise.line.byTable; maximumLineCount: 12 }
                Label { width: parent.width; visible: text !== ""; text: root.promise.line.bottleneck; maximumLineCount: 12 }
                QueueChart { width: parent.width; bars: root.promise.queue; title: root.promise.line.queueTitle }
            }
        }
    }
}
