import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Inside the plate that says whether the bell will be kept.
Item {
    id: root

    required property string text
    required property string mark

    StateMark {
        id: shape
        x: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        mark: root.mark
    }
    Label {
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: way.left
        anchors.rightMargin: Space.small
        anchors.verticalCenter: parent.verticalCenter
        text: root.text
        size: Type.lead
        isStrong: true
        maximumLineCount: 2
        Accessible.ignored: true
    }
    Glyph {
        id: way
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        path: Icons.forward
        size: Space.mark
    }
}
