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
    Item {
        anchors.top: how.bottom
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
                }
            }
        }
    }
}
