import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Why the last touch was not taken.
Item {
    id: root

    required property Day day
    implicitHeight: Space.touch + 2 * Space.small
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.day.refusal

    Rectangle { anchors.fill: parent; color: Theme.emberWash; radius: Space.corner; border.width: Space.line; border.color: Theme.ember }
    Remark { x: Space.margin; anchors.verticalCenter: parent.verticalCenter; width: close.x - 2 * Space.margin; text: root.day.refusal; tint: Theme.ink }
    PressPlate { id: close; anchors.right: parent.right; anchors.rightMargin: Space.small; anchors.verticalCenter: parent.verticalCenter; text: qsTr("Understood"); onClicked: root.day.dropRefusal() }
}
