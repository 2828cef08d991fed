import QtQuick
import Cinderbell.Parts

/// A few words, typed on the keyboard of the device.
Sheet {
    id: root

    property string key: ""
    signal taken(string key, string text)

    function ask(key: string, name: string, value: string) {
        root.key = key
        root.title = name
        line.text = value
        line.forceActiveFocus()
        line.selectAll()
    }
    function take() {
        root.taken(root.key, line.text)
        root.closed()
    }
    title: ""
    hasWayOut: true

    LineField {
        id: line
        width: parent.width
        Accessible.name: root.title
        onAccepted: root.take()
    }
    actions: PressPlate { width: parent.width; tone: "water"; text: qsTr("Take it"); onClicked: root.take() }
}
