import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// One of a few: chosen it is filled and carries a tick in its corner.
T.AbstractButton {
    id: root

    required property bool isChosen

    implicitHeight: Space.touch
    Accessible.role: Accessible.RadioButton
    Accessible.name: root.text
    Accessible.checked: root.isChosen
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.isChosen ? (root.enabled ? Theme.ink : Theme.ash) : root.down ? Theme.waterWash : Theme.plate
        radius: Space.corner
        border.width: Space.line
        border.color: root.visualFocus ? Theme.water : root.enabled ? Theme.edge : Theme.hairline

        Glyph {
            x: Space.small
            y: Space.small
            visible: root.isChosen
            path: Icons.tick
            size: Space.mark * 0.8
            color: Theme.ground
        }
    }
    contentItem: Item {
        Label {
            anchors.fill: parent
            anchors.leftMargin: Space.small
            anchors.rightMargin: Space.small
            verticalAlignment: Text.AlignVCenter
            text: root.text
            isStrong: true
            wrapMode: Text.WordWrap
            fontSizeMode: Text.Fit  // two lines before smaller letters
            minimumPixelSize: Type.small * 0.8
            maximumLineCount: 3
            horizontalAlignment: Text.AlignHCenter
            color: root.isChosen ? Theme.ground : root.enabled ? Theme.ink : Theme.ash
            Accessible.ignored: true
        }
    }
}
