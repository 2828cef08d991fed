import QtQuick
import Cinderbell.Theme

/// What was just noted, and the way back, as long as it is offered.
Item {
    id: root

    required property string text
    required property string remaining
    signal undo()

    implicitHeight: Space.touch + 2 * Space.small
    Accessible.role: Accessible.Grouping
    Accessible.name: root.text

    Rectangle {
        anchors.fill: parent
        color: Theme.ink
        radius: Space.corner
    }
    Label {
        anchors.left: parent.left
        anchors.leftMargin: Space.margin
        anchors.right: back.left
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        text: root.text
        color: Theme.ground
        isStrong: true
        maximumLineCount: 2
    }
    PressPlate {
        id: back
        anchors.right: parent.right
        anchors.rightMargin: Space.small
        anchors.verticalCenter: parent.verticalCenter
        glyph: Icons.undo
        text: qsTr("Undo") + " " + root.remaining
        Accessible.name: qsTr("Undo")
        onClicked: root.undo()
    }
}
