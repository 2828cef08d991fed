import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A number for the fire: what a probe shows, or how warm the meat was when it went on.
Sheet {
    id: root

    required property Day day
    readonly property Fire fire: root.day.fire
    readonly property bool isNarrow: root.width < root.height
    title: root.fire.sheetTitle
    onClosed: root.fire.back()

    NumberPad { width: parent.width; name: root.title; entry: root.fire.pad }
    Remark { width: parent.width; text: root.day.refusal; tint: Theme.ember }
    Row {
        width: parent.width
        spacing: Space.gap

        PressPlate { id: way; glyph: Icons.back; Accessible.name: qsTr("Back"); onClicked: root.fire.back() }
        PressPlate {
            width: parent.width - way.width - Space.gap
            tone: root.fire.pad.isReady ? "ember" : "plain"
            isOff: !root.fire.pad.isReady
            text: qsTr("Note it")
            onClicked: root.fire.noteNumber()
        }
    }
}
