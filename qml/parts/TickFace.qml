import QtQuick
import Cinderbell.Theme

/// Inside a tile: its box, empty or ticked, and its words.
Item {
    id: root

    required property string text
    required property bool isTicked

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
        height: parent.height - 2 * Space.small
        y: Space.small
        verticalAlignment: Text.AlignVCenter
        text: root.text
        size: Type.lead
        // A long line is set smaller before it is cut.
        fontSizeMode: Text.Fit
        minimumPixelSize: Type.small
        wrapMode: Text.WordWrap
        maximumLineCount: 8
        isStrong: !root.isTicked
        color: root.isTicked ? Theme.ash : Theme.ink
        lineHeight: 0.95
        Accessible.ignored: true
    }
}
