pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// The whole plan: drawn by person or by station, or as a plain list.
Item {
    id: root

    required property Day day
    property bool isNarrow: false
    property string shown: "person"
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Run sheet")

    Choice {
        id: how
        x: Space.margin
        y: Space.small
        width: Math.min(parent.width - 2 * Space.margin, Space.column * 1.4)
        name: qsTr("Run sheet")
        isHeaded: false
        keys: ["person", "station", "list"]
        words: [qsTr("By person"), qsTr("By station"), qsTr("List")]
        chosen: root.shown
        onChoose: key => root.shown = key
    }
    Row {
        id: key
        y: how.y + (root.isNarrow ? how.height + Space.small : Math.round((how.height - height) / 2))
        x: root.isNarrow ? Space.margin : how.x + how.width + Space.wide
        spacing: Space.gap
        visible: root.shown !== "list"

        Rectangle { anchors.verticalCenter: parent.verticalCenter; width: Space.icon; height: Space.small; color: Theme.ember }
        Label { text: qsTr("holds up the bell"); size: Type.small; wrapMode: Text.NoWrap }
        Rectangle { anchors.verticalCenter: parent.verticalCenter; width: Space.icon; height: Space.hair; color: Theme.ash }
        Label { text: qsTr("slack"); size: Type.small; wrapMode: Text.NoWrap }
    }
    Item {
        anchors.top: root.isNarrow && key.visible ? key.bottom : how.bottom
        anchors.topMargin: Space.gap
        anchors.bottom: parent.bottom
        anchors.left: parent.left
        anchors.leftMargin: Space.margin
        anchors.right: parent.right

        Repeater {
            model: root.shown !== "list" ? 1 : 0

            RunChart {
                anchors.fill: parent
                sheet: root.day.runSheet
                lanes: root.shown === "person" ? root.day.runSheet.byPerson : root.day.runSheet.byStation
                levels: root.shown === "person" ? root.day.runSheet.personLevels : root.day.runSheet.stationLevels
            }
        }
        Repeater {
            model: root.shown === "list" ? 1 : 0

            ListView {
                anchors.fill: parent
                model: root.day.all
                spacing: Space.small
                clip: true
                delegate: TaskPlate {
                    id: plate
                    width: ListView.view.width - Space.margin
                    onStart: root.day.start(plate.key)
                    onFinish: root.day.finish(plate.key)
                    showsReturn: true
                    canPlan: !root.day.isPlanning
                    onComeBack: root.day.bringBack(plate.key)
                }
            }
        }
    }
}
