import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// A number of the lists, asked for in between.
Sheet {
    id: root

    required property NumberEntry entry
    required property Day day
    signal keep()
    signal called(string board)
    hasWayOut: true

    CallBand { width: parent.width; visible: root.day.line.callBoard !== ""; day: root.day; onClicked: { root.closed(); root.called(root.day.line.callBoard) } }
    NumberPad { width: parent.width; name: root.title; entry: root.entry }
    actions: PressPlate {
        width: parent.width
        tone: "water"
        isOff: !root.entry.isReady
        text: qsTr("Keep")
        onClicked: root.keep()
    }
}
