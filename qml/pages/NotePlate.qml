import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// One of several, with a line under it; chosen it carries a tick.
T.AbstractButton {
    id: root

    property string note: ""
    property bool isChosen: false

    implicitHeight: Math.max(Space.touch, words.implicitHeight + 2 * Space.gap)
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.clicked()

    background: Plate {
        fill: root.down ? Theme.waterWash : Theme.plate
        edge: root.visualFocus || root.isChosen ? Theme.water : Theme.edge
        edgeWidth: root.isChosen ? Space.line * 2 : Space.line
    }
    Glyph { id: shape; x: Space.margin; anchors.verticalCenter: parent.verticalCenter; visible: root.isChosen; path: Icons.tick; color: Theme.water }
    Column {
        id: words
        anchors.left: parent.left
        anchors.leftMargin: Space.margin + (root.isChosen ? Space.icon + Space.gap : 0)
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        spacing: Space.tight

        Label { width: parent.width; text: root.text; isStrong: true; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.note; size: Type.small; color: Theme.ash; maximumLineCount: 4; Accessible.ignored: true }
    }
}
