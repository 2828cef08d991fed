import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// One line to tick off: 25 mm high, the whole tile is the target. Ticked, it sinks into the
/// ground and is struck by a tick; a second touch does nothing, undo takes it back. It stays a stop
/// of the Tab key: the next line is one key away.
T.AbstractButton {
    id: root

    property bool isTicked: false
    signal ticked()

    implicitHeight: Space.hurried
    implicitWidth: Space.hurried * 2
    Accessible.role: Accessible.CheckBox
    Accessible.name: root.text
    Accessible.checkable: true
    Accessible.checked: root.isTicked
    Accessible.onPressAction: root.clicked()
    onClicked: if (!root.isTicked) root.ticked()

    background: Rectangle {
        color: root.isTicked ? Theme.none : root.down ? Theme.waterWash : Theme.plate
        radius: Space.corner
        border.width: root.visualFocus ? Space.line * 2 : root.isTicked ? Space.hair : Space.line
        border.color: root.visualFocus ? Theme.water : root.isTicked ? Theme.hairline : Theme.edge
    }
    contentItem: TickFace {
        text: root.text
        isTicked: root.isTicked
    }
}
