import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// The first check that is due, as a band: the whole of it opens the keys.
T.AbstractButton {
    id: root

    property string note: ""

    implicitHeight: Math.max(Space.touch, words.implicitHeight + 2 * Space.small)
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.clicked()

    background: Plate { fill: root.down ? Theme.waterWash : Theme.emberWash; edge: root.visualFocus ? Theme.water : Theme.ember }
    Glyph { id: shape; x: Space.margin; anchors.verticalCenter: parent.verticalCenter; path: Icons.probe; color: Theme.ember }
    Label {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: count.left
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        text: root.text
        isStrong: true
        maximumLineCount: 6
        Accessible.ignored: true
    }
    Label {
        id: count
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        text: root.note
        size: Type.small
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
}
