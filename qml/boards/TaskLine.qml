import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// A task in one line, to read and not to touch: when, what, who.
Item {
    id: root

    required property string title
    required property string mark
    required property bool isLate
    required property string startText
    required property string people
    required property int index

    implicitHeight: Math.max(what.implicitHeight, when.implicitHeight) + Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.startText + ", " + root.title + ", " + root.people

    Rectangle {
        width: parent.width
        height: Space.hair
        visible: root.index > 0
        color: Theme.hairline
    }
    StateMark { id: shape; mark: root.mark; isLate: root.isLate; anchors.verticalCenter: parent.verticalCenter }
    Label {
        id: what
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: when.left
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        text: root.title + (root.people !== "" ? " · " + root.people : "")
        maximumLineCount: 5
        Accessible.ignored: true
    }
    Label {
        id: when
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: root.startText
        color: Theme.ash
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
}
