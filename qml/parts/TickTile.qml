import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// One line to tick off: 25 mm high, the whole tile is the target. Ticked, it sinks into the
/// ground and is struck by a tick; a second touch is not needed, undo takes it back.
T.AbstractButton {
    id: root

    property bool isTicked: false

    implicitHeight: Space.hurried
    implicitWidth: Space.hurried * 2
    enabled: !root.isTicked
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.CheckBox
    Accessible.name: root.text
    Accessible.checkable: true
    Accessible.checked: root.isTicked
    Accessible.onPressAction: root.click()

    background: Rectangle {
        color: root.isTicked ? Theme.none : root.down ? Theme.waterWash : Theme.plate
        radius: Space.corner
        border.width: root.isTicked ? Space.hair : root.visualFocus ? Space.line * 2 : Space.line
        border.color: root.isTicked ? Theme.hairline : root.visualFocus ? Theme.water : Theme.edge
    }
    contentItem: Item {
        Rectangle {
            id: box
            x: Space.margin
            anchors.verticalCenter: parent.verticalCenter
            width: Space.icon + Space.small
            height: width
            radius: Space.tight
            color: Theme.none
            border.width: root.isTicked ? 0 : Space.line
            border.color: Theme.ink

            Glyph {
                anchors.centerIn: parent
                visible: root.isTicked
                path: Icons.tick
                color: Theme.water
            }
        }
        Label {
            anchors.left: box.right
            anchors.leftMargin: Space.gap
            anchors.right: parent.right
            anchors.rightMargin: Space.gap
            anchors.verticalCenter: parent.verticalCenter
            text: root.text
            size: Type.lead
            isStrong: !root.isTicked
            color: root.isTicked ? Theme.ash : Theme.ink
            lineHeight: 0.95
            Accessible.ignored: true
        }
    }
}
