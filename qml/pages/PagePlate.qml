import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// A page to choose: its drawing over its name.
T.AbstractButton {
    id: root

    required property string glyph

    implicitHeight: Space.hurried
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.clicked()

    background: Plate {
        edge: root.visualFocus ? Theme.water : Theme.edge
        fill: root.down ? Theme.waterWash : Theme.plate
    }
    contentItem: Item {
        Column {
            anchors.centerIn: parent
            width: parent.width - 2 * Space.small
            spacing: Space.small

            Glyph { anchors.horizontalCenter: parent.horizontalCenter; path: root.glyph; size: Type.figure }
            Label { width: parent.width; text: root.text; size: Type.lead; isStrong: true; horizontalAlignment: Text.AlignHCenter; Accessible.ignored: true }
        }
    }
}
