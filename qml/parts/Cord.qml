import QtQuick
import Cinderbell.Theme

/// How far something has gone, as a small wick: ash where it burnt, cord where it has not.
Item {
    id: root

    required property real progress
    property color burning: Theme.ember

    implicitHeight: Space.small
    Accessible.role: Accessible.ProgressBar
    Accessible.name: Math.round(root.progress * 100) + " %"

    Rectangle {
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width
        height: Space.line
        color: Theme.ash
    }
    Rectangle {
        anchors.verticalCenter: parent.verticalCenter
        width: Math.round(parent.width * root.progress)
        height: parent.height
        radius: height / 2
        color: root.burning
    }
}
