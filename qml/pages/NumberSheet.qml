import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// A number asked for in between, over the page.
Sheet {
    id: root

    required property NumberEntry entry
    signal keep()
    hasWayOut: true

    NumberPad { width: parent.width; name: root.title; entry: root.entry }
    actions: PressPlate {
        width: parent.width
        tone: "water"
        isOff: !root.entry.isReady
        text: qsTr("Keep")
        onClicked: root.keep()
    }
}
