import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A number for the fire: what a probe shows, or how warm the meat was when it went on.
Sheet {
    id: root

    required property Day day
    signal called(string board)
    readonly property Fire fire: root.day.fire
    title: root.fire.sheetTitle
    hasWayOut: true
    onClosed: root.fire.back()

    CallBand { width: parent.width; visible: root.day.line.callBoard !== ""; day: root.day; onClicked: { root.fire.close(); root.called(root.day.line.callBoard) } }
    NumberPad { width: parent.width; name: root.title; entry: root.fire.pad }
    Remark { width: parent.width; text: root.day.refusal; tint: Theme.ember }
    actions: PressPlate {
        width: parent.width
        tone: root.fire.pad.isReady ? "ember" : "plain"
        isOff: !root.fire.pad.isReady
        text: qsTr("Note it")
        onClicked: root.fire.noteNumber()
    }
}
