import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// A way to a board: drawing over word; the open one is filled and barred at the board's side.
T.AbstractButton {
    id: root

    required property string glyph
    required property bool isOpen

    implicitWidth: Space.rail
    implicitHeight: Space.touch
    Accessible.role: Accessible.PageTab
    Accessible.name: root.text
    Accessible.selected: root.isOpen
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.isOpen ? Theme.ink : root.down ? Theme.emberWash : Theme.none
        radius: Space.corner
        border.width: root.visualFocus ? Space.line : 0
        border.color: Theme.water
    }
    contentItem: Item {
        Column {
            anchors.centerIn: parent
            width: parent.width
            spacing: Space.tight

            Glyph {
                anchors.horizontalCenter: parent.horizontalCenter
                path: root.glyph
                color: root.isOpen ? Theme.ground : Theme.ink
            }
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                text: root.text
                size: Type.small
                isStrong: root.isOpen
                maximumLineCount: 1
                color: root.isOpen ? Theme.ground : Theme.ink
                Accessible.ignored: true
            }
        }
    }
}
