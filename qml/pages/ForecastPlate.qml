import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// What will probably become of a pan: on the bare ground, with a clock and not a mark, so that it
/// never looks like something measured. A touch opens the pan to be measured.
T.AbstractButton {
    id: root

    required property string key
    required property string title
    required text

    implicitHeight: Math.max(Space.touch, words.implicitHeight + 2 * Space.gap)
    Accessible.role: Accessible.Button
    Accessible.name: root.title + " " + root.text
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.down ? Theme.waterWash : Theme.none
        radius: Space.corner
        border.width: Space.hair
        border.color: root.visualFocus ? Theme.water : Theme.ash
    }
    Glyph { id: shape; x: Space.margin; y: Space.gap; path: Icons.clock; size: Space.mark; color: Theme.ash }
    Column {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        y: Space.gap
        spacing: Space.tight

        Label { width: parent.width; text: root.title; isStrong: true; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; text: root.text; maximumLineCount: 6; Accessible.ignored: true }
    }
}
