import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One of the crew: what now, for how long; what next, and when.
Item {
    id: root

    required property string name
    required property string now
    required property string nowUntil
    required property string mark
    required property string next
    required property string nextAt
    required property bool isLate

    implicitHeight: words.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ": " + root.now

    Plate { anchors.fill: parent; isNotched: root.mark === "running"; edgeWidth: Space.hair }
    Column {
        id: words
        x: Space.margin
        y: Space.gap
        width: parent.width - 2 * Space.margin
        spacing: Space.tight

        Label { text: root.name; size: Type.small; isStrong: true; color: Theme.ash }
        Row {
            width: parent.width
            spacing: Space.small

            StateMark { id: shape; mark: root.mark; isLate: root.isLate }
            Label {
                width: parent.width - shape.width - left.width - 2 * Space.small
                text: root.now
                isStrong: true
                maximumLineCount: 4
            }
            Figure { id: left; text: root.nowUntil; size: Type.lead }
        }
        Label {
            width: parent.width
            visible: root.next !== ""
            text: qsTr("then %1 · %2").arg(root.next).arg(root.nextAt)
            size: Type.small
            color: Theme.ash
            maximumLineCount: 4
        }
    }
}
