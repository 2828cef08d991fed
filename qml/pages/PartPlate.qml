import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// A plate that leads to a part of the event; the open one is filled.
T.AbstractButton {
    id: root

    required property string name
    required property string note
    property bool isFaulty: false
    property bool isOpen: false

    implicitHeight: Math.max(Space.touch, face.implicitHeight + 2 * Space.small)
    Accessible.role: Accessible.Button
    Accessible.name: root.name
    Accessible.description: root.note
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.isOpen ? Theme.ink : root.down ? Theme.waterWash : Theme.plate
        radius: Space.corner
        border.width: Space.line
        border.color: root.visualFocus ? Theme.water : root.isFaulty ? Theme.ember : Theme.edge
    }
    readonly property PartFace face: PartFace {
        name: root.name
        note: root.note
        isFaulty: root.isFaulty
        isOpen: root.isOpen
        ink: root.isOpen ? Theme.ground : Theme.ink
    }
    contentItem: root.face
}
