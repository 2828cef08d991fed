import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// A number typed on big keys; it is taken only when it can be.
Sheet {
    id: root

    required property Editor editor
    property string key: ""
    readonly property NumberEntry entry: NumberEntry {}

    function ask(key: string, name: string, kind: int, number: real, least: real, most: real) {
        root.key = key
        root.title = name
        root.entry.beginAt(kind, least, most, root.editor.isCustomaryFor(kind), number)
    }
    title: ""
    hasWayOut: true

    NumberPad { width: parent.width; name: root.title; entry: root.entry }
    actions: PressPlate {
        width: parent.width
        tone: "water"
        text: qsTr("Take it")
        isOff: !root.entry.isReady
        onClicked: { root.editor.setNumber(root.key, root.entry.value); root.closed() }
    }
}
