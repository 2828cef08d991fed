import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A few words, typed on the keyboard of the device.
Sheet {
    id: root

    required property Editor editor
    property string key: ""

    function ask(key: string, name: string, value: string) {
        root.key = key
        root.title = name
        line.text = value
        line.forceActiveFocus()
        line.selectAll()
    }
    function take() {
        root.editor.setText(root.key, line.text)
        root.closed()
    }
    title: ""

    T.TextField {
        id: line
        width: parent.width
        height: Space.touch
        leftPadding: Space.margin
        rightPadding: Space.margin
        verticalAlignment: Text.AlignVCenter
        font.family: Type.family
        font.pixelSize: Type.lead
        color: Theme.ink
        selectionColor: Theme.water
        selectedTextColor: Theme.waterInk
        maximumLength: 200
        Accessible.name: root.title
        onAccepted: root.take()
        background: Plate { edge: Theme.water }
    }
    PressPlate { width: parent.width; tone: "water"; text: qsTr("Take it"); onClicked: root.take() }
}
