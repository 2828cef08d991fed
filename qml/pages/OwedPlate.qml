import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// Something the record waits for: the whole of it leads to the answer.
T.AbstractButton {
    id: root

    implicitHeight: Math.max(Space.hurried, words.implicitHeight + 2 * Space.gap)
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.clicked()

    background: Plate { fill: Theme.emberWash; edge: Theme.ember; edgeWidth: root.visualFocus ? Space.line * 2 : Space.line }
    StateMark { id: shape; x: Space.margin; anchors.verticalCenter: parent.verticalCenter; size: Space.icon; mark: "late" }
    Label {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: way.left
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        text: root.text
        size: Type.lead
        isStrong: true
        maximumLineCount: 6
        Accessible.ignored: true
    }
    Glyph { id: way; anchors.right: parent.right; anchors.rightMargin: Space.margin; anchors.verticalCenter: parent.verticalCenter; path: Icons.forward; color: Theme.ember }
}
