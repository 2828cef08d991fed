import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Inside a plate that leads somewhere: a name over a note, and the way.
Item {
    id: root

    required property string name
    required property string note
    required property bool isFaulty
    required property bool isOpen
    required property color ink
    implicitHeight: words.height

    StateMark { id: mark; visible: root.isFaulty; x: Space.margin; anchors.verticalCenter: parent.verticalCenter; mark: "late"; color: root.isOpen ? root.ink : Theme.ember }
    Column {
        id: words
        anchors.left: parent.left
        anchors.leftMargin: root.isFaulty ? Space.margin + mark.width + Space.gap : Space.margin
        anchors.right: way.left
        anchors.rightMargin: Space.small
        anchors.verticalCenter: parent.verticalCenter
        spacing: Space.tight

        Label { width: parent.width; text: root.name; size: Type.lead; isStrong: true; color: root.ink; maximumLineCount: 6; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.note; size: Type.small; color: root.ink; maximumLineCount: 12; Accessible.ignored: true }
    }
    Glyph { id: way; anchors.right: parent.right; anchors.rightMargin: Space.gap; anchors.verticalCenter: parent.verticalCenter; path: Icons.forward; color: root.ink }
}
