pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// The scale of type and the digits.
Column {
    id: root

    spacing: Space.gap

    Heading { width: parent.width; text: qsTr("Type") }
    Label { width: parent.width; size: Type.title; isStrong: true; text: qsTr("Title: lamb legs") }
    Label { width: parent.width; size: Type.lead; isStrong: true; text: qsTr("Lead: turn now") }
    Label { width: parent.width; size: Type.body; text: qsTr("Body: coals lit, lid closed") }
    Label { width: parent.width; size: Type.small; color: Theme.ash; text: qsTr("Small: noted at 11:55") }
    Row {
        spacing: Space.margin

        Figure { id: large; text: "0:47"; size: Type.countdown }
        Figure { anchors.baseline: large.baseline; text: "12:00"; size: Type.figure }
        Figure { anchors.baseline: large.baseline; text: "163"; size: Type.figure; color: Theme.ember }
    }
    Heading { width: parent.width; text: qsTr("How far it has gone") }
    Cord { width: parent.width; progress: 0.35 }
    Cord { width: parent.width; progress: 0.8; burning: Theme.water }
    Pips { x: Space.tight; height: Space.wide; done: 2; count: 5 }
    Heading { width: parent.width; text: qsTr("States") }
    Grid {
        columns: root.width < Space.column ? 1 : 2
        columnSpacing: Space.wide
        rowSpacing: Space.small

        Repeater {
            model: [
                { mark: "waiting", word: qsTr("waiting") }, { mark: "ready", word: qsTr("can begin") },
                { mark: "running", word: qsTr("running") }, { mark: "over", word: qsTr("now") },
                { mark: "done", word: qsTr("done") }, { mark: "skipped", word: qsTr("skipped") }
            ]

            Row {
                id: state
                required property var modelData
                spacing: Space.small
                StateMark { anchors.verticalCenter: parent.verticalCenter; mark: state.modelData.mark }
                Label { text: state.modelData.word }
            }
        }
    }
    Remark { width: parent.width; text: qsTr("A caution: a thermometer decides, a timer never does.") }
    Remark { width: parent.width; tint: Theme.ember; text: qsTr("A refusal: what was wrong, and the way out.") }
}
