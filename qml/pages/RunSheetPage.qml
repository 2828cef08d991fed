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
        keys: ["person", "station", "list"]
        words: [qsTr("By person"), qsTr("By station"), qsTr("List")]
        chosen: root.shown
        onChoose: key => root.shown = key
    }
    Loader {
        anchors.top: how.bottom
        anchors.topMargin: Space.gap
        anchors.bottom: parent.bottom
        anchors.left: parent.left
        anchors.leftMargin: Space.margin
        anchors.right: parent.right
        sourceComponent: root.shown === "list" ? list : chart
    }
    Component {
        id: chart
        RunChart {
            sheet: root.day.runSheet
            lanes: root.shown === "person" ? root.day.runSheet.byPerson : root.day.runSheet.byStation
        }
    }
    Component {
        id: list
        ListView {
            model: root.day.all
            spacing: Space.small
            clip: true
            delegate: TaskPlate {
                width: ListView.view.width - Space.margin
                onStart: root.day.start(key)
                onFinish: root.day.finish(key)
            }
        }
    }
}
