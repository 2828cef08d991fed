import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// A number: one touch less, one touch more, or its keypad.
Item {
    id: root

    required property string name
    required property string value
    required property bool canLess
    required property bool canMore
    required property bool isFaulty
    required property bool isNarrow
    property bool isOff: false
    signal step(int by)
    signal ask()
    readonly property real room: root.isNarrow ? root.width : Math.round(root.width * 0.56)

    implicitHeight: root.isNarrow ? label.implicitHeight + Space.tight + Space.touch : Math.max(Space.touch, label.implicitHeight)

    Label {
        id: label
        width: root.isNarrow ? root.width : root.width - root.room - Space.gap
        y: root.isNarrow ? 0 : Math.round((root.height - height) / 2)
        text: root.name
        isStrong: true
        Accessible.ignored: true
    }
    Row {
        x: root.width - root.room
        y: root.height - Space.touch
        spacing: Space.small

        PressPlate { width: Space.touch; glyph: Icons.minus; isOff: root.isOff || !root.canLess; Accessible.name: qsTr("Less: %1").arg(root.name); onClicked: root.step(-1) }
        PressPlate {
            width: root.room - 2 * (Space.touch + Space.small)
            isOff: root.isOff
            text: root.value
            size: Type.title
            tone: root.isFaulty ? "ember" : "plain"
            Accessible.name: root.name + ": " + root.value
            onClicked: root.ask()
        }
        PressPlate { width: Space.touch; glyph: Icons.plus; isOff: root.isOff || !root.canMore; Accessible.name: qsTr("More: %1").arg(root.name); onClicked: root.step(1) }
    }
}
