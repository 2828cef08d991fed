import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Inside a figure's tile.
Item {
    id: root

    required property string name
    required property string amount
    required property string note

    implicitHeight: words.height + 2 * Space.small

    Column {
        id: words
        x: Space.gap
        y: Space.small
        width: root.width - 2 * Space.gap

        Label { width: parent.width; text: root.name; size: Type.small; color: Theme.ash; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; text: root.amount; size: Type.lead; isStrong: true; maximumLineCount: 3; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.note; size: Type.small; maximumLineCount: 8; Accessible.ignored: true }
    }
}
