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
    Accessible.role: Accessible.CheckBox
    Accessible.name: root.text
    Accessible.checkable: true
    Accessible.checked: root.isTicked
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.isTicked ? Theme.none : root.down ? Theme.waterWash : Theme.plate
        radius: Space.corner
        border.width: root.isTicked ? Space.hair : root.visualFocus ? Space.line * 2 : Space.line
        border.color: root.isTicked ? Theme.hairline : root.visualFocus ? Theme.water : Theme.edge
    }
    contentItem: TickFace {
        text: root.text
        isTicked: root.isTicked
    }
}
