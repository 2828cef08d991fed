import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// What was found out of limit, and the limit.
Item {
    id: root

    required property string finding
    required property string limit

    implicitHeight: words.height + 2 * Space.gap

    Plate { anchors.fill: parent; fill: Theme.emberWash; edge: Theme.ember }
    StateMark { id: shape; x: Space.margin; anchors.verticalCenter: parent.verticalCenter; size: Space.icon; mark: "over" }
    Column {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        y: Space.gap
        spacing: Space.tight

        Label { width: parent.width; text: root.finding; size: Type.title; isStrong: true }
        Label { width: parent.width; text: root.limit; size: Type.lead }
    }
}
