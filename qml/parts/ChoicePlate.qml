import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// One of a few: chosen it is filled and carries a tick in its corner.
T.AbstractButton {
    id: root

    required property bool isChosen
    readonly property color mark: !root.enabled ? Theme.ash : root.isChosen ? Theme.ground : Theme.ink

    implicitHeight: Space.touch
    Accessible.role: Accessible.RadioButton
    Accessible.name: root.text
    Accessible.checked: root.isChosen
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        // What cannot be chosen now is an outline whose word, and tick, are still read.
        color: !root.enabled ? Theme.none : root.isChosen ? Theme.ink : root.down ? Theme.waterWash : Theme.plate
        radius: Space.corner
        border.width: Space.line
        border.color: root.visualFocus ? Theme.water : root.enabled ? Theme.edge : Theme.hairline

        Glyph {
            x: Space.small
            y: Space.small
            visible: root.isChosen
            path: Icons.tick
            size: Space.mark * 0.8
            color: root.mark
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
            color: root.mark
            Accessible.ignored: true
        }
    }
}
