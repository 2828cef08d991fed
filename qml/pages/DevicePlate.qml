import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Another device of the crew: who holds it, where it stands, how its clock goes.
Item {
    id: root

    required property string key
    required property string name
    required property string standing
    required property string mark
    required property string clock
    required property string parted

    implicitHeight: words.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ": " + root.standing

    Plate { anchors.fill: parent; edgeWidth: root.mark === "late" ? Space.line : Space.hair; edge: root.mark === "late" ? Theme.ember : Theme.hairline }
    StateMark {
        id: state
        x: Space.gap
        // In the middle of the first line.
        y: words.y + Math.round((called.height / called.lineCount - height) / 2)
        mark: root.mark
    }
    Column {
        id: words
        x: state.x + state.width + Space.gap
        y: Space.gap
        width: parent.width - x - Space.gap
        spacing: Space.tight

        Label { id: called; width: parent.width; text: root.name; size: Type.lead; isStrong: true; maximumLineCount: 5 }
        Label { width: parent.width; text: root.standing; maximumLineCount: 8; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.clock; size: Type.small; color: Theme.ash }
        Remark { width: parent.width; text: root.parted; tint: Theme.ember; lines: 8 }
    }
}
